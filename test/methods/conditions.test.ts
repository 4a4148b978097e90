/** What the test says of itself against what force and frame were verified for. */
import { describe, expect, test } from 'vitest';
import {
  analyseBending,
  analyseBrinell,
  analyseCompression,
  analyseCupping,
  analyseCurve,
  analyseShear,
  analyseTension,
  analyseUnloading,
  fitCompliance,
  fromJson,
  rectangular,
  required,
  round,
  toJson,
  type Finding,
  type ForceCalibration,
  type TensionOptions,
  type TestInfo,
} from '../../src/index.js';
import { renderHtml } from '../../src/report/index.js';
import { AREA, caseT1, COMPLIANCE, roundPiece } from '../support/records.js';
import { refusal } from '../support/thrown.js';

const aboutForce = /^(calibration|force-class|force-outside-verified)/;
const codesOf = (findings: readonly Finding[], about = aboutForce) => findings.map(({ code }) => code).filter((code) => about.test(code));
const tension = (test?: TestInfo, options: TensionOptions = {}) =>
  analyseTension(caseT1(), roundPiece, { frameCompliance: COMPLIANCE, ...(test ? { test } : {}), ...options });
const calibrated = (forceCalibration: ForceCalibration | string, date = '2026-03-01', options: TensionOptions = {}) =>
  tension({ date, forceCalibration }, options).findings.filter(({ code }) => aboutForce.test(code));

describe('age of the verification of the force', () => {
  test.each<[string, ForceCalibration | string, string, string[]]>([
    ['a year to the day is within', { date: '2025-03-01' }, '2026-03-01', []],
    ['a day more is not', { date: '2025-02-28' }, '2026-03-01', ['calibration-expired']],
    ['the day of the test itself', { date: '2026-03-01' }, '2026-03-01 14:20', []],
    ['a time behind a T', { date: '2025-03-01' }, '2026-03-01T14:20', []],
    ['a longer interval', { date: '2024-06-01', intervalMonths: 24 }, '2026-03-01', []],
    ['a shorter interval', { date: '2025-11-30', intervalMonths: 3 }, '2026-03-01', ['calibration-expired']],
    ['after the test', { date: '2026-03-02' }, '2026-03-01', ['calibration-after-test']],
    ['no day', { certificate: 'K 17' }, '2026-03-01', ['calibration-date-missing']],
    ['a certificate in words alone', 'K 17', '2026-03-01', ['calibration-date-missing']],
    ['a date of the test in other words', { date: '2025-03-01' }, '1.3.2026', ['calibration-age-unknown']],
    ['a date of the test with a digit too many', { date: '2025-03-01' }, '2026-03-011', ['calibration-age-unknown']],
  ])('%s', (_, given, date, expected) => {
    expect(calibrated(given, date).map(({ code }) => code)).toEqual(expected);
  });

  test('months count whole, with a share of the last; a fault beyond twice the interval', () => {
    expect(calibrated({ date: '2024-11-15' })[0]).toMatchObject({ severity: 'caution', values: { months: 16 - 14 / 31, interval: 12 } });
    expect(calibrated({ date: '2024-03-01' })[0]!.severity).toBe('caution');
    expect(calibrated({ date: '2024-02-28' })[0]).toMatchObject({ severity: 'fault', values: { date: '2024-02-28' } });
  });

  test('without a date of the test, and without a word of the calibration', () => {
    expect(codesOf(tension({ forceCalibration: { date: '2025-03-01' } }).findings)).toEqual(['calibration-age-unknown']);
    expect(codesOf(tension({ date: '2026-03-01' }).findings)).toEqual([]);
  });
});

describe('range and class', () => {
  const date = '2026-01-01';
  const proof = 250 * AREA;
  const highest = 280 * AREA;

  test('strengths within the verified forces, their ends included, and outside', () => {
    expect(calibrated({ date, range: [1000, 25_000] })).toEqual([]);
    const found = tension().proofStrengths[0]!.value * AREA;
    expect(calibrated({ date, range: [found, highest] })).toEqual([]);
    const [below] = calibrated({ date, range: [13_000, 25_000] });
    expect(below).toMatchObject({
      code: 'force-outside-verified',
      severity: 'caution',
      values: { symbol: 'Rp0.2', low: 13_000, high: 25_000 },
    });
    expect(Number(below!.values['force']) / proof).toBeCloseTo(1, 6);
    const [above] = calibrated({ date, range: [1000, 13_500] });
    expect(above).toMatchObject({ severity: 'caution', values: { symbol: 'Rm' } });
    expect(Number(above!.values['force'])).toBeCloseTo(highest, 6);
    // by more than a tenth
    expect(calibrated({ date, range: [1000, 12_700] })).toMatchObject([{ severity: 'fault', values: { symbol: 'Rm' } }]);
    expect(calibrated({ date, range: [1000, highest / 1.1 + 1] })).toMatchObject([{ severity: 'caution' }]);
  });

  test('a class enters nothing by itself: a note says so until the doubts of the test name the force', () => {
    const plain = tension({ date: '2026-03-01', forceCalibration: { date, forceClass: 1 } });
    expect(codesOf(plain.findings)).toEqual(['force-class-not-in-uncertainty']);
    expect(plain.tensileStrength).toEqual(tension().tensileStrength);
    expect(plain.findings.find(({ code }) => code === 'force-class-not-in-uncertainty')!.values).toEqual({ forceClass: 1, share: 1 });
    const counted = (uncertainty: TensionOptions['uncertainty']) =>
      calibrated({ date, forceClass: 1 }, '2026-03-01', { uncertainty }).map(({ code }) => code);
    expect(counted({})).toEqual(['force-class-not-in-uncertainty']);
    expect(counted({ forceClass: 1 })).toEqual([]);
    expect(counted({ force: 0.003 })).toEqual([]);
    expect(counted({ forceClass: 0.5 })).toEqual(['force-class-unlike']);
  });

  test('a class worse than 1', () => {
    expect(calibrated({ date, forceClass: 2 }).map(({ code }) => code)).toEqual(['force-class-coarse', 'force-class-not-in-uncertainty']);
    expect(calibrated({ date, forceClass: 0.5 }).map(({ code }) => code)).toEqual(['force-class-not-in-uncertainty']);
  });
});

describe('every method', () => {
  const force = Array.from({ length: 400 }, (_, i) => 20 * i);
  const travel = force.map((F) => F * 1e-4);
  const info: TestInfo = {
    date: '2026-03-01',
    grips: 'plates',
    forceCalibration: { date: '2024-12-01', forceClass: 1, range: [10, 20] },
  };
  const wrong = { constant: 2e-5, grips: 'wedges', direction: 'tension' as const };
  const pushed = ['compliance-of-other-grips', 'compliance-of-other-direction'];
  const cup = { force: [...force, 100], travel: [...travel, 0.8] };

  test.each<[string, { readonly findings: readonly Finding[] }, string[]]>([
    ['curve', analyseCurve({ strain: travel, stress: force }, { test: info }), []],
    ['unloading', analyseUnloading({ force, travel }, roundPiece, { test: info, frameCompliance: wrong }), ['compliance-of-other-grips']],
    [
      'compression',
      analyseCompression({ force, travel }, { section: round({ diameter: 10 }), height: 15 }, { test: info, frameCompliance: wrong }),
      pushed,
    ],
    [
      'bending',
      analyseBending(
        { force, travel },
        { section: rectangular({ width: 10, thickness: 4 }), setup: { points: 3, span: 64 } },
        { test: info, frameCompliance: wrong, indentationCompliance: { constant: 1e-6, direction: 'compression' } },
      ),
      pushed,
    ],
    ['cupping', analyseCupping(cup, { thickness: 1 }, { test: info, frameCompliance: wrong }), pushed],
    ['shear', analyseShear({ maximumForce: 56_800 }, { diameter: 12, planes: 2 }, { test: info }), []],
    ['brinell', analyseBrinell({ ballDiameter: 10, force: 9807, indentations: [{ diameters: [4, 4] }] }, {}, { test: info }), []],
  ])('%s speaks of age, range and class of the force, and of the compliance', (method, { findings }, frame) => {
    const ofForce = new Set(codesOf(findings));
    expect([...ofForce].sort()).toEqual([
      'calibration-expired',
      'force-class-not-in-uncertainty',
      ...(method === 'curve' ? [] : ['force-outside-verified']),
    ]);
    expect(codesOf(findings, /^compliance-of/)).toEqual(frame);
  });
});

describe('a compliance of other conditions', () => {
  const taken = (compliance: object, grips?: string) =>
    tension(grips === undefined ? undefined : { grips }, { frameCompliance: { constant: COMPLIANCE, ...compliance } });

  test('grips and direction are compared where both are stated; numbers do not change', () => {
    expect(codesOf(taken({ grips: 'wedges M12', direction: 'tension' }, ' Wedges m12').findings, /^compliance-of/)).toEqual([]);
    const other = taken({ grips: 'wedges', direction: 'compression' }, 'threads');
    expect(other.findings.find(({ code }) => code === 'compliance-of-other-grips')!.values).toEqual({
      measured: 'wedges',
      used: 'threads',
    });
    expect(other.findings.find(({ code }) => code === 'compliance-of-other-direction')!.values).toEqual({
      measuredDirection: 'compression',
      usedDirection: 'tension',
    });
    expect(other.modulus).toEqual(taken({}).modulus);
    expect(codesOf(taken({ grips: 'wedges' }).findings, /^compliance-of/)).toEqual([]);
    expect(codesOf(taken({}, 'threads').findings, /^compliance-of/)).toEqual([]);
  });

  test('an extensometer needs no frame: nothing is said of it', () => {
    const { force, travel } = caseT1();
    const found = analyseTension({ force, extension: travel! }, roundPiece, {
      frameCompliance: { constant: 1e-6, direction: 'compression' },
    });
    expect(codesOf(found.findings, /^compliance-of/)).toEqual([]);
  });

  test.each(['constant', 'table', 'power'] as const)('a fit carries them into its compliance: %s', (shape) => {
    const force = Array.from({ length: 50 }, (_, i) => 200 * (i + 1));
    const pull = { force, effectiveLength: 40, area: 50, travel: force.map((F) => F * (2e-5 + 40 / (210_000 * 50))) };
    const fitted = required(fitCompliance([pull], { shape, modulus: 210_000, grips: 'wedges', direction: 'tension' }));
    expect(fitted.compliance).toMatchObject({ grips: 'wedges', direction: 'tension' });
    const { force: F, travel } = caseT1();
    const result = analyseTension({ force: F, travel: travel! }, roundPiece, {
      frameCompliance: fitted.compliance,
      test: { grips: 'threads' },
    });
    expect(codesOf(result.findings, /^compliance-of/)).toEqual(['compliance-of-other-grips']);
  });

  test('wrong words are refused', () => {
    expect(refusal(() => taken({ grips: 5 }))).toBe('wrong-type options.frameCompliance.grips');
    expect(refusal(() => taken({ direction: 'up' }))).toBe('out-of-range options.frameCompliance.direction');
    expect(
      refusal(() => fitCompliance([{ force: [0, 1], travel: [0, 1], effectiveLength: 1, area: 1 }], { direction: 'up' as 'tension' })),
    ).toBe('out-of-range options.direction');
  });
});

describe('what is said of the test', () => {
  test.each<[string, object]>([
    ['wrong-type options.test.forceCalibration', { forceCalibration: 5 }],
    ['unknown-option options.test.forceCalibration.day', { forceCalibration: { day: '2026-01-01' } }],
    ['wrong-type options.test.forceCalibration.date', { forceCalibration: { date: '2026-02-31' } }],
    ['wrong-type options.test.forceCalibration.date', { forceCalibration: { date: '2026-2-3' } }],
    ['wrong-type options.test.forceCalibration.certificate', { forceCalibration: { certificate: 17 } }],
    ['not-positive options.test.forceCalibration.intervalMonths', { forceCalibration: { intervalMonths: 0 } }],
    ['out-of-range options.test.forceCalibration.forceClass', { forceCalibration: { forceClass: 4 } }],
    ['unequal-lengths options.test.forceCalibration.range', { forceCalibration: { range: [1] } }],
    ['not-increasing options.test.forceCalibration.range', { forceCalibration: { range: [5, 5] } }],
    ['not-positive options.test.forceCalibration.range', { forceCalibration: { range: [0, 5] } }],
    ['wrong-type options.test.grips', { grips: 5 }],
  ])('%s', (expected, info) => {
    expect(refusal(() => tension(info))).toBe(expected);
  });

  test('is kept as a copy, goes through JSON, and stands on the page', () => {
    const range = [1000, 25_000] as [number, number];
    const forceCalibration = { certificate: 'K <17>', date: '2025-11-03', intervalMonths: 12, forceClass: 1 as const, range };
    const result = tension({ date: '2026-03-01', grips: 'wedges', forceCalibration });
    expect(result.test.forceCalibration).toEqual(forceCalibration);
    expect((result.test.forceCalibration as ForceCalibration).range).not.toBe(range);
    expect(fromJson(toJson(result)).test).toEqual(result.test);
    const page = renderHtml(result);
    for (const part of ['wedges', 'K &lt;17&gt;', '2025-11-03', '12 months', '1\u00a0kN to 25\u00a0kN']) expect(page).toContain(part);
    expect(renderHtml(tension({ forceCalibration: 'K 18' }))).toContain('K 18');
  });
});

describe('the span of a calibration', () => {
  const spanned = (calibratedForces: readonly [number, number]) => tension({ calibratedForces });
  const outside = (result: ReturnType<typeof spanned>) =>
    result.findings.filter(({ code }) => code === 'force-outside-calibration').map(({ values }) => values['symbol']);

  test('names what lies outside, and the trail says how idle readings were carried', () => {
    const sound = spanned([1, 1e6]);
    expect(outside(sound)).toEqual([]);
    expect(sound.trail[0]!.step).toBe(
      'Force is by calibration from 1 to 1000000 N; idle readings below it went along its slope at 1 N, down to zero.',
    );
    const top = sound.maximumForce!.value;
    const small = spanned([1, 0.99 * top]);
    expect(outside(small)).toContain('Rm');
    expect(outside(small)).not.toContain('E');
    // above the start of the elastic window, below yield
    expect(outside(spanned([0.3 * top, 1e6]))).toContain('E');
    expect(spanned([0, 1e6]).trail[0]!.step).toBe('Force is by calibration, up to 1000000 N.');
    expect(tension({}).trail.some(({ code }) => code.startsWith('force-by-calibration'))).toBe(false);
  });

  test('a test that needs little of it may be in another unit', () => {
    const hardly = (result: ReturnType<typeof spanned>) => result.findings.filter(({ code }) => code === 'calibration-hardly-used');
    const top = spanned([1, 1e6]).maximumForce!.value;
    // what a calibration in MPa just holds, read as if in bar; and a test of a fifth of the span
    const [of] = hardly(spanned([1, 10 * top]));
    expect(of?.values['share']).toBeCloseTo(10, 9);
    expect(of?.values['force']).toBeCloseTo(top, 6);
    expect(hardly(spanned([1, 5 * top]))).toEqual([]);
  });

  test.each([
    ['not-increasing', [5, 5]],
    ['out-of-range', [-1, 5]],
    ['unequal-lengths', [1]],
  ])('%s is refused', (code, calibratedForces) => {
    expect(refusal(() => tension({ calibratedForces: calibratedForces as never }))).toBe(`${code} options.test.calibratedForces`);
  });
});
