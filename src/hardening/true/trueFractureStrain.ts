import { InputError, requireOptions, requirePositive } from '../../base/index.js';

/** Areas of the section before and after. */
export interface FractureAreas {
  /** Original area S0 [mm²]. */
  readonly originalArea: number;
  /** Least area after fracture Su [mm²], not above the original. */
  readonly finalArea: number;
}

/**
 * True strain at fracture, from the areas.
 *
 * $$ \varepsilon_f = \ln \frac{S_0}{S_u} = -\ln(1 - Z) $$
 *
 * @remarks
 * Valid at any strain, the neck included.
 *
 * @param areas - `originalArea` and `finalArea` [mm²], above 0.
 * @returns True strain [mm/mm].
 * @throws {@link InputError} `missing`, `not-finite`, `not-positive`, `unknown-option`, `out-of-range`.
 *
 * @example
 * ```ts
 * trueFractureStrain({ originalArea: 128.680, finalArea: 89.920 }); // => 0.35841
 * ```
 *
 * @see Textbooks, for example Dieter, Mechanical Metallurgy. Checked in `test/handbook/hardening.test.ts`.
 */
export function trueFractureStrain(areas: FractureAreas): number {
  const from = 'trueFractureStrain';
  requireOptions(from, areas, ['originalArea', 'finalArea'], 'areas');
  const original = requirePositive(from, 'originalArea', areas.originalArea);
  const final = requirePositive(from, 'finalArea', areas.finalArea);
  if (final > original) throw new InputError(from, 'finalArea', 'out-of-range', `must not be above originalArea (${original})`, final);
  return Math.log(original / final);
}
