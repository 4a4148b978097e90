import { requireOptions, requirePositive } from '../base/index.js';

/** Diameters of a compressed piece. */
export interface BarrelDiameters {
  /** Diameter at half of the height [mm]. */
  readonly middleDiameter: number;
  /** Diameter at the ends [mm], mean of both. */
  readonly endDiameter: number;
}

/**
 * How much a compressed piece has barrelled: its diameter in the middle over that at the ends.
 *
 * $$ \beta = \frac{d_{mid}}{d_{end}} $$
 *
 * @remarks
 * 1 without friction. Above about 1.05 (common practice) the stress holds a good part of friction: lubricate anew in steps, or give the
 * stress only up to the strain where the barrel shows.
 *
 * @param diameters - `middleDiameter` and `endDiameter` [mm], above 0.
 * @returns Ratio [1].
 * @throws {@link InputError} `missing`, `not-finite`, `not-positive`, `unknown-option`.
 *
 * @example
 * ```ts
 * bulgeRatio({ middleDiameter: 11.6, endDiameter: 11.0 }); // => 1.0545
 * ```
 *
 * @see Common practice of compression tests. Checked in `test/handbook/compression.test.ts`.
 */
export function bulgeRatio(diameters: BarrelDiameters): number {
  const from = 'bulgeRatio';
  requireOptions(from, diameters, ['middleDiameter', 'endDiameter'], 'diameters');
  return requirePositive(from, 'middleDiameter', diameters.middleDiameter) / requirePositive(from, 'endDiameter', diameters.endDiameter);
}
