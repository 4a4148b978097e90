import { InputError, requireOptions, requirePositive } from '../../base/index.js';

/** Stresses at which two secants meet a curve. */
export interface TwoSecants {
  /** Modulus E [MPa]; the true one: not of crosshead travel. */
  readonly modulus: number;
  /** Stress where the secant of 0.7 E meets the curve [MPa]. */
  readonly stress70: number;
  /** Stress where the secant of 0.85 E meets the curve [MPa]. */
  readonly stress85: number;
}

/** The curve in the form with secants. */
export interface SecantForm {
  /** Modulus E [MPa]. */
  readonly modulus: number;
  /** Stress of the 0.7 E secant σ0.7 [MPa]. */
  readonly stress70: number;
  /** Exponent n [1]. */
  readonly exponent: number;
}

/**
 * Ramberg-Osgood exponent from two secants.
 *
 * $$ \varepsilon = \frac{\sigma}{E} + \frac37 \frac{\sigma_{0.7}}{E} \left( \frac{\sigma}{\sigma_{0.7}} \right)^n, \qquad
 * n = 1 + \frac{\ln(17/7)}{\ln(\sigma_{0.7} / \sigma_{0.85})} $$
 *
 * @remarks
 * The original form; it needs the true modulus, so crosshead travel with the frame in it will not do.
 *
 * @param secants - `modulus`, `stress70`, `stress85` [MPa], above 0; `stress70` above `stress85`.
 * @returns Modulus [MPa], σ0.7 [MPa] and exponent [1].
 * @throws {@link InputError} `missing`, `not-finite`, `not-positive`, `unknown-option`; `out-of-range` where the stresses do not rise.
 *
 * @example
 * ```ts
 * rambergOsgoodFromSecants({ modulus: 70000, stress70: 297.175, stress85: 269.274 }).exponent; // => 10.000
 * ```
 *
 * @see Ramberg and Osgood, NACA TN 902 (1943). Checked in `test/handbook/ramberg-osgood.test.ts`.
 */
export function rambergOsgoodFromSecants(secants: TwoSecants): SecantForm {
  const from = 'rambergOsgoodFromSecants';
  requireOptions(from, secants, ['modulus', 'stress70', 'stress85'], 'secants');
  const modulus = requirePositive(from, 'modulus', secants.modulus);
  const stress70 = requirePositive(from, 'stress70', secants.stress70);
  const stress85 = requirePositive(from, 'stress85', secants.stress85);
  if (stress70 <= stress85) throw new InputError(from, 'stress70', 'out-of-range', `must be above stress85 (${stress85})`, stress70);
  return { modulus, stress70, exponent: 1 + Math.log(17 / 7) / Math.log(stress70 / stress85) };
}
