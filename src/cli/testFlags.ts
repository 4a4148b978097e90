import { Option, type Command } from 'commander';
import { basename } from 'node:path';
import type { ForceClass } from '../force/index.js';
import { languages } from '../languages/index.js';
import type { TestInfo } from '../methods/index.js';
import type { Paper, UnitSystem } from '../report/index.js';
import type { HalfRule, RoundingRule } from '../statistics/index.js';
import { choiceOption, numberOption, rangeOption, some, toDate } from './flags.js';
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
  readonly sampleDirection?: string;
  readonly samplePlace?: string;
  readonly control?: string;
  readonly rate?: string;
  readonly grips?: string;
  readonly extensometerClass?: string;
  readonly forceVerified?: string;
  readonly forceClass?: number;
  readonly forceCertificate?: string;
  readonly forceRange?: readonly [number, number];
  readonly remarks?: string;
  readonly invented?: true;
  readonly output?: string;
  readonly overwrite?: true;
}

/** Adds the flag of the language. */
export const withLanguageFlag = (command: Command): Command =>
  command.addOption(
    choiceOption(
      '--language <tag>',
      'language of tables and pages; default en',
      languages.map(({ tag }) => tag),
    ),
  );

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
        .option('--sample-direction <text>', 'direction of the piece in the product, for example longitudinal')
        .option('--sample-place <text>', 'place in the product that the piece was taken from')
        .option('--operator <text>', 'who ran the test')
        .option('--date <text>', 'date of the test, as 2026-03-31', toDate)
        .addOption(numberOption('--temperature <T>', 'test temperature [°C]'))
        .option('--standard <text>', 'standard that the test claims to follow')
        .option('--control <text>', 'how the test was controlled, as the operator states it: strain rate, stress rate, crosshead by hand')
        .option('--rate <text>', 'testing rate or rates with their unit, as the operator states them')
        .option('--grips <text>', 'grips or set-up that held the piece')
        .option('--extensometer-class <text>', 'class of the extensometer, for example "ISO 9513 class 1"')
        .option('--force-verified <day>', 'day of the last verification of the force, as 2026-03-31')
        .addOption(numberOption('--force-class <class>', 'class of that verification: 0.5, 1, 2 or 3'))
        .option('--force-certificate <text>', 'number of its certificate')
        .addOption(rangeOption('--force-range <low-high>', 'forces between which the class holds [N]'))
        .option('--remarks <text>', 'anything else')
        .option('--invented', 'the data are invented: the page says so'),
    )
      .option('--output <folder>', 'folder for page and data; default that of the file')
      .option('--overwrite', 'replace an existing report'),
  );

/** What is known of the verification of the force. */
function verificationOf(flags: TestFlags): Pick<TestInfo, 'forceCalibration'> {
  const known = {
    ...some('date', flags.forceVerified),
    ...some('forceClass', flags.forceClass as ForceClass | undefined),
    ...some('certificate', flags.forceCertificate),
    ...some('range', flags.forceRange),
  };
  return Object.keys(known).length === 0 ? {} : { forceCalibration: known };
}

/** Who tested what. */
export const testOf = (file: string, flags: TestFlags): TestInfo => ({
  identity: flags.identity ?? basename(file),
  ...some('material', flags.material),
  ...some('operator', flags.operator),
  ...some('date', flags.date),
  ...some('temperature', flags.temperature),
  ...some('standard', flags.standard),
  ...some('sampleDirection', flags.sampleDirection),
  ...some('samplePlace', flags.samplePlace),
  ...some('control', flags.control),
  ...some('rate', flags.rate),
  ...some('grips', flags.grips),
  ...some('extensometerClass', flags.extensometerClass),
  ...verificationOf(flags),
  ...some('remarks', flags.remarks),
  ...some('invented', flags.invented),
});
