import { requireOneOf } from '../base/index.js';
import { materialFamilies, type MaterialFamily, type MaterialFamilyKey } from './materialFamilies.js';

/** @internal A family by its key, wherever the key stands. */
export function requireFamily(from: string, path: string, key: unknown): MaterialFamily {
  const known = requireOneOf(
    from,
    path,
    key,
    materialFamilies.map((family) => family.key),
  );
  return materialFamilies.find((family) => family.key === known)!;
}

/**
 * A family of metals by its key: usual ranges of modulus, strengths, elongation and exponent.
 *
 * $$ \lbrace E,\; R_{p0.2},\; R_m,\; A,\; n \rbrace \in [\text{low}, \text{high}] $$
 *
 * @remarks
 * For what a family is and is not, see {@link materialFamilies}.
 *
 * @param key - Key of the family, such as `structural-steel`.
 * @returns The family: ranges in MPa, and as ratios; density in g/cm³.
 * @throws {@link InputError} `out-of-range` for a key that is not known, with all that are.
 *
 * @example
 * ```ts
 * materialFamily('brass').modulus; // => [95000, 115000]
 * ```
 *
 * @see Usual ranges from memory. Checked in `test/materials/materialFamily.test.ts`.
 */
export function materialFamily(key: MaterialFamilyKey): MaterialFamily {
  return requireFamily('materialFamily', 'key', key);
}
