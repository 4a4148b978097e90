import { InputError, requireFinite } from '../../base/index.js';

/**
 * True (logarithmic) strain from engineering strain, up to the maximum force.
 *
 * $$ \varepsilon = \ln(1 + e) $$
 *
 * @remarks
 * Assumes even deformation. After the neck has begun only the area tells the strain: see `trueFractureStrain`.
 *
 * @param strain - Engineering strain e [mm/mm], above -1.
 * @returns True strain [mm/mm].
 * @throws {@link InputError} `missing`, `not-finite`, `out-of-range`.
 *
 * @example
 * ```ts
 * trueStrain(0.2); // => 0.18232
 * ```
 *
 * @see ASTM E646; textbooks. Checked in `test/handbook/hardening.test.ts`.
 */
export function trueStrain(strain: number): number {
  if (requireFinite('trueStrain', 'strain', strain) <= -1)
    throw new InputError('trueStrain', 'strain', 'out-of-range', 'must be above -1', strain);
  return Math.log1p(strain);
}
