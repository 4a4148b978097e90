import { readFileSync } from 'node:fs';
import { describe, expect, test, vi } from 'vitest';
import {
  analyseCurve,
  analyseTension,
  energyDensity,
  fromJson,
  rectangular,
  round,
  sectionFromArea,
  toJson,
  version,
  type FindingCode,
  type ModulusOptions,
  type ProportionalDefinition,
  type TensionRecord,
  type TensionResult,
} from '../../src/index.js';
import { catalogue } from '../../src/base/index.js';
import { yieldFindings } from '../../src/methods/tension/yieldFindings.js';
import { simulateTension, type TensionScenario } from '../../src/simulate/index.js';
import { randomNumbers } from '../../src/numeric/index.js';
import { seeded } from '../support/random.js';
import { brokenPiece, caseT1, COMPLIANCE, mildSteel, roundPiece } from '../support/records.js';
import { refusal } from '../support/thrown.js';

const steel: TensionScenario = {
  material: mildSteel,
  piece: roundPiece,
  frame: { compliance: COMPLIANCE, slack: 0.2 },
  hand: { speed: 0.05, speedAfterYield: 0.1 },
  logger: { rate: 30, extensometer: true, lead: 1, tail: 1, forceNoise: 10, motionNoise: 2e-4 },
  seed: 3,
};
const withChange = (change: Partial<Record<keyof TensionScenario, object>>): TensionScenario =>
  Object.fromEntries(
    Object.entries(steel).map(([name, value]) => [
      name,
      name in change ? { ...(value as object), ...change[name as keyof TensionScenario] } : value,
    ]),
  ) as unknown as TensionScenario;
const codes = ({ findings }: { readonly findings: TensionResult['findings'] }): FindingCode[] => findings.map(({ code }) => code);
const { record, truth } = simulateTension(steel);
const result = analyseTension(record, { ...roundPiece, afterFracture: truth.afterFracture });

describe('noise-free records come back as their truth', () => {
  test.each([
    ['extensometer', true, undefined],
    ['travel less the frame', false, COMPLIANCE],
  ])('%s: E, Rp0.2, Rm, ReH, ReL to 0.01 %%', (_, extensometer, frameCompliance) => {
    const clean = simulateTension(withChange({ logger: { rate: 60, extensometer, forceNoise: 0, motionNoise: 0 } }));
    const found = analyseTension(clean.record, roundPiece, { frameCompliance });
    const near = (value: number | undefined, known: number | undefined) => {
      expect(Math.abs(value! / known! - 1)).toBeLessThan(1e-4);
    };
    near(found.modulus?.value, clean.truth.modulus);
    near(found.proofStrengths[0]?.value, clean.truth.proofStrengths[1]?.stress);
    near(found.tensileStrength.value, clean.truth.tensileStrength);
    near(found.maximumForce.value, clean.truth.maximumForce);
    near(found.upperYieldStrength?.value, clean.truth.upperYieldStrength);
    near(found.lowerYieldStrength?.value, clean.truth.lowerYieldStrength);
    near(found.totalExtensionAtFracture?.value, clean.truth.totalExtensionAtFracture);
    near(found.toughness?.value, clean.truth.toughness);
  });
});

describe('a noisy record with an extensometer', () => {
  test('every quantity is there, near its truth', () => {
    expect(Math.abs(result.modulus!.value / truth.modulus - 1)).toBeLessThan(0.02);
    expect(Math.abs(result.tensileStrength.value / truth.tensileStrength - 1)).toBeLessThan(0.005);
    expect(result.elongationAfterFracture!.value).toBeCloseTo(truth.elongationAfterFracture, 9);
    expect(result.reductionOfArea!.value).toBeCloseTo(truth.reductionOfArea, 9);
    expect(result.hardening!.exponent.value).toBeGreaterThan(0.1);
    expect(result.necking!.value).toBeGreaterThan(0.15);
    expect(result.resilience!.value).toBeCloseTo(result.proofStrengths[0]!.value ** 2 / (2 * result.modulus!.value), 9);
    expect(result.rates!.time.length).toBeGreaterThan(50);
  });

  test('no number in it is NaN or infinite, and its input is as it was', () => {
    const bad: string[] = [];
    const walk = (value: unknown, path: string): void => {
      if (typeof value === 'number' && !Number.isFinite(value)) bad.push(path);
      else if (ArrayBuffer.isView(value))
        (value as Float64Array).forEach((one, i) => {
          walk(one, `${path}[${i}]`);
        });
      else if (typeof value === 'object' && value !== null) for (const [name, one] of Object.entries(value)) walk(one, `${path}.${name}`);
    };
    walk(result, 'result');
    expect(bad).toEqual([]);
    expect(simulateTension(steel).record).toEqual(record);
  });

  test('the result shares nothing with what was given', () => {
    const piece = { ...roundPiece, afterFracture: { gaugeLength: 50 } };
    const own = analyseTension(record, piece, { offsets: [0.002], test: { identity: 'A' } });
    expect(own.testPiece).toEqual(piece);
    expect(own.testPiece).not.toBe(piece);
    expect(own.curve.stress.buffer).not.toBe(record.force.buffer);
    // and it goes back in
    expect(analyseTension(record, own.testPiece).testPiece).toEqual(piece);
  });

  test('JSON and back is the same to the last digit', () => {
    expect(fromJson(toJson(result))).toEqual(result);
    expect(fromJson(toJson(result)).curve.strain).toBeInstanceOf(Float64Array);
    expect(refusal(() => toJson({ ...result, curve: { ...result.curve, stress: [1, NaN] } }))).toBe('not-finite result…1');
    for (const [expected, text] of [
      ['wrong-type text', '{'],
      ['wrong-type text', '[]'],
      ['wrong-type text', 'null'],
      ['out-of-range schemaVersion', '{"schemaVersion":99,"curve":{}}'],
    ] as const)
      expect(refusal(() => fromJson(text))).toBe(expected);
    expect(refusal(() => fromJson(5 as never))).toBe('wrong-type text');
    const parsed = JSON.parse(toJson(result)) as { curve: { stress: unknown } };
    // a number of a column is looked at once, as a number: as a field with a name it costs fifty times as much
    const entries = vi.spyOn(Object, 'entries');
    fromJson(toJson(result));
    expect(entries.mock.calls.filter(([one]) => ArrayBuffer.isView(one))).toEqual([]);
    entries.mockRestore();
    for (const stress of [[1, '2'], [1, null], '12'])
      expect(refusal(() => fromJson(JSON.stringify({ ...parsed, curve: { ...parsed.curve, stress } })))).toMatch(
        /^wrong-type curve\.stress\[[01]\]$/,
      );
  });

  test('provenance: version of the package, options, a hash that knows the columns', () => {
    const { version: published } = JSON.parse(readFileSync('package.json', 'utf8')) as { version: string };
    expect(version).toBe(published);
    expect(result.provenance).toMatchObject({ package: 'testpiece', version, options: {} });
    expect(result.provenance.hash).toMatch(/^[0-9a-f]{16}$/);
    const other = { ...record, force: record.force.map((F, i) => (i === 70 ? F + 1e-9 : F)) };
    expect(analyseTension(other, roundPiece).provenance.hash).not.toBe(result.provenance.hash);
    const { travel, ...rest } = record;
    expect(analyseTension({ ...rest, travel: record.extension }, roundPiece).provenance.hash).not.toBe(result.provenance.hash);
    expect(travel).toBeDefined();
  });

  test('analyseCurve gives the same from stress and strain alone', () => {
    const own = analyseCurve({
      strain: record.extension!.map((x) => x / 40),
      stress: record.force.map((F) => F / roundPiece.section.area),
    });
    expect(own.proofStrengths[0]!.value).toBeCloseTo(result.proofStrengths[0]!.value, 9);
    expect(own.extensionBasis).toBe('curve');
  });
});

describe('findings', () => {
  const of = (change: Partial<Record<keyof TensionScenario, object>>, piece: object = {}, options: object = {}): FindingCode[] => {
    const simulated = simulateTension(withChange(change));
    return codes(analyseTension(simulated.record, { ...roundPiece, ...piece }, options));
  };
  const raw = { logger: { extensometer: false } };

  test.each<[FindingCode, FindingCode[]]>([
    ['extension-from-travel', of(raw, {}, { frameCompliance: COMPLIANCE })],
    ['modulus-includes-frame-compliance', of(raw)],
    ['frame-compliance-removed', of(raw, {}, { frameCompliance: COMPLIANCE })],
    ['frame-stretches-more-than-piece', of(raw, {}, { frameCompliance: COMPLIANCE })],
    ['toe-long', of({ ...raw, frame: { seating: 0.2, seatingForce: 1500 } })],
    ['parallel-length-assumed', of(raw, { parallelLength: undefined })],
    ['parallel-length-short', of({}, { parallelLength: 41 })],
    ['extensometer-length-unsuited', of({}, { extensometerLength: 19.9 })],
    ['gauge-length-not-proportional', of({}, { gaugeLength: 80, extensometerLength: 40, parallelLength: 90 })],
    ['after-fracture-missing', of({})],
    ['after-fracture-larger', of({}, { afterFracture: { gaugeLength: 30, area: 60 } })],
    ['reduction-unusual', of({}, { afterFracture: { gaugeLength: 40.4, area: 20 } })],
    ['elongation-unlike-travel', of({}, { afterFracture: { gaugeLength: 80 } })],
    ['few-section-readings', of({})],
    ['section-small', of({}, { section: round({ diameter: 3 }) })],
    ['section-spread', of({}, { section: round({ diameter: [7.9, 8, 8.1] }) })],
    ['section-taper', of({}, { section: round({ diameter: [7.9, 8, 8.1] }) })],
    ['section-wide', of({}, { section: rectangular({ width: 30, thickness: 2 }) })],
    ['extensometer-taken-off', of({ logger: { extensometer: { offAt: 0.05 } } })],
    ['travel-carries-on', of({ logger: { extensometer: { offAt: 0.05 } } })],
    ['pause', of({ hand: { pauses: [{ stress: 150, duration: 3 }] } })],
    ['pause-near-yield', of({ hand: { pauses: [{ stress: 300, duration: 3 }] } })],
    ['uneven-loading', of({ ...raw, hand: { strokes: 30, depth: 0.9 }, logger: { extensometer: false, rate: 200 } })],
    ['stress-rate-outside', of({ hand: { speed: 0.002, speedAfterYield: 0.1 } })],
    ['strain-rate-high', of({ hand: { speed: 0.05, speedAfterYield: 1 } })],
    ['sampling-slow-for-yield', of({ hand: { speed: 0.3 }, logger: { rate: 10, extensometer: true } })],
    ['few-points-in-elastic-part', of({ logger: { rate: 8, extensometer: true } })],
    ['displacement-steps-coarse', of({ logger: { extensometer: true, motionStep: 0.02, motionNoise: 0.01 } })],
    ['slope-scatter', of({ logger: { extensometer: true, motionNoise: 2e-3 } })],
    ['maximum-wide', of({ logger: { extensometer: true, forceNoise: 100 } })],
    ['record-starts-late', of({ logger: { extensometer: true, lateStart: 0.2 } })],
  ])('%s', (code, found) => {
    expect(found).toContain(code);
  });

  // L0 40, Lc 48 mm: half of the one is 20, nine tenths of the other 43.2
  test.each([
    [20, false],
    [43.2, false],
    [43.3, true],
    [19.9, true],
  ])('an extensometer base of %d mm is unsuited: %s', (extensometerLength, unsuited) => {
    const code: FindingCode = 'extensometer-length-unsuited';
    expect(of({}, { extensometerLength }).includes(code)).toBe(unsuited);
    // by travel it plays no part
    expect(of(raw, { extensometerLength })).not.toContain(code);
  });

  test.each([3, 20, 60])('what a logger missed at yield, %i samples, it may be low by', (missed) => {
    const { record, truth } = simulateTension(withChange({ logger: { extensometer: true, rate: 50 } }));
    const { index: peak } = analyseTension(record, roundPiece).upperYieldStrength!;
    const kept = (column: Float64Array | undefined) => column?.filter((_, i) => i < peak - missed / 2 || i > peak + missed / 2);
    const part = { force: kept(record.force)!, extension: kept(record.extension), time: kept(record.time) };
    const { upperYieldStrength, findings } = analyseTension(part, roundPiece);
    const { values } = findings.find(({ code }) => code === 'sampling-slow-for-yield')!;
    const low = truth.upperYieldStrength! - upperYieldStrength!.value;
    expect(low).toBeGreaterThan(0);
    expect(values['loss']).toBeGreaterThan(low);
    // between the two samples beside it
    expect(values['frequency']).toBeCloseTo(50 / (missed + 2 - (missed % 2)), 6);
  });

  test('a pause of the hand at yield is no yield point', () => {
    const smooth = simulateTension({
      ...steel,
      material: {
        modulus: 70_000,
        hardening: { law: 'hollomon', strengthCoefficient: 250 / 0.002 ** 0.06, exponent: 0.06 },
        fracture: { extension: 0.12 },
      },
      hand: {
        speed: 0.05,
        pauses: [
          { stress: 200, duration: 3, relaxation: 0.02 },
          { stress: 255, duration: 3, relaxation: 0.03 },
        ],
      },
      logger: { rate: 30, forceNoise: 0, tail: 1 },
    });
    const found = analyseTension(smooth.record, roundPiece, { frameCompliance: COMPLIANCE });
    expect(found.upperYieldStrength).toBeUndefined();
    expect(codes(found).filter((code) => code === 'pause')).toHaveLength(2);
    expect(smooth.truth.pauses).toHaveLength(2);
    expect(Math.abs(found.proofStrengths[0]!.value / 250 - 1)).toBeLessThan(0.01);
  });

  test('annealed copper has no linear part: E is withheld, the slope and Rp0.2 stay', () => {
    const copper = simulateTension({
      ...steel,
      material: {
        modulus: 118_000,
        hardening: { law: 'hollomon', strengthCoefficient: 55 / 0.002 ** 0.35, exponent: 0.35 },
        fracture: { extension: 0.6 },
      },
      logger: { rate: 60, extensometer: true, forceNoise: 2, tail: 1 },
    });
    const found = analyseTension(copper.record, roundPiece);
    expect(codes(found)).toContain('no-linear-part');
    expect(found.modulus).toBeUndefined();
    expect(found.elasticSlope).toBeDefined();
    expect(found.proofStrengths).toHaveLength(1);
    expect(codes(found)).toContain('slope-scatter');
  });

  test('the criterion of a window names the gap and the shares that are not the defaults', () => {
    const criterion = (window: NonNullable<ModulusOptions['window']>) =>
      analyseTension(record, roundPiece, { modulus: { window } }).modulusWindow!.criterion;
    expect(criterion({ by: 'relative-error' })).toBe('least relative standard error');
    expect(criterion({ by: 'relative-error', startShare: 0.1 })).toBe(
      'least relative standard error, from 0.1 of the 0.2 % offset stress on and over 0.2 of it',
    );
    expect(criterion({ by: 'lower-bound', gap: 0.005, spanShare: 0.3 })).toMatch(
      /^highest slope less [\d.]+ standard errors, within 0.5 % of the highest, from 0.2 of the 0.2 % offset stress on and over 0.3 of it$/,
    );
  });

  test('a bound that was eased is told with why no window keeps it', () => {
    const eased = (samples: number, modulus: ModulusOptions = {}) => {
      const stress = Array.from({ length: samples }, (_, i) => (450 * i) / (samples - 1));
      const strain = stress.map((R) => R / 205_000 + 0.002 * (R / 400) ** 14);
      return analyseTension(
        { force: stress.map((R) => R * 50), strain },
        { ...roundPiece, section: sectionFromArea({ area: 50 }) },
        { modulus },
      )
        .findings.filter(({ code }) => code === 'window-bound-eased')
        .map(({ message }) => message);
    };
    expect(eased(9)).toEqual([
      'No elastic window keeps all its bounds (only 7 samples lie between the start bound and the 0.2 % offset line); start was eased.',
    ]);
    expect(eased(400, { window: { by: 'lower-bound', startShare: 0.95, spanShare: 0.05 } })).toEqual([
      'No elastic window keeps all its bounds (no line through 8 or more of the 17 samples between the start bound and the 0.2 % offset line rises by 20 MPa); start was eased.',
    ]);
    expect(eased(400)).toEqual([]);
  });

  test('kN taken for N, and per cent taken for a ratio, are named', () => {
    const kilo = analyseTension({ ...record, force: record.force.map((F) => F / 1000) }, roundPiece);
    expect(codes(kilo)).toContain('force-looks-like-kilonewton');
    const percent = analyseTension({ force: record.force, strain: record.extension!.map((x) => (100 * x) / 40) }, roundPiece);
    const said = percent.findings.find(({ code }) => code === 'strain-looks-like-percent');
    expect(said?.message).toMatch(/^A strain of [\d.]+ with a slope of [\d.]+ MPa /);
  });

  test('a constant force, one that falls, one sample too few', () => {
    const travel = Float64Array.from({ length: 50 }, (_, i) => i / 10);
    for (const force of [travel.map(() => 100), travel.map((x) => 5 - x), new Float64Array(50)]) {
      const found = analyseTension({ force, travel }, roundPiece);
      expect(codes(found)).toContain('force-does-not-rise');
      expect(found.modulus).toBeUndefined();
    }
  });

  test('stopped early, at the maximum, or by the end of the extensometer', () => {
    const cut = (end: number): TensionResult =>
      analyseTension({ force: record.force.slice(0, end), extension: record.extension!.slice(0, end) }, roundPiece);
    const rising = cut(Math.floor(result.maximumIndex / 2));
    expect(rising.fracture).toBeUndefined();
    expect(codes(rising)).toEqual(expect.arrayContaining(['not-determined', 'time-missing', 'maximum-at-end']));
    expect(rising.tensileStrength.atLeast).toBe(true);
    expect(rising.totalExtensionAtMaximumForce).toBeUndefined();
    // a piece that was measured broken broke there: that was its maximum
    const end = Math.floor(result.maximumIndex / 2);
    const broke = analyseTension({ force: record.force.slice(0, end), extension: record.extension!.slice(0, end) }, brokenPiece);
    expect(codes(broke)).not.toContain('maximum-at-end');
    expect(broke.fracture).toMatchObject({ index: end - 1, how: 'end-of-record' });
    expect(broke.tensileStrength).toEqual({ ...rising.tensileStrength, atLeast: undefined });
    expect(broke.totalExtensionAtMaximumForce!.value).toBe(broke.curve.strain[broke.maximumIndex]);
    expect(codes(cut(result.fracture!.index - 100))).toContain('fracture-not-recorded');
    const off = analyseTension({ force: record.force, extension: record.extension!.map((x, i) => (i > 600 ? NaN : x)) }, roundPiece);
    expect(off.totalExtensionAtMaximumForce).toBeUndefined();
    expect(off.tensileStrength.value).toBe(result.tensileStrength.value);
  });

  test('a spike at the maximum', () => {
    const force = record.force.slice();
    force[900]! *= 1.8;
    expect(codes(analyseTension({ ...record, force }, roundPiece, { repairs: { spikes: false } }))).toEqual(
      expect.arrayContaining(['spikes', 'maximum-is-spike']),
    );
    const repaired = analyseTension({ ...record, force }, roundPiece);
    expect(codes(repaired)).toContain('spikes');
    expect(repaired.tensileStrength.value).toBe(result.tensileStrength.value);
  });

  test('the maximum below the upper yield point counts from hardening on', () => {
    const low = simulateTension(
      withChange({ material: { yieldPoint: { upper: 420, plateau: 0.014 }, hardening: { law: 'voce', saturationStress: 340, rate: 14 } } }),
    );
    const found = analyseTension(low.record, roundPiece);
    expect(codes(found)).toContain('maximum-below-upper-yield');
    expect(Math.abs(found.tensileStrength.value / 420 - 1)).toBeGreaterThan(0.1);
  });

  describe('an upper yield strength above all that follows, its fall held by several samples', () => {
    /** 200 GPa to ReH of 480 MPa, a fall to 400 over 0.05 % strain, a level to 2 %, hardening to 440 MPa at 14 %, a neck and the break. */
    const curveOf = (e: number) => {
      if (e <= 0.0024) return 200_000 * e;
      if (e <= 0.0029) return 480 - ((e - 0.0024) / 0.0005) * 80;
      if (e <= 0.02) return 400;
      if (e <= 0.14) return 400 + 40 * (1 - (1 - (e - 0.02) / 0.12) ** 2);
      return 440 - 60 * ((e - 0.14) / 0.06) ** 2;
    };
    const strain = [
      ...Array.from({ length: 350 }, (_, i) => i * 1e-5),
      ...Array.from({ length: 1965 }, (_, i) => 0.0035 + i * 1e-4),
      ...Array.from({ length: 5 }, (_, i) => 0.2 + i * 1e-6),
    ];
    const { area } = roundPiece.section;
    const force = strain.map((e, i) => (i < 2315 ? curveOf(e) * area : 0));
    const of = (until = Infinity) =>
      analyseTension({ force, extension: strain.map((e) => (e < until ? e * roundPiece.gaugeLength : NaN)) }, roundPiece);

    test('is found, and the tensile strength is the maximum after hardening began', () => {
      const found = of();
      expect(found.upperYieldStrength!.value).toBeCloseTo(480, 6);
      expect(found.lowerYieldStrength!.value).toBeCloseTo(400, 6);
      expect(found.tensileStrength.value).toBeCloseTo(440, 6);
      // the maximum is flat, and a sample lies each 0.01 %
      expect(Math.abs(found.totalExtensionAtMaximumForce!.value - 0.14)).toBeLessThanOrEqual(0.0001);
      // 0.2 % beyond the elastic line the curve is on its level
      expect(found.proofStrengths[0]!.value).toBeCloseTo(400, 6);
      expect(codes(found)).toContain('maximum-below-upper-yield');
      expect(codes(found)).not.toContain('proof-strength-not-reached');
    });

    test('also where the extensometer is taken off before that maximum', () => {
      const found = of(0.08);
      expect(found.upperYieldStrength!.value).toBeCloseTo(480, 6);
      expect(found.tensileStrength.value).toBeCloseTo(440, 6);
      expect(found.totalExtensionAtMaximumForce).toBeUndefined();
    });
  });

  test('a digit of a force read in 8 bits that noise moves to and fro is no yield point', () => {
    const { normal } = seeded(7);
    const { area } = roundPiece.section;
    const strain = Array.from({ length: 2000 }, (_, i) => i * 1e-5);
    const step = 500 / 256;
    const force = strain.map((e) => step * Math.round((Math.min(200_000 * e, 300 + 600 * e) + 0.2 * step * normal()) / step) * area);
    const found = analyseTension({ force, extension: strain.map((e) => e * roundPiece.gaugeLength) }, roundPiece);
    expect(found.upperYieldStrength).toBeUndefined();
    // 300 and 0.6 for each 0.1 % strain, read to a step
    expect(Math.abs(found.proofStrengths[0]!.value - 302)).toBeLessThan(step);
  });

  test('an elastic, ideally plastic piece has its proof strengths, also read in steps whose highest comes first', () => {
    const strain = Array.from({ length: 6000 }, (_, i) => i * 3.3e-6);
    const stress = strain.map((e) => Math.min(200_000 * e, 300));
    const { area } = roundPiece.section;
    const pull = (by: readonly number[]) =>
      analyseTension({ force: by.map((R) => R * area), extension: strain.map((e) => e * roundPiece.gaugeLength) }, roundPiece, {
        offsets: [0.0001, 0.002, 0.01],
      });
    const strengths = (by: readonly number[]) => pull(by).proofStrengths.map(({ value }) => value);
    expect(strengths(stress)).toEqual([0, 0, 0].map(() => expect.closeTo(300, 6) as number));
    const stepped = stress.map((R, i) => Math.round(R) + (i === 456 ? 1 : 0));
    expect(strengths(stepped)).toHaveLength(3);
    for (const R of strengths(stepped)) expect(Math.abs(R - 300)).toBeLessThanOrEqual(1);
    expect(codes(pull(stepped))).not.toContain('proof-strength-not-reached');
  });

  test('Ur is the elastic part of the work up to the proof strength, and its name says so', () => {
    // 70 GPa to 210 MPa, then 7 GPa: the offset line meets it at 70 (e - 0.002) = 0.21 + 7 (e - 0.003)
    const strain = Array.from({ length: 2001 }, (_, i) => i * 1e-5);
    const stress = strain.map((e) => Math.min(70_000 * e, 210 + 7000 * (e - 0.003)));
    const found = analyseTension(
      { force: stress.map((R) => R * roundPiece.section.area), extension: strain.map((e) => e * roundPiece.gaugeLength) },
      roundPiece,
    );
    const e = (0.14 + 0.21 - 0.021) / 63;
    const Rp = 70_000 * (e - 0.002);
    const work = 210 * 0.0015 + ((210 + Rp) / 2) * (e - 0.003);
    expect(found.resilience!.name).toBe('elastic energy per volume at the proof strength');
    expect(found.resilience!.value).toBeCloseTo((Rp * (e - 0.002)) / 2, 6);
    expect(energyDensity(found.curve, { to: found.proofStrengths[0]!.strain })).toBeCloseTo(work, 2);
    expect(work / found.resilience!.value).toBeGreaterThan(2);
  });

  test('a brittle piece has strength and no proof strength', () => {
    const brittle = simulateTension({ ...steel, material: { modulus: 110_000, yieldStress: 200, hardening: { law: 'none' } } });
    const found = analyseTension(brittle.record, roundPiece);
    expect(codes(found)).toContain('proof-strength-not-reached');
    expect(found.proofStrengths).toEqual([]);
    expect(found.tensileStrength.value).toBeGreaterThan(190);
  });

  test('every finding is of the catalogue, complete, and has no hole in its sentence', () => {
    for (const one of [...result.findings, ...analyseTension(simulateTension(withChange(raw)).record, roundPiece).findings]) {
      expect(Object.keys(catalogue)).toContain(one.code);
      expect(one.message).not.toMatch(/[{}]|NaN|undefined/);
      expect(one.remedy.length).toBeGreaterThan(5);
    }
  });
});

test('a proportional limit says what other definitions give, unless it is the same once it is rounded', () => {
  // 200 GPa up to a knee, in steps of 0.2 MPa
  const bar = (yielding: number, bend: number) => {
    const strain = Float64Array.from({ length: 6000 }, (_, i) => i * 1e-6);
    const knee = yielding / 200_000;
    const stress = strain.map((e) => (e < knee ? 200_000 * e : yielding + bend * (e - knee)));
    return analyseTension({ force: stress.map((R) => 50 * R), strain }, { section: sectionFromArea({ area: 50 }), gaugeLength: 40 });
  };
  const said = ({ findings }: TensionResult) => findings.filter(({ code }) => code === 'proportional-limit-by-definition');
  expect(bar(300, 500).proportionalLimit!.value).toBeCloseTo(300, 0);
  expect(said(bar(300, 500))).toEqual([]);
  expect(bar(300, 500).proportionalLimit!.byDefinition).toBeUndefined();
  // half as steep beyond the knee: an offset of 0.01 % is reached 20 MPa higher
  const [lowest, highest] = bar(300, 100_000).proportionalLimit!.byDefinition!;
  expect(Math.abs(lowest - 300)).toBeLessThan(1);
  expect(Math.abs(highest - 320)).toBeLessThan(1);
  expect(said(bar(300, 100_000))).toEqual([]);
  // on smooth curves definitions lie up to 40 % apart
  const limit = (definition: ProportionalDefinition, stress: number) => ({ ok: true as const, definition, stress, strain: 0 });
  const of = (offset: number) =>
    yieldFindings(
      { yielding: undefined, proportional: { deviation: limit('deviation', 300), offset: limit('offset', offset) } },
      { proportionalLimit: 'offset' },
    ).map(({ message }) => message);
  expect(of(499)).toEqual([]);
  expect(of(501)).toEqual(['The proportional limit is 300 to 501 MPa, depending on the definition.']);
});

test('fillets stretch too: with the effective length E is right again', () => {
  const fillets = { ...roundPiece, effectiveLength: 54.3 };
  const simulated = simulateTension({
    ...withChange({ logger: { rate: 60, extensometer: false, forceNoise: 0, motionNoise: 0 } }),
    piece: fillets,
  });
  const found = analyseTension(simulated.record, fillets, { frameCompliance: COMPLIANCE });
  expect(Math.abs(found.modulus!.value / 206_000 - 1)).toBeLessThan(1e-4);
  expect(Math.abs(found.totalExtensionAtFracture!.value / simulated.truth.totalExtensionAtFracture - 1)).toBeLessThan(1e-4);
});

test.each([
  ['not-finite record.force[3]', { force: [0, 1, 2, NaN], travel: [0, 1, 2, 3] }, roundPiece, {}],
  ['unequal-lengths record.travel', { force: [0, 1, 2, 3], travel: [0, 1, 2] }, roundPiece, {}],
  ['too-few record.force', { force: [5], travel: [0] }, roundPiece, {}],
  ['missing record', { force: [5, 6] }, roundPiece, {}],
  ['not-positive testPiece.gaugeLength', caseT1(), { ...roundPiece, gaugeLength: 0 }, {}],
  ['unknown-option testPiece.finalGaugeLength', caseT1(), { ...roundPiece, finalGaugeLength: 50 }, {}],
  ['missing testPiece.section', caseT1(), { gaugeLength: 40 }, {}],
  ['unknown-option options.offset', caseT1(), roundPiece, { offset: 0.002 }],
  ['not-positive options.offsets[1]', caseT1(), roundPiece, { offsets: [0.001, -0.002] }],
  ['out-of-range options.frameCompliance', caseT1(), roundPiece, { frameCompliance: -1 }],
  ['unknown-option options.test.name', caseT1(), roundPiece, { test: { name: 'x' } }],
  ['wrong-type options.test.identity', caseT1(), roundPiece, { test: { identity: 5 } }],
  ['wrong-type options.test.invented', caseT1(), roundPiece, { test: { invented: 'yes' } }],
  ['not-finite options.test.temperature', caseT1(), roundPiece, { test: { temperature: NaN } }],
  ['unknown-option options.thresholds.toe', caseT1(), roundPiece, { thresholds: { toe: 1 } }],
  ['not-positive options.thresholds.toeShare', caseT1(), roundPiece, { thresholds: { toeShare: -1 } }],
  ['out-of-range options.lowerYield', caseT1(), roundPiece, { lowerYield: 'x' }],
])('%s', (expected, given, piece, options) => {
  expect(refusal(() => analyseTension(given as TensionRecord, piece as typeof roundPiece, options as never))).toBe(expected);
});

test.each([0, 2, 5, 15])('a proof strength on a level that noise of %d N leaves no sample of which to be the highest', (noise) => {
  // straight up to 300 MPa, level over 1.2 % of strain, broken: Rp0.2 is that level, give or take a sample's noise
  const strain = [...Array.from({ length: 300 }, (_, i) => i / 2e5), ...Array.from({ length: 400 }, (_, i) => 0.0015 + i * 3e-5), 0.0136];
  for (let seed = 1; seed <= 10; seed += 1) {
    const random = randomNumbers(seed);
    const force = strain.map((e, i) => (i === 700 ? 0 : 50 * Math.min(2e5 * e, 300) + noise * random.normal()));
    const { proofStrengths } = analyseTension({ force, strain }, { section: sectionFromArea({ area: 50 }), gaugeLength: 40 });
    expect(Math.abs(proofStrengths[0]!.value - 300)).toBeLessThan(0.01 + (5 * noise) / 50);
  }
});

test('a result says which of the repairs that were asked for changed nothing', () => {
  const idle = (repairs: object) =>
    analyseTension(record, roundPiece, { repairs }).findings.flatMap(({ code, values }) =>
      code === 'repair-without-effect' ? [values['repair']] : [],
    );
  expect(idle({ zero: true, jumps: true })).toEqual(['zero', 'jumps']);
  expect(idle({ zero: false })).toEqual([]);
  expect(idle({})).toEqual([]);
});
