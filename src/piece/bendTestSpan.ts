import { requireOptions, requirePositive } from '../base/index.js';

/** A bend test for ductility. */
export interface BendTestInput {
  /** Diameter of the former (mandrel) D [mm]. */
  readonly formerDiameter: number;
  /** Thickness or diameter of the piece a [mm]. */
  readonly thickness: number;
}

/** A distance of supports with its limits. */
export interface SupportDistance {
  /** Least distance [mm]. */
  readonly least: number;
  /** Nominal distance [mm]. */
  readonly nominal: number;
  /** Largest distance [mm]. */
  readonly most: number;
}

/** @internal Checked dimensions of a bend test. */
export function requireBendTest(from: string, test: BendTestInput): BendTestInput {
  requireOptions(from, test, ['formerDiameter', 'thickness'], 'test');
  return {
    formerDiameter: requirePositive(from, 'formerDiameter', test.formerDiameter),
    thickness: requirePositive(from, 'thickness', test.thickness),
  };
}

/**
 * Distance of the supports in a bend test for ductility.
 *
 * $$ l = (D + 3 a) \pm \frac{a}{2} $$
 *
 * @remarks
 * The result of that test is a look at the outer surface at a stated angle, crack or no crack; it is no stress. Bend slowly; the piece can
 * spring out or break: guard closed.
 *
 * @param test - `formerDiameter` D and `thickness` a [mm], above 0.
 * @returns Least, nominal and largest distance [mm].
 * @throws {@link InputError} `missing`, `not-finite`, `not-positive`, `unknown-option`.
 *
 * @example
 * ```ts
 * bendTestSpan({ formerDiameter: 12, thickness: 3 }).nominal; // => 21
 * ```
 *
 * @see ISO 7438, bend test, distance between the supports (from memory). Checked in `test/handbook/bending.test.ts`.
 */
export function bendTestSpan(test: BendTestInput): SupportDistance {
  const { formerDiameter: D, thickness: a } = requireBendTest('bendTestSpan', test);
  const nominal = D + 3 * a;
  return { least: nominal - a / 2, nominal, most: nominal + a / 2 };
}
