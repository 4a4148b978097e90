import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { analyseTension } from '../../src/methods/index.js';
import { required, type FindingCode } from '../../src/base/index.js';
import { round } from '../../src/geometry/index.js';
import {
  fitCompliance,
  frameTravel,
  requireFrameCompliance,
  modulusUncertainty,
  removeCompliance,
  type Compliance,
  type ComplianceOptions,
  type CompliancePull,
} from '../../src/curve/index.js';
import { lineFit } from '../../src/numeric/index.js';
import { pulled, quiet, usual } from '../support/compliance.js';
import { refusal } from '../support/thrown.js';

const table = { force: [0, 2000, 20_000], travel: [0, 0.08, 0.44] };

describe('frameTravel', () => {
  test('a table is met at its points and carried on beyond them; a power law is odd', () => {
    table.force.forEach((F, k) => {
      expect(frameTravel(table, F)).toBeCloseTo(table.travel[k]!, 15);
    });
    expect(frameTravel(table, 22_000)).toBeCloseTo(0.48, 12);
    expect(frameTravel(table, -500)).toBeCloseTo(-0.02, 12);
    const power = { coefficient: 0.0005, exponent: 0.7 };
    expect(frameTravel(power, -3000)).toBe(-frameTravel(power, 3000));
    expect(frameTravel({ coefficient: 2e-5, exponent: 1 }, 1234)).toBeCloseTo(frameTravel(2e-5, 1234), 15);
    expect(frameTravel({ constant: 2e-5, range: [0, 10] }, 1234)).toBe(frameTravel(2e-5, 1234));
  });

  test.each<[string, unknown]>([
    ['wrong-type compliance', 'stiff'],
    ['out-of-range compliance', -1],
    ['not-finite compliance', NaN],
    ['missing compliance.constant', {}],
    ['out-of-range compliance.constant', { constant: -1 }],
    ['not-increasing compliance.range', { constant: 1, range: [2, 1] }],
    ['unequal-lengths compliance.range', { constant: 1, range: [2] }],
    ['unknown-option compliance.exponent', { constant: 1, exponent: 1 }],
    ['too-few compliance.force', { force: [1], travel: [1] }],
    ['unequal-lengths compliance.travel', { force: [1, 2], travel: [1] }],
    ['missing compliance.travel', { force: [1, 2] }],
    ['not-increasing compliance.force[1]', { force: [2, 2], travel: [1, 1] }],
    ['out-of-range compliance.travel[1]', { force: [1, 2], travel: [1, 0.9] }],
    ['unknown-option compliance.range', { ...table, range: [1, 2] }],
    ['out-of-range compliance.coefficient', { coefficient: -1, exponent: 1 }],
    ['not-positive compliance.exponent', { coefficient: 1, exponent: 0 }],
    ['out-of-range compliance.exponent', { coefficient: 1, exponent: 11 }],
    ['wrong-type compliance.grips', { constant: 1, grips: 3 }],
    ['out-of-range compliance.relativeStandardUncertainty', { constant: 1, relativeStandardUncertainty: -1 }],
  ])('refuses: %s', (expected, compliance) => {
    expect(refusal(() => frameTravel(compliance as Compliance, 1))).toBe(expected);
  });

  test('a table may stand still, a power law begins at nothing, and none is none', () => {
    expect(frameTravel({ force: [0, 10, 20], travel: [0, 1, 1] }, 15)).toBe(1);
    expect(frameTravel({ coefficient: 2, exponent: 0.5 }, 0)).toBe(0);
    expect(requireFrameCompliance('test', 'frame', undefined)).toBeUndefined();
    expect(requireFrameCompliance('test', 'frame', 0)).toBeUndefined();
    expect(requireFrameCompliance('test', 'frame', 2)!.at(3)).toBe(6);
  });

  test('refuses a force that is no number', () => {
    expect(refusal(() => frameTravel(1, NaN))).toBe('not-finite force');
  });
});

test('removeCompliance says where it carries a law on, and not at its very end', () => {
  const record = { force: [0, 10_000, 20_000, 21_000, 22_000], travel: [0, 1, 2, 3, 4] };
  const { findings, travel } = removeCompliance(record, table);
  expect(findings).toHaveLength(1);
  expect(findings[0]).toMatchObject({ code: 'force-beyond-compliance', values: { count: 2, limit: 20_000, force: 22_000 } });
  expect(travel![4]).toBeCloseTo(4 - 0.48, 12);
  expect(removeCompliance({ force: [0, 20_000], travel: [0, 1] }, table).findings).toEqual([]);
  expect(removeCompliance(record, { constant: 1e-5, range: [0, 20_000] }).findings).toHaveLength(1);
  expect(removeCompliance(record, { coefficient: 1e-5, exponent: 1 }).findings).toEqual([]);
  // strain and extension of an extensometer may end early
  const early = { force: [0, 1, 2], travel: [0, 1, 2], strain: [0, 0.1, NaN], extension: [0, NaN, NaN] };
  expect([...removeCompliance(early, 0).strain!]).toEqual(early.strain);
  expect([...removeCompliance(early, 0).extension!]).toEqual(early.extension);
});

describe('fitCompliance', () => {
  const force = Array.from({ length: 40 }, (_, i) => 300 * (i + 1));
  const pull = (length: number, compliance: number, change: Partial<CompliancePull> = {}): CompliancePull => ({
    force,
    travel: force.map((F) => F * (compliance + length / (210_000 * 50))),
    effectiveLength: length,
    area: 50,
    ...change,
  });

  test.each<[string, CompliancePull[], ComplianceOptions]>([
    ['not-determined', [pull(40, 2e-5)], {}],
    ['not-determined', [pull(40, 2e-5), pull(40, 2e-5)], {}],
    ['not-determined', [pull(40, 2e-5)], { modulus: 210_000, from: 9000, to: 8000 }],
    ['not-determined', [pull(40, 2e-5, { force: force.map((F) => -F) })], { modulus: 210_000 }],
    ['too-few-points', [pull(40, 2e-5)], { modulus: 210_000, from: 20_000, to: 30_000 }],
    ['too-few-points', [pull(40, 2e-5, { force: [1, 2], travel: [1, 2] })], { modulus: 210_000 }],
    ['too-few-points', [pull(40, 2e-5)], { modulus: 210_000, shape: 'table', points: 41 }],
    ['not-rising', [pull(40, 2e-5)], { modulus: 20_000 }],
    ['not-rising', [pull(40, 2e-5), pull(80, 2e-5, { effectiveLength: 20 })], {}],
  ])('%s', (reason, pulls, options) => {
    expect(fitCompliance(pulls, options)).toMatchObject({ ok: false, reason });
  });

  test('only the forces asked for count', () => {
    const bedding = pull(40, 2e-5, { travel: force.map((F) => (F < 3000 ? 3e-5 * F + 0.01 : F * (2e-5 + 40 / (210_000 * 50)))) });
    const fitted = required(fitCompliance([bedding], { modulus: 210_000, from: 3000 }));
    expect(frameTravel(fitted.compliance, 1)).toBeCloseTo(2e-5, 14);
    expect(fitted.range).toEqual([3000, 12_000]);
    expect(fitted.samples).toBe(31);
  });

  test('the result serves as it is, and holds its range and uncertainty', () => {
    const { pulls, options } = pulled('known modulus', 'power', usual, 3);
    const { compliance, relativeStandardUncertainty, range, force: at, travel } = required(fitCompliance(pulls, options));
    expect(compliance).toMatchObject({ range, relativeStandardUncertainty });
    expect(relativeStandardUncertainty).toBeGreaterThan(0);
    at.forEach((F, k) => {
      expect(travel[k]).toBeCloseTo(frameTravel(compliance, F) - frameTravel(compliance, range[0]), 12);
    });
  });

  test('uncertain pieces and modulus carry in by their share of the motion', () => {
    // c over C is 40/(E S)/2e-5: a relative error of c moves C by that much of it
    const share = 40 / (210_000 * 50) / 2e-5;
    const by = (change: Partial<CompliancePull>, options: ComplianceOptions) =>
      required(fitCompliance([pull(40, 2e-5, change)], { modulus: 210_000, ...options })).relativeStandardUncertainty;
    expect(by({}, {})).toBeLessThan(1e-12);
    expect(by({ relativeUncertainty: 0.01 }, {})).toBeCloseTo(0.01 * share, 8);
    expect(by({}, { modulusUncertainty: 0.02 })).toBeCloseTo(0.02 * share, 8);
    expect(by({ relativeUncertainty: 0.01 }, { modulusUncertainty: 0.02 })).toBeCloseTo(Math.hypot(0.01, 0.02) * share, 8);
  });

  test('scatter of neighbours that is not alike counts as it is: the standard error is that of a straight line', () => {
    const own = 40 / (210_000 * 50);
    const travel = force.map((F, i) => F * (2e-5 + own) + (i % 2 ? 0.001 : -0.001));
    const fitted = required(fitCompliance([pull(40, 2e-5, { travel })], { modulus: 210_000 }));
    const line = lineFit(
      Float64Array.from(force),
      Float64Array.from(travel, (x, i) => x - own * force[i]!),
      0,
      39,
    )!;
    expect(fitted.relativeStandardUncertainty / (line.standardError / line.slope)).toBeCloseTo(1, 9);
    expect(fitted.residualStandardDeviation / line.residualStandardDeviation).toBeCloseTo(1, 9);
  });

  test('the order of the pulls does not matter, so neighbours are alike within a pull only', () => {
    const wavy = (phase: number) =>
      pull(40, 2e-5, { travel: force.map((F, i) => F * (2e-5 + 40 / (210_000 * 50)) + 0.003 * Math.sin(i / 9 + phase)) });
    const pulls = [wavy(0), wavy(1), wavy(2.5)];
    const of = (order: readonly number[]) =>
      required(
        fitCompliance(
          order.map((k) => pulls[k]!),
          { modulus: 210_000 },
        ),
      ).relativeStandardUncertainty;
    expect(of([2, 0, 1]) / of([0, 1, 2])).toBeCloseTo(1, 9);
    expect(of([1, 0, 2]) / of([0, 1, 2])).toBeCloseTo(1, 9);
  });

  test('the range is what all pulls reach', () => {
    const within = (low: number, high: number): CompliancePull => {
      const part = force.filter((F) => F >= low && F <= high);
      return pull(40, 2e-5, { force: part, travel: part.map((F) => F * (2e-5 + 40 / (210_000 * 50))) });
    };
    const fitted = required(fitCompliance([within(300, 9000), within(1500, 12_000)], { modulus: 210_000 }));
    expect(fitted.range).toEqual([1500, 9000]);
    expect(fitted.samples).toBe(2 * 26);
  });

  test('one sample more than there are unknowns is needed', () => {
    const part = (n: number, length = 40): CompliancePull =>
      pull(length, 2e-5, { force: force.slice(0, n), travel: force.slice(0, n).map((F) => F * (2e-5 + length / (210_000 * 50))) });
    const says = (samples: number, numbers: number) => ({
      reason: 'too-few-points',
      message: `${samples} samples do not determine ${numbers} numbers with their uncertainty`,
    });
    // an origin each, the frame, and the modulus where it is unknown
    expect(fitCompliance([part(2), part(2, 80)])).toMatchObject(says(4, 4));
    expect(fitCompliance([part(3), part(3, 80)]).ok).toBe(true);
    expect(fitCompliance([part(2)], { modulus: 210_000 })).toMatchObject(says(2, 2));
    expect(fitCompliance([part(3)], { modulus: 210_000 }).ok).toBe(true);
    expect(fitCompliance([part(3)], { modulus: 210_000, shape: 'power' })).toMatchObject(says(3, 3));
    expect(fitCompliance([part(3)], { modulus: 210_000, shape: 'table', points: 3 })).toMatchObject(says(3, 3));
  });

  test('a table that falls between two points is no compliance', () => {
    const own = 40 / (210_000 * 50);
    const of = (motion: (F: number) => number) =>
      fitCompliance([pull(40, 0, { travel: force.map((F) => F * own + motion(F)) })], {
        modulus: 210_000,
        shape: 'table',
        points: [300, 6000, 9000, 12_000],
      });
    expect(of((F) => 2e-5 * F).ok).toBe(true);
    expect(of((F) => 2e-5 * (F < 6000 ? F : F < 9000 ? 6000 - 0.1 * (F - 6000) : 5700 + F - 9000))).toMatchObject({ reason: 'not-rising' });
  });

  test('a power law is found from no force on, with exponents from 0.1 to 4', () => {
    const own = 40 / (210_000 * 50);
    const at = [0, ...force];
    const of = (exponent: number) =>
      fitCompliance([pull(40, 0, { force: at, travel: at.map((F) => F * own + 0.2 * (F / 12_000) ** exponent) })], {
        modulus: 210_000,
        shape: 'power',
      });
    for (const exponent of [0.12, 0.5, 0.67, 1, 1.7, 3.9])
      expect(required(of(exponent)).compliance).toMatchObject({
        exponent: expect.closeTo(exponent, 8) as number,
        coefficient: expect.closeTo(0.2 / 12_000 ** exponent, 9) as number,
      });
    for (const exponent of [0.08, 4.2]) expect(of(exponent)).toMatchObject({ reason: 'not-determined' });
  });

  test('the standard error of a modulus that is found is its scatter', () => {
    const errors = Array.from({ length: 100 }, (_, seed) => {
      const { pulls, options } = pulled('two lengths', 'constant', { travel: 0.002, force: 0, piece: 0, modulus: 0 }, seed + 1, 60);
      const { modulus, modulusStandardError } = required(fitCompliance(pulls, options));
      return (modulus! - 210_000) / modulusStandardError!;
    });
    // of 100 standard normal numbers the root mean square is 1 within 4/√200
    expect(Math.abs(Math.hypot(...errors) / 10 - 1)).toBeLessThan(0.28);
  });

  test('grips and direction stand in the result', () => {
    const of = (shape: 'constant' | 'table') =>
      required(fitCompliance([pull(40, 2e-5)], { modulus: 210_000, shape, grips: 'wedges', direction: 'tension' })).compliance;
    expect(of('constant')).toMatchObject({ grips: 'wedges', direction: 'tension' });
    expect(of('table')).toMatchObject({ grips: 'wedges', direction: 'tension' });
    expect(Object.keys(required(fitCompliance([pull(40, 2e-5)], { modulus: 210_000 })).compliance)).toEqual([
      'constant',
      'range',
      'relativeStandardUncertainty',
    ]);
  });

  test('a table has nine points, a law is told at eleven, evenly spaced from the lowest to the highest force', () => {
    const of = (options: ComplianceOptions) => [...required(fitCompliance([pull(40, 2e-5)], { modulus: 210_000, ...options })).force];
    expect(of({ shape: 'table' })).toEqual(Array.from({ length: 9 }, (_, k) => 300 + 1462.5 * k));
    expect(of({})).toEqual(Array.from({ length: 11 }, (_, k) => 300 + 1170 * k));
    expect(of({ shape: 'table', points: 2 })).toEqual([300, 12_000]);
    expect(of({ shape: 'table', points: [300, 5000, 12_000] })).toEqual([300, 5000, 12_000]);
  });

  test('scatter of neighbours that is alike widens the uncertainty', () => {
    const alternating = pull(40, 2e-5, { travel: force.map((F, i) => F * 2e-5 + F * (40 / (210_000 * 50)) + (i % 2 ? 0.001 : -0.001)) });
    const waves = pull(40, 2e-5, { travel: force.map((F, i) => F * 2e-5 + F * (40 / (210_000 * 50)) + 0.00141 * Math.sin(i / 3)) });
    const of = (one: CompliancePull) => required(fitCompliance([one], { modulus: 210_000 })).relativeStandardUncertainty;
    expect(of(waves)).toBeGreaterThan(2 * of(alternating));
  });

  test('runs that differ, and a compliance that is poorly known, are findings', () => {
    const codes = (pulls: CompliancePull[], options: ComplianceOptions): FindingCode[] =>
      required(fitCompliance(pulls, { modulus: 210_000, ...options })).findings.map(({ code }) => code);
    expect(codes([pull(40, 2e-5), pull(40, 2.1e-5)], {})).toEqual(['compliance-runs-differ']);
    expect(codes([pull(40, 2e-5), pull(40, 2.01e-5)], {})).toEqual([]);
    expect(codes([pull(400, 2e-5)], { modulusUncertainty: 0.05 })).toEqual(['compliance-poorly-determined']);
  });

  test('the values of findings', () => {
    const values = (pulls: CompliancePull[], options: ComplianceOptions = {}) =>
      required(fitCompliance(pulls, { modulus: 210_000, ...options })).findings.map((one) => [one.code, one.values]);
    // 0.1 of 2.05
    expect(values([pull(40, 2e-5), pull(40, 2.1e-5)])).toEqual([
      ['compliance-runs-differ', { share: expect.closeTo(100 / 20.5, 6) as number }],
    ]);
    // 5 % of what the piece gives, 400/(210 000 · 50), over the frame's 2e-5
    expect(values([pull(400, 2e-5)], { modulusUncertainty: 0.05 })).toEqual([
      ['compliance-poorly-determined', { uncertainty: expect.closeTo((5 * 400) / (210_000 * 50) / 2e-5, 6) as number }],
    ]);
    const bent = (exponent: number) =>
      pull(40, 0, { travel: force.map((F) => F * (40 / (210_000 * 50)) + 2e-5 * 12_000 * (F / 12_000) ** exponent) });
    // at a fifth of the force the frame gives 0.2^(b - 1) times what one number says
    expect(values([bent(0.9)])).toEqual([
      ['compliance-curved', { exponent: expect.closeTo(0.9, 8) as number, share: expect.closeTo(100 * (0.2 ** -0.1 - 1), 5) as number }],
    ]);
    expect(values([bent(0.965)]).map(([code]) => code)).toEqual(['compliance-curved']);
    expect(values([bent(0.975)])).toEqual([]);
  });

  test('runs are compared between the forces that count, and by what their scatter allows', () => {
    const own = 40 / (210_000 * 50);
    const ends = pull(40, 2e-5, { travel: force.map((F) => F * own + 2e-5 * (F < 3000 ? 3 * F - 6000 : F > 9000 ? 3 * F - 18_000 : F)) });
    expect(required(fitCompliance([pull(40, 2e-5), ends], { modulus: 210_000, from: 3000, to: 9000 })).findings).toEqual([]);
    const noisy = (C: number) => pull(40, C, { travel: force.map((F, i) => F * (own + C) + (i % 2 ? 0.05 : -0.05)) });
    const codes = required(fitCompliance([noisy(2e-5), noisy(2.1e-5)], { modulus: 210_000 })).findings.map(({ code }) => code);
    expect(codes).not.toContain('compliance-runs-differ');
  });

  test('one number for a frame that bends is a finding; for one that is straight, or by a law that bends, none', () => {
    const codes = (law: 'constant' | 'power', shape: 'constant' | 'power' | 'table', seed: number): FindingCode[] => {
      const { pulls, options } = pulled('known modulus', law, usual, seed);
      const fitted = required(fitCompliance(pulls, { ...options, shape, points: undefined, from: 520, to: 11_950 }));
      return fitted.findings.map(({ code }) => code);
    };
    for (let seed = 1; seed <= 20; seed += 1) {
      expect(codes('power', 'constant', seed)).toContain('compliance-curved');
      expect(codes('constant', 'constant', seed)).toEqual([]);
      expect(codes('power', 'power', seed)).toEqual([]);
      expect(codes('power', 'table', seed)).toEqual([]);
    }
  });

  test('the scale of travel scales the compliance; where each pull begins does not matter', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 10, noNaN: true }), fc.double({ min: -5, max: 5, noNaN: true }), (factor, origin) => {
        const of = (k: number, x: number) =>
          required(fitCompliance([pull(40, 2e-5, { travel: force.map((F) => x + k * F * 2e-5) })], { modulus: 1e12 }));
        expect(of(factor, origin).travel.at(-1)! / of(1, 0).travel.at(-1)!).toBeCloseTo(factor, 6);
      }),
      { numRuns: 20 },
    );
  });

  test('arrays of any kind in, none changed', () => {
    const { pulls, options } = pulled('two lengths', 'table', quiet, 5);
    const lists = pulls.map((one) => ({
      ...one,
      force: Object.freeze(Array.from(one.force)),
      travel: Object.freeze(Array.from(one.travel)),
    }));
    expect(fitCompliance(lists, options)).toEqual(fitCompliance(pulls, options));
  });

  const one = pull(40, 2e-5);
  test.each<[string, unknown, object]>([
    ['missing pulls', undefined, {}],
    ['empty pulls', [], {}],
    ['wrong-type pulls[0]', [3], {}],
    ['too-few pulls[0].force', [{ ...one, force: [1] }], {}],
    ['unequal-lengths pulls[0].travel', [{ ...one, travel: [1, 2] }], {}],
    [
      'not-finite pulls[0].travel[3]',
      [{ ...one, travel: one.force instanceof Array ? (one.force as number[]).map((F, i) => (i === 3 ? NaN : F)) : [] }],
      {},
    ],
    ['not-positive pulls[0].area', [{ ...one, area: 0 }], {}],
    ['not-positive pulls[0].effectiveLength', [{ ...one, effectiveLength: 0 }], {}],
    ['out-of-range pulls[0].relativeUncertainty', [{ ...one, relativeUncertainty: -1 }], {}],
    ['unknown-option pulls[0].length', [{ ...one, length: 40 }], {}],
    ['out-of-range options.shape', [one], { shape: 'parabola' }],
    ['not-positive options.modulus', [one], { modulus: 0 }],
    ['out-of-range options.modulusUncertainty', [one], { modulusUncertainty: -1 }],
    ['not-finite options.from', [one], { from: NaN }],
    ['out-of-range options.points', [one], { points: 1 }],
    ['out-of-range options.points', [one], { points: 2.5 }],
    ['not-increasing options.points[1]', [one], { points: [1000, 1000] }],
    ['out-of-range options.points[0]', [one], { points: [100, 1000] }],
    ['unknown-option options.knots', [one], { knots: 3 }],
  ])('refuses: %s', (expected, pulls, options) => {
    expect(refusal(() => fitCompliance(pulls as CompliancePull[], options))).toBe(expected);
  });
});

test('modulusUncertainty refuses what it cannot use', () => {
  const modulus = { modulus: 210_000, effectiveLength: 48, area: 50 };
  expect(refusal(() => modulusUncertainty({ ...modulus, area: 0 }, {}))).toBe('not-positive modulus.area');
  expect(refusal(() => modulusUncertainty({ ...modulus, compliance: -1 }, {}))).toBe('out-of-range modulus.compliance');
  expect(refusal(() => modulusUncertainty(modulus, { slope: -1 }))).toBe('out-of-range doubts.slope');
  expect(refusal(() => modulusUncertainty(modulus, { length: 1 } as never))).toBe('unknown-option doubts.length');
});

describe('in a tension test', () => {
  const section = round({ diameter: 8 });
  const stress = Float64Array.from({ length: 400 }, (_, i) => 0.6 * (i + 5));
  const force = stress.map((R) => R * section.area);
  const record = { force, travel: stress.map((R, i) => 48 * (R / 70_000 + 0.002 * (R / 250) ** 20) + 2e-5 * force[i]!) };
  const piece = { section, gaugeLength: 40, parallelLength: 48 };
  const of = (frameCompliance: Compliance) => analyseTension(record, piece, { frameCompliance });
  const codes = (frameCompliance: Compliance): FindingCode[] => of(frameCompliance).findings.map(({ code }) => code);

  test('a number and the same as an object are the same, and 0 is none', () => {
    const [a, b] = [of(2e-5), of({ constant: 2e-5 })];
    expect(b.modulus).toEqual(a.modulus);
    expect(b.trail).toEqual(a.trail);
    expect(codes(0)).toContain('modulus-includes-frame-compliance');
    expect(codes({ constant: 0 })).toContain('modulus-includes-frame-compliance');
  });

  test('E carries the uncertainty of the compliance: the frame stretches 1.466 times as much as the aluminium', () => {
    // c = 48/(70 000 S0) is 13.642 µm/kN, and 20 over it 1.4661
    const plain = of(2e-5).modulus!;
    const known = of({ constant: 2e-5, relativeStandardUncertainty: 0.03 }).modulus!;
    expect(known.value).toBe(plain.value);
    const added = Math.sqrt(known.standardUncertainty! ** 2 - plain.standardUncertainty! ** 2) / known.value;
    expect(added).toBeCloseTo(0.03 * 1.4661, 4);
    expect(codes({ constant: 2e-5, relativeStandardUncertainty: 0.03 })).not.toContain('modulus-carries-compliance');
    expect(codes({ constant: 2e-5, relativeStandardUncertainty: 0.04 })).toContain('modulus-carries-compliance');
  });

  test('forces beyond the table and a window below it are findings', () => {
    const to = (low: number, high: number) => ({ force: [low, high], travel: [2e-5 * low, 2e-5 * high] });
    expect(codes(to(0, 13_000))).not.toContain('force-beyond-compliance');
    expect(codes(to(0, 10_000))).toContain('force-beyond-compliance');
    expect(codes(to(0, 13_000))).not.toContain('window-below-compliance');
    expect(codes(to(4000, 13_000))).toContain('window-below-compliance');
  });

  test('the trail names the law; the options are kept as plain data', () => {
    const result = of({ force: Float64Array.of(0, 13_000), travel: Float64Array.of(0, 0.26) });
    expect(result.trail[0]!.code).toBe('frame-compliance-removed');
    expect(result.trail[0]!.values).toEqual({
      law: 'table of 2 points from 0 N to 13000 N',
      largest: expect.closeTo(2e-5 * force.at(-1)!, 12) as number,
    });
    expect(result.provenance.options['frameCompliance']).toEqual({ force: [0, 13_000], travel: [0, 0.26] });
    expect(of({ coefficient: 2e-5, exponent: 1 }).trail[0]!.values['law']).toBe('0.00002 mm times the force in N to the power of 1');
  });

  test('a fitted compliance serves as it is', () => {
    const { pulls, options } = pulled('two lengths', 'constant', quiet, 2);
    const result = of(required(fitCompliance(pulls, options)).compliance);
    expect(result.modulus!.value / 70_000).toBeCloseTo(1, 3);
  });
});
