import { requireOptions, requirePositive } from '../base/index.js';
import { SAME_LENGTH } from './gaugeLengthRule.js';

/** A gauge length to be marked in whole steps of 5 mm. */
export interface RoundedLengthInput {
  /** Proportional gauge length [mm]. */
  readonly gaugeLength: number;
}

/**
 * A gauge length rounded to the nearest 5 mm, where that moves it by less than 10 %.
 *
 * $$ L_0' = 5 \left\lfloor \frac{L_0}{5} + \tfrac12 \right\rfloor \quad\text{if}\quad \left| \frac{L_0'}{L_0} - 1 \right| < 0.1 $$
 *
 * @remarks
 * Otherwise the length stays as it is.
 *
 * @param input - `gaugeLength` [mm] above 0.
 * @returns Gauge length [mm].
 * @throws {@link InputError} `missing`, `not-finite`, `not-positive`, `unknown-option`.
 *
 * @example
 * ```ts
 * roundedGaugeLength({ gaugeLength: 34.599 }); // => 35
 * ```
 *
 * @see ISO 6892-1:2019, marking the original gauge length (from memory). Checked in `test/handbook/lengths.test.ts`.
 */
export function roundedGaugeLength(input: RoundedLengthInput): number {
  requireOptions('roundedGaugeLength', input, ['gaugeLength'], 'input');
  const length = requirePositive('roundedGaugeLength', 'gaugeLength', input.gaugeLength);
  const whole = 5 * Math.round(length / 5);
  return Math.abs(whole / length - 1) < SAME_LENGTH ? whole : length;
}
