import { failure, requireNonNegative, requireOptions, requirePositive, success, type Outcome } from '../../base/index.js';
import type { HardeningLaw } from './HardeningLaw.js';
import { mixedLaw, requireLaw } from './mixedLaw.js';

/** A measured point of the flow curve, usually past the neck: from the area there, and the stress corrected for the neck. */
export interface MeasuredPoint {
  /** True strain as the laws count it [mm/mm]. */
  readonly strain: number;
  /** True stress [MPa]. */
  readonly stress: number;
}

/** A mixed law and the weight that it has. */
export interface WeightedLaw {
  /** Weight of the first law [1]. */
  readonly weight: number;
  /** The mixed law. */
  readonly law: HardeningLaw;
}

/**
 * Weight with which the average of two laws goes through a measured point.
 *
 * $$ w = \frac{\sigma_m - \sigma_2(\varepsilon_m)}{\sigma_1(\varepsilon_m) - \sigma_2(\varepsilon_m)} $$
 *
 * @remarks
 * One point past the neck tells more about an extrapolation than the whole curve before it. The point must lie between the laws.
 *
 * @param first - A law, for example Swift's.
 * @param second - Another, for example Voce's.
 * @param point - `strain` [mm/mm] 0 or more and `stress` [MPa] above 0.
 * @returns Weight of the first law and the mixed law; or `not-between`, `laws-agree`.
 * @throws {@link InputError} `missing`, `not-finite`, `not-positive`, `out-of-range`, `wrong-type`, `unknown-option`.
 *
 * @example
 * ```ts
 * const one = swift({ strengthCoefficient: 500, prestrain: 0.01, exponent: 0.2 });
 * const other = voce({ saturationStress: 400, initialStress: 150, rate: 10 });
 * required(weightToPoint(one, other, { strain: 0.8, stress: 420 })).weight; // => 0.25279
 * ```
 *
 * @see Common practice in sheet forming. Checked in `test/handbook/laws.test.ts`.
 */
export function weightToPoint(
  first: HardeningLaw,
  second: HardeningLaw,
  point: MeasuredPoint,
): Outcome<WeightedLaw, 'not-between' | 'laws-agree'> {
  const from = 'weightToPoint';
  requireLaw(from, 'first', first);
  requireLaw(from, 'second', second);
  requireOptions(from, point, ['strain', 'stress'], 'point');
  const strain = requireNonNegative(from, 'point.strain', point.strain);
  const stress = requirePositive(from, 'point.stress', point.stress);
  const one = first.stress(strain);
  const other = second.stress(strain);
  if (!(Math.abs(one - other) > 1e-9 * stress)) return failure('laws-agree', `both laws give ${one} MPa there: any weight would do`);
  const weight = (stress - other) / (one - other);
  if (!(weight >= 0 && weight <= 1)) return failure('not-between', `the point lies outside the ${one} and ${other} MPa of the laws`);
  return success({ weight, law: mixedLaw(first, second, weight) });
}
