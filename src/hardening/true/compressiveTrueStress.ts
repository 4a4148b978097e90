import { requireFinite, requireOptions, requirePositive } from '../../base/index.js';

/** A compressed piece under its force; compression counts positive. */
export interface CompressedPiece {
  /** Force F [N]. */
  readonly force: number;
  /** Original area S0 [mm²]. */
  readonly area: number;
  /** Original height h0 [mm]. */
  readonly originalHeight: number;
  /** Present height h [mm]. */
  readonly height: number;
}

/**
 * True stress of a compressed piece.
 *
 * $$ \sigma = \frac{F h}{S_0 h_0} $$
 *
 * @remarks
 * By constancy of volume, of a piece that stays a prism. It is the mean pressure on the ends and holds their friction: see
 * `siebelCorrection`. Compression counts positive.
 *
 * @param piece - `force` [N], `area` [mm²], `originalHeight` and `height` [mm], above 0.
 * @returns True stress [MPa].
 * @throws {@link InputError} `missing`, `not-finite`, `not-positive`, `unknown-option`.
 *
 * @example
 * ```ts
 * compressiveTrueStress({ force: 40000, area: 78.53982, originalHeight: 15, height: 12 }); // => 407.437
 * ```
 *
 * @see ASTM E9; textbooks. Checked in `test/handbook/compression.test.ts`.
 */
export function compressiveTrueStress(piece: CompressedPiece): number {
  const from = 'compressiveTrueStress';
  requireOptions(from, piece, ['force', 'area', 'originalHeight', 'height'], 'piece');
  const share = requirePositive(from, 'height', piece.height) / requirePositive(from, 'originalHeight', piece.originalHeight);
  return (requireFinite(from, 'force', piece.force) * share) / requirePositive(from, 'area', piece.area);
}
