import { describe, expect, test } from 'vitest';
import { analyseTension, type TensionResult } from '../../src/index.js';
import { drawFigure, drawFigures } from '../../src/render/index.js';
import { figures, renderHtml, summarise } from '../../src/report/index.js';
import { simulateTension } from '../../src/simulate/index.js';
import { COMPLIANCE, roundPiece } from '../support/records.js';
import { refusal } from '../support/thrown.js';

const { record, truth } = simulateTension({
  material: {
    modulus: 206_000,
    yieldStress: 280,
    yieldPoint: { upper: 305 },
    hardening: { law: 'swift', prestrain: 0.03, exponent: 0.25 },
    fracture: { extension: 0.35 },
  },
  piece: roundPiece,
  frame: { compliance: COMPLIANCE, slack: 0.2 },
  hand: { speed: 0.05, speedAfterYield: 0.1 },
  logger: { rate: 50, extensometer: { offAt: 0.06 }, lead: 1, tail: 1, forceNoise: 10, motionNoise: 2e-4 },
});
const hostile = `<script>alert('x')</script> & "${'long'.repeat(40)}"`;
const piece = { ...roundPiece, afterFracture: truth.afterFracture };
const result = analyseTension(record, piece, {
  test: { identity: hostile, remarks: hostile, temperature: 21, invented: true, operator: 'A & B' },
});
const byTravel = analyseTension({ force: record.force, travel: record.travel, time: record.time }, piece, { frameCompliance: COMPLIANCE });
const bare = analyseTension({ force: [0, 1], travel: [0, 1] }, roundPiece);
const row = (of: TensionResult, symbol: string) => summarise(of).find((one) => one.symbol === symbol);

describe('summarise', () => {
  test('rounds once, to the steps of the standard, and keeps the unrounded value', () => {
    expect(row(result, 'Rm')!.text).toBe(String(Math.round(result.tensileStrength!.value)));
    expect(row(result, 'Rm')!.value).toBe(result.tensileStrength!.value);
    expect(row(result, 'A')!.text).toMatch(/^\d+\.[05]$/);
    expect(row(result, 'Ae')!.text).toMatch(/^\d+\.\d$/);
    expect(row(result, 'Z')!.text).toBe('50');
    expect(row(result, 'Fm')).toMatchObject({ unit: 'kN', value: result.maximumForce!.value / 1000 });
    expect(row(result, 'E')!.text).toMatch(/^\d{3}$/);
    expect(row(result, 'E')!.standardUncertainty).toBeCloseTo(result.modulus!.standardUncertainty! / 1000, 12);
    expect(row(result, 'n')!.text).toMatch(/^0\.\d\d$/);
  });

  test('values from travel say so; a modulus is rounded as its slope', () => {
    expect(
      summarise(byTravel)
        .filter(({ stamp }) => stamp !== undefined)
        .map(({ symbol }) => symbol),
    ).toEqual(expect.arrayContaining(['E', 'Rp0.2', 'Ag', 'At', 'n', 'K', 'U']));
    for (const symbol of ['Rm', 'Fm', 'ReH', 'ReL', 'A', 'Z']) expect(row(byTravel, symbol)!.stamp).toBeUndefined();
    expect(row(byTravel, 'E')!.text).toMatch(/^\d{3}$/);
    expect(row(byTravel, 'mE')).toMatchObject({ text: row(byTravel, 'E')!.text, step: row(byTravel, 'E')!.step });
    expect(row(result, 'Agt')!.stamp).toMatch(/beyond the extensometer/);
    expect(row(result, 'Rp0.2')!.stamp).toBeUndefined();
  });

  test('slopes of soft materials have three figures too: the step is the power of ten itself', () => {
    for (const [slope, text, step] of [
      [38.5, '0.0385', 0.0001],
      [3.85, '0.00385', 0.00001],
      [0.0385, '3.85\u00a0×\u00a010⁻⁵', 1e-7],
    ] as const)
      expect(row({ ...result, modulus: { ...result.modulus!, value: slope, standardUncertainty: undefined } }, 'E')).toMatchObject({
        text,
        step,
        unit: 'GPa',
      });
  });

  test('anything else than a result is refused', () => {
    expect(refusal(() => summarise({ method: 'torsion' } as never))).toBe('wrong-type result.method');
    expect(refusal(() => summarise(undefined as never))).toBe('missing result');
  });
});

describe('figures', () => {
  const made = figures(result);

  test('all seven, each with words, and few points however long the record', () => {
    expect(Object.keys(made)).toEqual(['loadExtension', 'stressStrain', 'elasticDetail', 'yieldDetail', 'trueCurve', 'necking', 'rates']);
    for (const one of Object.values(made)) {
      expect(one.description.length).toBeGreaterThan(20);
      expect(JSON.stringify(one)).not.toMatch(/null,|NaN|Infinity/);
      expect(JSON.stringify(one).length).toBeLessThan(300_000);
    }
  });

  test('what was left out of the evaluation is grey, under what was evaluated, and the description says so', () => {
    const strain = [0, 0.001, 0.002, 0.0015, 0.001, 0.0015, 0.0025, 0.05].flatMap((to, k, all) =>
      k === 0 ? [0] : Array.from({ length: 30 }, (_, i) => all[k - 1]! + ((to - all[k - 1]!) * (i + 1)) / 30),
    );
    const force = strain.map((e) => 50 * (e < 0.0025 ? 100_000 * e : 250 + 1000 * (e - 0.0025)));
    const looped = analyseTension({ force, strain }, roundPiece);
    expect(looped.interruptions).toMatchObject([{ kind: 'unloading' }]);
    const [leaves, back] = looped.interruptions![0]!.range;
    for (const name of ['stressStrain', 'loadExtension'] as const) {
      const plain = figures(result)[name]!;
      expect(plain.description).not.toContain('grey');
      const one = figures(looped)[name]!;
      expect(one.description).toContain('Unloadings and slips that the evaluation leaves out are drawn in grey: 1.');
      const lines = (one.layer as { mark: { color?: string }; data?: { values: unknown[] } }[]).slice(0, 3);
      const [grey, before, after] = lines;
      expect(lines.map(({ data }) => data!.values.length)).toEqual([strain.length, leaves + 1, strain.length - back]);
      expect(before!.mark.color).toBe(after!.mark.color);
      expect(grey!.mark.color).not.toBe(before!.mark.color);
    }
  });

  test('a record of a hundred thousand samples gives no more, and keeps its peak', () => {
    const n = 100_000;
    const stress = Float64Array.from({ length: n }, (_, i) => 400 * Math.sin((3 * i) / n) + (i === 50_001 ? 50 : 0));
    const long = analyseTension({ force: stress.map((R) => 50 * R), strain: stress.map((_, i) => (0.3 * i) / n) }, roundPiece, {
      repairs: { spikes: false },
    });
    const text = JSON.stringify(figures(long).stressStrain);
    expect(text.length).toBeLessThan(200_000);
    expect(text).toContain(String(stress[50_001]! * (50 / roundPiece.section.area)).slice(0, 10));
  });

  test('what the result does not support is left out', () => {
    expect(Object.keys(figures(bare))).toEqual(['loadExtension', 'stressStrain']);
    expect(Object.keys(figures(byTravel))).toContain('trueCurve');
  });

  test('are drawn as SVG with their labels', async () => {
    const drawings = await drawFigures({ stressStrain: made.stressStrain!, trueCurve: made.trueCurve! });
    expect(drawings.stressStrain).toMatch(/^<svg/);
    expect(drawings.stressStrain).toContain('Stress R / MPa');
    expect(drawings.stressStrain).toContain('ReH');
    expect(drawings.trueCurve).toContain('neck begins');
  });

  test('a figure that cannot be drawn is an error that says so', async () => {
    await expect(drawFigure({ layer: 5 } as never)).rejects.toMatchObject({ code: 'wrong-type', path: 'figure' });
  });
});

describe('renderHtml', () => {
  const page = renderHtml(result, { drawings: { stressStrain: '<svg id="drawn"></svg>' } });

  test('text from outside is escaped', () => {
    expect(page).not.toContain('<script>');
    expect(page).toContain('&lt;script&gt;alert(&#39;x&#39;)&lt;/script&gt; &amp; &quot;');
    expect(page).toContain('A &amp; B');
  });

  test('is complete in itself: no script, nothing fetched', () => {
    expect(page).not.toMatch(/<script|src=|@import|url\(|https?:/);
    expect(page).toContain('@page { size: A4');
  });

  test('says what was found, how, what stands in doubt, and that the data are invented', () => {
    for (const heading of [
      'Results',
      'Findings',
      'Figures',
      'How each value was found',
      'Cautions',
      'What was done to the record',
      'Provenance',
    ])
      expect(page).toContain(`<h2>${heading}</h2>`);
    expect(page).toContain('Invented data.');
    expect(page).toContain(result.provenance.hash);
    expect(page).toContain('They are not design values');
    expect(page).toContain('<svg id="stressStrain-drawn">');
    for (const { remedy } of result.findings) expect(page).toContain(remedy.replaceAll("'", '&#39;'));
  });

  test('headings and tables are ones that a screen reader can use', () => {
    expect(page).toContain('<html lang="en">');
    expect(page.match(/<h1>/g)).toHaveLength(1);
    expect(page).toContain('<caption>');
    expect(page).toContain('scope="row"');
    expect(page).toContain('role="img" aria-label="Stress against strain"');
  });

  test('a poor result still makes a page', () => {
    expect(renderHtml(bare)).not.toContain('<h2>Figures</h2>');
    expect(renderHtml({ ...bare, findings: [] })).toContain('Nothing to report.');
    expect(refusal(() => renderHtml(bare, { figures: {} } as never))).toBe('unknown-option options.figures');
  });
});

test('summarise by the steps of ASTM E8, and with halves up; both values are kept', () => {
  const of = (options: Parameters<typeof summarise>[1]) => summarise(result, options);
  const strong = summarise({ ...result, tensileStrength: { ...result.tensileStrength!, value: 1234.4 } }, { rounding: 'astm' });
  expect(strong.find(({ symbol }) => symbol === 'Rm')).toMatchObject({ text: '1230', value: 1234.4, rounded: 1230, step: 10 });
  const half = { ...result, elongationAfterFracture: { ...result.elongationAfterFracture!, value: 0.2425 } };
  expect(row(half, 'A')).toMatchObject({ text: '24.0', rounded: 24, step: 0.5 });
  expect(summarise(half, { half: 'up' }).find(({ symbol }) => symbol === 'A')).toMatchObject({ text: '24.5' });
  expect(summarise(half, { rounding: 'astm' }).find(({ symbol }) => symbol === 'A')).toMatchObject({ text: '24', step: 1 });
  expect(refusal(() => of({ rounding: 'din' as never }))).toBe('out-of-range options.rounding');
  expect(refusal(() => of({ step: 1 } as never))).toBe('unknown-option options.step');
});

describe('the page says how its numbers were rounded and what their uncertainty holds', () => {
  test('the steps asked for are those of the page', () => {
    const elongation = (rounding: 'iso' | 'astm') => summarise(result, { rounding }).find(({ symbol }) => symbol === 'A')!.text;
    expect(elongation('astm')).not.toBe(elongation('iso'));
    const page = renderHtml(result, { rounding: 'astm', half: 'up' });
    expect(page).toContain('ASTM E8/E8M where it has them, half up');
    expect(page).toContain(`<td class="number">${elongation('astm')}</td>`);
    expect(refusal(() => renderHtml(result, { rounding: 'din' as never }))).toBe('out-of-range options.rounding');
  });

  test('the record alone, or the budgets of the test', () => {
    expect(renderHtml(result)).toContain(
      'by the steps of ISO 6892-1 where it has them, half to even. u: standard uncertainty by the record alone',
    );
    const stated = analyseTension(record, piece, { uncertainty: { force: 0.005 } });
    expect(renderHtml(stated)).toContain('u: standard uncertainty by the budget of the test');
  });
});
