import { Option, type Command } from 'commander';
import { readFile } from 'node:fs/promises';
import { required, type PressureRecord, type TensionRecord } from '../base/index.js';
import { applyCalibration, fitCalibration, pressureToForce } from '../force/index.js';
import type { ForceColumns } from '../methods/index.js';
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
  readonly calibration?: string;
  readonly unit?: Readonly<Record<string, string>>;
  readonly column?: Readonly<Record<string, string>>;
  readonly decimal?: '.' | ',';
  readonly separator?: string;
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

/** A file as it was read. */
export const readingOf = async (file: string, flags: RecordFlags, wanted: Wanted = {}): Promise<ReadResult> =>
  readRecord(await readFile(file), readOptions(flags, wanted));

/** Force of the record: as it is, by calibration, or from pressure by the cylinder. */
export async function withForce(record: ReadResult['record'], flags: RecordFlags): Promise<TensionRecord> {
  if (flags.calibration !== undefined) {
    const [indicated, reference] = await twoColumns('--calibration', flags.calibration);
    const calibration = required(fitCalibration({ indicated, reference }));
    const { pressure, force, ...others } = record as TensionRecord & PressureRecord;
    return { force: applyCalibration(calibration, 'pressure' in record ? pressure : force), ...others };
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

/** The record of a file with its force. */
export const recordOf = async (file: string, flags: RecordFlags, wanted: Wanted = {}): Promise<TensionRecord> =>
  withForce((await readingOf(file, flags, wanted)).record, flags);

/** The columns of a test of which force and travel count, or force over time. */
export async function forceColumnsOf(file: string, flags: RecordFlags, motion: boolean): Promise<ForceColumns> {
  const { force, travel, time } = await recordOf(file, flags, { motion });
  return { force, ...some('travel', travel), ...some('time', time) };
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
      'two columns of text, under a heading or none: what the channel indicated [MPa or N], reference force [N]',
    )
    .option('--unit <quantity=unit>', 'unit of a column where the file has none; may be repeated', withPair)
    .option('--column <quantity=name>', 'which column serves; may be repeated', withPair)
    .addOption(new Option('--decimal <sign>', 'decimal sign').choices(['.', ',']))
    .addOption(new Option('--separator <sign>', 'separator of cells').choices([';', ',', '|', 'tab', 'space']));
