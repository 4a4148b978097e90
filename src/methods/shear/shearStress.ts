import { requireNonNegative, requireOneOf, requireOptions, requirePositive } from '../../base/index.js';
import { InputError } from '../../base/index.js';

/** A force and the section that it shears. */
export interface ShearInput {
  /** Force F [N]. */
  readonly force: number;
  /** Diameter of a round pin [mm]; either this or `area`. */
  readonly diameter?: number | undefined;
  /** Area of one shear plane [mm²]. */
  readonly area?: number | undefined;
  /** Planes that are sheared at once: 1 in single shear, 2 in double shear. */
  readonly planes: 1 | 2;
}

/** @internal Area of one shear plane [mm²], from a diameter or as it is given. */
export function shearArea(from: string, path: string, given: Pick<ShearInput, 'diameter' | 'area'>): number {
  const { diameter, area } = given;
  if (diameter !== undefined && area !== undefined)
    throw new InputError(from, `${path}area`, 'ambiguous', 'must not stand beside diameter', area);
  if (diameter === undefined) return requirePositive(from, `${path}area`, area);
  return (Math.PI * requirePositive(from, `${path}diameter`, diameter) ** 2) / 4;
}

/**
 * Mean shear stress in the planes that a force shears.
 *
 * $$ \tau = \frac{F}{A} \text{ (single)}, \qquad \tau = \frac{F}{2 A} \text{ (double)} $$
 *
 * @remarks
 * A mean over the area; bending of the pin, burr, wear and clearance of the tool are in it, so fixtures differ by about a tenth (common
 * practice). Older sheets that compute with 3.14 for π give 0.05 % more.
 *
 * @param input - `force` [N] of 0 or more; `diameter` [mm] or `area` [mm²] of one plane, above 0; `planes` 1 or 2.
 * @returns Shear stress τ [MPa].
 * @throws {@link InputError} `missing`, `not-finite`, `not-positive`, `out-of-range`, `unknown-option`; `ambiguous` with both diameter and area.
 *
 * @example
 * ```ts
 * shearStress({ force: 33600, diameter: 12, planes: 1 }); // => 297.09
 * shearStress({ force: 56800, diameter: 12, planes: 2 }); // => 251.11
 * ```
 *
 * @see Elementary mechanics. Checked in `test/handbook/shear.test.ts`.
 */
export function shearStress(input: ShearInput): number {
  const from = 'shearStress';
  requireOptions(from, input, ['force', 'diameter', 'area', 'planes'], 'input');
  const force = requireNonNegative(from, 'force', input.force);
  const planes = requireOneOf(from, 'planes', input.planes, [1, 2]);
  return force / (planes * shearArea(from, '', input));
}
