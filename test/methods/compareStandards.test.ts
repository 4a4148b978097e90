import { describe, expect, test } from 'vitest';
import { analyseTension, compareStandards, round } from '../../src/index.js';
import { renderHtml, summarise } from '../../src/report/index.js';
import { simulateTension } from '../../src/simulate/index.js';
import { refusal } from '../support/thrown.js';

const piece = { section: round({ diameter: 8 }), gaugeLength: 40, parallelLength: 48 };
const { record, truth } = simulateTension({
  material: {
    modulus: 206_000,
    yieldStress: 541,
    yieldPoint: { upper: 563 },
    hardening: { law: 'swift', prestrain: 0.03, exponent: 0.15 },
    fracture: { extension: 0.2 },
  },
  piece,
  logger: { extensometer: true, rate: 100 },
  hand: { speed: 0.01, speedAfterYield: 0.1 },
});
const result = analyseTension(record, { ...piece, afterFracture: truth.afterFracture }, { totalExtensions: [0.005, 0.01] });
const rows = compareStandards(result);
const row = (symbol: string) => rows.find(({ iso }) => iso.symbol === symbol)!;

describe('compareStandards', () => {
  test('what each calls a property', () => {
    expect(rows.map(({ iso, astm }) => [iso.symbol, astm.symbol]).filter(([symbol]) => symbol !== '')).toEqual([
      ['ReH', 'UYS'],
      ['ReL', 'LYS'],
      ['Ae', 'YPE'],
      ['Rp0.2', 'YS (0.2 % offset)'],
      ['Rt0.5', 'YS (0.5 % EUL)'],
      ['Rt1', 'YS (1 % EUL)'],
      ['Rm', 'TS'],
      ['Ag', ''],
      ['Agt', 'El(U)'],
      ['A', 'El'],
      ['Z', 'RA'],
    ]);
  });

  test('each rounds in its own way, from the same unrounded value', () => {
    expect(row('ReH').iso.text).toBe('563');
    expect(row('ReH').astm.text).toBe('565');
    expect(row('Rm').value).toBe(result.tensileStrength!.value);
    expect(row('A').astm.text).toBe(String(Math.round(100 * result.elongationAfterFracture!.value)));
    expect(row('Z')).toMatchObject({ unit: '%', iso: { text: '50' }, astm: { text: '50' } });
    expect(row('Ag').astm).not.toHaveProperty('text');
    // the column of ISO is what the results table of the report says
    for (const { symbol, text } of summarise(result).filter(({ symbol }) =>
      ['ReH', 'ReL', 'Ae', 'Rp0.2', 'Rm', 'Ag', 'Agt', 'A', 'Z'].includes(symbol),
    ))
      expect(row(symbol).iso.text).toBe(text);
  });

  // ASTM E8/E8M, rounding (from memory)
  test.each([
    [499.4, '499'],
    [502.4, '500'],
    [998, '1000'],
    [1004, '1000'],
    [1006, '1010'],
  ])('a strength of %f MPa is %s by ASTM', (value, text) => {
    const other = { ...result, tensileStrength: { ...result.tensileStrength!, value } };
    expect(compareStandards(other).find(({ topic }) => topic === 'tensileStrength')!.astm.text).toBe(text);
  });

  test('an elongation below 10 % is rounded to 0.5 % by ASTM, above to 1 %', () => {
    const text = (value: number) =>
      compareStandards({ ...result, elongationAfterFracture: { ...result.elongationAfterFracture!, value } }).find(
        ({ topic }) => topic === 'elongationAfterFracture',
      )!.astm.text;
    expect(text(0.0832)).toBe('8.5');
    expect(text(0.1832)).toBe('18');
  });

  test('what the result has not is left out, the rules stay', () => {
    const bare = compareStandards(analyseTension({ force: [0, 1], travel: [0, 1] }, piece));
    expect(bare.map(({ topic }) => topic)).not.toContain('elongationAfterFracture');
    expect(bare.map(({ topic }) => topic).slice(-4)).toEqual(['position of the fracture', 'rates', 'point of fracture', 'rounding']);
    for (const { iso, astm, difference } of rows)
      for (const text of [iso.rule, astm.rule, difference]) expect(text.length).toBeGreaterThan(10);
  });

  test('only a tension result has one', () => {
    expect(refusal(() => compareStandards({ method: 'shear' } as never))).toBe('wrong-type result.method');
    expect(refusal(() => compareStandards(undefined as never))).toBe('missing result');
  });

  test('stands on the page of a tension test', () => {
    const page = renderHtml(result);
    expect(page).toContain('<h2>Two standards side by side</h2>');
    expect(page).toContain('UYS 565\u00a0MPa: upper yield strength');
  });
});
