import { Option, type Command } from 'commander';
import { readFile } from 'node:fs/promises';
import { InputError, required, type PressureRecord, type TensionRecord } from '../base/index.js';
import { applyCalibration, fitCalibration, pressureToForce } from '../force/index.js';
import { readRecord, type ReadOptions, type ReadResult } from '../record/index.js';
import { numberOption, some, withPair } from './flags.js';
import { twoColumns } from './twoColumns.js';

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

function readOptions(flags: RecordFlags, length: number | undefined): ReadOptions {
  const separator = flags.separator === 'tab' ? '\t' : flags.separator === 'space' ? ' ' : flags.separator;
  const columns = Object.entries(flags.column ?? {}).map(([name, one]) => [name, /^\d+$/.test(one) ? Number(one) : one]);
  return {
    ...some('decimal', flags.decimal),
    ...some('separator', separator as ReadOptions['separator']),
    ...some('units', flags.unit),
    ...(columns.length > 0 ? { columns: Object.fromEntries(columns) as NonNullable<ReadOptions['columns']> } : {}),
    ...some('length', length),
  };
}

/** A file as it was read; `length` is the base of an extensometer, where strain must become extension. */
export const readingOf = async (file: string, flags: RecordFlags, length?: number): Promise<ReadResult> =>
  readRecord(await readFile(file), readOptions(flags, length));

/** Force of the record: as it is, by calibration, or from pressure by the cylinder. */
export async function withForce(from: string, record: ReadResult['record'], flags: RecordFlags): Promise<TensionRecord> {
  if (flags.calibration !== undefined) {
    const [indicated, reference] = await twoColumns(flags.calibration);
    const calibration = required(fitCalibration({ indicated, reference }));
    const { pressure, force, ...others } = record as TensionRecord & PressureRecord;
    return { force: applyCalibration(calibration, 'pressure' in record ? pressure : force), ...others };
  }
  if ('force' in record) return record;
  if (flags.bore === undefined)
    throw new InputError(from, '--bore', 'missing', 'or --calibration must be given: the file holds pressure', undefined);
  return pressureToForce(record, {
    bore: flags.bore,
    ...some('rod', flags.rod),
    ...some('efficiency', flags.efficiency),
    ...some('tareForce', flags.tareForce),
  });
}

/** The record of a file with its force. */
export const recordOf = async (from: string, file: string, flags: RecordFlags, length?: number): Promise<TensionRecord> =>
  withForce(from, (await readingOf(file, flags, length)).record, flags);

/** Adds the flags of the file and of its force. */
export const withRecordFlags = (command: Command): Command =>
  command
    .addOption(numberOption('--bore <D>', 'bore of the cylinder [mm], for files of pressure'))
    .addOption(numberOption('--rod <d>', 'rod [mm], where the rod side pulls'))
    .addOption(numberOption('--efficiency <eta>', 'force over pressure times area'))
    .addOption(numberOption('--tare-force <F>', 'force to take off [N]'))
    .option('--calibration <file>', 'two columns: what the channel indicated [MPa or N], reference force [N]')
    .option('--unit <quantity=unit>', 'unit of a column where the file has none; may be repeated', withPair)
    .option('--column <quantity=name>', 'which column serves; may be repeated', withPair)
    .addOption(new Option('--decimal <sign>', 'decimal sign').choices(['.', ',']))
    .addOption(new Option('--separator <sign>', 'separator of cells').choices([';', ',', '|', 'tab', 'space']));
