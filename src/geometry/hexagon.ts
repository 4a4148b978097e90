import type { Section } from '../base/index.js';
import { section, type Readings } from './readings.js';

/** Measured dimensions of a regular hexagonal bar. */
export interface HexagonDimensions {
  /** Width across flats f [mm]. */
  readonly acrossFlats: Readings;
}

/**
 * Section properties of a regular hexagonal bar.
 *
 * $$ S_0 = \frac{\sqrt 3}{2} f^2, \qquad I = \frac{5 \sqrt 3}{144} f^4, \qquad W_{flats} = \frac{2 I}{f}, \qquad W_{corner} = \frac{\sqrt 3\, I}{f} $$
 *
 * @remarks
 * The second moment is the same about every axis, the section modulus is not: to the flats it is larger than to the corners. Drawn bar has
 * rounded corners: its area is 0.5 to 1 % smaller (common practice).
 *
 * @param dimensions - `acrossFlats` f [mm]; finite and above 0, one reading or several in order along the piece.
 * @returns Area [mm²], second moment of area [mm⁴], section modulus to the flats and to the corners [mm³].
 * @throws {@link InputError} `missing`, `wrong-type`, `empty`, `not-finite`, `not-positive`, `unknown-option`.
 *
 * @example
 * ```ts
 * hexagon({ acrossFlats: 10 }).area; // => 86.6025
 * hexagon({ acrossFlats: 10 }).sectionModulusCorner; // => 104.167
 * ```
 *
 * @see Geometry of the regular hexagon. Checked in `test/handbook/sections.test.ts`.
 */
export function hexagon(dimensions: HexagonDimensions): Section {
  return section('hexagon', 'hexagon', dimensions, ['acrossFlats'], ({ acrossFlats: f }) => ({
    area: (Math.sqrt(3) / 2) * f ** 2,
    secondMoment: ((5 * Math.sqrt(3)) / 144) * f ** 4,
    sectionModulus: ((5 * Math.sqrt(3)) / 72) * f ** 3,
    sectionModulusCorner: (5 / 48) * f ** 3,
  }));
}
