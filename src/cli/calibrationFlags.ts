import type { Command } from 'commander';
import { isInputError, type PressureRecord, type TensionRecord } from '../base/index.js';
import { applyCalibration, calibratedForces, type Calibration, type HydraulicChain } from '../force/index.js';
import type { TestInfo } from '../methods/index.js';
import type { ReadResult } from '../record/index.js';
import { calibrationFile, fittedFile, type FittedCalibration } from './calibrationFile.js';
import { numberOption, some } from './flags.js';
import { usage } from './usage.js';

/** Flags of the calibration of the force. */
export interface CalibrationFlags {
  /** Reads and fits the file that it names, the first time that it is asked. */
  readonly calibration?: () => Promise<FittedCalibration>;
  readonly calibrationBeyond?: number;
  readonly calibrationDate?: string;
}

/** The calibration that a flag names, read once for all files of a call. */
function readOnce(file: string): () => Promise<FittedCalibration> {
  let read: Promise<FittedCalibration> | undefined;
  return () => (read ??= calibrationFile(`--calibration ${file}`, file).then(fittedFile));
}

/** Flags of a cylinder, by which pressure becomes force. */
export interface CylinderFlags {
  readonly bore?: number;
  readonly rod?: number;
  readonly efficiency?: number;
  readonly tareForce?: number;
}

/** The cylinder that the flags describe. */
export const cylinderOf = ({ bore, rod, efficiency, tareForce }: CylinderFlags): HydraulicChain | undefined =>
  bore === undefined ? undefined : { bore, ...some('rod', rod), ...some('efficiency', efficiency), ...some('tareForce', tareForce) };

/** Flags that say how the force of a record is made. */
export type ForceFlags = Pick<CalibrationFlags, 'calibration' | 'calibrationDate'> & CylinderFlags;

/** What a test says of how its force was made, with the doubts about its calibration. */
export async function forceMadeBy(
  flags: ForceFlags,
): Promise<Pick<TestInfo, 'calibratedForces' | 'channelCalibration' | 'cylinder' | 'findings'>> {
  if (flags.calibration === undefined) return some('cylinder', cylinderOf(flags));
  const { name, calibration: fitted } = await flags.calibration();
  const { coefficients, span, points, findings } = fitted;
  return {
    calibratedForces: calibratedForces(fitted),
    channelCalibration: { name, ...some('date', flags.calibrationDate), coefficients, span, points },
    ...(findings.length > 0 ? { findings } : {}),
  };
}

/** Readings in their columns; one that the calibration does not hold is named by the flag. */
function calibrated(calibration: Calibration, readings: Float64Array, beyond: number | undefined, holds: 'stress' | 'force'): Float64Array {
  try {
    return applyCalibration(calibration, readings, { idle: true, ...some('beyond', beyond) });
  } catch (reason) {
    if (!isInputError(reason) || reason.code !== 'out-of-range') throw reason;
    if (reason.path === 'options.beyond') throw usage(`--calibration-beyond must be from 0 to 0.1, got ${String(beyond)}`);
    const [low, high] = calibration.span.map((x) => Number(x.toPrecision(6)));
    const unit = holds === 'stress' ? 'MPa' : 'N';
    const inBar = holds === 'stress' ? ` (${Number((10 * low!).toPrecision(6))} to ${Number((10 * high!).toPrecision(6))} bar)` : '';
    throw usage(
      `--calibration holds readings from ${low} to ${high} ${unit}${inBar}, and idle ones down to zero; the record has ${Number(Number(reason.received).toPrecision(6))} ${unit} (${reason.path.replace('indicated', 'sample ')}); --calibration-beyond allows up to a tenth of the span`,
    );
  }
}

/** The record with its force by the calibration, from pressure or from what a force channel indicated. */
export function byCalibration(
  record: ReadResult['record'],
  { calibration, indicates }: FittedCalibration,
  beyond: number | undefined,
): TensionRecord {
  const { pressure, force, ...others } = record as TensionRecord & PressureRecord;
  const holds = 'pressure' in record ? 'stress' : 'force';
  if (indicates !== undefined && (indicates === 'pressure') !== (holds === 'stress'))
    throw usage(
      `--calibration is of ${holds === 'force' ? 'a pressure, and the file holds force' : 'a force, and the file holds pressure'}`,
    );
  return { force: calibrated(calibration, holds === 'stress' ? pressure : force, beyond, holds), ...others };
}

/** Adds the flags of the calibration. */
export const withCalibrationFlags = (command: Command): Command =>
  command
    .option(
      '--calibration <file>',
      'table of text: what the channel indicated (pressure or force), then the reference force, or several runs of it, in the units of their heading, else MPa or N, and N; or the JSON of testpiece calibrate; idle readings below it go along its slope down to zero',
      readOnce,
    )
    .addOption(
      numberOption('--calibration-beyond <share>', 'how far beyond the calibrated readings, as a share of their span: 0 to 0.1; default 0'),
    )
    .option('--calibration-date <day>', 'day of the calibration, as 2026-03-31');
