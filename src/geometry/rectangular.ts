import type { Section } from '../base/index.js';
import { section, type Readings } from './readings.js';

/** Measured dimensions of a rectangular test piece. */
export interface RectangularDimensions {
  /** Width b [mm]. */
  readonly width: Readings;
  /** Thickness a [mm], the dimension in the direction of a bending load. */
  readonly thickness: Readings;
}

/**
 * Section properties of a rectangular test piece.
 *
 * $$ S_0 = a b, \qquad I = \frac{b a^3}{12}, \qquad W = \frac{b a^2}{6} $$
 *
 * @remarks
 * Rolled strip has rounded edges: its true area is a little smaller.
 *
 * @param dimensions - `width` b and `thickness` a [mm]; finite and above 0, one reading or several in order along the piece.
 * @returns Area [mm²], second moment of area [mm⁴] and section modulus [mm³] for bending in the direction of the thickness.
 * @throws {@link InputError} `missing`, `wrong-type`, `empty`, `not-finite`, `not-positive`, `unknown-option`.
 *
 * @example
 * ```ts
 * rectangular({ width: 11, thickness: 5.3 }).secondMoment; // => 136.471
 * ```
 *
 * @see ISO 6892-1:2019, original cross-sectional area; elementary mechanics. Checked in `test/handbook/sections.test.ts`.
 */
export function rectangular(dimensions: RectangularDimensions): Section {
  return section('rectangular', 'rectangular', dimensions, ['width', 'thickness'], ({ width: b, thickness: a }) => ({
    area: a * b,
    secondMoment: (b * a ** 3) / 12,
    sectionModulus: (b * a ** 2) / 6,
  }));
}
