import { requireNonNegative, requireOptions } from '../../base/index.js';

/** Plastic strain ratios in three directions of a sheet. */
export interface DirectionalRatios {
  /** r along the rolling direction [1]. */
  readonly along: number;
  /** r at 45° to it [1]. */
  readonly diagonal: number;
  /** r across it [1]. */
  readonly across: number;
}

/** Average and planar anisotropy. */
export interface SheetAnisotropy {
  /** Weighted average r̄ [1]: resistance to thinning. */
  readonly average: number;
  /** Planar anisotropy Δr [1]: how much it differs by direction; it makes ears in a drawn cup. */
  readonly planar: number;
}

/**
 * Weighted average of the plastic strain ratio and its planar anisotropy.
 *
 * $$ \bar r = \frac{r_0 + 2 r_{45} + r_{90}}{4}, \qquad \Delta r = \frac{r_0 + r_{90} - 2 r_{45}}{2} $$
 *
 * @remarks
 * The three ratios must have been measured at the same strain.
 *
 * @param ratios - `along`, `diagonal`, `across` the rolling direction [1], each 0 or more.
 * @returns Average [1] and planar anisotropy [1].
 * @throws {@link InputError} `missing`, `not-finite`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * averageStrainRatio({ along: 1.85, diagonal: 1.32, across: 2.1 }).average; // => 1.6475
 * averageStrainRatio({ along: 1.85, diagonal: 1.32, across: 2.1 }).planar; // => 0.655
 * ```
 *
 * @see ISO 10113; ASTM E517. Checked in `test/handbook/sheet.test.ts`.
 */
export function averageStrainRatio(ratios: DirectionalRatios): SheetAnisotropy {
  const from = 'averageStrainRatio';
  requireOptions(from, ratios, ['along', 'diagonal', 'across'], 'ratios');
  const along = requireNonNegative(from, 'ratios.along', ratios.along);
  const diagonal = requireNonNegative(from, 'ratios.diagonal', ratios.diagonal);
  const across = requireNonNegative(from, 'ratios.across', ratios.across);
  return { average: (along + 2 * diagonal + across) / 4, planar: (along + across - 2 * diagonal) / 2 };
}
