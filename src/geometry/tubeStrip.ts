import { InputError, type Section } from '../base/index.js';
import { section, type Readings } from './readings.js';

/** Measured dimensions of a longitudinal strip cut from a tube. */
export interface TubeStripDimensions {
  /** Width b of the strip [mm], at most the inner diameter. */
  readonly width: Readings;
  /** Outer diameter D of the tube [mm]. */
  readonly outerDiameter: Readings;
  /** Wall thickness a [mm], less than half of the outer diameter. */
  readonly wallThickness: Readings;
}

/**
 * Section properties of a longitudinal strip cut from a tube.
 *
 * $$ S_0 = g(D) - g(D - 2a), \qquad g(x) = \frac b4 \sqrt{x^2 - b^2} + \frac{x^2}{4} \arcsin \frac bx $$
 *
 * @remarks
 * The strip lies between two arcs; this is exact for every width. The short forms of the standard, for $b/D < 0.25$ and $< 0.10$, are not needed.
 *
 * @param dimensions - `width` b, `outerDiameter` D and `wallThickness` a [mm]; finite and above 0, one reading or several in order along the piece.
 * @returns Area [mm²].
 * @throws {@link InputError} `missing`, `wrong-type`, `empty`, `not-finite`, `not-positive`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * tubeStrip({ width: 12.5, outerDiameter: 60.3, wallThickness: 3.2 }).area; // => 40.32767
 * ```
 *
 * @see ISO 6892-1:2019, original cross-sectional area; Annex E (strips cut from tubes). Checked in `test/handbook/sections.test.ts`.
 */
export function tubeStrip(dimensions: TubeStripDimensions): Section {
  return section(
    'tube-strip',
    'tubeStrip',
    dimensions,
    ['width', 'outerDiameter', 'wallThickness'],
    ({ width: b, outerDiameter: D, wallThickness: a }) => {
      const inner = D - 2 * a;
      if (inner <= 0)
        throw new InputError('tubeStrip', 'wallThickness', 'out-of-range', `must be below half of outerDiameter (${D / 2})`, a);
      if (b > inner) throw new InputError('tubeStrip', 'width', 'out-of-range', `must be at most the inner diameter (${inner})`, b);
      const under = (x: number): number => (b / 4) * Math.sqrt(x ** 2 - b ** 2) + (x ** 2 / 4) * Math.asin(b / x);
      return { area: under(D) - under(inner) };
    },
  );
}
