import { describe, expect, test } from 'vitest';
import { analyseTension, checkRecord, replaceSpikes, round, type TensionRecord } from '../../src/index.js';
import { seeded } from '../support/random.js';
import { sampleAt, slipped } from '../../src/simulate/spoil.js';
import { simulateTension, usualMaterials, type SimulatedHand, type SimulatedMaterial } from '../../src/simulate/index.js';

const piece = { section: round({ diameter: 8 }), gaugeLength: 40, parallelLength: 48 };
const material = (name: string): SimulatedMaterial => usualMaterials.find((one) => one.name === name)!.make(0.5, 0.5);
const [luders, smooth] = [material('structural steel'), material('cold-drawn steel')];
const COMPLIANCE = 1.2e-5;

/** A sound record by travel, with the noise of a usual logger. */
function sound(metal: SimulatedMaterial, rate: number, hand: SimulatedHand = {}): TensionRecord {
  return simulateTension({
    material: metal,
    piece,
    frame: { compliance: COMPLIANCE, slack: 0.15 },
    hand: { speed: 0.016, speedAfterYield: 0.1, ...hand },
    logger: { rate, forceNoise: 6, motionNoise: 3e-4, lead: 2, tail: 2 },
    seed: 3,
  }).record;
}

const halfSine = (share: number): number => Math.sin(Math.PI * share);
const triangle = (share: number): number => 1 - Math.abs(2 * share - 1);
const ramp = (share: number): number => share;

/** The record with its force disturbed over some samples. */
function disturbed(record: TensionRecord, at: number, samples: number, height: number, shape: (share: number) => number): TensionRecord {
  return {
    ...record,
    force: record.force.map((F, i) => (i >= at && i < at + samples ? F + height * shape((i - at + 1) / (samples + 1)) : F)),
  };
}

const bulges = (record: TensionRecord) => checkRecord(record).filter(({ code }) => code === 'force-bulges');
const highest = ({ force }: TensionRecord): number => Math.max(...force);

describe('a disturbance of the force that is not flat', () => {
  // on the elastic line of 100 samples a second the force rises by 0.02 % of its highest a sample
  test.each([
    ['half sine', halfSine, 20, 0.1],
    ['half sine', halfSine, 60, 0.2],
    ['triangle', triangle, 30, 0.1],
    ['dip', halfSine, 20, -0.1],
    ['dip', triangle, 40, -0.2],
  ] as const)('a %s on the elastic line is told with its place, and evaluated without (%#)', (_, shape, samples, share) => {
    const record = sound(smooth, 100);
    const at = sampleAt(record, 0.4);
    const spoilt = disturbed(record, at, samples, share * highest(record), shape);
    const [found, ...more] = bulges(spoilt);
    expect(more).toEqual([]);
    expect(Math.abs(found!.range![0] - at)).toBeLessThanOrEqual(samples / 4);
    expect(Math.abs(found!.range![1] - at - samples)).toBeLessThanOrEqual(samples / 4);
    const [clean, result] = [analyseTension(record, piece), analyseTension(spoilt, piece)];
    expect(result.findings.map(({ code }) => code)).toContain('force-bulges');
    expect(Math.abs(result.proofStrengths[0]!.value / clean.proofStrengths[0]!.value - 1)).toBeLessThan(0.01);
    // asked not to replace anything, the evaluation takes the record as it is, and says so all the same
    const kept = analyseTension(spoilt, piece, { repairs: { spikes: false } });
    expect(kept.findings.map(({ code }) => code)).toContain('force-bulges');
    expect(kept.curve.stress[found!.range![0] + (samples >> 1)]).not.toBe(result.curve.stress[found!.range![0] + (samples >> 1)]);
  });

  test.each([
    ['half sine', halfSine],
    ['triangle', triangle],
    ['ramp', ramp],
  ] as const)('a %s at the maximum, longer than piece and frame would need, does not raise Rm', (_, shape) => {
    for (const metal of [luders, smooth])
      for (const samples of [10, 30, 100]) {
        const record = sound(metal, 25);
        const at = sampleAt(record, 1) - (samples >> 1);
        const spoilt = disturbed(record, at, samples, 0.1 * highest(record), shape);
        const [clean, result] = [analyseTension(record, piece), analyseTension(spoilt, piece)];
        expect(bulges(spoilt)).toHaveLength(1);
        expect(Math.abs(result.tensileStrength!.value / clean.tensileStrength!.value - 1)).toBeLessThan(0.02);
      }
  });

  test('what the piece, the hand and the frame do is none', () => {
    const hands: SimulatedHand[] = [
      {},
      { strokes: 30, depth: 0.9 },
      { pauses: [{ stress: 150, duration: 0.4, relaxation: 0.04 }] },
      { unloadings: [{ stress: 200 }, { stress: 380 }] },
    ];
    for (const metal of [luders, smooth])
      for (const rate of [10, 100]) for (const hand of hands) expect(bulges(sound(metal, rate, hand))).toEqual([]);
    // a metal that hardens from the start shows no elastic line: nothing is told of it
    const soft: SimulatedMaterial = { modulus: 118_000, hardening: { law: 'hollomon', strengthCoefficient: 450, exponent: 0.5 } };
    const record = sound(soft, 100);
    expect(bulges(disturbed(record, sampleAt(record, 0.4), 20, 0.1 * highest(record), halfSine))).toEqual([]);
  });

  test('a neck that begins suddenly is none: its corner lies on the curve of either side', () => {
    const corner = 0.1;
    for (const [noise, fall] of [
      [0.15, 0.5],
      [0.5, 0.2],
      [0.5, 0.8],
    ] as const) {
      const { normal } = seeded(7);
      const stress = (e: number): number =>
        e <= corner ? Math.min(200_000 * e, 400 + 900 * (e - 0.002)) : 488.2 * (1 - (fall * (e - corner)) / 0.05);
      const strain = Array.from({ length: 1500 }, (_, i) => i * 1e-4);
      const record = {
        time: strain.map((_, i) => i * 0.1),
        force: strain.map((e) => 78.54 * (stress(e) + noise * normal())),
        extension: strain.map((e) => 50 * e + 3e-4 * normal()),
      };
      expect(checkRecord(record).map(({ code }) => code)).not.toContain('force-bulges');
    }
  });

  test('more than five are a way of the drive or of the metal', () => {
    const record = sound(smooth, 100);
    const at = sampleAt(record, 0.2);
    const several = (count: number): TensionRecord =>
      Array.from({ length: count }, (_, k) => at + 120 * k).reduce(
        (one, begin) => disturbed(one, begin, 20, 0.1 * highest(record), halfSine),
        record,
      );
    expect(bulges(several(5))).toHaveLength(5);
    expect(bulges(several(6))).toEqual([]);
  });

  test('a force that falls while the motion stands, and rises without it, is friction of the drive', () => {
    const record = sound(smooth, 100);
    const at = sampleAt(record, 0.4);
    expect(bulges(disturbed(record, at, 20, -0.1 * highest(record), halfSine))).toHaveLength(1);
    // the same, while the motion stands for so long
    const stand = (column: Float64Array, step: number): Float64Array =>
      Float64Array.from([
        ...column.subarray(0, at),
        ...Array.from({ length: 20 }, (_, k) => column[at]! + k * step),
        ...column.subarray(at).map((value) => value + 20 * step),
      ]);
    const stood = { force: stand(record.force, 0), travel: stand(record.travel!, 0), time: stand(record.time!, 0.01) };
    expect(bulges(disturbed(stood, at, 20, -0.1 * highest(record), halfSine))).toEqual([]);
  });
});

describe('serrations between distant samples', () => {
  const stiffness = 1 / (COMPLIANCE + 48 / (207_000 * piece.section.area));
  /** Falls of the force beyond yielding, from each of which it comes back along the elastic line. */
  function serrated(record: TensionRecord, share: number, every: number): TensionRecord {
    const force = record.force.slice();
    const top = sampleAt(record, 1);
    for (let i = sampleAt(record, 0.85); i < top; i += every) {
      const low = force[i]! * (1 - share);
      for (let k = i; k < top; k += 1) force[k] = Math.min(record.force[k]!, low + stiffness * (record.travel![k]! - record.travel![i]!));
    }
    return { ...record, force };
  }

  test('are the metal, and stay', () => {
    const record = serrated(sound(luders, 5), 0.05, 25);
    expect(replaceSpikes(record).record.force).toEqual(record.force);
    expect(checkRecord(record).map(({ code }) => code)).not.toContain('spikes');
  });

  test('a sample above all that the piece bore before regains nothing, and one that the motion does not explain is none', () => {
    const record = sound(luders, 5);
    const at = sampleAt(record, 0.95);
    const one = (by: number): string[] =>
      checkRecord({ ...record, force: record.force.map((F, i) => (i === at ? F + by * highest(record) : F)) }).map(({ code }) => code);
    expect(one(0.1)).toContain('spikes');
    expect(one(-0.3)).toContain('spikes');
    expect(one(-0.04)).not.toContain('spikes');
  });
});

describe('a force that is gone and back within a sample or two', () => {
  const record = sound(luders, 200);
  const at = sampleAt(record, 0.6);
  /** The force off for some samples, over one or two samples each way. */
  const off = (samples: number, steps: number, rest = 0.01): TensionRecord => ({
    ...record,
    force: record.force.map((F, i) => {
      const inside = Math.min(i - at + 1, at + samples - i);
      return inside <= 0 ? F : inside < steps ? (1 - inside / steps) * F : rest * F;
    }),
  });

  test.each([
    [150, 1],
    [150, 2],
    [600, 1],
    [600, 2],
  ])('lost its contact, for %i samples, in steps of %i: no other test begins so', (samples, steps) => {
    const codes = checkRecord(off(samples, steps)).map(({ code }) => code);
    expect(codes).toContain('signal-drops-out');
    expect(codes).not.toContain('several-tests');
    // a line stands in its place
    expect(replaceSpikes(off(samples, steps)).record.force[at + samples / 2]).toBeGreaterThan(0.5 * record.force[at]!);
  });

  test('what goes and comes in many samples, or comes back to something else, is another test, or a zero', () => {
    expect(checkRecord(off(600, 12)).map(({ code }) => code)).toEqual(expect.arrayContaining(['several-tests']));
    const force = record.force.map((F, i) => (i >= at && i < at + 600 ? 0 : i >= at + 600 ? 0.4 * F : F));
    expect(checkRecord({ ...record, force }).map(({ code }) => code)).not.toContain('signal-drops-out');
  });
});

describe('a slip in the grips', () => {
  const record = simulateTension({
    material: smooth,
    piece,
    frame: { compliance: COMPLIANCE },
    hand: { speed: 0.016, speedAfterYield: 0.1 },
    logger: { rate: 25, forceNoise: 15, motionNoise: 3e-4, extensometer: true, lead: 2, tail: 2 },
    seed: 4,
  }).record;

  test.each([0.025, 0.05])(
    'of %f mm is told where its way stands out, and an extensometer alone, which does not see the jaws, tells no way',
    (way) => {
      const { force, travel, extension, time } = slipped(record, sampleAt(record, 0.5), way);
      const told = (columns: TensionRecord) => checkRecord(columns).filter(({ code }) => code === 'grip-slip' || code === 'drive-reversed');
      const [seen] = told({ force, travel, time });
      expect(seen!.code).toBe('grip-slip');
      expect(Math.abs((seen!.values['way'] as number) - way)).toBeLessThan(0.002);
      const [unseen, ...more] = told({ force, extension, time });
      expect(more).toEqual([]);
      expect(unseen!.code).toBe('drive-reversed');
      // a reading in steps that hides even that has no slip to speak of
      const inSteps = extension!.map((x) => Math.round(x / 0.005) * 0.005);
      expect(told({ force, extension: inSteps, time }).map(({ code }) => code)).not.toContain('grip-slip');
      // the piece shortens by its share of the fall
      const elastic = ((unseen!.values['fall'] as number) * 40) / (203_000 * piece.section.area);
      expect(Math.abs((unseen!.values['way'] as number) / elastic - 1)).toBeLessThan(0.2);
    },
  );
});

describe('a hand that holds before yielding', () => {
  const held = (metal: SimulatedMaterial, stress: number, relaxation: number, seed: number) => {
    const { record } = simulateTension({
      material: metal,
      piece,
      frame: { compliance: COMPLIANCE },
      hand: { speed: 0.016, speedAfterYield: 0.1, pauses: [{ stress, duration: 5, relaxation }] },
      logger: { rate: 25, forceNoise: 25, motionNoise: 2e-4, extensometer: true, lead: 2, tail: 2 },
      seed,
    });
    return analyseTension(record, piece).findings.map(({ code }) => code);
  };

  test('at a preload spoils no yield point, just before it does', () => {
    for (const share of [0.05, 0.1, 0.5]) {
      const codes = held(luders, share * luders.yieldStress!, 0.01, 1);
      expect(codes).toContain('pause');
      expect(codes).not.toContain('pause-near-yield');
    }
    expect(held(luders, 0.98 * luders.yieldPoint!.upper, 0.01, 1)).toContain('pause-near-yield');
  });

  test('and lets nothing fall but noise has no yield point to doubt; one that relaxes has', () => {
    for (const seed of [1, 2, 3]) {
      expect(held(smooth, 0.3 * smooth.yieldStress!, 0, seed)).not.toContain('yield-fall-in-pause');
      expect(held(smooth, 0.9 * smooth.yieldStress!, 0.03, seed)).toContain('yield-fall-in-pause');
    }
  });
});
