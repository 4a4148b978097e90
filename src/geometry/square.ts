import type { Section } from '../base/index.js';
import { section, type Readings } from './readings.js';

/** Measured dimensions of a square test piece. */
export interface SquareDimensions {
  /** Side a [mm]. */
  readonly side: Readings;
}

/**
 * Section properties of a square test piece.
 *
 * $$ S_0 = a^2, \qquad I = \frac{a^4}{12}, \qquad W = \frac{a^3}{6} $$
 *
 * @remarks
 * Bending about an axis parallel to a side.
 *
 * @param dimensions - `side` a [mm]; finite and above 0, one reading or several in order along the piece.
 * @returns Area [mm²], second moment of area [mm⁴], section modulus [mm³].
 * @throws {@link InputError} `missing`, `wrong-type`, `empty`, `not-finite`, `not-positive`, `unknown-option`.
 *
 * @example
 * ```ts
 * square({ side: 8 }).area; // => 64
 * ```
 *
 * @see ISO 6892-1:2019, original cross-sectional area; elementary mechanics. Checked in `test/handbook/sections.test.ts`.
 */
export function square(dimensions: SquareDimensions): Section {
  return section('square', 'square', dimensions, ['side'], ({ side: a }) => ({
    area: a ** 2,
    secondMoment: a ** 4 / 12,
    sectionModulus: a ** 3 / 6,
  }));
}
