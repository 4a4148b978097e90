import { requireOptions, requirePositive } from '../../base/index.js';

/** A stress rate on a section of some material. */
export interface StressRateInput {
  /** Stress rate [MPa/s]. */
  readonly stressRate: number;
  /** Area S0 [mm²]. */
  readonly area: number;
  /** Modulus of elasticity E [MPa]. */
  readonly modulus: number;
}

/** What a stress rate is in force and in strain. */
export interface RateOfStress {
  /** Force rate [N/s]. */
  readonly forceRate: number;
  /** Strain rate in the elastic part [1/s]. */
  readonly strainRate: number;
}

/**
 * What a stress rate is in force and, in the elastic part, in strain.
 *
 * $$ \dot F = \dot R\, S_0, \qquad \dot e = \frac{\dot R}{E} $$
 *
 * @remarks
 * The strain rate holds below yield only.
 *
 * @param input - `stressRate` [MPa/s], `area` [mm²], `modulus` [MPa], each above 0.
 * @returns Force rate [N/s] and strain rate [1/s].
 * @throws {@link InputError} `missing`, `not-finite`, `not-positive`, `unknown-option`.
 *
 * @example
 * ```ts
 * const { area } = round({ diameter: 8 });
 * rateOfStress({ stressRate: 6, area, modulus: 210000 }).forceRate; // => 301.59
 * ```
 *
 * @see ISO 6892-1:2019, method B (stress rates). Checked in `test/handbook/rates.test.ts`.
 */
export function rateOfStress(input: StressRateInput): RateOfStress {
  const from = 'rateOfStress';
  requireOptions(from, input, ['stressRate', 'area', 'modulus'], 'input');
  const stressRate = requirePositive(from, 'stressRate', input.stressRate);
  return {
    forceRate: stressRate * requirePositive(from, 'area', input.area),
    strainRate: stressRate / requirePositive(from, 'modulus', input.modulus),
  };
}
