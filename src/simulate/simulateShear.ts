import { requireOneOf, requireOptions, requirePositive } from '../base/index.js';
import { pushed, type PushedRecord, type SimulatedPush } from './pushed.js';
import { requireSeed } from './requireSeed.js';

/** A shear test to simulate. */
export interface ShearScenario {
  /** Shear strength τm [MPa]. */
  readonly strength: number;
  /** Diameter of the pin [mm]. */
  readonly diameter: number;
  /** Planes that are sheared at once. */
  readonly planes: 1 | 2;
  /** Way of the tool into the pin at the highest force [mm]; default a fifth of the diameter. */
  readonly penetration?: number | undefined;
  /** Frame, hand and logger. */
  readonly push?: SimulatedPush | undefined;
  /** Seed of the noise; default 1. */
  readonly seed?: number | undefined;
}

/** What is true of a simulated shear test. */
export interface ShearTruth {
  /** τm [MPa]. */
  readonly shearStrength: number;
  /** Fm [N]. */
  readonly maximumForce: number;
}

/** A simulated shear test. */
export interface SimulatedShear {
  /** Force [N], travel [mm] and time [s]. */
  readonly record: PushedRecord;
  /** What is true. */
  readonly truth: ShearTruth;
}

/**
 * A shear test of a round pin with known truth.
 *
 * $$ F_m = \tau_m\, n\, \frac{\pi d^2}{4}, \qquad F = F_m \sin \frac{\pi u}{2} \text{ up to the maximum, } u = \frac{w}{w_m} $$
 *
 * @remarks
 * After the maximum the pin parts over half as far again. Data made so are invented: say so wherever they are shown.
 *
 * @param scenario - Strength [MPa], diameter [mm], planes, frame, hand and logger, seed.
 * @returns The record and the truth.
 * @throws {@link InputError} `missing`, `not-finite`, `not-positive`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * const { record, truth } = simulateShear({ strength: 300, diameter: 8, planes: 2 });
 * truth.maximumForce; // => 30159.3
 * analyseShear(record, { diameter: 8, planes: 2 }).shearStrength.value; // => 300
 * ```
 *
 * @see Elementary mechanics. Checked in `test/methods/shear.test.ts`.
 */
export function simulateShear(scenario: ShearScenario): SimulatedShear {
  const from = 'simulateShear';
  requireOptions(from, scenario, ['strength', 'diameter', 'planes', 'penetration', 'push', 'seed'], 'scenario');
  const shearStrength = requirePositive(from, 'strength', scenario.strength);
  const diameter = requirePositive(from, 'diameter', scenario.diameter);
  const planes = requireOneOf(from, 'planes', scenario.planes, [1, 2]);
  const breaks = requirePositive(from, 'penetration', scenario.penetration ?? diameter / 5);
  const maximumForce = (shearStrength * planes * Math.PI * diameter ** 2) / 4;
  const end = 1.5 * breaks;
  const force = (way: number): number =>
    way <= breaks ? maximumForce * Math.sin((Math.PI * way) / (2 * breaks)) : (maximumForce * (end - way)) / (end - breaks);
  return {
    record: pushed(from, { force, breaks, end }, scenario.push ?? {}, requireSeed(from, scenario.seed)),
    truth: { shearStrength, maximumForce },
  };
}
