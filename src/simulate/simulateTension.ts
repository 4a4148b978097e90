import {
  InputError,
  requireBetween,
  requireColumn,
  requireFinite,
  requireNonNegative,
  requireObject,
  requireOptions,
  requirePositive,
  type PressureRecord,
  type TensionRecord,
  type TestPiece,
} from '../base/index.js';
import { requirePiece } from '../curve/index.js';
import { pistonArea } from '../force/index.js';
import { randomNumbers } from '../numeric/index.js';
import { materialCurve, type SimulatedMaterial } from './material.js';
import { motionOf, type Motion } from './motion.js';
import { requireUnloadings, withUnloadings, type SimulatedUnloading } from './unloadings.js';
import { truthOf, type SimulatedTruth } from './truth.js';

/** A frame. */
export interface SimulatedFrame {
  /** Compliance [mm/N]; default 0. */
  readonly compliance?: number | undefined;
  /** Slack before any force [mm]; default 0. */
  readonly slack?: number | undefined;
  /** Seating of the grips: travel that is used up [mm] while the force rises to a few times `seatingForce`; default 0. */
  readonly seating?: number | undefined;
  /** Force that seats the grips [N]; default 300. */
  readonly seatingForce?: number | undefined;
  /** Bore of the cylinder [mm]; with it the record is of oil pressure. */
  readonly bore?: number | undefined;
  /** Rod [mm], where the rod side pulls. */
  readonly rod?: number | undefined;
  /** Friction of the cylinder [N], that pressure must overcome while rising, and that holds the load while falling; default 0. */
  readonly friction?: number | undefined;
}

/** A pause of the hand. */
export interface SimulatedPause {
  /** Stress on the way up at which it begins [MPa]. */
  readonly stress: number;
  /** Duration [s]. */
  readonly duration: number;
  /** Share of the force that is lost meanwhile; default 0.02. */
  readonly relaxation?: number | undefined;
}

/** A hand at the drive. */
export interface SimulatedHand {
  /** Speed of the crosshead up to yielding [mm/s]; default 0.05. */
  readonly speed?: number | undefined;
  /** Speed from yielding on [mm/s]; default the same. */
  readonly speedAfterYield?: number | undefined;
  /** Strokes a minute; default 0, an even drive. */
  readonly strokes?: number | undefined;
  /** Depth of the pulses: share by which speed rises and falls; default 0.5. */
  readonly depth?: number | undefined;
  /** Pauses, in order of stress. */
  readonly pauses?: readonly SimulatedPause[] | undefined;
  /** Unloadings, in order of stress. */
  readonly unloadings?: readonly SimulatedUnloading[] | undefined;
}

/** An extensometer that is taken off. */
export interface TakenOff {
  /** Strain at which it is taken off [mm/mm]. */
  readonly offAt: number;
}

/** A logger. */
export interface SimulatedLogger {
  /** Samples a second; default 20. */
  readonly rate?: number | undefined;
  /** Standard deviation of the load channel [N]; default 0. */
  readonly forceNoise?: number | undefined;
  /** Correlation of that noise from sample to sample, 0 to 0.99; default 0. */
  readonly noiseCorrelation?: number | undefined;
  /** Standard deviation of travel and extension [mm]; default 0. */
  readonly motionNoise?: number | undefined;
  /** One step of the load channel [N], or of pressure [MPa] where pressure is recorded; default 0, no steps. */
  readonly loadStep?: number | undefined;
  /** One step of travel and extension [mm]; default 0. */
  readonly motionStep?: number | undefined;
  /** Share of the maximum force at which the record begins; default 0. */
  readonly lateStart?: number | undefined;
  /** Time recorded before loading [s]; default 0. */
  readonly lead?: number | undefined;
  /** Time recorded after fracture [s]; default 0. */
  readonly tail?: number | undefined;
  /** Share of samples that repeat the one before; default 0. */
  readonly repeated?: number | undefined;
  /** Extensometer: none, on until fracture, or taken off at a strain; default none. */
  readonly extensometer?: boolean | TakenOff | undefined;
}

/** A tension test to simulate. */
export interface TensionScenario {
  /** The material. */
  readonly material: SimulatedMaterial;
  /** The piece; with an extensometer its base is `extensometerLength`, default the gauge length. */
  readonly piece: TestPiece;
  /** The frame; default stiff and without slack. */
  readonly frame?: SimulatedFrame | undefined;
  /** The hand; default even. */
  readonly hand?: SimulatedHand | undefined;
  /** The logger; default without noise. */
  readonly logger?: SimulatedLogger | undefined;
  /** Seed of the noise; default 1. */
  readonly seed?: number | undefined;
  /** Plastic extensions whose proof strength the truth names [mm/mm]; default 0.001, 0.002, 0.01. */
  readonly offsets?: ArrayLike<number> | undefined;
}

/** A simulated test. */
export interface SimulatedTension {
  /** Columns: `force`, or as recorded by a frame with a bore, made from its pressure without losses; `travel`, `extension`, `time`. */
  readonly record: TensionRecord;
  /** The same with oil pressure [MPa], for a frame with a bore. */
  readonly pressureRecord?: PressureRecord | undefined;
  /** What is true. */
  readonly truth: SimulatedTruth;
}

const FROM = 'simulateTension';

/** Rounds to whole steps of a reading. */
const stepped = (value: number, step: number): number => (step > 0 ? Math.round(value / step) * step : value);

/** Checks frame, hand and logger, and fills in their defaults. */
function settings(scenario: TensionScenario) {
  const { frame = {}, hand = {}, logger = {} } = scenario;
  const part = <T extends object>(name: string, given: T, names: readonly (keyof T & string)[]): T => {
    requireOptions(FROM, given, names, name);
    return given;
  };
  part('frame', frame, ['compliance', 'slack', 'seating', 'seatingForce', 'bore', 'rod', 'friction']);
  part('hand', hand, ['speed', 'speedAfterYield', 'strokes', 'depth', 'pauses', 'unloadings']);
  part('logger', logger, [
    'rate',
    'forceNoise',
    'noiseCorrelation',
    'motionNoise',
    'loadStep',
    'motionStep',
    'lateStart',
    'lead',
    'tail',
    'repeated',
    'extensometer',
  ]);
  const some = (path: string, value: number | undefined, otherwise: number): number => requireNonNegative(FROM, path, value ?? otherwise);
  const speed = requirePositive(FROM, 'hand.speed', hand.speed ?? 0.05);
  const off =
    typeof logger.extensometer === 'object' ? requirePositive(FROM, 'logger.extensometer.offAt', logger.extensometer.offAt) : Infinity;
  return {
    compliance: some('frame.compliance', frame.compliance, 0),
    slack: some('frame.slack', frame.slack, 0),
    seating: some('frame.seating', frame.seating, 0),
    seatingForce: requirePositive(FROM, 'frame.seatingForce', frame.seatingForce ?? 300),
    friction: some('frame.friction', frame.friction, 0),
    area: frame.bore === undefined ? undefined : pistonArea({ bore: frame.bore, rod: frame.rod }),
    speed,
    speedAfterYield: requirePositive(FROM, 'hand.speedAfterYield', hand.speedAfterYield ?? speed),
    strokes: some('hand.strokes', hand.strokes, 0),
    depth: requireBetween(FROM, 'hand.depth', hand.depth ?? 0.5, 0, 1),
    pauses: (hand.pauses ?? []).map((pause, k) => ({
      stress: requirePositive(FROM, `hand.pauses[${k}].stress`, pause.stress),
      duration: requirePositive(FROM, `hand.pauses[${k}].duration`, pause.duration),
      relaxation: requireBetween(FROM, `hand.pauses[${k}].relaxation`, pause.relaxation ?? 0.02, 0, 0.5),
    })),
    rate: requirePositive(FROM, 'logger.rate', logger.rate ?? 20),
    forceNoise: some('logger.forceNoise', logger.forceNoise, 0),
    correlation: requireBetween(FROM, 'logger.noiseCorrelation', logger.noiseCorrelation ?? 0, 0, 0.99),
    motionNoise: some('logger.motionNoise', logger.motionNoise, 0),
    loadStep: some('logger.loadStep', logger.loadStep, 0),
    motionStep: some('logger.motionStep', logger.motionStep, 0),
    lateStart: requireBetween(FROM, 'logger.lateStart', logger.lateStart ?? 0, 0, 0.9),
    lead: some('logger.lead', logger.lead, 0),
    tail: some('logger.tail', logger.tail, 0),
    repeated: requireBetween(FROM, 'logger.repeated', logger.repeated ?? 0, 0, 0.9),
    extensometer: logger.extensometer !== undefined && logger.extensometer !== false,
    offAt: off,
  };
}

/** @internal Settings of frame, hand and logger with their defaults. */
export type SimulationSettings = ReturnType<typeof settings>;

/** What the logger makes of the motion: late start, noise, steps, repeated samples. */
function recorded(motion: Motion, set: SimulationSettings, base: number, seed: number) {
  const random = randomNumbers(seed);
  let first = 0;
  while (motion.force[first]! < set.lateStart * motion.highest) first += 1;
  const n = motion.force.length - first;
  const load = new Float64Array(n);
  const travel = new Float64Array(n);
  const extension = new Float64Array(n);
  const kept = Math.sqrt(1 - set.correlation ** 2);
  let noise = random.normal();
  for (let i = 0; i < n; i += 1) {
    const k = first + i;
    const force = motion.force[k]! + set.forceNoise * noise;
    noise = set.correlation * noise + kept * random.normal();
    // friction stands against the motion: it is only ever turned back while the hand unloads
    const back = k > 0 && motion.travel[k]! < motion.travel[k - 1]! && motion.strain[k]! < motion.strain[k - 1]!;
    const loaded = motion.force[k]! > 0 ? (back ? -set.friction : set.friction) : 0;
    load[i] = stepped(set.area === undefined ? force : (force + loaded) / set.area, set.loadStep);
    travel[i] = stepped(motion.travel[k]! + (set.motionNoise > 0 ? set.motionNoise * random.normal() : 0), set.motionStep);
    const strain = motion.strain[k]!;
    extension[i] =
      strain > set.offAt ? NaN : stepped(strain * base + (set.motionNoise > 0 ? set.motionNoise * random.normal() : 0), set.motionStep);
    if (i > 0 && set.repeated > 0 && random.uniform() < set.repeated) {
      load[i] = load[i - 1]!;
      travel[i] = travel[i - 1]!;
      if (!Number.isNaN(extension[i]!)) extension[i] = extension[i - 1]!;
    }
  }
  // once off, an extensometer stays off
  const off = extension.findIndex(Number.isNaN);
  if (off >= 0) extension.fill(NaN, off);
  const time = motion.time.slice(first).map((t) => t - motion.time[first]!);
  return { load, others: { travel, ...(set.extensometer ? { extension } : {}), time }, first };
}

/**
 * A tension test with known truth: a material, a piece, a frame, a hand and a logger make a record.
 *
 * $$ x = x_{slack} + s(F) + L_c\, e(R) + C_f F, \qquad R = \sigma(\varepsilon_p)\, \mathrm{e}^{-\varepsilon_p}, \qquad e = p + \frac{R}{E}, \quad \varepsilon_p = \ln(1 + p) $$
 *
 * @remarks
 * The material is one exact function of its plastic extension p, so the truth comes from the model and not from the samples; without
 * noise every sample lies on it. A neck begins where Considère says; from there the stress falls as a parabola to the fracture. A fall
 * of stress on a soft frame lets the frame unload into the piece, as it does. The same seed gives the same record to the last bit.
 * Data made so are invented: say so wherever they are shown.
 *
 * @param scenario - Material, piece [mm], frame [mm/N, mm, N], hand [mm/s], logger [Hz, N, mm, s], seed.
 * @returns The record, the record of pressure where the frame has a bore, and the truth.
 * @throws {@link InputError} `missing`, `not-finite`, `not-positive`, `out-of-range`, `unknown-option`; `too-large` beyond 5 million samples.
 *
 * @example
 * ```ts
 * const material = { modulus: 205000, yieldStress: 300, hardening: { law: 'swift' as const, prestrain: 0.02, exponent: 0.2 } };
 * const { truth } = simulateTension({ material, piece: { section: round({ diameter: 8 }), gaugeLength: 40, parallelLength: 48 } });
 * truth.tensileStrength; // => 397.144
 * ```
 *
 * @see Considère's construction; Swift, J. Mech. Phys. Solids 1 (1952) 1. Checked in `test/simulate/simulateTension.test.ts`.
 */
export function simulateTension(scenario: TensionScenario): SimulatedTension {
  requireOptions(
    FROM,
    requireObject(FROM, 'scenario', scenario),
    ['material', 'piece', 'frame', 'hand', 'logger', 'seed', 'offsets'],
    'scenario',
  );
  const curve = materialCurve(scenario.material);
  const lengths = requirePiece(FROM, scenario.piece);
  const seed = requireFinite(FROM, 'seed', scenario.seed ?? 1);
  if (!Number.isInteger(seed)) throw new InputError(FROM, 'seed', 'out-of-range', 'must be a whole number', seed);
  const offsets = requireColumn(FROM, 'offsets', scenario.offsets ?? [0.001, 0.002, 0.01], { least: 0, positive: true });
  const set = settings(scenario);
  const unloadings = requireUnloadings(scenario.hand?.unloadings ?? [], curve.modulus);
  const { motion, truth: unloaded } = withUnloadings(motionOf(curve, lengths, set), unloadings, lengths, set, curve.modulus);
  const { load, others, first } = recorded(motion, set, lengths.extensometerLength, seed);
  const pauses = motion.pauses.map(([from, to]) => [Math.max(0, from - first), to - first] as const).filter(([, to]) => to > 0);
  const truth: SimulatedTruth = {
    ...truthOf(scenario.material, curve, scenario.piece, [...offsets], pauses),
    ...(unloaded.length > 0 ? { unloadings: unloaded.map((one) => ({ ...one, index: one.index - first })) } : {}),
  };
  const { area } = set;
  if (area === undefined) return { record: { force: load, ...others }, truth };
  return { record: { force: load.map((p) => p * area), ...others }, pressureRecord: { pressure: load, ...others }, truth };
}
