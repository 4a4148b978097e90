import { Option, type Command } from 'commander';
import { basename, dirname, extname, join } from 'node:path';
import { toJson, type TestInfo, type TestResult } from '../methods/index.js';
import { drawFigures } from '../render/index.js';
import { figures, renderHtml, summarise } from '../report/index.js';
import type { RoundingRule } from '../statistics/index.js';
import { numberOption, some } from './flags.js';
import { resultTable } from './resultTable.js';
import { requireFree, writeFiles } from './writeFiles.js';

/** Flags that say who tested what, and where the report goes. */
export interface TestFlags {
  readonly identity?: string;
  readonly material?: string;
  readonly operator?: string;
  readonly date?: string;
  readonly temperature?: number;
  readonly standard?: string;
  readonly grips?: string;
  readonly forceVerified?: string;
  readonly remarks?: string;
  readonly invented?: true;
  readonly output?: string;
  readonly overwrite?: true;
  readonly rounding?: RoundingRule;
}

/** Adds the flags of test and output. */
export const withTestFlags = (command: Command): Command =>
  command
    .option('--identity <text>', 'name of the test piece; default the name of the file')
    .option('--material <text>', 'material')
    .option('--operator <text>', 'who ran the test')
    .option('--date <text>', 'date of the test')
    .addOption(numberOption('--temperature <T>', 'test temperature [°C]'))
    .option('--standard <text>', 'standard that the test claims to follow')
    .option('--grips <text>', 'grips or set-up that held the piece')
    .option('--force-verified <day>', 'day of the last verification of the force, as 2026-03-31')
    .option('--remarks <text>', 'anything else')
    .option('--invented', 'the data are invented: the page says so')
    .addOption(new Option('--rounding <standard>', 'steps of rounding: ISO 6892-1 or ASTM E8/E8M; default iso').choices(['iso', 'astm']))
    .option('--output <folder>', 'folder for page and data; default that of the file')
    .option('--overwrite', 'replace an existing report');

/** Who tested what. */
const testOf = (file: string, flags: TestFlags): TestInfo => ({
  identity: flags.identity ?? basename(file),
  ...some('material', flags.material),
  ...some('operator', flags.operator),
  ...some('date', flags.date),
  ...some('temperature', flags.temperature),
  ...some('standard', flags.standard),
  ...some('grips', flags.grips),
  ...(flags.forceVerified === undefined ? {} : { forceCalibration: { date: flags.forceVerified } }),
  ...some('remarks', flags.remarks),
  ...some('invented', flags.invented),
});

/** Evaluates a file: page and data beside it, the table in the terminal. Nothing is read or written where a report is in the way. */
export async function writeReport(
  file: string,
  flags: TestFlags,
  out: (text: string) => void,
  evaluate: (test: TestInfo) => Promise<TestResult>,
): Promise<void> {
  const stem = join(flags.output ?? dirname(file), basename(file, extname(file)));
  const pagePath = `${stem}.report.html`;
  const dataPath = `${stem}.report.json`;
  await requireFree([pagePath, dataPath], flags.overwrite === true);
  const result = await evaluate(testOf(file, flags));
  const rounding = some('rounding', flags.rounding);
  const page = renderHtml(result, { drawings: await drawFigures(figures(result)), ...rounding });
  await writeFiles({ [pagePath]: page, [dataPath]: toJson(result) }, flags.overwrite === true);
  out(`${resultTable(summarise(result, rounding), result.findings)}\n  ${pagePath}\n  ${dataPath}\n`);
}
