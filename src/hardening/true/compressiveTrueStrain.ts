import { requireOptions, requirePositive } from '../../base/index.js';

/** Heights of a compressed piece. */
export interface CompressedHeights {
  /** Original height h0 [mm]. */
  readonly originalHeight: number;
  /** Present height h [mm]. */
  readonly height: number;
}

/**
 * True (logarithmic) strain of a compressed piece.
 *
 * $$ \varepsilon = \ln \frac{h_0}{h} $$
 *
 * @remarks
 * Compression counts positive. At the same true strain a metal that hardens alike in both directions has the same true stress in
 * tension and in compression.
 *
 * @param heights - `originalHeight` and `height` [mm], above 0.
 * @returns True strain [mm/mm].
 * @throws {@link InputError} `missing`, `not-finite`, `not-positive`, `unknown-option`.
 *
 * @example
 * ```ts
 * compressiveTrueStrain({ originalHeight: 15, height: 12 }); // => 0.223144
 * ```
 *
 * @see ASTM E9; textbooks. Checked in `test/handbook/compression.test.ts`.
 */
export function compressiveTrueStrain(heights: CompressedHeights): number {
  const from = 'compressiveTrueStrain';
  requireOptions(from, heights, ['originalHeight', 'height'], 'heights');
  return Math.log(requirePositive(from, 'originalHeight', heights.originalHeight) / requirePositive(from, 'height', heights.height));
}
