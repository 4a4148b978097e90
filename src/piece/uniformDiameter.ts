import { requireOptions, requirePositive } from '../base/index.js';

/** A cylinder before and after its height changed. */
export interface UpsetCylinder {
  /** Original diameter d0 [mm]. */
  readonly originalDiameter: number;
  /** Original height h0 [mm]. */
  readonly originalHeight: number;
  /** Present height h [mm]. */
  readonly height: number;
}

/**
 * Diameter of a compressed cylinder, had it stayed a cylinder.
 *
 * $$ d = d_0 \sqrt{\frac{h_0}{h}} $$
 *
 * @remarks
 * By constancy of volume. Friction at the ends makes a barrel: the middle is wider than this, the ends narrower. For other sections give the
 * diameter of the circle of the same area.
 *
 * @param cylinder - `originalDiameter`, `originalHeight`, `height` [mm], above 0.
 * @returns Diameter [mm].
 * @throws {@link InputError} `missing`, `not-finite`, `not-positive`, `unknown-option`.
 *
 * @example
 * ```ts
 * uniformDiameter({ originalDiameter: 10, originalHeight: 15, height: 12 }); // => 11.1803
 * ```
 *
 * @see ASTM E9; constancy of volume. Checked in `test/handbook/compression.test.ts`.
 */
export function uniformDiameter(cylinder: UpsetCylinder): number {
  const from = 'uniformDiameter';
  requireOptions(from, cylinder, ['originalDiameter', 'originalHeight', 'height'], 'cylinder');
  return (
    requirePositive(from, 'originalDiameter', cylinder.originalDiameter) *
    Math.sqrt(requirePositive(from, 'originalHeight', cylinder.originalHeight) / requirePositive(from, 'height', cylinder.height))
  );
}
