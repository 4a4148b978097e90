import { requireOptions, requirePositive, requireWhole } from '../base/index.js';

/** A force reading in steps. */
export interface SteppedForce {
  /** Force at full scale [N]. */
  readonly fullScale: number;
  /** Number of bits of the reading. */
  readonly bits: number;
}

/** What the steps of a force reading allow. */
export interface ForceResolution {
  /** One step r [N]. */
  readonly step: number;
  /** Least force at which the step is 0.5 % of it, the limit of class 1: 200 r [N]. */
  readonly leastForceClass1: number;
}

/**
 * Step of a digital force reading, and the least force that class 1 allows with it.
 *
 * $$ r = \frac{F_{FS}}{2^b - 1}, \qquad F_{min} = 200\, r $$
 *
 * @remarks
 * From the definition of the relative resolution $a = 100\, r / F \le 0.5$ % of class 1 (ISO 7500-1, from memory).
 *
 * @param reading - `fullScale` [N] above 0; `bits`, a whole number from 1 to 32.
 * @returns Step [N] and least force [N].
 * @throws {@link InputError} `missing`, `not-finite`, `not-positive`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * forceResolution({ fullScale: 25000, bits: 12 }).step; // => 6.1050
 * forceResolution({ fullScale: 25000, bits: 12 }).leastForceClass1; // => 1221.0
 * ```
 *
 * @see ISO 7500-1, resolution of the force indicator. Checked in `test/handbook/hydraulics.test.ts`.
 */
export function forceResolution(reading: SteppedForce): ForceResolution {
  const from = 'forceResolution';
  requireOptions(from, reading, ['fullScale', 'bits'], 'reading');
  const fullScale = requirePositive(from, 'fullScale', reading.fullScale);
  const bits = requireWhole(from, 'bits', reading.bits, 1, 32);
  const step = fullScale / (2 ** bits - 1);
  return { step, leastForceClass1: 200 * step };
}
