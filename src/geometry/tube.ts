import { InputError, type Section } from '../base/index.js';
import { section, type Readings } from './readings.js';

/** Measured dimensions of a full tube. */
export interface TubeDimensions {
  /** Outer diameter D [mm]. */
  readonly outerDiameter: Readings;
  /** Wall thickness a [mm], at most half of the outer diameter. */
  readonly wallThickness: Readings;
}

/**
 * Section properties of a full tube.
 *
 * $$ S_0 = \pi a (D - a), \qquad I = \frac{\pi (D^4 - (D - 2a)^4)}{64}, \qquad W = \frac{2 I}{D} $$
 *
 * @remarks
 * Walls are often eccentric: take the mean of four readings. Plug the ends where the grips hold.
 *
 * @param dimensions - `outerDiameter` D and `wallThickness` a [mm]; finite and above 0, one reading or several in order along the piece.
 * @returns Area [mm²], second moment of area [mm⁴], section modulus [mm³].
 * @throws {@link InputError} `missing`, `wrong-type`, `empty`, `not-finite`, `not-positive`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * tube({ outerDiameter: 20, wallThickness: 2 }).area; // => 113.097
 * ```
 *
 * @see ISO 6892-1:2019, original cross-sectional area; Annex E (tubes). Checked in `test/handbook/sections.test.ts`.
 */
export function tube(dimensions: TubeDimensions): Section {
  return section('tube', 'tube', dimensions, ['outerDiameter', 'wallThickness'], ({ outerDiameter: D, wallThickness: a }) => {
    if (a > D / 2) throw new InputError('tube', 'wallThickness', 'out-of-range', `must be at most half of outerDiameter (${D / 2})`, a);
    const secondMoment = (Math.PI * (D ** 4 - (D - 2 * a) ** 4)) / 64;
    return { area: Math.PI * a * (D - a), secondMoment, sectionModulus: (2 * secondMoment) / D };
  });
}
