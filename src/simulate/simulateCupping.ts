import { requireBetween, requireOptions, requirePositive } from '../base/index.js';
import { pushed, type PushedRecord, type SimulatedPush } from './pushed.js';
import { requireSeed } from './requireSeed.js';

/** A cupping test to simulate. */
export interface CuppingScenario {
  /** Depth of the cup at the crack [mm]. */
  readonly depth: number;
  /** Force at the crack [N]. */
  readonly force: number;
  /** Share of the force that the crack takes at once; default 0.4. */
  readonly fall?: number | undefined;
  /** Way over which it falls [mm]; default 0.05. */
  readonly fallWay?: number | undefined;
  /** Frame, hand and logger. */
  readonly push?: SimulatedPush | undefined;
  /** Seed of the noise; default 1. */
  readonly seed?: number | undefined;
}

/** What is true of a simulated cupping test. */
export interface CuppingTruth {
  /** Depth of the cup at the crack [mm]. */
  readonly depth: number;
  /** Force at the crack [N]. */
  readonly maximumForce: number;
  /** Travel at which the ball touches [mm]. */
  readonly contact: number;
}

/** A simulated cupping test. */
export interface SimulatedCupping {
  /** Force [N], travel [mm] and time [s]. */
  readonly record: PushedRecord;
  /** What is true. */
  readonly truth: CuppingTruth;
}

/**
 * A cupping test of one blank with known truth.
 *
 * $$ F = F_c \left( 0.3 \sin \frac{\pi u}{2} + 0.7 \sin^2 \frac{\pi u}{2} \right) \text{ up to the crack, } u = \frac{h}{IE} $$
 *
 * @remarks
 * Bending at first, stretching later, level at the crack; then the force falls over a short way and the record goes on for a twentieth of the depth. Data made so are invented: say so wherever they are shown.
 *
 * @param scenario - Depth [mm] and force [N] at the crack, the fall, frame, hand and logger, seed.
 * @returns The record and the truth.
 * @throws {@link InputError} `missing`, `not-finite`, `not-positive`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * const { record } = simulateCupping({ depth: 10.4, force: 9000, push: { compliance: 2e-5 } });
 * analyseCupping(record, { thickness: 0.8 }, { frameCompliance: 2e-5 }).cuppingIndex?.value; // => 10.4
 * ```
 *
 * @see ISO 20482:2013, procedure. Checked in `test/methods/cupping.test.ts`.
 */
export function simulateCupping(scenario: CuppingScenario): SimulatedCupping {
  const from = 'simulateCupping';
  requireOptions(from, scenario, ['depth', 'force', 'fall', 'fallWay', 'push', 'seed'], 'scenario');
  const depth = requirePositive(from, 'depth', scenario.depth);
  const maximumForce = requirePositive(from, 'force', scenario.force);
  const fall = requireBetween(from, 'fall', scenario.fall ?? 0.4, 0, 1);
  const fallWay = requirePositive(from, 'fallWay', scenario.fallWay ?? 0.05);
  const force = (way: number): number => {
    if (way > depth) return maximumForce * (1 - fall * Math.min(1, (way - depth) / fallWay));
    const s = Math.sin((Math.PI * way) / (2 * depth));
    return maximumForce * (0.3 * s + 0.7 * s * s);
  };
  const record = pushed(
    from,
    { force, breaks: depth, end: depth + fallWay + depth / 20 },
    scenario.push ?? {},
    requireSeed(from, scenario.seed),
  );
  return { record, truth: { depth, maximumForce, contact: scenario.push?.slack ?? 1 } };
}
