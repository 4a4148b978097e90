import type { Section } from '../base/index.js';
import { section, type Readings } from './readings.js';

/** Measured dimensions of a solid round test piece. */
export interface RoundDimensions {
  /** Diameter d [mm]. */
  readonly diameter: Readings;
}

/**
 * Section properties of a solid round test piece.
 *
 * $$ S_0 = \frac{\pi d^2}{4}, \qquad I = \frac{\pi d^4}{64}, \qquad W = \frac{\pi d^3}{32} $$
 *
 * @remarks
 * A relative error $u$ in $d$ gives $2u$ in $S_0$. For a slightly oval bar give the mean of two diameters at right angles. Several readings:
 * the area is the mean of the section areas.
 *
 * @param dimensions - `diameter` d [mm]; finite and above 0, one reading or several in order along the piece.
 * @returns Area [mm²], second moment of area [mm⁴], section modulus [mm³].
 * @throws {@link InputError} `missing`, `wrong-type`, `empty`, `not-finite`, `not-positive`, `unknown-option`.
 *
 * @example
 * ```ts
 * round({ diameter: 10 }).area; // => 78.5398
 * round({ diameter: [7.99, 8.0, 8.01] }).area; // => 50.2655
 * ```
 *
 * @see ISO 6892-1:2019, original cross-sectional area; elementary mechanics. Checked in `test/handbook/sections.test.ts`.
 */
export function round(dimensions: RoundDimensions): Section {
  return section('round', 'round', dimensions, ['diameter'], ({ diameter: d }) => ({
    area: (Math.PI * d ** 2) / 4,
    secondMoment: (Math.PI * d ** 4) / 64,
    sectionModulus: (Math.PI * d ** 3) / 32,
  }));
}
