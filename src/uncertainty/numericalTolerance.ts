import { requireNonNegative, requireWhole } from '../base/index.js';

/**
 * Numerical tolerance of an uncertainty: half of the last digit that is worth stating.
 *
 * $$ u = c \times 10^l, \qquad \delta = \tfrac12\, 10^l $$
 *
 * @remarks
 * c is a whole number of one digit, or of two where two are worth stating.
 *
 * @param uncertainty - Standard uncertainty, 0 or more.
 * @param digits - Digits worth stating, 1 to 8; default 2.
 * @returns δ, in the unit of the uncertainty; 0 of 0.
 * @throws {@link InputError} `missing`, `not-finite`, `out-of-range`.
 *
 * @example
 * ```ts
 * numericalTolerance(0.00035); // => 0.000005
 * numericalTolerance(1, 1); // => 0.5
 * ```
 *
 * @see JCGM 101:2008, numerical tolerance. Checked in `test/handbook/uncertainty.test.ts`.
 */
export function numericalTolerance(uncertainty: number, digits = 2): number {
  const u = requireNonNegative('numericalTolerance', 'uncertainty', uncertainty);
  requireWhole('numericalTolerance', 'digits', digits, 1, 8);
  if (u === 0) return 0;
  // rounded to its digits first: 0.0996 to two of them is 0.10
  const power = Number(u.toExponential(digits - 1).split('e')[1]);
  return 0.5 * 10 ** (power - digits + 1);
}
