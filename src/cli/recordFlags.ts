import { Option, type Command } from 'commander';
import { readFile } from 'node:fs/promises';
import type { Finding, TensionRecord } from '../base/index.js';
import { pressureToForce } from '../force/index.js';
import { readSpreadsheet } from '../files/index.js';
import type { ForceColumns, TestInfo } from '../methods/index.js';
import { readRecord, type ReadOptions, type ReadResult } from '../record/index.js';
import { byCalibration, cylinderOf, withCalibrationFlags, type CalibrationFlags, type CylinderFlags } from './calibrationFlags.js';
import { numberOption, some, withPair } from './flags.js';
import { usage } from './usage.js';

/** Flags that say how to read a file and how its force is made. */
export interface RecordFlags extends CalibrationFlags, CylinderFlags {
  readonly unit?: Readonly<Record<string, string>>;
  readonly column?: Readonly<Record<string, string>>;
  readonly decimal?: '.' | ',';
  readonly separator?: string;
  readonly sheet?: string | number;
}

/** What the command asks of a file: the base of an extensometer, where strain must become extension; whether a motion must be there. */
type Wanted = Pick<ReadOptions, 'length' | 'motion'>;

/** `#2` is the second column, which the library counts from 0; anything else is a name. */
const placeOf = (text: string): string | number => (/^#[1-9]\d*$/.test(text) ? Number(text.slice(1)) - 1 : text);

function readOptions(flags: RecordFlags, more: Wanted): ReadOptions {
  const separator = flags.separator === 'tab' ? '\t' : flags.separator === 'space' ? ' ' : flags.separator;
  const columns = Object.entries(flags.column ?? {}).map(([name, one]) => [name, placeOf(one)]);
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

/** The first flag of a cylinder that was given. */
const ofCylinder = ({ bore, rod, efficiency, tareForce }: CylinderFlags): string | undefined =>
  Object.entries({ '--bore': bore, '--rod': rod, '--efficiency': efficiency, '--tare-force': tareForce }).find(
    ([, value]) => value !== undefined,
  )?.[0];

/** Refuses flags that would be passed over: those of a cylinder beside a calibration, and of a calibration that is not there. */
function requireOneWay(flags: RecordFlags): void {
  const { calibration, calibrationBeyond, calibrationDate } = flags;
  if (calibration === undefined && calibrationBeyond !== undefined) throw usage('--calibration-beyond goes with --calibration');
  if (calibration === undefined && calibrationDate !== undefined) throw usage('--calibration-date goes with --calibration');
  const idle = ofCylinder(flags);
  if (calibration !== undefined && idle) throw usage(`${idle} has no meaning beside --calibration, which gives the force of a reading`);
}

const ofFile = ['calibration', 'unit', 'column', 'decimal', 'separator', 'sheet'] as const;

/** Refuses flags of a file where there is none, and a number is the force. */
export function requireNoFileFlags(flags: RecordFlags): void {
  const named = ofFile.find((name) => flags[name] !== undefined);
  const idle = ofCylinder(flags) ?? (named && `--${named}`);
  if (idle) throw usage(`${idle} has no meaning without a file, and none is named`);
}

/** Force of the record: as it is, by calibration, or from pressure by the cylinder. */
export async function withForce(record: ReadResult['record'], flags: RecordFlags): Promise<TensionRecord> {
  requireOneWay(flags);
  if (flags.calibration !== undefined) return byCalibration(record, await flags.calibration(), flags.calibrationBeyond);
  if ('force' in record) {
    const idle = ofCylinder(flags);
    if (idle) throw usage(`${idle} has no meaning here: the file holds force, and not the pressure that it turns into force`);
    return record;
  }
  const cylinder = cylinderOf(flags);
  if (cylinder === undefined) throw usage('--bore or --calibration must be given: the file holds pressure');
  return pressureToForce(record, cylinder);
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
  withCalibrationFlags(
    command
      .optionsGroup('File and force:')
      .addOption(numberOption('--bore <D>', 'bore of the cylinder [mm], for files of pressure'))
      .addOption(numberOption('--rod <d>', 'rod [mm], where the rod side pulls'))
      .addOption(numberOption('--efficiency <eta>', 'force over pressure times area'))
      .addOption(numberOption('--tare-force <F>', 'force to take off [N]')),
  )
    .option('--unit <quantity=unit>', 'unit of a column where the file has none; may be repeated', withPair)
    .option(
      '--column <quantity=name>',
      'which column serves: its name, or its place as #2, where #1 is the first; may be repeated',
      withPair,
    )
    .addOption(new Option('--decimal <sign>', 'decimal sign').choices(['.', ',']))
    .addOption(new Option('--separator <sign>', 'separator of cells').choices([';', ',', '|', 'tab', 'space']))
    .addOption(
      new Option('--sheet <name>', 'name of the sheet, or its place from 1, of a spreadsheet (.xlsx); default the first').argParser(
        (text) => (/^[1-9]\d*$/.test(text) ? Number(text) : text),
      ),
    );
