import { requireColumn, requireOptions, requirePositive } from '../base/index.js';
import { pistonAreaOf, type Cylinder } from './pistonArea.js';

/** A transmitter specified in per cent of full scale. */
export interface FullScaleAccuracy extends Cylinder {
  /** Pressure at full scale [MPa]. */
  readonly fullScale: number;
  /** Accuracy as a share of full scale: 0.5 % is 0.005. */
  readonly accuracy: number;
  /** Forces at which the error is wanted as a share of the reading [N], for example those of yield and maximum; default none. */
  readonly forces?: ArrayLike<number> | undefined;
}

/** What that accuracy is in force. */
export interface FullScaleError {
  /** Error at every force [N]. */
  readonly force: number;
  /** Force from which the error is at most 1 % of the reading [N]. */
  readonly onePercentFrom: number;
  /** Error as a share of each force that was asked for [1]. */
  readonly ofReading?: Float64Array | undefined;
}

/**
 * Error of force of a transmitter that is specified in per cent of full scale.
 *
 * $$ \Delta F = a\, p_{FS}\, A, \qquad F_{1\,\%} = 100\, \Delta F, \qquad \frac{\Delta F}{F} $$
 *
 * @remarks
 * The classes of force verification are in per cent of the reading: a full-scale specification is good only near full scale.
 *
 * @param transmitter - `fullScale` [MPa], `accuracy` [1], `bore` and `rod` [mm], `forces` [N], above 0.
 * @returns Error [N], the force from which it is at most 1 % of the reading [N], and its share of each reading [1].
 * @throws {@link InputError} `missing`, `not-finite`, `not-positive`, `empty`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * fullScaleError({ fullScale: 25, accuracy: 0.005, bore: 40 }).force; // => 157.08
 * fullScaleError({ fullScale: 25, accuracy: 0.005, bore: 40, forces: [12566.37, 20106.19] }).ofReading; // => [0.0125, 0.0078125]
 * ```
 *
 * @see ISO 7500-1 (classes in per cent of the reading). Checked in `test/handbook/hydraulics.test.ts`.
 */
export function fullScaleError(transmitter: FullScaleAccuracy): FullScaleError {
  const from = 'fullScaleError';
  requireOptions(from, transmitter, ['fullScale', 'accuracy', 'bore', 'rod', 'forces'], 'transmitter');
  const force =
    requirePositive(from, 'accuracy', transmitter.accuracy) *
    requirePositive(from, 'fullScale', transmitter.fullScale) *
    pistonAreaOf(from, transmitter);
  const { forces } = transmitter;
  const ofReading = forces === undefined ? undefined : requireColumn(from, 'forces', forces, { positive: true }).map((F) => force / F);
  return { force, onePercentFrom: 100 * force, ...(ofReading ? { ofReading } : {}) };
}
