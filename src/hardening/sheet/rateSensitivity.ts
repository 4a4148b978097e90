import { InputError, requireOptions, requirePositive } from '../../base/index.js';

/** Flow stresses at two strain rates and the same strain: of two tests, or on either side of a jump of the rate. */
export interface TwoRates {
  /** Stress at the first rate [MPa]. */
  readonly stress: number;
  /** First strain rate [1/s]. */
  readonly strainRate: number;
  /** Stress at the other rate [MPa]. */
  readonly otherStress: number;
  /** Other strain rate [1/s]. */
  readonly otherStrainRate: number;
}

/**
 * Strain-rate sensitivity m.
 *
 * $$ m = \frac{\ln (\sigma_2 / \sigma_1)}{\ln (\dot\varepsilon_2 / \dot\varepsilon_1)} $$
 *
 * @remarks
 * Rates of a hand drive lie too close together as a rule: a factor of ten is wanted, since an error of 1 % in the stresses is one of 0.004 in m at a
 * factor of ten, and of 0.014 at two.
 *
 * @param rates - Two stresses [MPa] and two strain rates [1/s], above 0; the rates different.
 * @returns m [1].
 * @throws {@link InputError} `missing`, `not-finite`, `not-positive`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * rateSensitivity({ stress: 300, strainRate: 0.001, otherStress: 306, otherStrainRate: 0.01 }); // => 0.0086002
 * ```
 *
 * @see Textbooks of mechanical metallurgy. Checked in `test/handbook/sheet.test.ts`.
 */
export function rateSensitivity(rates: TwoRates): number {
  const from = 'rateSensitivity';
  requireOptions(from, rates, ['stress', 'strainRate', 'otherStress', 'otherStrainRate'], 'rates');
  const one = requirePositive(from, 'rates.strainRate', rates.strainRate);
  const other = requirePositive(from, 'rates.otherStrainRate', rates.otherStrainRate);
  if (one === other) throw new InputError(from, 'rates.otherStrainRate', 'out-of-range', 'must differ from strainRate', other);
  const stress = requirePositive(from, 'rates.stress', rates.stress);
  return Math.log(requirePositive(from, 'rates.otherStress', rates.otherStress) / stress) / Math.log(other / one);
}
