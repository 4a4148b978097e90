import { Option, type Command } from 'commander';
import { basename } from 'node:path';
import type { TestInfo } from '../methods/index.js';
import type { RoundingRule } from '../statistics/index.js';
import { numberOption, some } from './flags.js';
import { withJobFlags, type JobFlags } from './jobFlags.js';

/** Flags that say how results are shown, in the terminal and on the page. */
interface ShownFlags {
  readonly rounding?: RoundingRule;
}

/** Flags that say who tested what, how results are shown, and where the report goes. */
export interface TestFlags extends ShownFlags, JobFlags {
  readonly identity?: string;
  readonly material?: string;
  readonly operator?: string;
  readonly date?: string;
  readonly temperature?: number;
  readonly standard?: string;
  readonly remarks?: string;
  readonly invented?: true;
  readonly output?: string;
  readonly overwrite?: true;
}

/** Adds the flags of how results are shown: the place for language, units and paper. */
const withShownFlags = (command: Command): Command =>
  command
    .optionsGroup('Report:')
    .addOption(new Option('--rounding <standard>', 'steps of rounding: ISO 6892-1 or ASTM E8/E8M; default iso').choices(['iso', 'astm']));

/** The same as options of `summarise` and `renderHtml`. */
export const shownOf = (flags: ShownFlags): { readonly rounding?: RoundingRule } => some('rounding', flags.rounding);

/** Adds the flags of test and output. */
export const withTestFlags = (command: Command): Command =>
  withJobFlags(
    withShownFlags(
      command
        .optionsGroup('Test:')
        .option('--identity <text>', 'name of the test piece; default the name of the file')
        .option('--material <text>', 'material')
        .option('--operator <text>', 'who ran the test')
        .option('--date <text>', 'date of the test')
        .addOption(numberOption('--temperature <T>', 'test temperature [°C]'))
        .option('--standard <text>', 'standard that the test claims to follow')
        .option('--remarks <text>', 'anything else')
        .option('--invented', 'the data are invented: the page says so'),
    )
      .option('--output <folder>', 'folder for page and data; default that of the file')
      .option('--overwrite', 'replace an existing report'),
  );

/** Who tested what. */
export const testOf = (file: string, flags: TestFlags): TestInfo => ({
  identity: flags.identity ?? basename(file),
  ...some('material', flags.material),
  ...some('operator', flags.operator),
  ...some('date', flags.date),
  ...some('temperature', flags.temperature),
  ...some('standard', flags.standard),
  ...some('remarks', flags.remarks),
  ...some('invented', flags.invented),
});
