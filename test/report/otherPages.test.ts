import { describe, expect, test } from 'vitest';
import {
  analyseBrinell,
  analyseReplicates,
  analyseTension,
  interlaboratoryStudy,
  required,
  verifyForce,
  type Finding,
} from '../../src/index.js';
import { german } from '../../src/languages/index.js';
import { drawFigure, drawFigures } from '../../src/render/index.js';
import { figures, renderHtml, renderPlan, renderStudy, renderVerification, studyFigure, summarise } from '../../src/report/index.js';
import { planTension, round } from '../../src/index.js';
import { asked, replicates, tensionResult } from '../support/pages.js';
import { caseT1, roundPiece } from '../support/records.js';
import { refusal } from '../support/thrown.js';

const text = (markup: string): string =>
  markup
    .replace(/<style>[^]*?<\/style>|<svg[^]*?<\/svg>/g, '')
    .replace(/<[^>]*>/g, ' ')
    .replace(/&#39;/g, "'")
    .replace(/&lt;/g, '<')
    .replace(/&gt;/g, '>')
    .replace(/\s+/g, ' ');
/** Cells of the row that begins with a name, in the table whose caption begins with some words. */
function row(markup: string, caption: string, name: string): string[] {
  const table = markup.split('<table>').find((one) => text(one.split('</caption>')[0]!).trim().startsWith(caption));
  const found = table?.split('<tr>').find((one) => text(one.split('</th>')[0]!).trim() === name);
  return (found ?? '').split(/<\/t[dh]>/).map((one) => text(one).trim());
}
const result = tensionResult();
const page = renderHtml(result, { decisions: asked(result) });

describe('the page of replicates', () => {
  const together = replicates('a <b>');
  const own = renderHtml(together);
  const rm = together.properties.find(({ symbol }) => symbol === 'Rm')!;

  test('shows each property with mean, interval, s, CV, range and limit', () => {
    const { mean, interval, standardDeviation, coefficientOfVariation, minimum, maximum } = rm.summary;
    const figures4 = (value: number) => String(Number(value.toPrecision(4)));
    const figures2 = (value: number) => String(Number(value.toPrecision(2)));
    expect(row(own, 's: standard deviation', 'Rm').slice(0, 11)).toEqual([
      'Rm',
      'tensile strength',
      '5',
      // the decimals of its uncertainty
      mean.toFixed(0),
      `± ${figures2(interval!.halfWidth)}`,
      figures2(standardDeviation!),
      `${figures2(100 * coefficientOfVariation!)} %`,
      figures4(minimum),
      figures4(maximum),
      figures4(rm.tolerance!.lower!),
      'MPa',
    ]);
  });

  test('shows every value, marks the one that is flagged, and names the tests', () => {
    expect(rm.outlier!.flagged).toBe(true);
    const values = row(own, 'In the order of the tests', 'Rm')[1]!;
    expect(values.split('; ')).toHaveLength(5);
    expect(values).toMatch(/ \*$/);
    expect(own).toContain('a &lt;b&gt; 3');
    expect(own).not.toContain('a <b>');
    for (const hash of together.provenance.hashes) expect(own).toContain(hash);
    expect(text(own)).toContain('To do it again: analyseReplicates of testpiece');
    for (const { remedy } of together.findings) expect(text(own)).toContain(remedy);
  });

  test('says in what the tests differ, and takes decisions and figures', async () => {
    const mixed = analyseReplicates([
      analyseTension(caseT1(), roundPiece, { test: { operator: 'A' } }),
      analyseTension(caseT1(), roundPiece, { test: { operator: 'B' } }),
    ]);
    const drawing = await drawFigure(figures(result).stressStrain!);
    const other = renderHtml(mixed, {
      furtherFigures: [{ figure: { ...figures(result).stressStrain!, title: 'All <tests>' }, drawing }],
      decisions: [{ measured: { value: 280, symbol: 'Rm', standardUncertainty: 1 }, specification: { lower: 200 } }],
    });
    expect(text(other)).toContain('In what the tests differ the operator');
    expect(other).toContain('aria-label="All &lt;tests&gt;"');
    expect(row(other, 'Each value against', 'Rm')[6]).toBe('passes');
  });
});

describe('the page of replicates of other methods', () => {
  const hard = (d: number, force = 29_420) =>
    analyseBrinell({ ballDiameter: 10, force, indentations: [{ diameters: d }] }, {}, { test: { invented: true } });
  const own = renderHtml(analyseReplicates([3.9, 3.95, 4, 4.05, 4.1].map((d) => hard(d))));

  test('names the method, has its values and its cautions', () => {
    expect(text(own)).toContain('Replicate tests: Brinell hardness test');
    expect(row(own, 's: standard deviation', 'HBW').slice(0, 11)).toEqual([
      'HBW', 'Brinell hardness', '5', '229', '± 12', '9.5', '4.1 %', '217.3', '241.3', '', 'HBW',
    ]); // prettier-ignore
    expect(text(own)).toContain('no ball that is chipped or cracked');
    expect(text(own)).not.toContain('Keep hands out of the grips');
    expect(text(own)).toContain('no real test stands behind');
  });

  test('says in what the tests differ, in the language', () => {
    const mixed = renderHtml(analyseReplicates([hard(4), hard(4.02, 9807)]), { language: german });
    expect(text(mixed)).toContain('Wiederholversuche: Härteprüfung nach Brinell');
    expect(text(mixed)).toContain('HBW: nicht zusammengefasst, denn die Versuche unterscheiden sich (Beanspruchungsgrad: 10 bis 30)');
    expect(text(mixed)).toContain('Kugel oder Beanspruchungsgrad');
  });
});

describe('decisions', () => {
  test('are those of decide, with rule, verdict and risk', () => {
    const cells = row(page, 'Each value against', 'Rm');
    expect(cells[3]).toBe('≥ 300 MPa, ≤ 520 MPa');
    expect(cells[5]).toBe('guard band of 1.645 u (JCGM 106, ILAC-G8)');
    expect(cells[6]).toBe('passes');
    expect(cells[7]).toBe('probability of conformity > 99.99 %; risk of a wrong acceptance < 0.01 %');
    expect(row(page, 'Each value against', 'Rp0.2')[6]).toBe('passes conditionally; cannot be told apart from the limit');
    expect(row(page, 'Each value against', 'A')[6]).toBe('No decision: the limit is stated for another gauge length.');
    expect(text(page)).toContain('Repeat with an extensometer');
  });

  test('name the guard band that few degrees of freedom widen, and a rounding only where the rounded value is compared', () => {
    // Student's 0.95 quantile for 2 degrees of freedom
    const few = { symbol: 'Rm', unit: 'MPa', value: 365, standardUncertainty: 1, degreesOfFreedom: 2 } as const;
    const specification = { lower: 360, rule: 'guarded', rounding: { kind: 'strength' } } as const;
    const shown = renderHtml(result, { decisions: [{ measured: few, specification }] });
    expect(row(shown, 'Each value against', 'Rm')[5]).toBe('guard band of 2.92 u (JCGM 106, ILAC-G8)');
    const simple = renderHtml(result, { decisions: [{ measured: few, specification: { ...specification, rule: 'simple' } }] });
    expect(row(simple, 'Each value against', 'Rm')[5]).toBe('simple acceptance (JCGM 106); rounded before it is compared');
  });

  test('without an uncertainty there is no risk, and a guard band has nothing to go by', () => {
    const other = (specification: object, measured: object = {}) =>
      renderHtml(result, { decisions: [{ measured: { value: 250, symbol: 'Rm', ...measured }, specification }] });
    expect(row(other({ lower: 200 }), 'Each value against', 'Rm')[7]).toBe('unknown: no uncertainty was given');
    expect(row(other({ lower: 200, rule: 'guarded' }), 'Each value against', 'Rm')[6]).toBe(
      'No decision: a guard band needs the uncertainty of the value.',
    );
    expect(row(other({ lower: 200, symbol: 'ReH' }), 'Each value against', 'Rm')[6]).toBe(
      'No decision: the limit speaks of another quantity.',
    );
    expect(row(other({ upper: 249 }, { standardUncertainty: 1 }), 'Each value against', 'Rm')[7]).toBe(
      'probability of conformity 16 %; risk of a wrong rejection 16 %',
    );
    expect(row(other({ lower: 1 }, { symbol: 'HBW', unit: 'HBW' }), 'Each value against', 'HBW')[1]).toBe('250 HBW');
  });

  test('what is no decision is refused by its path', () => {
    const given = (decisions: unknown) => refusal(() => renderHtml(result, { decisions: decisions as never }));
    expect(given({})).toBe('wrong-type options.decisions');
    expect(given([{ measured: { value: 1, symbol: 'Rm' } }])).toBe('missing options.decisions[0].specification');
    expect(given([{ measured: { value: 1 }, specification: { lower: 0 } }])).toBe('missing options.decisions[0].measured.symbol');
    expect(given([{ measured: { value: NaN, symbol: 'Rm' }, specification: { lower: 0 } }])).toBe('not-finite measured.value');
  });
});

describe('uncertainty', () => {
  test('U by the budget stands beside u, with k and what dominates', () => {
    const budget = result.uncertainty!['Rm']!;
    const shown = summarise(result).find(({ symbol }) => symbol === 'Rm')!;
    expect(shown).toMatchObject({ standardUncertainty: budget.standardUncertainty, coverageFactor: budget.coverageFactor });
    expect(shown.expandedUncertainty).toBeCloseTo(budget.expandedUncertainty, 12);
    const cells = row(page, 'Values to the digits of U', 'Rm');
    expect(cells[4]).toBe(String(Number(budget.expandedUncertainty.toPrecision(2))));
    // the value ends where U does (JCGM 100, 7.2.6)
    expect(cells[1]).toBe(budget.value.toFixed(1));
    expect(cells[7]).toMatch(/^scale of the force: accuracy \d+ %; /);
    expect(row(page, 'Budget of Rm', 'diameter of the section')[2]).toBe('rectangular');
    expect(row(page, 'Values to the digits of U', 'E')[8]).toMatch(/^compliance of the frame to \d+ % of itself$/);
  });

  test('by the record alone U is 2 u, and there is no budget', () => {
    const bare = analyseTension(caseT1(), roundPiece, { frameCompliance: 2e-5 });
    const modulus = summarise(bare).find(({ symbol }) => symbol === 'E')!;
    expect(modulus.expandedUncertainty).toBe(2 * modulus.standardUncertainty!);
    expect(renderHtml(bare)).not.toContain('<h2>Uncertainty</h2>');
  });
});

describe('what if', () => {
  test('each row says what was changed, and what it makes of the values', () => {
    const caption = 'The same record evaluated otherwise';
    for (const name of [
      'window: 10 % to 40 % of Rp0.2',
      'window: least relative standard error',
      'compliance of the frame × 0.95',
      'no compliance of the frame taken out',
      'travel counted over L0 = 40 mm',
      'no share of the fillets taken off',
    ])
      expect(row(page, caption, name)[1], name).toMatch(/^\d+\.\d+ \([+−\d]/);
    // the offset that the result stands on is no other one
    expect(row(page, caption, 'offset 0.2 %: Rp0.2')).toEqual(['']);
    expect(row(page, caption, 'offset 0.1 %: Rp0.1')[2]).toMatch(/^\d+\.\d \(−\d+\.\d\)$/);
  });

  test('can be left out', () => {
    expect(renderHtml(result, { whatIf: false })).not.toContain('<h2>What if</h2>');
    expect(refusal(() => renderHtml(result, { whatIf: 1 as never }))).toBe('wrong-type options.whatIf');
  });
});

describe('studies and verifications', () => {
  const groups = [
    { name: 'A <1>', values: [412, 409, 411] },
    { name: 'B', values: [415, 418, 414] },
    { name: 'C', values: [402, 420, 409] },
  ];
  const study = required(interlaboratoryStudy(groups));

  test('a study: precision, groups, Cochran, figure', async () => {
    const drawing = await drawFigure(studyFigure(study));
    const own = renderStudy(study, { identity: 'a & b', unit: 'MPa', drawing, invented: true });
    expect(own).toContain('A &lt;1&gt;');
    expect(own).toContain('a &amp; b');
    expect(own).toContain('<svg');
    expect(text(own)).toContain(`Repeatability limit r ${Number(study.repeatabilityLimit.toPrecision(3))} MPa`);
    expect(row(own, 'h: how far', 'B').slice(0, 3)).toEqual(['B', '3', '415.7 MPa']);
    expect(text(renderStudy(study))).not.toContain('MPa');
    expect(refusal(() => renderStudy(study, { title: '' } as never))).toBe('unknown-option options.title');
    expect(refusal(() => renderStudy({} as never))).toBe('wrong-type study');
    expect(refusal(() => renderStudy(study, { unit: 5 as never }))).toBe('wrong-type options.unit');
  });

  test('a verification: class, ranges, terms of each step', () => {
    const steps = [4, 8, 12, 16, 20].map((kN) => ({ force: 1000 * kN, rising: [1000 * kN + 5, 1000 * kN + 8, 1000 * kN + 2] }));
    const verified = verifyForce({ steps, range: 20_000, resolution: 2 });
    const own = renderVerification(verified, { identity: 'frame <1>', invented: true });
    expect(own).toContain('frame &lt;1&gt;');
    expect(text(own)).toContain(`Class ${verified.forceClass!}`);
    expect(row(own, 'q, b, v', '20 kN').slice(1, 4)).toEqual(['0.025 %', '0.03 %', '–']);
    expect(text(own)).toContain('Falling forces not verified');
    const back = (count: number) =>
      verifyForce({ steps: steps.map((one, k) => (k < count ? { ...one, falling: [one.force] } : one)), range: 20_000, resolution: 2 });
    expect(text(renderVerification(back(4)))).toContain('Falling forces verified too, at 4 of 5 steps');
    expect(text(renderVerification(back(5)))).toMatch(/Falling forces verified too(?!,)/);
    const poor = verifyForce({
      steps: steps.map((one) => ({ ...one, rising: [one.force * 1.1, one.force, one.force * 0.9] })),
      range: 20_000,
      resolution: 2,
      held: 'indicated',
    });
    expect(text(renderVerification(poor))).toContain('none over all steps');
    expect(refusal(() => renderVerification(study as never))).toBe('wrong-type verification');
    expect(refusal(() => renderVerification(verified, { unit: '' } as never))).toBe('unknown-option options.unit');
  });
});

describe('every page', () => {
  const plan = planTension({ family: 'brass', section: round({ diameter: 5 }), frame: { capacity: 25_000 } });

  test('is laid out for the sheet that is asked for', () => {
    expect(page).toContain('@page { size: A4');
    for (const letter of [renderHtml(result, { paper: 'Letter' }), renderPlan(plan, { paper: 'Letter' })]) {
      expect(letter).toContain('@page { size: letter; margin: 0.7in');
      expect(letter).not.toContain('size: A4');
    }
    expect(refusal(() => renderHtml(result, { paper: 'A5' as never }))).toBe('out-of-range options.paper');
  });

  test('has a caption and heads in every table, and a name for every drawing', async () => {
    const drawings = await drawFigures(figures(result));
    for (const one of [renderHtml(result, { drawings, decisions: asked(result) }), renderPlan(plan)]) {
      const tables = one.split('<table>').slice(1);
      expect(tables.length).toBeGreaterThan(1);
      for (const table of tables) {
        expect(table.trimStart()).toMatch(/^<caption>/);
        expect(table).toMatch(/<th scope="(col|rowgroup)/);
        expect(table).not.toMatch(/<th[^>]*>\s*<\/th>/);
      }
      expect((one.match(/<figure>/g) ?? []).length).toBe((one.match(/role="img" aria-label="[^"]+"/g) ?? []).length);
      const ids = [...one.matchAll(/\bid="([^"]*)"/g)].map(([, id]) => id);
      expect(new Set(ids).size).toBe(ids.length);
    }
  });

  test('holds what comes from outside as text, however it looks', () => {
    const hostile = `<script>x</script> " ' javascript:x \u202e\u05d0 ${'m'.repeat(10_000)} \u0000\u0007\ud800 🔩`;
    const finding: Finding = { ...result.findings[0]!, code: 'of-later' as never, message: hostile };
    const marked = { ...result, test: { identity: hostile, remarks: hostile, material: hostile }, findings: [finding] };
    const other = renderHtml({ ...marked, trail: [{ code: 'of-later' as never, step: hostile, values: { [hostile]: hostile } }] });
    for (const sign of ['<script', '\u0000', '\u0007']) expect(other).not.toContain(sign);
    expect(other).not.toMatch(/\p{Surrogate}/u);
    expect(other).toContain('&lt;script&gt;x&lt;/script&gt; &quot; &#39; javascript:x');
    expect(other.match(/m{10000}/g)!.length).toBeGreaterThan(5);
    expect(other).toContain('🔩');
    expect(other).toContain('overflow-wrap: anywhere');
  });

  test('of a record of a hundred thousand samples stays below a megabyte with its drawings', async () => {
    const n = 100_000;
    const strain = Float64Array.from({ length: n }, (_, i) => (0.3 * i) / n);
    const noise = (i: number) => 0.3 * Math.sin(12.9898 * i) * Math.cos(78.233 * i);
    const force = strain.map((e, i) => 50 * (Math.min(200_000 * e, 300 + 200 * e - 400 * e * e) + noise(i)));
    const long = analyseTension({ force, strain, time: strain.map((e) => 1000 * e) }, roundPiece);
    const whole = renderHtml(long, { drawings: await drawFigures(figures(long)) });
    expect(whole.match(/<svg/g)!.length).toBeGreaterThan(3);
    expect(whole.length).toBeLessThan(1e6);
  });

  test('figures that are none are refused by their path', () => {
    const given = (furtherFigures: unknown) => refusal(() => renderHtml(result, { furtherFigures: furtherFigures as never }));
    expect(given({})).toBe('wrong-type options.furtherFigures');
    expect(given([{ figure: {}, drawing: '' }])).toBe('missing options.furtherFigures[0].figure.title');
    expect(given([{ figure: figures(result).stressStrain, drawing: 5 }])).toBe('wrong-type options.furtherFigures[0].drawing');
    expect(given([{ figure: figures(result).stressStrain, drawing: '', name: '' }])).toBe('unknown-option options.furtherFigures[0].name');
  });
});
