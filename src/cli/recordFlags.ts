import { Option, type Command } from 'commander';
import { readFile } from 'node:fs/promises';
import { InputError, required, type PressureRecord, type TensionRecord } from '../base/index.js';
import { applyCalibration, fitCalibration, pressureToForce } from '../force/index.js';
import { readRecord, type ReadOptions, type ReadResult } from '../record/index.js';
import { collected, numberOption, pairs, some } from './flags.js';
import { twoColumns } from './twoColumns.js';

/** Flags that say how to read a file and how its force is made. */
export interface RecordFlags {
  readonly bore?: number;
  readonly rod?: number;
  readonly efficiency?: number;
  readonly tareForce?: number;
  readonly calibration?: string;
  readonly unit: readonly string[];
  readonly column: readonly string[];
  readonly decimal?: '.' | ',';
  readonly separator?: string;
}

function readOptions(flags: RecordFlags, length: number | undefined): ReadOptions {
  const units = pairs('--unit', flags.unit);
  const columns = pairs('--column', flags.column);
  const separator = flags.separator === 'tab' ? '\t' : flags.separator === 'space' ? ' ' : flags.separator;
  return {
    ...some('decimal', flags.decimal),
    ...some('separator', separator as ReadOptions['separator']),
    ...(flags.unit.length > 0 ? { units: units } : {}),
    ...(flags.column.length > 0
      ? { columns: Object.fromEntries(Object.entries(columns).map(([name, one]) => [name, /^\d+$/.test(one) ? Number(one) : one])) }
      : {}),
    ...some('length', length),
  };
}

/** Force of the record: as it is, by calibration, or from pressure by the cylinder. */
async function withForce(record: ReadResult['record'], flags: RecordFlags): Promise<TensionRecord> {
  if (flags.calibration !== undefined) {
    const [indicated, reference] = await twoColumns(flags.calibration);
    const calibration = required(fitCalibration({ indicated, reference }));
    const { pressure, force, ...others } = record as TensionRecord & PressureRecord;
    return { force: applyCalibration(calibration, 'pressure' in record ? pressure : force), ...others };
  }
  if ('force' in record) return record;
  if (flags.bore === undefined)
    throw new InputError('report', '--bore', 'missing', 'or --calibration must be given: the file holds pressure', undefined);
  return pressureToForce(record, {
    bore: flags.bore,
    ...some('rod', flags.rod),
    ...some('efficiency', flags.efficiency),
    ...some('tareForce', flags.tareForce),
  });
}

/** The record of a file with its force; `length` is the base of an extensometer, where strain must become extension. */
export async function recordOf(file: string, flags: RecordFlags, length?: number): Promise<TensionRecord> {
  const { record } = readRecord(await readFile(file), readOptions(flags, length));
  return withForce(record, flags);
}

/** Adds the flags of the file and of its force. */
export const withRecordFlags = (command: Command): Command =>
  command
    .addOption(numberOption('--bore <D>', 'bore of the cylinder [mm], for files of pressure'))
    .addOption(numberOption('--rod <d>', 'rod [mm], where the rod side pulls'))
    .addOption(numberOption('--efficiency <eta>', 'force over pressure times area'))
    .addOption(numberOption('--tare-force <F>', 'force to take off [N]'))
    .option('--calibration <file>', 'two columns: what the channel indicated [MPa or N], reference force [N]')
    .option('--unit <quantity=unit>', 'unit of a column where the file has none; may be repeated', collected, [])
    .option('--column <quantity=name>', 'which column serves; may be repeated', collected, [])
    .addOption(new Option('--decimal <sign>', 'decimal sign').choices(['.', ',']))
    .addOption(new Option('--separator <sign>', 'separator of cells').choices([';', ',', '|', 'tab', 'space']));
