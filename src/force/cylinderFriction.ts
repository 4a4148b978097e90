import { finding, requireColumn, requireObject, requireOptions, type Finding } from '../base/index.js';
import { lineFit } from '../numeric/index.js';
import { pistonAreaOf, type Cylinder } from './pistonArea.js';

/** Rising and falling runs read at equal pressures. */
export interface EqualPressureRuns {
  /** Pressure [MPa]. */
  readonly pressure: ArrayLike<number>;
  /** True force with rising pressure [N]. */
  readonly risingForce: ArrayLike<number>;
  /** True force with falling pressure [N]. */
  readonly fallingForce: ArrayLike<number>;
}

/** Rising and falling runs read at equal forces. */
export interface EqualForceRuns {
  /** True force [N]. */
  readonly force: ArrayLike<number>;
  /** Pressure with rising force [MPa]. */
  readonly risingPressure: ArrayLike<number>;
  /** Pressure with falling force [MPa]. */
  readonly fallingPressure: ArrayLike<number>;
}

/** Friction of a cylinder. */
export interface CylinderFriction {
  /** Friction at each step [N]. */
  readonly friction: Float64Array;
  /** Force over pressure times area with rising force [1]. */
  readonly efficiency: Float64Array;
  /** Width of the loop over its mean force [1]. */
  readonly hysteresis: Float64Array;
  /** Friction at no force, by a line through the steps [N]; absent with fewer than three. */
  readonly constantPart?: number | undefined;
  /** Growth of friction with the mean force [1], likewise. */
  readonly proportionalPart?: number | undefined;
  /** Doubts. */
  readonly findings: readonly Finding[];
}

const FROM = 'cylinderFriction';

/**
 * Friction, efficiency and hysteresis of a cylinder from rising and falling runs.
 *
 * $$ F_f = \frac{F_\downarrow - F_\uparrow}{2}\ (\text{equal } p), \qquad F_f = A\, \frac{p_\uparrow - p_\downarrow}{2}\ (\text{equal } F), \qquad \eta = \frac{F_\uparrow}{p_\uparrow A} $$
 *
 * @remarks
 * Friction works against the motion: rising, the piece gets less than $pA$, falling it gets more. A part that grows with force points to seals
 * that the pressure presses on, a constant part to guides and scrapers. It changes with age of the seals, speed and temperature.
 *
 * @param runs - `pressure` [MPa] with `risingForce`, `fallingForce` [N], or `force` [N] with `risingPressure`, `fallingPressure` [MPa], each above 0.
 * @param cylinder - `bore`, `rod` [mm].
 * @returns Friction [N], efficiency and hysteresis [1] of each step, and the line through the frictions.
 * @throws {@link InputError} `missing`, `wrong-type`, `empty`, `not-finite`, `not-positive`, `unequal-lengths`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * const runs = { pressure: [5, 10, 15], risingForce: [6100, 12300, 18500], fallingForce: [6300, 12700, 19100] };
 * cylinderFriction(runs, { bore: 40 }).friction; // => [100, 200, 300]
 * ```
 *
 * @see Balance of forces at the piston. Checked in `test/handbook/verification.test.ts`.
 */
export function cylinderFriction(runs: EqualPressureRuns | EqualForceRuns, cylinder: Cylinder): CylinderFriction {
  requireObject(FROM, 'runs', runs);
  requireOptions(FROM, cylinder, ['bore', 'rod'], 'cylinder');
  const area = pistonAreaOf(FROM, cylinder);
  const names =
    'pressure' in runs ? (['pressure', 'risingForce', 'fallingForce'] as const) : (['force', 'risingPressure', 'fallingPressure'] as const);
  requireOptions(FROM, runs, names, 'runs');
  const columns: Readonly<Record<string, ArrayLike<number> | undefined>> = { ...runs };
  const held = requireColumn(FROM, `runs.${names[0]}`, columns[names[0]], { positive: true });
  const [rising, falling] = [names[1], names[2]].map((name) =>
    requireColumn(FROM, `runs.${name}`, columns[name], { length: held.length, positive: true }),
  ) as [Float64Array, Float64Array];
  const equalPressure = 'pressure' in runs;
  const friction = held.map((_, i) => (equalPressure ? falling[i]! - rising[i]! : area * (rising[i]! - falling[i]!)) / 2);
  const mean = held.map((one, i) => (equalPressure ? (rising[i]! + falling[i]!) / 2 : one));
  const line = held.length > 2 ? lineFit(mean, friction, 0, held.length - 1) : undefined;
  const negative = friction.filter((one) => one < 0);
  return {
    friction,
    efficiency: held.map((one, i) => (equalPressure ? rising[i]! / (one * area) : one / (rising[i]! * area))),
    hysteresis: friction.map((one, i) => (2 * one) / mean[i]!),
    ...(line ? { constantPart: line.intercept, proportionalPart: line.slope } : {}),
    findings:
      negative.length > 0
        ? [finding('friction-negative', { count: negative.length, friction: negative.reduce((a, b) => Math.min(a, b)) })]
        : [],
  };
}
