import { Option, type Command } from 'commander';
import { readFile } from 'node:fs/promises';
import { isInputError, required, type Finding, type PressureRecord, type TensionRecord } from '../base/index.js';
import { applyCalibration, calibratedForces, fitCalibration, pressureToForce, type Calibration } from '../force/index.js';
import { readSpreadsheet } from '../files/index.js';
import type { ForceColumns, TestInfo } from '../methods/index.js';
import { readRecord, type ReadOptions, type ReadResult } from '../record/index.js';
import { numberOption, some, withPair } from './flags.js';
import { twoColumns } from './twoColumns.js';
import { usage } from './usage.js';

/** Flags that say how to read a file and how its force is made. */
export interface RecordFlags {
  readonly bore?: number;
  readonly rod?: number;
  readonly efficiency?: number;
  readonly tareForce?: number;
  /** Reads and fits the file that it names, the first time that it is asked. */
  readonly calibration?: () => Promise<Calibration>;
  readonly calibrationBeyond?: number;
  readonly unit?: Readonly<Record<string, string>>;
  readonly column?: Readonly<Record<string, string>>;
  readonly decimal?: '.' | ',';
  readonly separator?: string;
  readonly sheet?: string | number;
}

/** What the command asks of a file: the base of an extensometer, where strain must become extension; whether a motion must be there. */
type Wanted = Pick<ReadOptions, 'length' | 'motion'>;

function readOptions(flags: RecordFlags, more: Wanted): ReadOptions {
  const separator = flags.separator === 'tab' ? '\t' : flags.separator === 'space' ? ' ' : flags.separator;
  const columns = Object.entries(flags.column ?? {}).map(([name, one]) => [name, /^\d+$/.test(one) ? Number(one) : one]);
  return {
    ...some('decimal', flags.decimal),
    ...some('separator', separator as ReadOptions['separator']),
    ...some('units', flags.unit),
    ...(columns.length > 0 ? { columns: Object.fromEntries(columns) as NonNullable<ReadOptions['columns']> } : {}),
    ...more,
  };
}

/** A spreadsheet (.xlsx) is an archive, which begins with these letters. */
const isZip = (bytes: Uint8Array): boolean => [0x50, 0x4b, 3, 4].every((one, k) => bytes[k] === one);

/** A file as it was read: delimited text, or a spreadsheet. */
export async function readingOf(file: string, flags: RecordFlags, wanted: Wanted = {}): Promise<ReadResult> {
  const bytes = await readFile(file);
  const options = readOptions(flags, wanted);
  if (!isZip(bytes)) {
    if (flags.sheet !== undefined) throw usage('--sheet is of a spreadsheet (.xlsx), and the file is none');
    return readRecord(bytes, options);
  }
  if (flags.separator !== undefined) throw usage('--separator has no meaning for a spreadsheet');
  return readSpreadsheet(bytes, { ...options, ...some('sheet', flags.sheet) });
}

/** The calibration by the pairs in a file. */
async function calibrationOf(file: string): Promise<Calibration> {
  const [indicated, reference] = await twoColumns('--calibration', file);
  return required(fitCalibration({ indicated, reference }));
}

/** The calibration that a flag names, read once for all files of a call. */
function readOnce(file: string): () => Promise<Calibration> {
  let read: Promise<Calibration> | undefined;
  return () => (read ??= calibrationOf(file));
}

/** What a test says of how its force was made, with the doubts about its calibration. */
export const forceMadeBy = async ({
  calibration,
}: Pick<RecordFlags, 'calibration'>): Promise<Pick<TestInfo, 'calibratedForces' | 'findings'>> => {
  if (calibration === undefined) return {};
  const fitted = await calibration();
  return { calibratedForces: calibratedForces(fitted), ...(fitted.findings.length > 0 ? { findings: fitted.findings } : {}) };
};

/** Readings in their columns; one that the calibration does not hold is named by the flag. */
function calibrated(calibration: Calibration, readings: Float64Array, beyond: number | undefined): Float64Array {
  try {
    return applyCalibration(calibration, readings, { idle: true, ...some('beyond', beyond) });
  } catch (reason) {
    if (!isInputError(reason) || reason.code !== 'out-of-range') throw reason;
    if (reason.path === 'options.beyond') throw usage(`--calibration-beyond must be from 0 to 0.1, got ${String(beyond)}`);
    const [low, high] = calibration.span;
    throw usage(
      `--calibration holds readings from ${low} to ${high}, and idle ones down to zero; the record has ${String(reason.received)} (${reason.path.replace('indicated', 'sample ')}); --calibration-beyond allows up to a tenth of the span`,
    );
  }
}

/** Force of the record: as it is, by calibration, or from pressure by the cylinder. */
export async function withForce(record: ReadResult['record'], flags: RecordFlags): Promise<TensionRecord> {
  if (flags.calibration !== undefined) {
    const calibration = await flags.calibration();
    const { pressure, force, ...others } = record as TensionRecord & PressureRecord;
    return { force: calibrated(calibration, 'pressure' in record ? pressure : force, flags.calibrationBeyond), ...others };
  }
  if ('force' in record) return record;
  if (flags.bore === undefined) throw usage('--bore or --calibration must be given: the file holds pressure');
  return pressureToForce(record, {
    bore: flags.bore,
    ...some('rod', flags.rod),
    ...some('efficiency', flags.efficiency),
    ...some('tareForce', flags.tareForce),
  });
}

/** What stands in a file, and what is to be said of it. */
export interface Read<Columns> {
  readonly record: Columns;
  readonly findings: readonly Finding[];
}

/** A test with what was found in its files. */
export const withFindings = (test: TestInfo, findings: readonly Finding[]): TestInfo =>
  findings.length === 0 ? test : { ...test, findings: [...(test.findings ?? []), ...findings] };

/** The record of a file with its force. */
export async function recordOf(file: string, flags: RecordFlags, wanted: Wanted = {}): Promise<Read<TensionRecord>> {
  const { record, findings } = await readingOf(file, flags, wanted);
  return { record: await withForce(record, flags), findings };
}

/** The columns of a test of which force and travel count, or force over time. */
export async function forceColumnsOf(file: string, flags: RecordFlags, motion: boolean): Promise<Read<ForceColumns>> {
  const { record, findings } = await recordOf(file, flags, { motion });
  const { force, travel, time } = record;
  return { record: { force, ...some('travel', travel), ...some('time', time) }, findings };
}

/** Adds the flags of the file and of its force. */
export const withRecordFlags = (command: Command): Command =>
  command
    .optionsGroup('File and force:')
    .addOption(numberOption('--bore <D>', 'bore of the cylinder [mm], for files of pressure'))
    .addOption(numberOption('--rod <d>', 'rod [mm], where the rod side pulls'))
    .addOption(numberOption('--efficiency <eta>', 'force over pressure times area'))
    .addOption(numberOption('--tare-force <F>', 'force to take off [N]'))
    .option(
      '--calibration <file>',
      'two columns of text, under a heading or none: what the channel indicated [MPa or N], reference force [N]; idle readings below it go along its slope down to zero',
      readOnce,
    )
    .addOption(
      numberOption('--calibration-beyond <share>', 'how far beyond the calibrated readings, as a share of their span: 0 to 0.1; default 0'),
    )
    .option('--unit <quantity=unit>', 'unit of a column where the file has none; may be repeated', withPair)
    .option('--column <quantity=name>', 'which column serves; may be repeated', withPair)
    .addOption(new Option('--decimal <sign>', 'decimal sign').choices(['.', ',']))
    .addOption(new Option('--separator <sign>', 'separator of cells').choices([';', ',', '|', 'tab', 'space']))
    .addOption(
      new Option('--sheet <name>', 'name of the sheet, or its place from 1, of a spreadsheet (.xlsx); default the first').argParser(
        (text) => (/^[1-9]\d*$/.test(text) ? Number(text) : text),
      ),
    );
