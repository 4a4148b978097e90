import { describe, expect, test } from 'vitest';
import { analyseCupping, type CuppingOptions, type CuppingSheet, type ForceColumns } from '../../src/index.js';
import { figures, renderHtml, summarise } from '../../src/report/index.js';
import { simulateCupping, type CuppingScenario } from '../../src/simulate/index.js';
import { refusal } from '../support/thrown.js';

const COMPLIANCE = 2e-5;
const make = (scenario: Partial<CuppingScenario> = {}, noise = 0) =>
  simulateCupping({
    depth: 10.4,
    force: 9500,
    ...scenario,
    push: { compliance: COMPLIANCE, speed: 0.2, rate: 50, forceNoise: 10 * noise, travelNoise: 2e-3 * noise, ...scenario.push },
  });
const sheet: CuppingSheet = { thickness: 0.8, width: 90 };
const all = [make().record, make().record, make().record];
const codes = (record: ForceColumns | readonly ForceColumns[], options: CuppingOptions = {}, of = sheet) =>
  analyseCupping(record, of, { frameCompliance: COMPLIANCE, ...options }).findings.map(({ code }) => code);

describe('analyseCupping', () => {
  test.each([1, 2, 3, 4])('finds contact and depth of a simulated test with noise, seed %i', (seed) => {
    const { record, truth } = make({ seed }, 1);
    const { cuppingIndex, blanks } = analyseCupping(record, sheet, { frameCompliance: COMPLIANCE });
    // the standard reads to 0.1 mm
    expect(Math.abs(cuppingIndex!.value - truth.depth)).toBeLessThan(0.05);
    expect(Math.abs(blanks[0]!.contact - truth.contact)).toBeLessThan(0.05);
    expect(Math.abs(blanks[0]!.maximumForce.value - truth.maximumForce)).toBeLessThan(50);
  });

  // the force as a power of the depth: 10 mm deep, touched at 1 mm, 9 kN at the crack
  const risingBy = (power: number, scale = 1) => {
    const travel = Float64Array.from({ length: 1200 }, (_, k) => (k * scale) / 80);
    const force = travel.map((x) => {
      const u = x / scale < 1 ? 0 : (x / scale - 1) / 10;
      return u <= 1 ? 9000 * u ** power : Math.max(300, 9000 * (1 - 6 * (u - 1)));
    });
    return { force, travel, time: travel.map((_, k) => k / 20) };
  };

  test.each([
    [1, 0.001, false],
    [1.2, 0.03, false],
    [1.5, 0.1, true],
    [2, 0.3, true],
  ])('a force that rises by the power %s of the depth: contact to %s mm, the truth within what is said of it', (power, within, said) => {
    const { blanks, findings } = analyseCupping(risingBy(power), sheet, { frameCompliance: 0 });
    expect(Math.abs(blanks[0]!.contact - 1)).toBeLessThan(within);
    const doubt = findings.find(({ code }) => code === 'cupping-contact-uncertain');
    expect(doubt !== undefined).toBe(said);
    if (!doubt) return;
    expect(doubt.values['earliest']).toBeLessThan(1.001);
    expect(doubt.values['latest']).toBeGreaterThan(1);
    expect(doubt.values['doubt']).toBeGreaterThanOrEqual(Math.abs(blanks[0]!.contact - 1) - 0.001);
  });

  test('the doubt of the contacts stays in the uncertainty of the mean, however many blanks there are', () => {
    const of = (blanks: number) =>
      analyseCupping(Array<ReturnType<typeof risingBy>>(blanks).fill(risingBy(2)), sheet, { frameCompliance: 0 });
    // equal blanks scatter not at all: what is left is a rectangle whose half width the finding says
    for (const blanks of [2, 5]) {
      const { cuppingIndex, findings } = of(blanks);
      const { doubt } = findings.find(({ code }) => code === 'cupping-contact-uncertain')!.values;
      expect(cuppingIndex!.standardUncertainty).toBeCloseTo(Number(doubt) / Math.sqrt(3), 9);
      // 10 mm from 1 mm on is the truth
      expect(Math.abs(cuppingIndex!.value - 10)).toBeLessThan(2 * cuppingIndex!.standardUncertainty!);
    }
    // of one blank the scatter is not known
    expect(of(1).cuppingIndex!.standardUncertainty).toBeUndefined();
  });

  test('blanks that lie apart are a doubt about their mean', () => {
    const depths = (...scales: number[]) =>
      analyseCupping(
        scales.map((scale) => risingBy(1, scale)),
        sheet,
      ).findings;
    expect(depths(1.03, 1.05, 0.9).find(({ code }) => code === 'readings-differ')!.values['share']).toBeCloseTo(15.1, 1);
    expect(depths(1.03, 1.05, 1).some(({ code }) => code === 'readings-differ')).toBe(false);
  });

  test('three even blanks give no doubt', () => {
    expect(codes(all)).toEqual([]);
    expect(codes(all[0]!)).toEqual(['cupping-few-blanks']);
  });

  test('a compliance that leaves no way for the sheet is refused for every blank, and the depth holds the frame', () => {
    const { findings, cuppingIndex, trail } = analyseCupping(all, sheet, { frameCompliance: 20 });
    const raw = analyseCupping(all, sheet);
    expect(findings.map(({ code }) => code)).toEqual(['compliance-too-large']);
    expect(findings[0]).toMatchObject({ severity: 'fault', field: 'cuppingIndex' });
    expect(cuppingIndex).toEqual(raw.cuppingIndex);
    expect(trail).toEqual(raw.trail);
    const { force, travel, time } = all[0]!;
    // a blank that was hardly pushed refuses what the others could spare
    const short = { force, travel: travel.map((x) => x / 10), time };
    const way = Math.max(...short.travel) / Math.max(...force);
    const mixed = analyseCupping([all[1]!, short], sheet, { frameCompliance: 2 * way });
    expect(mixed.findings.map(({ code }) => code)).toContain('compliance-too-large');
    expect(mixed.blanks[0]!.depths).toEqual(raw.blanks[1]!.depths);
  });

  test('a crack that is not in the record withholds the depth', () => {
    const { force, travel, time } = make().record;
    const end = force.indexOf(force.reduce((a, b) => Math.max(a, b))) + 1;
    const cut = { force: force.slice(0, end), travel: travel.slice(0, end), time: time.slice(0, end) };
    const result = analyseCupping(cut, sheet, { frameCompliance: COMPLIANCE });
    expect(result).not.toHaveProperty('cuppingIndex');
    expect(result.findings.map(({ code }) => code)).toContain('cupping-crack-not-recorded');
    expect(renderHtml(result)).toContain('no crack is in the record');
    expect(codes([cut, ...all])).toEqual(['cupping-crack-not-recorded']);
  });

  test('a gradual fall, coarse steps and a frame left in are doubts', () => {
    expect(codes(make({ fall: 0.1, fallWay: 1 }).record)).toContain('cupping-fall-gradual');
    expect(codes(make({ push: { travelStep: 0.2 } }).record)).toContain('cupping-displacement-coarse');
    expect(codes(make({ push: { travelStep: 0.1 } }).record)).not.toContain('cupping-displacement-coarse');
    expect(codes(all, { frameCompliance: undefined })).toEqual(['cupping-frame-included']);
  });

  test('sheet, blank, clamp and tools, each at its limit', () => {
    expect(codes(all, {}, { thickness: 0.1, width: 90 })).toEqual([]);
    expect(codes(all, {}, { thickness: 2 })).toEqual([]);
    expect(codes(all, {}, { thickness: 2.1, width: 89 })).toEqual(['cupping-sheet-outside', 'cupping-blank-narrow']);
    expect(codes(all, { holdingForce: 10_000 })).toEqual([]);
    expect(codes(all, { holdingForce: 5000 })).toEqual(['cupping-holding-force']);
    expect(codes(all, { ballDiameter: 8, dieDiameter: 11 })).toEqual(['cupping-tools-other']);
  });

  test('wrong arguments are refused, each by its path', () => {
    const call = (record: unknown, of: object = sheet, options: object = {}) =>
      refusal(() => analyseCupping(record as never, of as never, options));
    expect(call([])).toBe('empty record');
    expect(call({ force: [0, 1] })).toBe('missing record.travel');
    expect(
      call([
        { force: [0, 1], travel: [0, 1] },
        { force: [0, NaN], travel: [0, 1] },
      ]),
    ).toBe('not-finite record[1].force[1]');
    expect(call({ force: [0, -1], travel: [0, 1] })).toBe('not-positive record.force');
    expect(call([{ force: [0, -1], travel: [0, 1] }])).toBe('not-positive record[0].force');
    expect(call(all, {})).toBe('missing sheet.thickness');
    expect(call(all, { thickness: 1, width: 0 })).toBe('not-positive sheet.width');
    expect(call(all, { thickness: 1, length: 5 })).toBe('unknown-option sheet.length');
    expect(call(all, sheet, { minimumFall: 1 })).toBe('out-of-range options.minimumFall');
    expect(call(all, sheet, { frameCompliance: -1 })).toBe('out-of-range options.frameCompliance');
    expect(call(all, sheet, { punch: 20 })).toBe('unknown-option options.punch');
    expect(refusal(() => simulateCupping({ depth: 10, force: 0 }))).toBe('not-positive force');
  });

  test('a record of one step at contact still has a contact', () => {
    const { blanks } = analyseCupping({ force: [0, 0, 9000, 9000, 100], travel: [0, 1, 2, 3, 4] }, sheet);
    expect(blanks[0]!.contact).toBe(2);
  });

  test('has a page of its own', () => {
    const result = analyseCupping(all, sheet, { frameCompliance: COMPLIANCE, test: { invented: true } });
    expect(summarise(result).map(({ symbol }) => symbol)).toEqual(['IE', 'h 1', 'Fm 1', 'h 2', 'Fm 2', 'h 3', 'Fm 3']);
    expect(summarise(result)[0]!.text).toBe('10.4');
    expect(Object.keys(figures(result))).toEqual(['force']);
    const page = renderHtml(result);
    for (const words of ['Cupping test', 'contact at', '0.8\u00a0mm thick, 90\u00a0mm wide', 'cup a torn one', 'not design values'])
      expect(page).toContain(words);
  });
});
