import { InputError, requireOptions, requirePositive } from '../base/index.js';

/** Areas before and after. */
export interface ReductionInput {
  /** Original cross-sectional area S0 [mm²]. */
  readonly originalArea: number;
  /** Least cross-sectional area after fracture Su [mm²]; not above the original. */
  readonly finalArea: number;
}

/**
 * Reduction of area.
 *
 * $$ Z = \frac{S_0 - S_u}{S_0} $$
 *
 * @remarks
 * The final area is that of the narrowest place of the neck: two diameters at right angles, or width times thickness.
 *
 * @param input - `originalArea` and `finalArea` [mm²], above 0.
 * @returns Reduction [mm²/mm²]; times 100 it is the percentage of the standard.
 * @throws {@link InputError} `missing`, `not-finite`, `not-positive`, `unknown-option`; `out-of-range` where the section would have grown.
 *
 * @example
 * ```ts
 * reductionOfArea({ originalArea: 128.680, finalArea: 89.920 }); // => 0.3012
 * ```
 *
 * @see ISO 6892-1:2019, percentage reduction of area. Checked in `test/handbook/elongation.test.ts`.
 */
export function reductionOfArea(input: ReductionInput): number {
  const from = 'reductionOfArea';
  requireOptions(from, input, ['originalArea', 'finalArea'], 'input');
  const original = requirePositive(from, 'originalArea', input.originalArea);
  const final = requirePositive(from, 'finalArea', input.finalArea);
  if (final > original) throw new InputError(from, 'finalArea', 'out-of-range', `must not be above originalArea (${original})`, final);
  return (original - final) / original;
}
