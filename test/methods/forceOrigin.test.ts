/** How a test says that its force was made: by a cylinder of nominal dimensions, or by the calibration of its channel. */
import { describe, expect, test } from 'vitest';
import { analyseBrinell, analyseTension, fromJson, toJson, type TensionOptions, type TestInfo } from '../../src/index.js';
import { renderHtml } from '../../src/report/index.js';
import { caseT1, COMPLIANCE, roundPiece } from '../support/records.js';
import { refusal } from '../support/thrown.js';

const tension = (test: TestInfo, options: TensionOptions = {}) =>
  analyseTension(caseT1(), roundPiece, { frameCompliance: COMPLIANCE, test, ...options });
const codesOf = ({ findings }: { readonly findings: readonly { readonly code: string }[] }) =>
  findings.map(({ code }) => code).filter((code) => /^(force-nominal|force-efficiency|channel-)/.test(code));
const cylinder = { bore: 40, rod: 20 };

describe('a cylinder', () => {
  test('stands in trail, settings and page', () => {
    const result = tension({ cylinder: { ...cylinder, efficiency: 0.965, tareForce: 68 } });
    // π (40² − 20²)/4 = 942.48
    expect(result.trail.slice(0, 2).map(({ step }) => step)).toEqual([
      'Force is oil pressure times 942.5 mm² (bore 40 mm, rod 20 mm) times an efficiency of 0.965.',
      '68 N were taken off the force.',
    ]);
    expect(result.provenance.options['test']).toEqual({ cylinder: { bore: 40, rod: 20, efficiency: 0.965, tareForce: 68 } });
    const page = renderHtml(result);
    expect(page).toMatch(/Bore of the cylinder<\/dt>\s*<dd><bdi>40\u00a0mm/);
    expect(page).toMatch(/Efficiency of the cylinder<\/dt>\s*<dd><bdi>0\.965/);
    expect(fromJson(toJson(result)).test).toEqual(result.test);
  });

  test('of the full bore, and a tare over travel', () => {
    const table = { travel: Float64Array.of(0, 50), force: Float64Array.of(60, 90) };
    const result = tension({ cylinder: { bore: 40, tareForce: table } });
    expect(result.trail.slice(0, 2).map(({ code, values }) => [code, values])).toEqual([
      ['force-by-bore', { area: expect.closeTo(1256.637, 3) as number, bore: 40, efficiency: 1 }],
      ['tare-over-travel-taken-off', { low: 60, high: 90 }],
    ]);
    expect(renderHtml(result)).toContain('a table over travel');
  });

  test('leaves the friction of the seals open until something holds it', () => {
    const doubts = { uncertainty: { force: 0.01 } };
    expect(codesOf(tension({ cylinder }))).toEqual(['force-nominal']);
    expect(codesOf(tension({ cylinder }, doubts))).toEqual(['force-nominal']);
    expect(codesOf(tension({ cylinder: { ...cylinder, efficiency: 0.965 } }))).toEqual(['force-efficiency-doubt']);
    expect(codesOf(tension({ cylinder: { ...cylinder, efficiency: 0.965 } }, doubts))).toEqual([]);
    expect(codesOf(tension({ cylinder, forceCalibration: { date: '2026-01-01', forceClass: 1 } }))).toEqual([]);
    expect(codesOf(tension({}))).toEqual([]);
    const indentations = [{ diameters: 4 }];
    expect(codesOf(analyseBrinell({ ballDiameter: 10, force: 29420, indentations }, {}, { test: { cylinder } }))).toEqual([
      'force-nominal',
    ]);
  });

  test.each([
    ['not-positive', { bore: 0 }, 'bore'],
    ['out-of-range', { bore: 40, rod: 40 }, 'rod'],
    ['out-of-range', { bore: 40, efficiency: 1.1 }, 'efficiency'],
    ['out-of-range', { bore: 40, efficiency: 0 }, 'efficiency'],
    ['unequal-lengths', { bore: 40, tareForce: { travel: [0, 5], force: [60] } }, 'tareForce.force'],
    ['not-increasing', { bore: 40, tareForce: { travel: [5, 1], force: [60, 70] } }, 'tareForce.travel[1]'],
    ['not-finite', { bore: 40, tareForce: NaN }, 'tareForce'],
    ['unknown-option', { bore: 40, stroke: 3 }, 'stroke'],
  ])('%s is refused: %j', (code, given, field) => {
    expect(refusal(() => tension({ cylinder: given }))).toBe(`${code} options.test.cylinder.${field}`);
  });
});

describe('the calibration of a channel', () => {
  const channel = { name: 'table.txt', coefficients: [-68, 909], span: [1, 25], points: 7 } as const;

  test('stands on the page with its day, its coefficients in the settings', () => {
    const page = renderHtml(tension({ channelCalibration: { ...channel, date: '2026-01-01' } }));
    expect(page).toMatch(/Calibration of the channel<\/dt>\s*<dd><bdi>table\.txt/);
    expect(page).toMatch(/Channel calibrated on<\/dt>\s*<dd><bdi>2026-01-01/);
    expect(page).toContain('[-68,909]');
  });

  test('older than a year is a caution, unless a later verification is named', () => {
    const old = { ...channel, date: '2024-12-01' };
    expect(codesOf(tension({ date: '2026-03-01', channelCalibration: old }))).toEqual(['channel-calibration-old']);
    expect(codesOf(tension({ date: '2025-12-01', channelCalibration: old }))).toEqual([]);
    expect(codesOf(tension({ channelCalibration: old }))).toEqual([]);
    expect(codesOf(tension({ date: '2026-03-01', channelCalibration: old, forceCalibration: { date: '2026-01-01' } }))).toEqual([]);
  });

  test.each([
    ['not-increasing', { ...channel, span: [5, 5] as const }, 'span'],
    ['too-few', { ...channel, coefficients: [1] }, 'coefficients'],
    ['wrong-type', { ...channel, date: '1.3.2026' }, 'date'],
  ])('%s is refused', (code, given, field) => {
    expect(refusal(() => tension({ channelCalibration: given }))).toBe(`${code} options.test.channelCalibration.${field}`);
  });
});
