import { InputError, requireBetween, requireOneOf, requireOptions, requirePositive } from '../base/index.js';

/** What the largest section follows from. */
export interface LargestSectionInput {
  /** Capacity of the frame [N]. */
  readonly capacity: number;
  /** Tensile strength to be expected [MPa]: the upper end of what the bar may be. */
  readonly strength: number;
  /** Share of the capacity that may be used, above 0, at most 1; default 0.8. */
  readonly utilisation?: number | undefined;
  /** Shape of the section; default `round`. */
  readonly shape?: 'round' | 'square' | 'flat' | undefined;
  /** Thickness of a flat [mm]. */
  readonly thickness?: number | undefined;
  /** Step to which the dimension is rounded down [mm]; default 0.1. */
  readonly step?: number | undefined;
}

/** The largest section that a frame breaks. */
export interface LargestSection {
  /** Shape. */
  readonly shape: 'round' | 'square' | 'flat';
  /** Diameter, side, or width of a flat, rounded down [mm]. */
  readonly dimension: number;
  /** Area of that section [mm²]. */
  readonly area: number;
}

/** @internal Usual step of a section's dimension [mm]. */
export const SECTION_STEP = 0.1;

/**
 * Largest section that still breaks at a share of the frame's capacity.
 *
 * $$ S_0 \le \frac{u\, F_{cap}}{R_m}, \qquad d = \sqrt{\frac{4 S_0}{\pi}}, \quad a = \sqrt{S_0}, \quad b = \frac{S_0}{a_0} $$
 *
 * @remarks
 * Take the upper end of the family's strength, not the middle; an unknown bar may still be stronger than its family.
 *
 * @param input - `capacity` [N], `strength` [MPa], `utilisation` [1], `shape`, `thickness` [mm] of a flat, `step` [mm].
 * @returns Shape, dimension rounded down [mm], area [mm²].
 * @throws {@link InputError} `missing`, `not-finite`, `not-positive`, `out-of-range` (also where less than one step would be left), `unknown-option`.
 *
 * @example
 * ```ts
 * largestSection({ capacity: 25000, strength: 500 }).dimension; // => 7.1
 * largestSection({ capacity: 25000, strength: 500, shape: 'flat', thickness: 3 }).dimension; // => 13.3
 * ```
 *
 * @see Force over strength. Checked in `test/handbook/planning.test.ts`.
 */
export function largestSection(input: LargestSectionInput): LargestSection {
  const from = 'largestSection';
  requireOptions(from, input, ['capacity', 'strength', 'utilisation', 'shape', 'thickness', 'step'], 'input');
  const shape = requireOneOf(from, 'input.shape', input.shape ?? 'round', ['round', 'square', 'flat'] as const);
  const utilisation = requireBetween(from, 'input.utilisation', input.utilisation ?? 0.8, Number.MIN_VALUE, 1);
  const step = requirePositive(from, 'input.step', input.step ?? SECTION_STEP);
  const most =
    (utilisation * requirePositive(from, 'input.capacity', input.capacity)) / requirePositive(from, 'input.strength', input.strength);
  const thickness = shape === 'flat' || input.thickness !== undefined ? requirePositive(from, 'input.thickness', input.thickness) : 1;
  const exact = { round: Math.sqrt((4 * most) / Math.PI), square: Math.sqrt(most), flat: most / thickness }[shape];
  // a whole number of steps must not lose one to binary rounding
  const dimension = Number((Math.floor((exact / step) * (1 + 1e-12)) * step).toPrecision(12));
  if (dimension <= 0) throw new InputError(from, 'input.step', 'out-of-range', `must be below the dimension itself (${exact} mm)`, step);
  return {
    shape,
    dimension,
    area: { round: (Math.PI * dimension ** 2) / 4, square: dimension ** 2, flat: dimension * thickness }[shape],
  };
}
