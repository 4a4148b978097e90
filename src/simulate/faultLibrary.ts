import type { FindingCode, TensionRecord, TestPiece } from '../base/index.js';
import { round } from '../geometry/index.js';
import { randomNumbers } from '../numeric/index.js';
import { requireSeed } from './requireSeed.js';
import type { SimulatedMaterial } from './SimulatedMaterial.js';
import type { SimulatedHand, SimulatedLogger } from './settings.js';
import { simulateTension, type TensionScenario } from './simulateTension.js';
import { changed, inOneFile, picked, reversed, sampleAt, slipped } from './spoil.js';

/** A record with a fault, as it would reach a laboratory. */
export interface FaultyTest {
  /** The columns. */
  readonly record: TensionRecord;
  /** The piece as it was written down: wrong where that is the fault. */
  readonly piece: TestPiece;
  /** The parameters that this one was made with. */
  readonly parameters: Readonly<Record<string, number>>;
}

/** One labelled fault. */
export interface Fault {
  /** Its name. */
  readonly name: string;
  /** What went wrong, in a sentence. */
  readonly what: string;
  /** The finding by which it is to be known. */
  readonly expected: FindingCode;
  /** Makes a record with the fault; the same seed gives the same to the last bit. */
  readonly make: (seed?: number) => FaultyTest;
}

const piece: TestPiece = { section: round({ diameter: [8, 8.01, 7.99] }), gaugeLength: 40, parallelLength: 48 };
const STIFFNESS = 1 / (1.2e-5 + 48 / (205_000 * piece.section.area));

/** An invented steel bar without a yield point, and one with. */
const bar: SimulatedMaterial = {
  modulus: 205_000,
  yieldStress: 320,
  hardening: { law: 'swift', prestrain: 0.02, exponent: 0.16 },
  fracture: { extension: 0.24, share: 0.78 },
};

type Part = { readonly hand?: SimulatedHand; readonly logger?: SimulatedLogger; readonly material?: SimulatedMaterial };

/** A sound test of the bar by travel on a soft frame, with the noise of a usual logger. */
function sound(seed: number, { hand = {}, logger = {}, material = bar }: Part = {}): TensionRecord {
  const scenario: TensionScenario = {
    material,
    piece,
    frame: { compliance: 1.2e-5, slack: 0.15 },
    hand: { speed: 0.016, speedAfterYield: 0.1, ...hand },
    logger: { rate: 25, forceNoise: 6, motionNoise: 3e-4, lead: 2, tail: 2, ...logger },
    seed,
  };
  return simulateTension(scenario).record;
}

type Made = Omit<FaultyTest, 'piece'> & { readonly piece?: TestPiece };

/** An entry of the library: the seed draws the parameters, `between` one of them. */
function fault(
  name: string,
  what: string,
  expected: FindingCode,
  make: (seed: number, between: (low: number, high: number) => number) => Made,
): Fault {
  return {
    name,
    what,
    expected,
    make: (seed = 1) => {
      const { uniform } = randomNumbers(requireSeed(name, seed));
      return { piece, ...make(seed, (low, high) => low + (high - low) * uniform()) };
    },
  };
}

/** A step of a reading. */
const inSteps = (step: number) => (value: number) => Math.round(value / step) * step;
/** Highest force of a record. */
const highest = ({ force }: TensionRecord): number => force.reduce((a, b) => Math.max(a, b), 0);

/**
 * Labelled bad records: each fault with the finding by which it is to be known.
 *
 * @remarks
 * All invented, made by the simulator; the seed draws where and how large the fault is. Tests hold that each is named with its code; students can
 * guess before they look.
 */
export const faultLibrary: readonly Fault[] = [
  fault('slip in the grips', 'The piece slips in the jaws on the way up and holds again.', 'grip-slip', (seed, between) => {
    const record = sound(seed);
    const [share, way] = [between(0.35, 0.6), between(0.03, 0.08)];
    return { record: slipped(record, sampleAt(record, share), way), parameters: { share, way } };
  }),
  fault('late tare', 'Zero is pressed after the record has begun, before loading.', 'late-tare', (seed, between) => {
    const record = sound(seed, { logger: { lead: 4 } });
    const [before, seconds] = [between(100, 600), between(1, 2.5)];
    return {
      record: changed(record, { force: (F, i) => (record.time![i]! < seconds ? F + before : F) }),
      parameters: { before, seconds },
    };
  }),
  fault('zero not set', 'The force is not zero before loading.', 'zero-before-loading', (seed, between) => {
    const offset = between(200, 700);
    return { record: changed(sound(seed), { force: (F) => F + offset }), parameters: { offset } };
  }),
  fault('zero drifts', 'The zero of the force wanders during the test.', 'zero-drift', (seed, between) => {
    const record = sound(seed);
    const drift = between(250, 700);
    return { record: changed(record, { force: (F, i) => F + (drift * i) / record.force.length }), parameters: { drift } };
  }),
  fault('zero pressed under load', 'Someone presses zero while the piece is loaded.', 'force-zero-moved', (seed, between) => {
    const record = sound(seed);
    const at = sampleAt(record, between(0.3, 0.6));
    const force = record.force[at]!;
    return { record: changed(record, { force: (F, i) => (i < at ? F : F - force) }), parameters: { sample: at, force } };
  }),
  fault('spike', 'A disturbance lifts a single sample of the force.', 'spikes', (seed, between) => {
    const record = sound(seed);
    const at = Math.round(between(0.15, 0.85) * record.force.length);
    const factor = between(1.15, 1.5);
    return { record: changed(record, { force: (F, i) => (i === at ? F * factor + 500 : F) }), parameters: { sample: at, factor } };
  }),
  fault('loose plug', 'The force reads nothing for a moment.', 'signal-drops-out', (seed, between) => {
    const record = sound(seed);
    const at = sampleAt(record, between(0.6, 0.95));
    const samples = Math.round(between(5, 20));
    return { record: changed(record, { force: (F, i) => (i >= at && i < at + samples ? 0 : F) }), parameters: { sample: at, samples } };
  }),
  fault('force at its end', 'The force channel ends below the strength of the piece.', 'force-saturated', (seed, between) => {
    const record = sound(seed);
    const limit = between(0.75, 0.95) * highest(record);
    return { record: changed(record, { force: (F) => Math.min(F, limit) }), parameters: { limit } };
  }),
  fault('travel at its end', 'The stroke of the travel sensor is too short.', 'motion-saturated', (seed, between) => {
    const record = sound(seed);
    const limit = between(0.3, 0.7) * record.travel![record.travel!.length - 1]!;
    return { record: changed(record, { travel: (x) => Math.min(x, limit) }), parameters: { limit } };
  }),
  fault('coarse force', 'The force has few steps over the test.', 'reading-coarse', (seed, between) => {
    const record = sound(seed);
    const step = highest(record) / between(60, 150);
    return { record: changed(record, { force: inSteps(step) }), parameters: { step } };
  }),
  fault('coarse travel', 'One step of the travel is a good part of the offset.', 'displacement-steps-coarse', (seed, between) => {
    const step = between(0.012, 0.03);
    return { record: changed(sound(seed), { travel: inSteps(step) }), parameters: { step } };
  }),
  fault('clock restarted', 'The clock of the logger starts again in the middle.', 'time-not-increasing', (seed, between) => {
    const record = sound(seed);
    const at = Math.round(between(0.3, 0.7) * record.force.length);
    return { record: changed(record, { time: (t, i) => (i < at ? t : t - record.time![at]!) }), parameters: { sample: at } };
  }),
  fault('milliseconds for seconds', 'From some sample on the clock counts milliseconds.', 'time-unit-changes', (seed, between) => {
    const record = sound(seed);
    const at = Math.round(between(0.3, 0.7) * record.force.length);
    const start = record.time![at]!;
    return { record: changed(record, { time: (t, i) => (i < at ? t : start + 1000 * (t - start)) }), parameters: { sample: at } };
  }),
  fault('whole seconds', 'The clock writes whole seconds only.', 'time-coarse', (seed) => ({
    record: changed(sound(seed), { time: (t) => Math.floor(t) }),
    parameters: { step: 1 },
  })),
  fault('unit of time', 'Milliseconds are read as seconds.', 'time-unit-unlikely', (seed) => ({
    record: changed(sound(seed), { time: (t) => 1000 * t }),
    parameters: { factor: 1000 },
  })),
  fault('gap', 'The logger loses samples.', 'time-gap', (seed, between) => {
    const record = sound(seed);
    const at = Math.round(between(0.2, 0.8) * record.force.length);
    const lost = Math.round(between(15, 60));
    const kept = Array.from({ length: record.force.length - lost }, (_, i) => (i < at ? i : i + lost));
    return { record: picked(record, kept), parameters: { sample: at, lost } };
  }),
  fault('no clock', 'The file has no time.', 'time-missing', (seed) => {
    const { force, travel } = sound(seed);
    return { record: { force, travel }, parameters: {} };
  }),
  fault('repeated samples', 'The logger is faster than the sensors.', 'samples-repeated', (seed, between) => {
    const repeated = between(0.3, 0.7);
    return { record: sound(seed, { logger: { repeated } }), parameters: { repeated } };
  }),
  fault('two clocks', 'Force and travel come from two loggers that are not in step.', 'channels-out-of-step', (seed, between) => {
    const record = sound(seed, { hand: { strokes: 24, depth: 0.7 } });
    const late = Math.round(between(5, 15));
    return {
      record: changed(record, { force: (_, i) => record.force[Math.max(0, i - late)]! }),
      parameters: { late },
    };
  }),
  fault('travel set anew', 'The travel is set to zero during the test.', 'motion-jumps', (seed, between) => {
    const record = sound(seed);
    const at = sampleAt(record, between(0.7, 0.95));
    const lost = record.travel![at]!;
    return { record: changed(record, { travel: (x, i) => (i < at ? x : x - lost) }), parameters: { sample: at, lost } };
  }),
  fault('extensometer slips', 'The knife edges of the extensometer slip.', 'motion-jumps', (seed, between) => {
    const record = sound(seed, { logger: { extensometer: true } });
    const at = sampleAt(record, between(0.4, 0.9));
    const jump = -between(0.03, 0.08);
    return { record: changed(record, { extension: (x, i) => (i < at ? x : x + jump) }), parameters: { sample: at, jump } };
  }),
  fault('several tests', 'Two tests are in one file.', 'several-tests', (seed, between) => {
    const seconds = between(3, 8);
    return { record: inOneFile(sound(seed), sound(seed + 1), seconds), parameters: { seconds } };
  }),
  fault('stopped early', 'The record ends in the neck, before the piece breaks.', 'stopped-before-fracture', (seed, between) => {
    const record = sound(seed);
    const share = between(0.8, 0.9);
    return {
      record: picked(
        record,
        Array.from({ length: Math.round(share * record.force.length) }, (_, i) => i),
      ),
      parameters: { share },
    };
  }),
  fault('stopped before the maximum', 'The record ends while the force still rises.', 'maximum-at-end', (seed, between) => {
    const record = sound(seed);
    const share = between(0.85, 0.95);
    return {
      record: picked(
        record,
        Array.from({ length: sampleAt(record, share) + 1 }, (_, i) => i),
      ),
      parameters: { share },
    };
  }),
  fault('pause at yield', 'The hand rests just at the proof strength.', 'pause-near-yield', (seed, between) => {
    const [stress, duration] = [between(321, 326), between(2, 5)];
    return { record: sound(seed, { hand: { pauses: [{ stress, duration }] } }), parameters: { stress, duration } };
  }),
  fault('pause like a yield point', 'The force falls while the crosshead stands still.', 'yield-fall-in-pause', (seed, between) => {
    const [stress, duration, relaxation] = [between(220, 290), between(2, 5), between(0.015, 0.03)];
    return { record: sound(seed, { hand: { pauses: [{ stress, duration, relaxation }] } }), parameters: { stress, duration, relaxation } };
  }),
  fault('started late', 'The recorder is switched on under load.', 'record-starts-late', (seed, between) => {
    const lateStart = between(0.1, 0.3);
    return { record: sound(seed, { logger: { lateStart } }), parameters: { lateStart } };
  }),
  fault('drive goes back', 'The hand lets the drive go back and pulls again.', 'drive-reversed', (seed, between) => {
    const record = sound(seed);
    const way = between(0.05, 0.12);
    const at = sampleAt(record, between(0.4, 0.9));
    return { record: reversed(record, at, way, STIFFNESS), parameters: { sample: at, way } };
  }),
  fault('play in the drive', 'The drive goes back through its play; the force hardly follows.', 'motion-backlash', (seed, between) => {
    const record = sound(seed);
    const way = between(0.15, 0.3);
    const at = sampleAt(record, between(0.4, 0.9));
    return { record: reversed(record, at, way, 0.15 * STIFFNESS), parameters: { sample: at, way } };
  }),
  fault('sign of the force', 'Pull counts as negative.', 'force-sign-reversed', (seed) => ({
    record: changed(sound(seed), { force: (F) => -F }),
    parameters: { factor: -1 },
  })),
  fault('sign of the travel', 'The travel counts the other way.', 'motion-sign-reversed', (seed) => ({
    record: changed(sound(seed), { travel: (x) => 25 - x }),
    parameters: { factor: -1 },
  })),
  fault('kilonewton for newton', 'The force is in kN where N was expected.', 'force-looks-like-kilonewton', (seed) => ({
    record: changed(sound(seed), { force: (F) => F / 1000 }),
    parameters: { factor: 0.001 },
  })),
  fault('per cent for ratio', 'The strain is in % where a ratio was expected.', 'strain-looks-like-percent', (seed) => {
    const { force, extension, time } = sound(seed, { logger: { extensometer: true } });
    return { record: { force, strain: extension!.map((x) => (100 * x) / 40), time }, parameters: { factor: 100 } };
  }),
  fault('noisy force', 'The force signal is disturbed.', 'signal-noisy', (seed, between) => {
    const forceNoise = between(200, 500);
    return { record: sound(seed, { logger: { forceNoise } }), parameters: { forceNoise } };
  }),
  fault('slow logger', 'The elastic part has few samples.', 'few-points-in-elastic-part', (seed, between) => {
    const rate = between(1, 1.8);
    return { record: sound(seed, { logger: { rate, motionNoise: 0, forceNoise: 0 } }), parameters: { rate } };
  }),
  fault('pulled in jerks', 'The hand pulls in jerks.', 'uneven-loading', (seed, between) => {
    const [strokes, depth] = [between(15, 25), between(0.9, 1)];
    return { record: sound(seed, { hand: { strokes, depth } }), parameters: { strokes, depth } };
  }),
  fault('pulled too fast', 'The hand rushes through yield.', 'strain-rate-high', (seed, between) => {
    const speed = between(0.3, 0.6);
    return {
      record: sound(seed, { hand: { speed, speedAfterYield: 4 * speed }, logger: { rate: 500 } }),
      parameters: { speed },
    };
  }),
];
