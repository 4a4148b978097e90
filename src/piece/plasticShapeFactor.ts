import { InputError, requireBetween, requireOneOf, requirePositive, requireSection, type Section } from '../base/index.js';

/** Full plastic moment over moment of first yield, of the shapes that have one number. */
const factors: Partial<Record<Section['shape'], number>> = { rectangular: 1.5, square: 1.5, round: 16 / (3 * Math.PI) };
const hexagonOn = { flats: 1.6, corners: 28 / 15 };

/**
 * Full plastic moment of a section over the moment at which its outer fibre begins to yield.
 *
 * $$ \frac{M_{pl}}{M_y} = \frac{1}{W} \int |y|\, \mathrm{d}A, \qquad \text{rectangle } \frac{3}{2}, \quad \text{circle } \frac{16}{3\pi}, \quad \text{tube } \frac{16}{3\pi} \frac{1 - \beta^3}{1 - \beta^4}, \; \beta = \frac{D_i}{D} $$
 *
 * @remarks
 * Material that yields without hardening, alike in tension and compression. A stress by the elastic formula overstates the stress of the
 * outer fibre by up to this factor. A hexagon: 1.6 on its flats, 28/15 on its corners.
 *
 * @param section - Section of shape rectangular, square, round, tube or hexagon.
 * @param on - How a hexagon lies: `flats` (default) or `corners`.
 * @returns Shape factor [1].
 * @throws {@link InputError} `missing`, `wrong-type`, `not-finite`, `not-positive`; `out-of-range` for other shapes, or a wall above half of the diameter.
 *
 * @example
 * ```ts
 * plasticShapeFactor(round({ diameter: 10 })); // => 1.69765
 * plasticShapeFactor(rectangular({ width: 10, thickness: 4 })); // => 1.5
 * ```
 *
 * @see Plastic bending (textbooks). Checked in `test/handbook/bending.test.ts`.
 */
export function plasticShapeFactor(section: Section, on: 'flats' | 'corners' = 'flats'): number {
  const from = 'plasticShapeFactor';
  requireSection(from, 'section', section);
  requireOneOf(from, 'on', on, ['flats', 'corners']);
  const { outerDiameter: D, wallThickness: wall } = section.dimensions;
  if (section.shape === 'tube') {
    const outer = requirePositive(from, 'section.dimensions.outerDiameter', D);
    const inner = 1 - (2 * requireBetween(from, 'section.dimensions.wallThickness', wall, 0, outer / 2)) / outer;
    return ((16 / (3 * Math.PI)) * (1 - inner ** 3)) / (1 - inner ** 4);
  }
  const factor = section.shape === 'hexagon' ? hexagonOn[on] : factors[section.shape];
  if (factor === undefined)
    throw new InputError(from, 'section.shape', 'out-of-range', 'must be rectangular, square, round, tube or hexagon', section.shape);
  return factor;
}
