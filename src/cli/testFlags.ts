import { Option, type Command } from 'commander';
import { basename } from 'node:path';
import { languages } from '../languages/index.js';
import type { TestInfo } from '../methods/index.js';
import type { Paper, UnitSystem } from '../report/index.js';
import type { HalfRule, RoundingRule } from '../statistics/index.js';
import { numberOption, some } from './flags.js';
import { withJobFlags, type JobFlags } from './jobFlags.js';
import { withLimitFlags, type LimitFlags } from './limitFlags.js';

/** Flags that say how results are shown, in the terminal and on the page. */
interface ShownFlags extends ReaderFlags {
  readonly rounding?: RoundingRule;
  readonly half?: HalfRule;
}

/** The flag that says in which language a table or a page is. */
export interface LanguageFlags {
  readonly language?: string;
}

/** Flags that say in which language and units a table is. */
export interface TableFlags extends LanguageFlags {
  readonly units?: UnitSystem;
}

/** The same of a page, and on which sheet. */
export interface ReaderFlags extends TableFlags {
  readonly paper?: Paper;
}

/** Flags that say who tested what, how results are shown, and where the report goes. */
export interface TestFlags extends ShownFlags, LimitFlags, JobFlags {
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
}

/** Adds the flag of the language. */
export const withLanguageFlag = (command: Command): Command =>
  command.addOption(new Option('--language <tag>', 'language of tables and pages; default en').choices(languages.map(({ tag }) => tag)));

/** Adds the flags of language and units. */
export const withTableFlags = (command: Command): Command =>
  withLanguageFlag(command).addOption(
    new Option('--units <system>', 'units of tables and pages; the data keep N, mm and MPa; default SI').choices(['SI', 'in-lb']),
  );

/** Adds the flags of language, units and sheet. */
export const withReaderFlags = (command: Command): Command =>
  withTableFlags(command).addOption(
    new Option('--paper <sheet>', 'sheet that the page is printed on; default A4').choices(['A4', 'Letter']),
  );

/** Language and units as options of a table, or of a page and its figures. */
export const readerOf = ({ language, units }: TableFlags) => ({
  ...some(
    'language',
    languages.find(({ tag }) => tag === language),
  ),
  ...some('units', units),
});

/** Adds the flags of how results are shown. */
const withShownFlags = (command: Command): Command =>
  withLimitFlags(
    withReaderFlags(command.optionsGroup('Report:'))
      .addOption(new Option('--rounding <standard>', 'steps of rounding: ISO 6892-1 or ASTM E8/E8M; default iso').choices(['iso', 'astm']))
      .addOption(new Option('--half <rule>', 'where a half goes: to the even step, or up; default even').choices(['even', 'up'])),
  );

/** The same as options of `summarise` and `renderHtml`. */
export const shownOf = (flags: ShownFlags) => ({ ...some('rounding', flags.rounding), ...some('half', flags.half), ...readerOf(flags) });

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
        .option('--grips <text>', 'grips or set-up that held the piece')
        .option('--force-verified <day>', 'day of the last verification of the force, as 2026-03-31')
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
  ...some('grips', flags.grips),
  ...(flags.forceVerified === undefined ? {} : { forceCalibration: { date: flags.forceVerified } }),
  ...some('remarks', flags.remarks),
  ...some('invented', flags.invented),
});
