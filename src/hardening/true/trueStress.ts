import { InputError, requireFinite } from '../../base/index.js';

/**
 * True stress from engineering stress and strain, up to the maximum force.
 *
 * $$ \sigma = R\,(1 + e) $$
 *
 * @remarks
 * By constancy of volume, while the piece deforms evenly: not in the elastic part to the last per mille, not after the neck has begun.
 *
 * @param stress - Engineering stress R [MPa].
 * @param strain - Engineering strain e [mm/mm], above -1.
 * @returns True stress [MPa].
 * @throws {@link InputError} `missing`, `not-finite`, `out-of-range`.
 *
 * @example
 * ```ts
 * trueStress(400, 0.2); // => 480
 * ```
 *
 * @see ASTM E646; textbooks. Checked in `test/handbook/hardening.test.ts`.
 */
export function trueStress(stress: number, strain: number): number {
  requireFinite('trueStress', 'stress', stress);
  if (requireFinite('trueStress', 'strain', strain) <= -1)
    throw new InputError('trueStress', 'strain', 'out-of-range', 'must be above -1', strain);
  return stress * (1 + strain);
}
