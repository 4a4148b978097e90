import { InputError, requireBetween, requireNonNegative, requireObject, requireOptions, requirePositive } from '../base/index.js';
import { KGF_PER_NEWTON } from '../methods/index.js';
import { randomNumbers, roundToStep } from '../numeric/index.js';
import type { PushedRecord } from './pushed.js';
import { requireSeed } from './requireSeed.js';

/** How the hand brings the force on, and the logger writes it. */
export interface SimulatedHold {
  /** Time in which the force rises [s]; default 4. */
  readonly rise?: number | undefined;
  /** Time for which it is held [s]; default 12. */
  readonly dwell?: number | undefined;
  /** Change of the force while it is held, over the force, negative for a fall; default 0. */
  readonly drift?: number | undefined;
  /** Samples a second; default 20. */
  readonly rate?: number | undefined;
  /** Standard deviation of the force [N]; default 0. */
  readonly forceNoise?: number | undefined;
}

/** A Brinell test to simulate. */
export interface BrinellScenario {
  /** Brinell hardness of the piece [HBW]. */
  readonly hardness: number;
  /** Diameter of the ball D [mm]. */
  readonly ballDiameter: number;
  /** Test force F [N]. */
  readonly force: number;
  /** Number of indentations; default 3. */
  readonly count?: number | undefined;
  /** Standard deviation of a reading of the diameter [mm]; default 0. */
  readonly readingNoise?: number | undefined;
  /** One step of that reading [mm]; default 0, no steps. */
  readonly readingStep?: number | undefined;
  /** Hand and logger. */
  readonly hold?: SimulatedHold | undefined;
  /** Seed of the noise; default 1. */
  readonly seed?: number | undefined;
}

/** A simulated indentation. */
export interface SimulatedIndentation {
  /** Two diameters at right angles, as they were read [mm]. */
  readonly diameters: readonly [number, number];
  /** Force [N] over time [s]. */
  readonly record: Pick<PushedRecord, 'force' | 'time'>;
}

/** Ball and indentations, as `analyseBrinell` takes them. */
export interface SimulatedReadings {
  /** Diameter of the ball D [mm]. */
  readonly ballDiameter: number;
  /** The indentations. */
  readonly indentations: readonly SimulatedIndentation[];
}

/** What is true of a simulated Brinell test. */
export interface BrinellTruth {
  /** HBW. */
  readonly hardness: number;
  /** Diameter of the indentation d [mm]. */
  readonly diameter: number;
  /** Its depth h [mm]. */
  readonly depth: number;
  /** Highest force held F [N]. */
  readonly force: number;
}

/** A simulated Brinell test. */
export interface SimulatedBrinell {
  /** What was read and recorded. */
  readonly readings: SimulatedReadings;
  /** What is true. */
  readonly truth: BrinellTruth;
}

/** Time before the rise, and of the release [s]. */
const LEAD = 1;
const RELEASE = 0.5;

/**
 * A Brinell test with known truth: the indentation that the highest force held leaves in a piece of a hardness.
 *
 * $$ h = \frac{0.102 F}{\pi D\, \text{HBW}}, \qquad d = 2 \sqrt{h (D - h)} $$
 *
 * @remarks
 * Data made so are invented: say so wherever they are shown.
 *
 * @param scenario - Hardness [HBW], ball [mm], force [N], reading, hand and logger, seed.
 * @returns Readings with their records, and the truth.
 * @throws {@link InputError} `missing`, `not-finite`, `not-positive`, `unknown-option`; `out-of-range` where the ball would sink to its middle.
 *
 * @example
 * ```ts
 * const { readings, truth } = simulateBrinell({ hardness: 120, ballDiameter: 5, force: 2451.66 });
 * truth.diameter; // => 1.6071
 * analyseBrinell(readings).hardness?.value; // => 120
 * ```
 *
 * @see ISO 6506-1:2014, principle. Checked in `test/methods/brinell.test.ts`.
 */
export function simulateBrinell(scenario: BrinellScenario): SimulatedBrinell {
  const from = 'simulateBrinell';
  requireOptions(from, scenario, ['hardness', 'ballDiameter', 'force', 'count', 'readingNoise', 'readingStep', 'hold', 'seed'], 'scenario');
  const hold = requireObject(from, 'hold', scenario.hold ?? {}) as SimulatedHold;
  requireOptions(from, hold, ['rise', 'dwell', 'drift', 'rate', 'forceNoise'], 'hold');
  const hardness = requirePositive(from, 'hardness', scenario.hardness);
  const ballDiameter = requirePositive(from, 'ballDiameter', scenario.ballDiameter);
  const set = requirePositive(from, 'force', scenario.force);
  const count = Math.round(requirePositive(from, 'count', scenario.count ?? 3));
  const noise = requireNonNegative(from, 'readingNoise', scenario.readingNoise ?? 0);
  const step = requireNonNegative(from, 'readingStep', scenario.readingStep ?? 0);
  const rise = requirePositive(from, 'hold.rise', hold.rise ?? 4);
  const dwell = requirePositive(from, 'hold.dwell', hold.dwell ?? 12);
  const drift = requireBetween(from, 'hold.drift', hold.drift ?? 0, -0.5, 0.5);
  const rate = requirePositive(from, 'hold.rate', hold.rate ?? 20);
  const forceNoise = requireNonNegative(from, 'hold.forceNoise', hold.forceNoise ?? 0);
  const random = randomNumbers(requireSeed(from, scenario.seed));

  const force = set * Math.max(1, 1 + drift);
  const depth = (KGF_PER_NEWTON * force) / (Math.PI * ballDiameter * hardness);
  if (2 * depth >= ballDiameter)
    throw new InputError(from, 'hardness', 'out-of-range', 'must be such that the ball does not sink to its middle', hardness);
  const diameter = 2 * Math.sqrt(depth * (ballDiameter - depth));
  const held = LEAD + rise;
  const at = (t: number): number => {
    if (t < LEAD) return 0;
    if (t < held) return (set * (t - LEAD)) / rise;
    if (t <= held + dwell) return set * (1 + (drift * (t - held)) / dwell);
    return set * (1 + drift) * Math.max(0, 1 - (t - held - dwell) / RELEASE);
  };
  const samples = Math.round((held + dwell + RELEASE + LEAD) * rate) + 1;
  const read = (): number => {
    const value = diameter + noise * random.normal();
    return step > 0 ? roundToStep(value, step) : value;
  };
  const indentations = Array.from({ length: count }, () => {
    const time = Float64Array.from({ length: samples }, (_, i) => i / rate);
    return { diameters: [read(), read()] as const, record: { time, force: time.map((t) => at(t) + forceNoise * random.normal()) } };
  });
  return { readings: { ballDiameter, indentations }, truth: { hardness, diameter, depth, force } };
}
