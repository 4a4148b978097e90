import { requireOptions, requirePositive } from '../base/index.js';
import { transmitterPressure, type TransmitterPressure } from './transmitter.js';

/** A pressure transmitter with a current loop. */
export interface CurrentLoop {
  /** Pressure at 20 mA [MPa]. */
  readonly fullScale: number;
}

/**
 * Pressure from the current of a 4-20 mA transmitter.
 *
 * $$ p = p_{FS} \frac{I - 4}{16} $$
 *
 * @remarks
 * Below 3.6 mA (a broken wire gives 0) or above 21 mA no working transmitter sends: such stretches are listed as faults, and the
 * pressure ends before the first of them. A little below 4 mA is a small negative pressure, not a fault.
 *
 * @param current - Current [mA], sample by sample.
 * @param loop - `fullScale` [MPa] above 0.
 * @returns Pressure [MPa] up to the first fault, and the faults as first and last samples.
 * @throws {@link InputError} `missing`, `not-finite`, `not-positive`, `empty`, `unknown-option`.
 *
 * @example
 * ```ts
 * currentToPressure([4, 12, 20, 0], { fullScale: 25 }).pressure; // => [0, 12.5, 25]
 * currentToPressure([4, 12, 20, 0], { fullScale: 25 }).faults; // => [[3, 3]]
 * ```
 *
 * @see Current loop 4-20 mA with fault limits of 3.6 and 21 mA: common practice of the process industry. Checked in `test/handbook/hydraulics.test.ts`.
 */
export function currentToPressure(current: ArrayLike<number>, loop: CurrentLoop): TransmitterPressure {
  const from = 'currentToPressure';
  requireOptions(from, loop, ['fullScale'], 'loop');
  const fullScale = requirePositive(from, 'fullScale', loop.fullScale);
  return transmitterPressure(from, 'current', current, { low: 4, high: 20, fullScale, least: 3.6, most: 21 });
}
