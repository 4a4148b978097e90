import { requireNonNegative, requireOptions, requirePositive } from '../base/index.js';

/** A round piece loaded off its axis. */
export interface EccentricityInput {
  /** Distance of the load from the axis e [mm]. */
  readonly eccentricity: number;
  /** Diameter d [mm]. */
  readonly diameter: number;
}

/**
 * Bending of a round piece that is loaded off its axis, as a share of the mean stress.
 *
 * $$ \frac{\sigma_b}{\sigma} = \frac{F e / W}{F / S_0} = \frac{8 e}{d} $$
 *
 * @remarks
 * It rounds the early curve and lowers the apparent proportional limit: 0.1 mm on 8 mm is 10 %.
 *
 * @param input - `eccentricity` [mm] of 0 or more, `diameter` [mm] above 0.
 * @returns Surface stress by bending over mean stress [1].
 * @throws {@link InputError} `missing`, `not-finite`, `not-positive`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * bendingFromEccentricity({ eccentricity: 0.1, diameter: 8 }); // => 0.1
 * ```
 *
 * @see ASTM B557, note on eccentricity. Checked in `test/handbook/sections.test.ts`.
 */
export function bendingFromEccentricity(input: EccentricityInput): number {
  const from = 'bendingFromEccentricity';
  requireOptions(from, input, ['eccentricity', 'diameter'], 'input');
  return (8 * requireNonNegative(from, 'eccentricity', input.eccentricity)) / requirePositive(from, 'diameter', input.diameter);
}
