import type { Finding } from '../base/index.js';
import { toJson, type TestInfo, type TestResult } from '../methods/index.js';
import { drawFigures } from '../render/index.js';
import { decisionsInWords, figures, renderHtml } from '../report/index.js';
import { forceMadeBy, type ForceFlags } from './calibrationFlags.js';
import { some } from './flags.js';
import { decisionsOf } from './limitFlags.js';
import { resultTable } from './resultTable.js';
import { readerOf, shownOf, testOf, type TestFlags } from './testFlags.js';
import { requireFree, writeFiles } from './writeFiles.js';

/** A result, and what the terminal says of it. */
export interface Written {
  readonly result: TestResult;
  readonly text: string;
  /** Findings of the result and of what was decided about it. */
  readonly findings: readonly Finding[];
}

/**
 * Evaluates a test and writes page and data under a stem; `--json` writes none unless a folder is named. Nothing is read or written where a report is
 * in the way.
 */
export async function writeReport(
  stem: string,
  name: string,
  flags: TestFlags & ForceFlags,
  evaluate: (test: TestInfo) => Promise<TestResult>,
): Promise<Written> {
  const writes = flags.json !== true || flags.output !== undefined;
  const [pagePath, dataPath] = [`${stem}.report.html`, `${stem}.report.json`];
  if (writes) await requireFree([pagePath, dataPath], flags.overwrite === true);
  const result = await evaluate({ ...testOf(name, flags), ...(await forceMadeBy(flags)) });
  const shown = shownOf(flags);
  const decisions = decisionsOf(result, flags);
  const decided = decisionsInWords(result, decisions, readerOf(flags));
  const findings = [...decided.findings, ...result.findings];
  const table = resultTable(result, shown, decided);
  if (!writes) return { result, findings, text: table };
  const drawings = await drawFigures(figures(result, readerOf(flags)));
  const page = renderHtml(result, { drawings, decisions, ...shown, ...some('paper', flags.paper) });
  await writeFiles({ [pagePath]: page, [dataPath]: toJson(result) }, flags.overwrite === true);
  return { result, findings, text: `${table}\n  ${pagePath}\n  ${dataPath}\n` };
}
