import type { Command } from 'commander';
import { isInputError, required, type PressureRecord, type TensionRecord } from '../base/index.js';
import { applyCalibration, calibratedForces, fitCalibration, type Calibration } from '../force/index.js';
import type { TestInfo } from '../methods/index.js';
import type { ReadResult } from '../record/index.js';
import { numberOption, some } from './flags.js';
import { twoColumns, type Measured } from './twoColumns.js';
import { usage } from './usage.js';

/** The calibration by the pairs in a file, and whether its heading says that the channel indicates pressure or force. */
interface ChannelCalibration {
  readonly calibration: Calibration;
  readonly indicates: Measured | undefined;
}

/** Flags of the calibration of the force. */
export interface CalibrationFlags {
  /** Reads and fits the file that it names, the first time that it is asked. */
  readonly calibration?: () => Promise<ChannelCalibration>;
  readonly calibrationBeyond?: number;
}

async function calibrationOf(file: string): Promise<ChannelCalibration> {
  const { columns, measured } = await twoColumns('--calibration', file, [['stress', 'force'], ['force']]);
  return { calibration: required(fitCalibration({ indicated: columns[0], reference: columns[1] })), indicates: measured[0] };
}

/** The calibration that a flag names, read once for all files of a call. */
function readOnce(file: string): () => Promise<ChannelCalibration> {
  let read: Promise<ChannelCalibration> | undefined;
  return () => (read ??= calibrationOf(file));
}

/** What a test says of how its force was made, with the doubts about its calibration. */
export const forceMadeBy = async ({
  calibration,
}: Pick<CalibrationFlags, 'calibration'>): Promise<Pick<TestInfo, 'calibratedForces' | 'findings'>> => {
  if (calibration === undefined) return {};
  const { calibration: fitted } = await calibration();
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

/** The record with its force by the calibration, from pressure or from what a force channel indicated. */
export function byCalibration(
  record: ReadResult['record'],
  { calibration, indicates }: ChannelCalibration,
  beyond: number | undefined,
): TensionRecord {
  const { pressure, force, ...others } = record as TensionRecord & PressureRecord;
  const holds = 'pressure' in record ? 'stress' : 'force';
  if (indicates !== undefined && indicates !== holds)
    throw usage(
      `--calibration is of ${holds === 'force' ? 'a pressure, and the file holds force' : 'a force, and the file holds pressure'}`,
    );
  return { force: calibrated(calibration, holds === 'stress' ? pressure : force, beyond), ...others };
}

/** Adds the flags of the calibration. */
export const withCalibrationFlags = (command: Command): Command =>
  command
    .option(
      '--calibration <file>',
      'two columns of text: what the channel indicated (pressure or force) and reference force, in the units of their heading, else MPa or N, and N; idle readings below it go along its slope down to zero',
      readOnce,
    )
    .addOption(
      numberOption('--calibration-beyond <share>', 'how far beyond the calibrated readings, as a share of their span: 0 to 0.1; default 0'),
    );
