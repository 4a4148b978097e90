import { requireBendTest, type BendTestInput } from './bendTestSpan.js';

/**
 * Strain of the outer fibre of a piece bent round a former.
 *
 * $$ e_b = \frac{a}{D + a} $$
 *
 * @remarks
 * Engineering strain, the neutral axis taken in the middle of the thickness. In a tight bend it moves inwards, so the true strain of the
 * outside is higher; and a piece that lies on the former only in part is bent less.
 *
 * @param test - `formerDiameter` D and `thickness` a [mm], above 0.
 * @returns Strain [mm/mm].
 * @throws {@link InputError} `missing`, `not-finite`, `not-positive`, `unknown-option`.
 *
 * @example
 * ```ts
 * bendTestStrain({ formerDiameter: 12, thickness: 3 }); // => 0.2
 * ```
 *
 * @see Geometry of the bend test of ISO 7438. Checked in `test/handbook/bending.test.ts`.
 */
export function bendTestStrain(test: BendTestInput): number {
  const { formerDiameter: D, thickness: a } = requireBendTest('bendTestStrain', test);
  return a / (D + a);
}
