import { requireArray, requireBetween, requireNonNegative, requireOptions, requirePositive } from '../base/index.js';
import { pistonArea } from '../force/index.js';

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

/** An unloading of the hand, and the loading that follows it. */
export interface SimulatedUnloading {
  /** Stress on the way up at which it begins [MPa]. */
  readonly stress: number;
  /** Where it ends, as a share of that stress; default 0.02. */
  readonly to?: number | undefined;
  /** Slope of the piece between [MPa]; default the modulus. */
  readonly modulus?: number | undefined;
  /** Bow of the loop: strain by which the middle of unloading runs behind, and that of reloading ahead [mm/mm]; default 0. */
  readonly bow?: number | undefined;
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

/** What stands around a simulated piece, in every scenario. */
export interface Driven<Frame = SimulatedFrame, Hand = SimulatedHand> {
  /** The frame; default stiff and without slack. */
  readonly frame?: Frame | undefined;
  /** The hand; default even. */
  readonly hand?: Hand | undefined;
  /** The logger; default without noise. */
  readonly logger?: SimulatedLogger | undefined;
  /** Seed of the noise; default 1. */
  readonly seed?: number | undefined;
}

/** @internal Checks frame, hand and logger, and fills in their defaults; `left`: names that a scenario does not know. */
export function simulationSettings(from: string, { frame = {}, hand = {}, logger = {} }: Driven, left: readonly string[] = []) {
  const part = <T extends object>(name: string, given: T, names: readonly (keyof T & string)[]): T => {
    requireOptions(
      from,
      given,
      names.filter((one) => !left.includes(one)),
      name,
    );
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
  const some = (path: string, value: number | undefined, otherwise: number): number => requireNonNegative(from, path, value ?? otherwise);
  const speed = requirePositive(from, 'hand.speed', hand.speed ?? 0.05);
  if (frame.rod !== undefined) requirePositive(from, 'frame.rod', frame.rod);
  const on = logger.extensometer ?? false;
  if (typeof on !== 'boolean') requireOptions(from, on, ['offAt'], 'logger.extensometer');
  /** Strain up to which the extensometer is on; none where there is none. */
  const off = typeof on === 'object' ? requirePositive(from, 'logger.extensometer.offAt', on.offAt) : on ? Infinity : undefined;
  return {
    compliance: some('frame.compliance', frame.compliance, 0),
    slack: some('frame.slack', frame.slack, 0),
    seating: some('frame.seating', frame.seating, 0),
    seatingForce: requirePositive(from, 'frame.seatingForce', frame.seatingForce ?? 300),
    friction: some('frame.friction', frame.friction, 0),
    area: frame.bore === undefined ? undefined : pistonArea({ bore: frame.bore, rod: frame.rod }),
    speed,
    speedAfterYield: requirePositive(from, 'hand.speedAfterYield', hand.speedAfterYield ?? speed),
    strokes: some('hand.strokes', hand.strokes, 0),
    depth: requireBetween(from, 'hand.depth', hand.depth ?? 0.5, 0, 1),
    pauses: requireArray(from, 'hand.pauses', hand.pauses ?? []).map((pause, k) => ({
      stress: requirePositive(from, `hand.pauses[${k}].stress`, pause.stress),
      duration: requirePositive(from, `hand.pauses[${k}].duration`, pause.duration),
      relaxation: requireBetween(from, `hand.pauses[${k}].relaxation`, pause.relaxation ?? 0.02, 0, 0.5),
    })),
    rate: requirePositive(from, 'logger.rate', logger.rate ?? 20),
    forceNoise: some('logger.forceNoise', logger.forceNoise, 0),
    correlation: requireBetween(from, 'logger.noiseCorrelation', logger.noiseCorrelation ?? 0, 0, 0.99),
    motionNoise: some('logger.motionNoise', logger.motionNoise, 0),
    loadStep: some('logger.loadStep', logger.loadStep, 0),
    motionStep: some('logger.motionStep', logger.motionStep, 0),
    lateStart: requireBetween(from, 'logger.lateStart', logger.lateStart ?? 0, 0, 0.9),
    lead: some('logger.lead', logger.lead, 0),
    tail: some('logger.tail', logger.tail, 0),
    repeated: requireBetween(from, 'logger.repeated', logger.repeated ?? 0, 0, 0.9),
    extensometer: off !== undefined,
    offAt: off ?? Infinity,
  };
}

/** @internal Settings of frame, hand and logger with their defaults. */
export type SimulationSettings = ReturnType<typeof simulationSettings>;
