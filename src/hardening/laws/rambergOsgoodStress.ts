import { requireFinite } from '../../base/index.js';
import { requireRambergOsgood, type RambergOsgoodParameters } from './rambergOsgoodStrain.js';

/**
 * Stress of a Ramberg-Osgood curve at a strain.
 *
 * $$ \sigma: \quad \frac{\sigma}{E} + \varepsilon_0 \left( \frac{\sigma}{\sigma_0} \right)^n = \varepsilon $$
 *
 * @remarks
 * The strain rises and curves upwards with stress, so Newton's steps from above never overshoot; the result is good to the last digits.
 *
 * @param parameters - `modulus` [MPa], `proofStress` [MPa], `exponent`, `offset` [mm/mm], above 0.
 * @param strain - Strain [mm/mm].
 * @returns Stress [MPa].
 * @throws {@link InputError} `missing`, `not-finite`, `not-positive`, `unknown-option`.
 *
 * @example
 * ```ts
 * rambergOsgoodStress({ modulus: 70000, proofStress: 300, exponent: 10 }, 0.005); // => 279.936
 * ```
 *
 * @see Ramberg and Osgood, NACA TN 902 (1943). Checked in `test/handbook/ramberg-osgood.test.ts`.
 */
export function rambergOsgoodStress(parameters: RambergOsgoodParameters, strain: number): number {
  const from = 'rambergOsgoodStress';
  const { modulus, proofStress, exponent, offset } = requireRambergOsgood(from, parameters);
  const wanted = Math.abs(requireFinite(from, 'strain', strain));
  if (wanted === 0) return 0;
  // each part alone would give at least the stress sought
  let stress = Math.min(wanted * modulus, proofStress * (wanted / offset) ** (1 / exponent));
  for (let step = 0; step < 200; step += 1) {
    const plastic = offset * (stress / proofStress) ** exponent;
    const next = stress - (stress / modulus + plastic - wanted) / (1 / modulus + (exponent * plastic) / stress);
    if (Math.abs(next - stress) <= 1e-15 * stress) break;
    stress = next;
  }
  return Math.sign(strain) * stress;
}
