import { describe, expect, test } from 'vitest';
import {
  analyseBrinell,
  analyseCurve,
  analyseShear,
  analyseTension,
  fromJson,
  toJson,
  version,
  type TensionResult,
} from '../../src/index.js';
import { chinese, french, german } from '../../src/languages/index.js';
import { drawFigures } from '../../src/render/index.js';
import { budgetFigure, decisionFigure, figures, renderHtml, summarise, type AskedDecision } from '../../src/report/index.js';
import { figuresApart } from '../../src/report/figures/figuresApart.js';
import { plane } from '../../src/report/figures/plane.js';
import { presentation } from '../../src/report/words/presentation.js';
import { shownUnit } from '../../src/report/words/shownUnit.js';
import { simulateTension } from '../../src/simulate/index.js';
import { replicates, tensionResult } from '../support/pages.js';
import { COMPLIANCE, roundPiece } from '../support/records.js';
import { refusal } from '../support/thrown.js';

/** What a page says, without marks. */
const said = (page: string): string =>
  page
    .replace(/<style>[^]*?<\/style>|<svg[^]*?<\/svg>/g, '')
    .replace(/<[^>]*>/g, ' ')
    .replace(/&#39;/g, "'")
    .replace(/&lt;/g, '<')
    .replace(/[^\S\u00a0\u202f]+/g, ' ');
const flat = (page: string): string => said(page).replace(/\s+/g, ' ');

const { record } = simulateTension({
  material: {
    modulus: 206_000,
    yieldStress: 280,
    yieldPoint: { upper: 305 },
    hardening: { law: 'swift', prestrain: 0.03, exponent: 0.25 },
    fracture: { extension: 0.35 },
  },
  piece: roundPiece,
  logger: { rate: 50, extensometer: true, forceNoise: 10, motionNoise: 2e-4 },
});
const result = tensionResult();

describe('numbers', () => {
  const show = presentation('printed', {});

  test('an uncertainty has two figures, zeros at the end too', () => {
    expect([1, 0.3, 0.0996, 9.96, 12, 1234, 0.0304, 0].map(show.doubt)).toEqual(['1.0', '0.30', '0.10', '10', '12', '1200', '0.030', '0']);
    expect(show.doubt(2.5e-8)).toBe('2.5\u00a0×\u00a010⁻⁸');
    expect(show.doubt(-1.04)).toBe('−1.0');
    expect(presentation('printed', { language: german }).doubt(0.3)).toBe('0,30');
  });

  test('a value has the decimals of the uncertainty beside it', () => {
    expect(show.beside(235.6789, 1, 4)).toBe('235.7');
    expect(show.beside(235.6789, 0.0304, 4)).toBe('235.679');
    expect(show.beside(235.6789, 30, 4)).toBe('236');
    expect(show.beside(235.6789, 0, 4)).toBe('235.7');
  });

  test('degrees of freedom without end are ∞', () => {
    expect([undefined, 120e9, 12.3, 9000].map(show.freedom)).toEqual(['∞', '∞', '12', '9000']);
  });

  test('there is one minus sign, in numbers and in sentences', () => {
    expect(show.number(-0.5, 3)).toBe('−0.5');
    expect(show.digits('-1.5e-4')).toBe('−1.5\u00a0×\u00a010⁻⁴');
    expect(show.digits('2026-03-31')).toBe('2026-03-31');
    expect(show.say('Maximum: sample {sample}.', { sample: -1_234_567 })).toBe('Maximum: sample −1234567.');
    expect(show.say('Maximum: sample {sample}.', { sample: 1_234_567 })).toBe('Maximum: sample 1234567.');
    const [finding] = result.findings;
    const message = show.finding({
      ...finding!,
      values: Object.fromEntries(Object.keys(finding!.values).map((name) => [name, -0.25])),
    }).message;
    expect(message).not.toContain('-0.25');
  });

  test('no line ends before a unit', () => {
    expect(show.percent(0.01)).toBe('1\u00a0%');
    expect(show.value(5, 'mm', 3)).toBe('5\u00a0mm');
    expect(presentation('printed', { language: french }).percent(0.0125)).toBe('1,25\u202f%');
    expect(said(renderHtml(result))).toContain('Gauge length L0 40\u00a0mm');
  });
});

test('the unit of a quantity stands in one table', () => {
  expect(shownUnit('E', 'MPa')).toEqual({ unit: 'GPa', factor: 1e-3 });
  expect(shownUnit('Rm', 'MPa')).toEqual({ unit: 'MPa', factor: 1 });
  expect(shownUnit('U', 'MPa')).toEqual({ unit: 'MJ/m³', factor: 1 });
  expect(shownUnit('Fm', 'N')).toEqual({ unit: 'kN', factor: 1e-3 });
  expect(shownUnit('A', '1')).toEqual({ unit: '%', factor: 100 });
  expect(shownUnit('n', '1')).toEqual({ unit: '', factor: 1 });
  for (const slope of ['mE', 'Ec', 'mEc', 'Ef', 'Eb', 'mf', 'Eu 2', 'mu 1']) expect(shownUnit(slope, 'MPa').unit, slope).toBe('GPa');
  for (const strength of ['K', 'Rp0.2', 'σfM', 'Rr0.2']) expect(shownUnit(strength, 'MPa').unit, strength).toBe('MPa');
  for (const share of ['Agt', 'At − R/mE', 'Z', 'e', 'er 1', 'εfM', 'ss/sb']) expect(shownUnit(share, '1').unit, share).toBe('%');
  for (const bare of ['εu', 'm', 'r', 'h0/d0', 'L/h', 'τm/Rm']) expect(shownUnit(bare, '1').unit, bare).toBe('');
  expect(shownUnit('w 1', 'MPa').unit).toBe('MJ/m³');
  expect(shownUnit('x', undefined)).toEqual({ unit: '', factor: 1 });
});

test('a name with a separator of lines stays text in the expression that shows it', () => {
  const layer = plane(presentation('printed', {}), { title: 'x' }, { title: '', names: ['a\u2028b\u2029c'] }).marks([[0, 0]]);
  const { labelExpr } = (layer as unknown as { encoding: { y: { axis: { labelExpr: string } } } }).encoding.y.axis;
  expect(labelExpr).toBe(String.raw`["a\u2028b\u2029c"][datum.value]`);
});

describe('a value beside its limit', () => {
  const page = (measured: AskedDecision['measured'], specification: AskedDecision['specification']) =>
    flat(renderHtml(result, { decisions: [{ measured, specification }], whatIf: false }));

  test('is written with as many figures as tell the two apart', () => {
    expect(figuresApart([235, 235])).toBe(5);
    expect(figuresApart([234.9991, 235])).toBe(6);
    expect(figuresApart([235 - 1e-9, 235])).toBe(12);
    const own = page({ value: 234.9991, symbol: 'ReH', unit: 'MPa' }, { lower: 235 });
    expect(own).toContain('ReH 234.999 MPa ≥ 235 MPa');
    expect(decisionFigure({ value: 234.9991, symbol: 'ReH' }, { lower: 235 }, { unit: 'MPa' }).description).toBe('234.999\u00a0MPa: fail.');
  });

  test('has its own unit where that is not the one of the property, and that of its symbol where the report has none', () => {
    expect(page({ value: 22_000, symbol: 'Rm', unit: 'N' }, { lower: 20_000 })).toContain('Rm 22 kN ≥ 20 kN');
    const { elongationAfterFracture, ...without } = result;
    expect(elongationAfterFracture).toBeDefined();
    const decisions = [{ measured: { value: 0.22, symbol: 'A', standardUncertainty: 0.003 }, specification: { lower: 0.2 } }];
    expect(flat(renderHtml(without, { decisions }))).toContain('A 22 % 0.30 % ≥ 20 %');
  });
});

describe('a curve without a piece', () => {
  const strain = Float64Array.from({ length: 801 }, (_, i) => i / 20_000);
  const stress = strain.map((e) => Math.min(200_000 * e, 300 + 1500 * (e - 0.0015)));
  const curve = analyseCurve({ strain, stress }, { test: { identity: 'sheet 5' } });

  test.each([
    ['as it was made', curve],
    ['from JSON', fromJson(toJson(curve))],
  ])('%s has a page, figures and a summary of what it can give', async (_, own) => {
    const made = figures(own);
    expect(Object.keys(made)).toEqual(expect.arrayContaining(['stressStrain', 'elasticDetail']));
    expect(made).not.toHaveProperty('loadExtension');
    const symbols = summarise(own).map(({ symbol }) => symbol);
    expect(symbols).toEqual(expect.arrayContaining(['E', 'Rp0.2', 'Rm']));
    expect(symbols).not.toContain('Fm');
    const page = flat(renderHtml(own, { drawings: await drawFigures(made) }));
    expect(page).toContain('Tension test: sheet 5');
    expect(page).toContain('To do it again: analyseCurve of testpiece');
    expect(page).toContain('with the columns of that hash and these options.');
    expect(page).not.toMatch(/Gauge length L0|What if|undefined|NaN/);
  });

  test('without the curve it is refused by its path', () => {
    for (const made of [renderHtml, figures, summarise])
      expect(refusal(() => made({ method: 'tension' } as unknown as TensionResult))).toBe('missing result.curve');
  });
});

describe('a sentence says a force in the unit of the table above it', () => {
  const conditions = { forceCalibration: { certificate: 'C-1', date: '2026-01-05', range: [2000, 20_000] as const } };
  const sheared = analyseShear({ maximumForce: 12_000 }, { diameter: 5, planes: 2 }, { test: conditions });

  test('in kN', () => {
    const page = flat(renderHtml(sheared));
    expect(page).toContain('Maximum force: as given, 12 kN.');
    expect(page).toContain('Forces verified 2 kN to 20 kN');
  });

  test('in lbf', () => {
    const page = flat(renderHtml(sheared, { units: 'in-lb' }));
    // 12 000 N / 4.4482216 N
    expect(page).toContain('Maximum force: as given, 2697.7 lbf.');
    expect(page).toContain('Forces verified 449.6 lbf to 4496 lbf');
  });
});

describe('in lbf, in and ksi', () => {
  const page = flat(renderHtml(result, { units: 'in-lb' }));

  test('the page says which of its numbers stay metric', () => {
    expect(page).toContain('Numbers in findings are in N, mm, MPa and s.');
    expect(page).toContain('Values in this table are in MPa and %.');
    expect(page).toContain('In ksi, in and lbf each step is the next round one below the metric one.');
    expect(flat(renderHtml(result))).not.toMatch(/Numbers in findings|Values in this table|next round/);
  });

  test('a line of a budget is turned with its unit', () => {
    const line = result.uncertainty!['A']!.lines.find(({ input, unit }) => input === 'gaugeLength' && unit === 'mm')!;
    const inches = line.standardUncertainty / 25.4;
    const shown = new RegExp(`gauge length L0 \\S+ \\S+ (\\S+) in `).exec(page)!;
    expect(Number(shown[1]) / inches).toBeCloseTo(1, 1);
  });

  test('strengths by ASTM E8 have its steps of 100, 500 and 1000 psi', () => {
    const of = (ksi: number) =>
      summarise(
        { ...result, tensileStrength: { ...result.tensileStrength!, value: ksi * 6.894757293168361 } },
        { units: 'in-lb', rounding: 'astm' },
      ).find(({ symbol }) => symbol === 'Rm')!.text;
    expect([48.26, 61.3, 99.8, 123.4].map(of)).toEqual(['48.3', '61.5', '100.0', '123']);
    expect(flat(renderHtml(result, { units: 'in-lb', rounding: 'astm' }))).toContain(
      'Strengths by the steps that ASTM E8/E8M has for ksi;',
    );
  });

  test('the formula of Brinell keeps the N and mm that it holds for', () => {
    const hard = analyseBrinell(
      { ballDiameter: 10, indentations: [{ force: 29_420, diameters: [4.4, 4.42] }] },
      { material: 'steel, nickel and titanium alloys', thickness: 20 },
    );
    expect(flat(renderHtml(hard, { units: 'in-lb' }))).toMatch(/Indentation 1: 29420 N; d = 4\.41 mm from 4\.4; 4\.42, h = 0\.\d+ mm/);
  });
});

describe('how it was found', () => {
  const of = (options: object) => flat(renderHtml(analyseTension(record, roundPiece, options), { whatIf: false }));

  test('ReL by the rule that was asked for, and nothing of it without a yield point', () => {
    expect(of({})).toContain('ReL: the lowest stress of the whole yielding range, without the first transient.');
    expect(of({ lowerYield: 'short' })).toContain('ReL: the lowest stress over the first 0.25 % strain after ReH');
    expect(of({ lowerYield: 'short' })).not.toContain('the whole yielding range');
    expect(flat(renderHtml(result))).not.toContain('ReL: the lowest');
  });

  test('several tests are made again from tests, not from a piece', () => {
    const page = flat(renderHtml(replicates()));
    expect(page).toContain('with these tests in this order and these options.');
    expect(page).not.toContain('the piece as above');
  });

  test('a source of a budget has the same words on page and figure', () => {
    const budget = result.uncertainty!['E']!;
    const drawn = JSON.stringify(budgetFigure(budget));
    expect(drawn).toContain('compliance of the frame');
    expect(drawn).not.toMatch(/frameCompliance|section\.diameter/);
  });
});

describe('a side table is no reason for a page to fail', () => {
  test('a stated doubt of more than the whole compliance', () => {
    const analysed = analyseTension({ force: record.force, travel: record.travel, time: record.time }, roundPiece, {
      frameCompliance: COMPLIANCE,
    });
    // refused since, but early versions took it
    const options = { ...analysed.provenance.options, uncertainty: { frameCompliance: 1.5 } };
    const page = flat(renderHtml({ ...analysed, provenance: { ...analysed.provenance, options } }));
    expect(page).toContain('compliance of the frame × 2');
    expect(page.match(/no compliance of the frame taken out/g)).toHaveLength(1);
  });

  test('options that this version does not know', () => {
    const later = { ...result, provenance: { ...result.provenance, options: { ...result.provenance.options, later: 1 } } };
    expect(flat(renderHtml(later))).toContain(`cannot evaluate again what version ${version} wrote.`);
  });

  test('a result of an early version, which does not tell how a compliance was taken out of travel and fillets', () => {
    const { force, travel } = record;
    const old = analyseTension({ force, travel }, { ...roundPiece, effectiveLength: 60 }, { frameCompliance: COMPLIANCE });
    const { filletSlope, ...modulusWindow } = old.modulusWindow!;
    expect(filletSlope).toBeGreaterThan(0);
    const early = { ...old, modulusWindow };
    expect(flat(renderHtml(early))).toContain(`cannot evaluate again what version ${version} wrote.`);
  });

  test('a value that no option can have is told, and left out where it is asked to be', () => {
    const spoilt = { ...result, provenance: { ...result.provenance, options: { ...result.provenance.options, offsets: [-1] } } };
    expect(refusal(() => renderHtml(spoilt))).toMatch(/options.offsets/);
    expect(renderHtml(spoilt, { whatIf: false })).not.toContain('<h2>What if</h2>');
  });
});

test('words beside a value stand upright in Chinese', () => {
  expect(renderHtml(result, { language: chinese })).toContain('.stamp:lang(zh) { font-style: normal; }');
});
