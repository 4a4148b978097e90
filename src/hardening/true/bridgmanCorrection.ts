import { InputError, requireOptions, requireObject, requirePositive } from '../../base/index.js';

/** Radii of a neck. */
export interface NeckRadii {
  /** Radius of the least section a [mm]. */
  readonly neckRadius: number;
  /** Radius of curvature of the neck's profile R [mm]. */
  readonly profileRadius: number;
}

/** A true strain at the neck, for steels. */
export interface NeckStrain {
  /** True strain at the neck ln(S0/S) [mm/mm]. */
  readonly strain: number;
}

/** Range of true strain in which the estimate for steels was found. */
const RANGE = [0.12, 3] as const;

/**
 * Bridgman's factor: flow stress over the mean true stress across a neck, from its radii or, for steels, estimated from the strain there.
 *
 * $$ B = \frac{1}{\left( 1 + \frac{2R}{a} \right) \ln \left( 1 + \frac{a}{2R} \right)}, \qquad B \approx 0.0684 x^3 + 0.0461 x^2 - 0.205 x + 0.825, \; x =
 * \log_{10} \varepsilon $$
 *
 * @remarks
 * The neck puts the middle of the section under tension from all sides, so the mean stress there is above the flow stress. Round pieces only. The
 * estimate holds for steels at true strains from 0.12 to 3.
 *
 * @param neck - `neckRadius` a and `profileRadius` R [mm], above 0; or `strain` [mm/mm] from 0.12 to 3.
 * @returns Factor [1]; flow stress = factor times force over least area.
 * @throws {@link InputError} `missing`, `not-finite`, `not-positive`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * bridgmanCorrection({ neckRadius: 3, profileRadius: 3 }); // => 0.82210
 * bridgmanCorrection({ strain: 0.44 }); // => 0.90085
 * ```
 *
 * @see Bridgman, Studies in Large Plastic Flow and Fracture (1952); estimate: Dowling, Mechanical Behavior of Materials. Checked in
 * `test/handbook/after-necking.test.ts`.
 */
export function bridgmanCorrection(neck: NeckRadii | NeckStrain): number {
  const from = 'bridgmanCorrection';
  requireObject(from, 'neck', neck);
  if ('strain' in neck) {
    requireOptions(from, neck, ['strain'], 'neck');
    const strain = requirePositive(from, 'neck.strain', neck.strain);
    if (strain < RANGE[0] || strain > RANGE[1])
      throw new InputError(from, 'neck.strain', 'out-of-range', `must be from ${RANGE[0]} to ${RANGE[1]}`, strain);
    const x = Math.log10(strain);
    return ((0.0684 * x + 0.0461) * x - 0.205) * x + 0.825;
  }
  requireOptions(from, neck, ['neckRadius', 'profileRadius'], 'neck');
  const a = requirePositive(from, 'neck.neckRadius', neck.neckRadius);
  const R = requirePositive(from, 'neck.profileRadius', neck.profileRadius);
  return 1 / ((1 + (2 * R) / a) * Math.log1p(a / (2 * R)));
}
