import { describe, expect, test } from 'vitest';
import { analyseUnloading, round, type UnloadingAnalysisOptions } from '../../src/index.js';
import { figures, renderHtml, summarise } from '../../src/report/index.js';
import { simulateTension } from '../../src/simulate/index.js';
import { refusal } from '../support/thrown.js';

const COMPLIANCE = 2e-5;
const piece = { section: round({ diameter: 8 }), gaugeLength: 40, parallelLength: 48 };
const { record, truth } = simulateTension({
  material: { modulus: 70_000, hardening: { law: 'hollomon', strengthCoefficient: 420, exponent: 0.12 } },
  piece,
  frame: { compliance: COMPLIANCE, slack: 0.1 },
  hand: { speed: 0.02, unloadings: [{ stress: 150 }, { stress: 190, bow: 5e-5 }, { stress: 230, to: 0.1, bow: 1e-4 }] },
  logger: { rate: 50, extensometer: true },
});
const byExtensometer = { force: record.force, extension: record.extension!, time: record.time! };
const analysed = (options: UnloadingAnalysisOptions = {}, columns: Parameters<typeof analyseUnloading>[0] = byExtensometer) =>
  analyseUnloading(columns, piece, { reversibility: 0.005, ...options });
const codes = (result: ReturnType<typeof analysed>) =>
  result.findings.map(({ code }) => code).filter((code) => /unloading|permanent|revers|travel/.test(code));

describe('analyseUnloading', () => {
  const result = analysed();

  test('moduli, sets and energies of the simulation; the elastic line of a curve that is round from the start is a little low', () => {
    expect(result.loops).toHaveLength(3);
    truth.unloadings!.forEach(({ slope, permanentSet, energy }, k) => {
      const loop = result.loops[k]!;
      expect(Math.abs(loop.slope.value / slope - 1)).toBeLessThan(0.003);
      // sets count from the elastic line, whose origin a round curve moves by some 1e-5
      expect(Math.abs(loop.permanentSet.value - permanentSet)).toBeLessThan(3e-5);
      expect(Math.abs(loop.energy!.value - energy)).toBeLessThan(0.02 * energy + 1e-4);
      expect(loop.slope.symbol).toBe('Eu');
    });
  });

  test('each loop passes or fails, and the strength lies between the last that passes and the first that fails', () => {
    const passes = result.loops.map(({ withinLimit }) => withinLimit);
    expect(passes).toEqual([true, true, false]);
    const { value, symbol } = result.permanentSetStrength!;
    expect(symbol).toBe('Rr0.2');
    // the material is K εp^n: between the loops the power through both is its own, but for elastic strain in the set
    expect(Math.abs(value / (420 * 0.002 ** 0.12) - 1)).toBeLessThan(0.005);
  });

  test('between a set of nothing and one above the limit the strength lies on a straight line', () => {
    const line = (from: number, to: number) => Array.from({ length: 21 }, (_, i) => from + ((to - from) * i) / 20);
    const stress = [...line(0, 200), ...line(200, 0), ...line(0, 200), 250, 280, ...line(280, 0)];
    const elastic = [...line(0, 200), ...line(200, 0), ...line(0, 200)].map((R) => R / 2e5);
    const strain = [...elastic, 2e-3, 5.4e-3, ...line(280, 0).map((R) => 4e-3 + R / 2e5)];
    const force = stress.map((R) => R * piece.section.area);
    const straight = analyseUnloading({ force, strain }, piece, { reversibility: 0, window: { from: 0, to: 1 } });
    const [first, second] = straight.loops.map(({ permanentSet }) => permanentSet.value);
    expect(first).toBeCloseTo(0, 12);
    expect(straight.permanentSetStrength!.value).toBeCloseTo(200 + (80 * (0.002 - first!)) / (second! - first!), 9);
  });

  test('a loop that does not go to zero is a note, a limit that no loop passes leaves the strength out', () => {
    expect(codes(result)).toEqual(['unloading-not-to-zero']);
    const strict = analysed({ setLimit: 1e-5 });
    expect(strict).not.toHaveProperty('permanentSetStrength');
    expect(codes(strict)).toContain('permanent-set-not-bracketed');
  });

  test('a force that holds while rising only gives no loops; an unknown one is a doubt', () => {
    expect(analysed({ reversibility: 0.015 }).loops).toHaveLength(3);
    const refused = analysed({ reversibility: 0.016 });
    expect(refused.loops).toEqual([]);
    expect(refused).not.toHaveProperty('permanentSetStrength');
    expect(codes(refused)).toEqual(['unloading-refused']);
    expect(refused.findings.find(({ code }) => code === 'unloading-refused')!.message).toContain('1.6 %');
    expect(codes(analysed({ reversibility: undefined }))).toContain('reversibility-unknown');
  });

  test('friction of a cylinder makes a loop of its own: twice the friction over the strain of the fall', () => {
    const friction = 100;
    const oily = simulateTension({
      material: { modulus: 70_000, hardening: { law: 'hollomon', strengthCoefficient: 420, exponent: 0.12 } },
      piece,
      frame: { bore: 40, friction },
      hand: { speed: 0.02, unloadings: [{ stress: 200 }] },
      logger: { rate: 50, extensometer: true },
    });
    const { loops } = analysed({ reversibility: undefined }, { force: oily.record.force, extension: oily.record.extension! });
    const made = (2 * friction * (0.98 * 200)) / piece.section.area / 70_000;
    expect(oily.truth.unloadings![0]!.energy).toBe(0);
    expect(Math.abs(loops[0]!.energy!.value / made - 1)).toBeLessThan(0.05);
  });

  test('from travel: a slope of frame and piece, or the modulus where the frame was taken out', () => {
    const travel = { force: record.force, travel: record.travel!, time: record.time! };
    const raw = analysed({}, travel);
    expect(raw.loops[0]!.slope).toMatchObject({ symbol: 'mu' });
    expect(raw.loops[0]!.slope.value / (1 / (1 / 70_000 + (COMPLIANCE * piece.section.area) / 48))).toBeCloseTo(1, 2);
    expect(codes(raw)).toContain('extension-from-travel');
    const corrected = analysed({ frameCompliance: COMPLIANCE }, travel);
    expect(corrected.loops[0]!.slope.symbol).toBe('Eu');
    expect(corrected.loops[0]!.slope.value / 70_000).toBeCloseTo(1, 2);
    expect(corrected.trail[0]!.code).toBe('frame-compliance-removed');
    expect(summarise(raw)[0]!.stamp).toBe('determined from crosshead displacement');
  });

  test.each([
    ['µm/kN typed for mm/N', 20],
    ['70 % too large', 1.7 * COMPLIANCE],
    ['the same as a table', { force: [0, 50_000], travel: [0, 1.7] }],
  ])('a compliance that leaves nothing for the piece, %s, is refused, and the rest is that of the travel', (_, frameCompliance) => {
    const travel = { force: record.force, travel: record.travel!, time: record.time! };
    const refused = analysed({ frameCompliance }, travel);
    const fault = refused.findings.find(({ code }) => code === 'compliance-too-large')!;
    expect(fault).toMatchObject({ severity: 'fault', field: 'loops' });
    // 48 mm of 70 GPa give 1.364e-5 mm/N, a little more where the curve bends
    const given = typeof frameCompliance === 'number' ? frameCompliance : 3.4e-5;
    expect(Number(fault.values['share']) / ((100 * given) / (COMPLIANCE + 48 / 70_000 / piece.section.area))).toBeCloseTo(1, 1);
    const { findings, provenance } = refused;
    expect({ ...analysed({}, travel), frameRemoved: false, findings, provenance }).toEqual(refused);
    expect(refused.loops[0]!.slope.symbol).toBe('mu');
  });

  test('without an unloading, and with an extensometer, a compliance is judged as well as it can be', () => {
    const rise = { force: [0, 1000, 2000, 3000], travel: [0, 0.1, 0.2, 0.3] };
    const refusedCodes = (options: UnloadingAnalysisOptions, columns: Parameters<typeof analyseUnloading>[0]) =>
      analysed(options, columns).findings.map(({ code }) => code);
    expect(refusedCodes({ frameCompliance: 2e-4 }, rise)).toContain('compliance-too-large');
    expect(refusedCodes({ frameCompliance: 2e-5 }, rise)).not.toContain('compliance-too-large');
    expect(refusedCodes({ frameCompliance: 20 }, byExtensometer)).not.toContain('compliance-too-large');
  });

  test('a test without unloadings says why', () => {
    const plain = analyseUnloading({ force: [0, 1000, 2000, 3000], strain: [0, 1e-4, 2e-4, 3e-4] }, piece, { reversibility: 0 });
    expect(plain.loops).toEqual([]);
    expect(codes(plain)).toEqual(['unloading-none']);
    expect(renderHtml(plain)).toContain('No unloading is in the record');
  });

  test('wrong options are refused', () => {
    const call = (options: object) => refusal(() => analysed(options));
    expect(call({ reversibility: -1 })).toBe('out-of-range options.reversibility');
    expect(call({ setLimit: 0 })).toBe('not-positive options.setLimit');
    expect(call({ frameCompliance: NaN })).toBe('not-finite options.frameCompliance');
    expect(call({ minimumFall: 0 })).toBe('out-of-range options.minimumFall');
    expect(call({ offsets: [1] })).toBe('unknown-option options.offsets');
    expect(refusal(() => analyseUnloading(byExtensometer, { ...piece, afterFracture: { fractureDistance: -1 } }))).toBe(
      'out-of-range testPiece.afterFracture.fractureDistance',
    );
  });

  test('has a page of its own', () => {
    expect(Object.keys(figures(result))).toEqual(['stressStrain', 'unloadingSlopes']);
    expect(summarise(result).map(({ symbol }) => symbol)).toEqual([
      'Rr0.2',
      'Eu 1',
      'er 1',
      'w 1',
      'Eu 2',
      'er 2',
      'w 2',
      'Eu 3',
      'er 3',
      'w 3',
    ]);
    const page = renderHtml(result);
    for (const words of ['Tension test with unloadings', 'Unloading 3: from', 'a pause is none', 'not design values'])
      expect(page).toContain(words);
  });
});
