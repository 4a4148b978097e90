import { requireOptions, requirePositive } from '../base/index.js';

/** A gauge length and the section that it stands on. */
export interface CoefficientInput {
  /** Gauge length L0 [mm]. */
  readonly gaugeLength: number;
  /** Original cross-sectional area S0 [mm²]. */
  readonly area: number;
}

/**
 * Coefficient of proportionality of a gauge length.
 *
 * $$ k = \frac{L_0}{\sqrt{S_0}} $$
 *
 * @remarks
 * 5.65 for a proportional test piece; elongations compare only between equal coefficients.
 *
 * @param input - `gaugeLength` [mm] and `area` [mm²], above 0.
 * @returns Coefficient k [1].
 * @throws {@link InputError} `missing`, `not-finite`, `not-positive`, `unknown-option`.
 *
 * @example
 * ```ts
 * proportionalityCoefficient({ gaugeLength: 50, area: 78.53982 }); // => 5.6419
 * ```
 *
 * @see ISO 6892-1:2019, original gauge length. Checked in `test/handbook/lengths.test.ts`.
 */
export function proportionalityCoefficient(input: CoefficientInput): number {
  const from = 'proportionalityCoefficient';
  requireOptions(from, input, ['gaugeLength', 'area'], 'input');
  return requirePositive(from, 'gaugeLength', input.gaugeLength) / Math.sqrt(requirePositive(from, 'area', input.area));
}
