import { toJson, type TestInfo, type TestResult } from '../methods/index.js';
import { drawFigures } from '../render/index.js';
import { figures, renderHtml, summarise } from '../report/index.js';
import { resultTable } from './resultTable.js';
import { readerOf, shownOf, testOf, type TestFlags } from './testFlags.js';
import { told } from './told.js';
import { requireFree, writeFiles } from './writeFiles.js';

/** A result, and what the terminal says of it. */
export interface Written {
  readonly result: TestResult;
  readonly text: string;
}

/**
 * Evaluates a test and writes page and data under a stem; `--json` writes none unless a folder is named. Nothing is read or written where a report is
 * in the way.
 */
export async function writeReport(
  stem: string,
  name: string,
  flags: TestFlags,
  evaluate: (test: TestInfo) => Promise<TestResult>,
): Promise<Written> {
  const writes = flags.json !== true || flags.output !== undefined;
  const [pagePath, dataPath] = [`${stem}.report.html`, `${stem}.report.json`];
  if (writes) await requireFree([pagePath, dataPath], flags.overwrite === true);
  const result = await evaluate(testOf(name, flags));
  const shown = shownOf(flags);
  const table = resultTable(summarise(result, shown), told(result.findings, shown), 'uncertainty' in result);
  if (!writes) return { result, text: table };
  const page = renderHtml(result, { drawings: await drawFigures(figures(result, readerOf(flags))), ...shown });
  await writeFiles({ [pagePath]: page, [dataPath]: toJson(result) }, flags.overwrite === true);
  return { result, text: `${table}\n  ${pagePath}\n  ${dataPath}\n` };
}
