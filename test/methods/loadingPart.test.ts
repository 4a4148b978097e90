import { describe, expect, test } from 'vitest';
import {
  analyseCurve,
  analyseTension,
  joinSlips,
  loadingEnvelope,
  monteCarloTension,
  whatIf,
  type TensionRecord,
} from '../../src/index.js';
import { simulateTension, type TensionScenario } from '../../src/simulate/index.js';
import { seeded } from '../support/random.js';
import { COMPLIANCE, mildSteel, roundPiece } from '../support/records.js';

const scenario: TensionScenario = {
  material: mildSteel,
  piece: roundPiece,
  frame: { compliance: COMPLIANCE, slack: 0.2 },
  hand: { speed: 0.05, speedAfterYield: 0.1 },
  logger: { rate: 30, extensometer: true, lead: 1, tail: 1, forceNoise: 0, motionNoise: 0 },
  seed: 3,
};
const { record: sound, truth } = simulateTension(scenario);
const AREA = roundPiece.section.area;
const LENGTH = roundPiece.parallelLength ?? roundPiece.gaugeLength;
const BASE = roundPiece.extensometerLength ?? roundPiece.gaugeLength;
const options = { frameCompliance: COMPLIANCE };
const byTravel = ({ time, force, travel }: TensionRecord): TensionRecord => ({ time, force, travel });
const byExtensometer = ({ time, force, extension }: TensionRecord): TensionRecord => ({ time, force, extension });

type Row = readonly [force: number, travel: number, extension: number];

/** The record with rows put in after some samples; every sample of it is still there. */
function withRows(record: TensionRecord, rowsAfter: (i: number) => readonly Row[], after: (i: number) => number = () => 0): TensionRecord {
  const force: number[] = [];
  const travel: number[] = [];
  const extension: number[] = [];
  for (let i = 0; i < record.force.length; i += 1) {
    force.push(record.force[i]!);
    travel.push(record.travel![i]! + after(i));
    extension.push(record.extension![i]!);
    for (const [F, x, e] of rowsAfter(i)) {
      force.push(F);
      travel.push(x);
      extension.push(e);
    }
  }
  const of = (column: number[]) => Float64Array.from(column);
  return { time: of(force.map((_, i) => i / 30)), force: of(force), travel: of(travel), extension: of(extension) };
}

/** Elastic motions [mm] that go with a fall of the force: of the crosshead and of the extensometer. */
const elastic = (fall: number): readonly [number, number] => {
  const strain = fall / AREA / scenario.material.modulus;
  return [strain * LENGTH + COMPLIANCE * fall, strain * BASE];
};

/** A stroke: the ram goes back, the force falls by a share, and both come again along the elastic line. */
function stroke(record: TensionRecord, i: number, share: number): Row[] {
  const down = Array.from({ length: 8 }, (_, k) => (k + 1) / 8);
  return [...down, ...down.slice(0, -1).reverse()].map((part): Row => {
    const fall = part * share * record.force[i]!;
    const [x, e] = elastic(fall);
    return [record.force[i]! - fall, record.travel![i]! - x, record.extension![i]! - e];
  });
}

const maximum = sound.force.indexOf(Math.max(...sound.force));
const stroked = (share: number, every: number) =>
  withRows(sound, (i) => (i > 60 && i < maximum && i % every === 0 ? stroke(sound, i, share) : []));

describe('strokes of a pump, the ram going back between them', () => {
  test.each([
    ['travel', byTravel, 0.05],
    ['travel', byTravel, 0.15],
    ['extensometer', byExtensometer, 0.05],
    ['extensometer', byExtensometer, 0.15],
  ] as const)('by %s the properties are those of the record without them', (_, columns, share) => {
    const without = analyseTension(columns(sound), roundPiece, options);
    const found = analyseTension(columns(stroked(share, 23)), roundPiece, options);
    for (const name of [
      'upperYieldStrength',
      'lowerYieldStrength',
      'tensileStrength',
      'uniformExtension',
      'totalExtensionAtFracture',
    ] as const)
      expect(found[name]?.value, name).toBeCloseTo(without[name]!.value, 6);
    expect(found.yieldPointExtension?.value).toBeCloseTo(without.yieldPointExtension!.value, 3);
    expect(found.modulus!.value / without.modulus!.value).toBeCloseTo(1, 2);
    expect(found.hardening!.exponent.value).toBeCloseTo(without.hardening!.exponent.value, 4);
    expect(found.lowerYieldStrength!.value).toBeCloseTo(truth.lowerYieldStrength!, 0);
    // the curve keeps them, the trail says how many samples were left out, and what is counted in samples fits the curve
    expect(found.curve.stress.length).toBeGreaterThan(sound.force.length);
    const step = found.trail.find(({ code }) => code === 'excursions-not-evaluated')!;
    expect(step.values['samples']).toBeGreaterThan(100);
    expect(found.curve.stress[found.upperYieldStrength!.index]).toBe(found.upperYieldStrength!.value);
    expect(found.curve.stress[found.maximumIndex]).toBe(found.tensileStrength!.value);
    expect(found.curve.strain[found.fracture!.index]).toBe(found.fracture!.strain);
    expect(found.curve.strain[found.modulusWindow!.first]).toBe(found.modulusWindow!.strainLimits[0]);
    expect(found.curve.stress[found.modulusWindow!.last]).toBe(found.modulusWindow!.stressLimits[1]);
  });

  test('a record without excursions has no step about them', () => {
    expect(analyseTension(byTravel(sound), roundPiece, options).trail.map(({ code }) => code)).not.toContain('excursions-not-evaluated');
  });

  test('the envelope leaves strokes on the plateau out too, where none passes the force before it', () => {
    const raw = byTravel(stroked(0.15, 23));
    const { trail, record } = loadingEnvelope(raw);
    expect(trail.map(({ code }) => code)).toEqual(['excursions-left-out']);
    expect(record.force.length).toBe(raw.force.length - (trail[0]!.values['samples'] as number));
    const { lowerYieldStrength } = analyseTension(record, roundPiece, options);
    expect(lowerYieldStrength!.value).toBeCloseTo(truth.lowerYieldStrength!, 0);
  });
});

describe('strokes whose way back the noise of the motion hides', () => {
  /** With noise of 6 N and of so many mm. */
  const noisy = ({ time, force, travel, extension }: TensionRecord, noise: number): TensionRecord => {
    const { normal } = seeded(5);
    const with_ = (column: Float64Array, deviation: number) => column.map((value) => value + deviation * normal());
    return { time, force: with_(force, 6), travel: with_(travel!, noise), extension: with_(extension!, noise) };
  };
  /** Serrations instead: the force falls within a sample while the piece yields, and comes back along the elastic line farther on. */
  function serrated(share: number, every: number): TensionRecord {
    let ahead = 0;
    const first = sound.force.findIndex((F) => F / AREA > 300);
    return withRows(
      sound,
      (i) => {
        if (i < first || i >= maximum || i % every !== 0) return [];
        const falls = Array.from({ length: 8 }, (_, k) => share * (1 - k / 8) * sound.force[i]!);
        ahead += elastic(falls[0]!)[0];
        return falls.map((fall): Row => [
          sound.force[i]! - fall,
          sound.travel![i]! + ahead - elastic(fall)[0],
          sound.extension![i]! + ahead - elastic(fall)[1],
        ]);
      },
      () => ahead,
    );
  }

  // at 40 kN/mm a stroke of 1 % is a way of 3.5 µm
  test.each([
    [0.01, 0.002],
    [0.01, 0.005],
    [0.02, 0.0005],
    [0.02, 0.005],
    [0.04, 0.005],
  ])('of %s of the force, noise of %s mm: ReL and Ae are those of the record without them', (share, noise) => {
    const found = analyseTension(byTravel(noisy(stroked(share, 23), noise)), roundPiece, options);
    // ReL is the lowest of some hundred samples with noise of 0.12 MPa
    expect(Math.abs(found.lowerYieldStrength!.value - truth.lowerYieldStrength!)).toBeLessThan(1);
    expect(Math.abs(found.yieldPointExtension!.value - 0.014)).toBeLessThan(0.0008);
    expect(found.findings.map(({ code }) => code)).not.toContain('lower-yield-in-dips');
  });

  test.each([0.01, 0.02, 0.04])('serrations of %s are the material: ReL is the lowest of them', (share) => {
    for (const noise of [0.0005, 0.005]) {
      const found = analyseTension(byTravel(noisy(serrated(share, 23), noise)), roundPiece, options);
      expect(found.lowerYieldStrength!.value / truth.lowerYieldStrength!).toBeCloseTo(1 - share, 2);
      expect(found.findings.map(({ code }) => code)).not.toContain('drive-reversed');
      expect(found.findings.map(({ code }) => code)).not.toContain('lower-yield-in-dips');
    }
  });

  test('where no line tells it, ReL stands with the doubt, as a finding and in its uncertainty', () => {
    // on 40 mm of the piece a stroke of 1 % is 0.5 µm
    const record = byExtensometer(noisy(stroked(0.01, 23), 0.005));
    const found = analyseTension(record, roundPiece, { uncertainty: {} });
    const ReL = found.lowerYieldStrength!;
    expect(ReL.value / truth.lowerYieldStrength!).toBeCloseTo(0.99, 2);
    const { values, severity } = found.findings.find(({ code }) => code === 'lower-yield-in-dips')!;
    expect(severity).toBe('caution');
    expect(values['lowest']).toBe(ReL.value);
    expect(Math.abs((values['level'] as number) - truth.lowerYieldStrength!)).toBeLessThan(1);
    const line = found.uncertainty!['ReL']!.lines.find(({ input }) => input === 'falls that may be strokes or slips')!;
    expect(line.standardUncertainty * Math.sqrt(3)).toBeCloseTo((values['level'] as number) - ReL.value, 9);
    expect(ReL.standardUncertainty).toBeGreaterThanOrEqual(line.standardUncertainty);
    expect(Math.abs(ReL.value - truth.lowerYieldStrength!)).toBeLessThan(2 * ReL.standardUncertainty!);
    // without other doubts stated too
    expect(analyseTension(record, roundPiece).lowerYieldStrength!.standardUncertainty).toBeCloseTo(line.standardUncertainty, 9);
  });
});

describe('an unloading loop after yielding', () => {
  // a metal without yield point; the loop begins at a plastic strain of 0.1 to 0.2 %
  const soft: TensionScenario = {
    ...scenario,
    material: {
      modulus: 70_000,
      yieldStress: 150,
      hardening: { law: 'swift', prestrain: 0.002, exponent: 0.15 },
      fracture: { extension: 0.2, share: 0.8 },
    },
  };
  const plain = simulateTension(soft);
  const looped = (to: number) =>
    simulateTension({ ...soft, hand: { ...soft.hand, unloadings: [{ stress: 0.99 * plain.truth.proofStrengths[1]!.stress, to }] } });

  test.each([0.02, 0.15, 0.5])(
    'down to %s of its stress does not take the elastic line: Rp0.2, E and n are those of the first loading',
    (to) => {
      const found = analyseTension(byExtensometer(looped(to).record), roundPiece);
      expect(found.proofStrengths[0]!.value / plain.truth.proofStrengths[1]!.stress).toBeCloseTo(1, 3);
      expect(found.modulus!.value / 70_000).toBeCloseTo(1, 2);
      const without = analyseTension(byExtensometer(plain.record), roundPiece);
      expect(found.hardening!.exponent.value).toBeCloseTo(without.hardening!.exponent.value, 3);
    },
  );

  test('budgets, trials and other evaluations go the same way', () => {
    const { record } = looped(0.1);
    const uncertainty = { force: 0.005, noise: { force: 5, displacement: 2e-4 } };
    const found = analyseTension(byExtensometer(record), roundPiece, { uncertainty });
    const mean = monteCarloTension(byExtensometer(record), roundPiece, { uncertainty, trials: 60 }).distributions['Rp0.2']!.mean;
    const proof = found.proofStrengths[0]!;
    expect(Math.abs(mean! - proof.value)).toBeLessThan(proof.standardUncertainty!);
    const offset = whatIf(found).find(({ change }) => change.kind === 'offset' && change.offset === 0.001)!;
    const own = analyseTension(byExtensometer(record), roundPiece, { offsets: [0.001] }).proofStrengths[0]!.value;
    expect(offset.values[0]!.value).toBeCloseTo(own, 6);
  });
});

describe('a curve that is given goes the same road', () => {
  const curveOf = ({ force, extension }: TensionRecord) => ({
    stress: force.map((F) => F / AREA),
    strain: Float64Array.from(extension!, (e) => e / BASE),
  });
  const withLoops = (unloadings: NonNullable<TensionScenario['hand']>['unloadings']) =>
    curveOf(simulateTension({ ...scenario, hand: { ...scenario.hand, unloadings } }).record);
  const without = analyseCurve(curveOf(sound));
  const loops = [
    { stress: 180, to: 0.1 },
    { stress: 290, to: 0.5 },
    { stress: 320, to: 0.1 },
  ];

  test('loops on the elastic line, on the plateau and in the hardening range leave every property as it is', () => {
    const curve = withLoops(loops);
    const found = analyseCurve(curve);
    for (const name of ['upperYieldStrength', 'lowerYieldStrength', 'yieldPointExtension', 'tensileStrength'] as const)
      expect(found[name]?.value, name).toBeCloseTo(without[name]!.value, 6);
    expect(found.modulus!.value / scenario.material.modulus).toBeCloseTo(1, 6);
    expect(found.yieldPointExtension!.value).toBeCloseTo(0.014, 3);
    expect(found.totalExtensionAtFracture!.value).toBeCloseTo(without.totalExtensionAtFracture!.value, 6);
    expect(found.hardening!.exponent.value).toBeCloseTo(without.hardening!.exponent.value, 3);
    // the curve keeps them, and the trail names them
    expect(found.curve.stress).toEqual(curve.stress);
    expect(found.curve.stress[found.maximumIndex]).toBe(found.tensileStrength!.value);
    const { values } = found.trail.find(({ code }) => code === 'excursions-not-evaluated')!;
    expect(values['count']).toBe(loops.length);
    expect(String(values['ranges']).split(', ')).toHaveLength(loops.length);
    expect(without.trail.map(({ code }) => code)).toEqual(['origin-moved']);
  });

  test('a finding about the evaluation counts samples of the whole curve', () => {
    const found = analyseCurve(withLoops([{ stress: 100, to: 0.3 }]), { thresholds: { elasticPoints: 1000 } });
    expect(found.modulusWindow!.last - found.modulusWindow!.first + 1).toBeGreaterThan(found.modulusWindow!.points);
    const { range } = found.findings.find(({ code }) => code === 'few-points-in-elastic-part')!;
    expect(range).toEqual([found.modulusWindow!.first, found.modulusWindow!.last]);
  });
});

describe('a slip in the grips', () => {
  /** At a force on the way up the piece slips by so much; the force falls by a share and comes back along the elastic line. */
  function slipped(at: number, share: number, way: number): TensionRecord {
    const i = sound.force.findIndex((F) => F / AREA > at);
    const rows = Array.from({ length: 20 }, (_, k): Row => {
      const fall = share * (1 - k / 20) * sound.force[i]!;
      const [x, e] = elastic(fall);
      return [sound.force[i]! - fall, sound.travel![i]! + way - x, sound.extension![i]! - e];
    });
    return withRows(
      sound,
      (k) => (k === i ? rows : []),
      (k) => (k > i ? way : 0),
    );
  }
  const without = analyseTension(byTravel(sound), roundPiece, options);

  test.each([
    [250, 0.1, 0.1],
    [250, 0.2, 0.3],
    [270, 0.4, 0.35],
  ])('at %s MPa is no yield: forces stand, what counts small strains is withheld, with the remedy', (at, share, way) => {
    const record = byTravel(slipped(at, share, way));
    const found = analyseTension(record, roundPiece, options);
    for (const name of ['upperYieldStrength', 'lowerYieldStrength', 'tensileStrength', 'yieldPointExtension'] as const)
      expect(found[name]?.value, name).toBeCloseTo(without[name]!.value, 6);
    expect(found.proofStrengths).toEqual([]);
    expect(found.hardening).toBeUndefined();
    const finding = (code: string) => found.findings.find((one) => one.code === code)!;
    expect(finding('withheld-after-slip')).toMatchObject({
      severity: 'fault',
      values: { symbols: expect.stringContaining('Rp0.2') as string },
    });
    expect(finding('withheld-after-slip').remedy).toContain('repairs.slips');
    // the extensions stand, too large by the slip, as the finding says
    const surplus = found.totalExtensionAtMaximumForce!.value - without.totalExtensionAtMaximumForce!.value;
    expect(finding('extensions-hold-slip').values['strain']).toBeCloseTo(surplus, 4);
    const repaired = analyseTension(record, roundPiece, { ...options, repairs: { slips: true } });
    expect(repaired.proofStrengths[0]!.value).toBeCloseTo(without.proofStrengths[0]!.value, 0);
    // another evaluation withholds it too
    expect(whatIf(found).flatMap(({ values }) => values.map(({ symbol }) => symbol))).not.toContain('Rp0.2');
  });

  test('on an extensometer it is an unloading of the piece, and nothing is withheld', () => {
    const record = slipped(250, 0.2, 0.3);
    const found = analyseTension(record, roundPiece, options);
    const own = analyseTension(sound, roundPiece, options);
    expect(found.proofStrengths[0]!.value).toBeCloseTo(own.proofStrengths[0]!.value, 1);
    expect(found.findings.map(({ code }) => code)).not.toContain('withheld-after-slip');
    expect(found.upperYieldStrength!.value).toBeCloseTo(own.upperYieldStrength!.value, 6);
  });

  test('serrations that an extensometer reads after yielding are the material, and joinSlips leaves its strain', () => {
    // four sudden falls by 2 % that come back along the elastic line, after the strain of the band
    const starts = [0.5, 0.6, 0.7, 0.8].map((share) => Math.round(share * maximum));
    const [force, extension]: [number[], number[]] = [[], []];
    let band = 0;
    sound.force.forEach((F, i) => {
      force.push(F);
      extension.push(sound.extension![i]! + band);
      if (!starts.includes(i)) return;
      band += 0.05;
      for (let k = 0; k < 8; k += 1) {
        const fall = 0.02 * (1 - k / 8) * F;
        force.push(F - fall);
        extension.push(sound.extension![i]! + band - elastic(fall)[1]);
      }
    });
    const record = { time: force.map((_, i) => i / 30), force, extension };
    expect(analyseTension(record, roundPiece).findings.map(({ code }) => code)).not.toContain('grip-slip');
    expect(joinSlips(record).trail).toEqual([]);
  });
});

describe('a zero set under load', () => {
  test('the fall to it is no yield', () => {
    const i = sound.force.findIndex((F) => F / AREA > 180);
    const fall = sound.force[i]!;
    const record = { ...byTravel(sound), force: sound.force.map((F, k) => (k > i ? F - fall : F)) };
    const found = analyseTension(record, roundPiece, options);
    expect(found.findings.map(({ code }) => code)).toContain('force-zero-moved');
    // the yield point is there, lower by what was set to zero
    expect(found.upperYieldStrength!.value).toBeCloseTo(truth.upperYieldStrength! - fall / AREA, 0);
  });
});
