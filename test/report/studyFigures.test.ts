import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import {
  analyseBrinell,
  analyseReplicates,
  analyseTension,
  checkPieceChart,
  compareLaws,
  fitCalibration,
  fitCompliance,
  hardeningPicture,
  monteCarlo,
  required,
  sectionFromArea,
  type TensionColumns,
  type TrailStep,
} from '../../src/index.js';
import { english, type Language } from '../../src/languages/index.js';
import { phrases } from '../../src/languages/phrases.js';
import { drawFigure } from '../../src/render/index.js';
import * as report from '../../src/report/index.js';
import type { Figure, FigureValue } from '../../src/report/index.js';
import { colours } from '../../src/report/words/appearance.js';
import { apart, extentOf } from '../../src/report/figures/extentOf.js';
import { gallery } from '../support/gallery.js';
import { refusal } from '../support/thrown.js';

const light = gallery();
const dark = gallery({ appearance: 'dark' });
const inchPound = gallery({ units: 'in-lb' });
const names = Object.keys(light);

interface Layer {
  readonly data: { readonly values: readonly Readonly<Record<string, number | string>>[] };
  readonly mark: { readonly type: string; readonly color?: string; readonly shape?: string };
  readonly encoding: Readonly<Record<'x' | 'y', { readonly title: string | null; readonly scale: { readonly domain: readonly number[] } }>>;
}
const layers = ({ layer }: Figure): readonly Layer[] => layer as unknown as readonly Layer[];
const rows = (figure: Figure): number => layers(figure).reduce((sum, { data }) => sum + data.values.length, 0);
const allText = (value: FigureValue): string[] =>
  typeof value === 'string' ? [value] : typeof value === 'object' && value !== null ? Object.values(value).flatMap((one) => allText(one)) : []; // prettier-ignore

describe('every figure', () => {
  test.each(names)('%s is sound: words, finite numbers, few points, and a small drawing that holds its names', async (name) => {
    const figure = light[name]!;
    expect(figure.title.length).toBeGreaterThan(4);
    expect(figure.description.length).toBeGreaterThan(15);
    expect(`${figure.title}${figure.description}`).not.toMatch(/[{}]|undefined|NaN/);
    expect(JSON.stringify(layers(figure).map(({ data }) => data.values))).not.toMatch(/NaN|Infinity|null/);
    expect(rows(figure)).toBeLessThan(3000);
    const svg = await drawFigure(figure);
    expect(svg).not.toContain('NaN');
    expect(svg.length).toBeLessThan(60_000);
    for (const { mark, data } of layers(figure))
      if (mark.type === 'text') for (const { text } of data.values) expect(svg).toContain(String(text).replace(/&/g, '&amp;'));
  });

  test.each(names)('%s on a dark ground has no colour of the light one', (name) => {
    const text = JSON.stringify(dark[name]);
    for (const [role, colour] of Object.entries(colours.light))
      if (!Object.values(colours.dark).includes(colour)) expect(text, role).not.toContain(`"${colour}"`);
    expect(text).toContain(colours.dark.ground);
  });

  test.each(names)('%s in inches and pounds turns units and data alike', (name) => {
    const pair = [light[name]!, inchPound[name]!].map(layers);
    pair[1]!.forEach(({ encoding, data }, k) => {
      const before = pair[0]![k]!;
      for (const along of ['x', 'y'] as const) {
        const [si, turned] = [before.encoding[along].title, encoding[along].title];
        expect(turned ?? '').not.toMatch(/ \/ (kN|N|mm|MPa|GPa|bar)$/);
        const factor = si === turned ? 1 : undefined;
        data.values.forEach((one, i) => {
          const [was, is] = [Number(before.data.values[i]![along]), Number(one[along])];
          if (factor === 1) expect(is).toBeCloseTo(was, 9);
          else if (Math.abs(was) > 1e-9) expect(is / was).not.toBeCloseTo(1, 3);
        });
      }
    });
  });

  test('its words are phrases of the list: in a language that marks them, every word is marked', () => {
    const marked: Language = { ...english, tag: 'x-marked', phrases: Object.fromEntries(phrases.map((one) => [one, `‹${one}›`])) };
    const unmarked = Object.values(gallery({ language: marked })).flatMap(({ title, description, layer }) =>
      [title, description, ...layers({ layer } as Figure).flatMap(({ encoding }) => [encoding.x.title, encoding.y.title])].filter(
        (one) => typeof one === 'string' && /[a-z]{4}/.test(one) && !one.includes('‹'),
      ),
    );
    expect(unmarked).toEqual([]);
  });

  test('stands in the guide, with its picture, and the guide shows none that is not there', () => {
    const guide = readFileSync('docs/figures.md', 'utf8');
    const shown = [...guide.matchAll(/\(gallery\/([\w-]+)\.svg\)/g)].map(([, name]) => name!);
    expect(shown.sort()).toEqual([...names].sort());
    expect(readdirSync('docs/gallery').sort()).toEqual(names.map((name) => `${name}.svg`).sort());
  });
});

describe('colours', () => {
  const channel = (part: number): number => (part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4);
  const luminance = (colour: string): number => {
    const hex = colour === 'white' ? 'ffffff' : colour.slice(1);
    const [r, g, b] = [0, 2, 4].map((at) => channel(parseInt(hex.slice(at, at + 2), 16) / 255)) as [number, number, number];
    return 0.2126 * r + 0.7152 * g + 0.0722 * b;
  };
  const contrast = (a: string, b: string): number => {
    const [low, high] = [luminance(a), luminance(b)].sort((x, y) => x - y) as [number, number];
    return (high + 0.05) / (low + 0.05);
  };

  test('the formula of contrast gives 21 for black on white', () => {
    expect(contrast('#000000', 'white')).toBeCloseTo(21, 12);
  });

  test.each(['light', 'dark'] as const)('of the %s ground stand out by WCAG: letters 4.5 to 1, lines 3 to 1', (appearance) => {
    const { ground, ...rest } = colours[appearance];
    // the grid is there to be overlooked
    for (const [role, colour] of Object.entries(rest).filter(([name]) => name !== 'grid'))
      expect(contrast(colour, ground), role).toBeGreaterThanOrEqual(['mark', 'words'].includes(role) ? 4.5 : 3);
  });

  test('text of a figure stands in the colours of letters only', () => {
    for (const figure of Object.values(light))
      for (const { mark } of layers(figure)) if (mark.type === 'text') expect(mark.color).toBe(colours.light.mark);
  });
});

describe('long records', () => {
  const n = 1_000_000;
  const strain = Float64Array.from({ length: n }, (_, i) => (0.3 * i) / n);
  const peak = 600_001;
  const stress = strain.map((e, i) => 400 * Math.min(1, e / 0.002) ** 0.9 * (1 + 0.5 * e - 1.2 * e * e) + (i === peak ? 60 : 0));
  const force = stress.map((R) => 50 * R);
  const time = strain.map((e) => 1000 * e);

  test('a million samples give few points, and the peak stays', () => {
    const record: TensionColumns = { force, strain, time };
    const figure = report.recordFigure(record);
    expect(rows(figure)).toBeLessThan(3000);
    const highest = Math.max(...layers(figure).flatMap(({ data }) => data.values.map(({ y }) => Number(y))));
    expect(highest).toBeCloseTo(force[peak]! / 1000, 9);
    const picture = hardeningPicture({ strain: strain.subarray(1), stress: stress.subarray(1) });
    for (const one of Object.values(report.hardeningFigures(picture))) expect(rows(one)).toBeLessThan(3000);
    const chart = checkPieceChart(force);
    const control = report.checkPieceFigure(force, { ...chart, outside: [] });
    expect(rows(control)).toBeLessThan(3000);
    expect(JSON.stringify(control)).toContain(String(force[peak]!).slice(0, 8));
  }, 60_000);
});

describe('what each shows', () => {
  const text = (figure: Figure): string => layers(figure).flatMap(({ data }) => data.values.map(({ text: one }) => one)).join('|'); // prettier-ignore
  const marksOf = (figure: Figure, shape: string) =>
    layers(figure)
      .filter(({ mark }) => mark.shape === shape)
      .flatMap(({ data }) => data.values);

  test('the neck: the marked crossing lies on the curve at the strain of the result, and rate meets stress there', () => {
    const figure = light['tension-necking']!;
    const lines = layers(figure).filter(({ mark }) => mark.type === 'line');
    const [curve, rate] = lines.map(({ data }) => data.values.map(({ x, y }) => [Number(x), Number(y)] as const));
    const at = layers(figure).find(({ mark }) => mark.type === 'point')!.data.values[0]! as { x: number; y: number };
    const nearest = (line: readonly (readonly [number, number])[]) =>
      line.reduce((a, b) => (Math.abs(b[0] - at.x) < Math.abs(a[0] - at.x) ? b : a));
    expect(nearest(curve!)[1]).toBeCloseTo(at.y, -1);
    // the rate is smoothed over a fortieth of the curve
    expect(Math.abs(nearest(rate!)[1] / at.y - 1)).toBeLessThan(0.1);
    expect(light['tension-yieldDetail']!.description).toMatch(/upper yield strength is 30\d.* the lower 2[78]\d/);
  });

  test('a piece without a yield point or a neck has no such figure', () => {
    const straight = analyseTension(
      { force: [0, 1000, 2000], strain: [0, 0.001, 0.002] },
      { section: sectionFromArea({ area: 50 }), gaugeLength: 40 },
    );
    expect(Object.keys(report.figures(straight))).not.toEqual(expect.arrayContaining(['yieldDetail', 'necking']));
  });

  test('repairs: changed and left-out samples stand at their places in the record as given', () => {
    const record = { force: [0, 10, 20, 90, 40, 50, 60, 70], time: [0, 1, 2, 3, 4, 5, 6, 7], travel: [0, 1, 2, 3, 4, 5, 6, 7] };
    const trail: TrailStep[] = [
      { code: 'repeats-left-out', step: 'some left out', values: {}, change: { kind: 'keep', ranges: [[0, 0], [2, 7]] } }, // prettier-ignore
      { code: 'repeats-left-out', step: 'one set', values: {}, change: { kind: 'set', column: 'force', samples: [2], values: [30] } },
      { code: 'repeats-left-out', step: 'more left out', values: {}, change: { kind: 'keep', ranges: [[0, 5]] } },
    ];
    const figure = report.recordFigure(record, { trail });
    expect(marksOf(figure, 'cross').map(({ x }) => x)).toEqual([1, 7]);
    expect(marksOf(figure, 'triangle-up')).toEqual([{ x: 3, y: 90 / 1000 }]);
    expect(figure.description).toContain('changed by repairs: 1 (triangles), left out: 2 (crosses)');
    expect(refusal(() => report.recordFigure({ force: [0, 1], travel: [0, 1] }))).toBe('missing record.time');
  });

  test('replicates of another method: a symbol that is its unit stands on the axis once', () => {
    const hard = (d: number) => analyseBrinell({ ballDiameter: 10, force: 29_420, indentations: [{ diameters: d }] });
    const drawn = report.replicatesFigures(analyseReplicates([3.9, 4, 4.1].map(hard)));
    expect(Object.keys(drawn)).toEqual(['HBW']);
    expect(drawn['HBW']!.description.replace(/\s/g, ' ')).toBe('HBW of 3 tests from 217.3 HBW to 241.3 HBW, mean 229.1 HBW.');
    expect(allText(drawn['HBW']!.layer as FigureValue)).toContain('HBW');
    expect(allText(drawn['HBW']!.layer as FigureValue)).not.toContain('HBW / HBW');
  });

  test('replicates: the value that is flagged stands in a square with the name of its test', () => {
    expect(marksOf(light['replicates']!, 'square')).toHaveLength(1);
    expect(text(light['replicates']!)).toContain('B6');
    expect(light['replicates']!.description).toContain('one value is flagged');
  });

  test('laws: all names, apart from each other; the band ends where the comparison says', () => {
    const words = layers(light['laws']!).filter(({ mark }) => mark.type === 'text').flatMap(({ data }) => data.values); // prettier-ignore
    const heights = words.filter(({ text: one }) => one !== 'measured').map(({ y }) => Number(y)).sort((a, b) => a - b); // prettier-ignore
    expect(heights).toHaveLength(5);
    heights.slice(1).forEach((one, k) => {
      expect(one - heights[k]!).toBeGreaterThan(10);
    });
    const strain = [0.01, 0.02, 0.05, 0.1];
    expect(
      refusal(() => report.lawsFigure({ ...compareLaws({ strain, stress: [1, 2, 3, 4] }), ranked: [] }, { strain, stress: strain })),
    ).toBe('empty comparison.ranked');
  });

  test('errors of a verified force: every reading is drawn, at its own error', () => {
    const step = { force: 10_000, rising: [10_050, 10_060, 10_040], falling: [9980] };
    const figure = report.forceVerificationFigure({ steps: [step], range: 25_000, resolution: 6 });
    const up = marksOf(figure, 'triangle-up').map(({ y }) => Number(y));
    [0.5, 0.6, 0.4].forEach((error, k) => {
      expect(up[k]).toBeCloseTo(error, 9);
    });
    expect(Number(marksOf(figure, 'triangle-down')[0]!['y'])).toBeCloseTo(-0.2, 9);
    const held = report.forceVerificationFigure({ steps: [{ force: 10_000, rising: [9950, 9940, 9960] }], range: 25_000, resolution: 6, held: 'indicated' }); // prettier-ignore
    expect(Number(marksOf(held, 'triangle-up')[0]!['y'])).toBeCloseTo(100 * (10_000 / 9950 - 1), 9);
    const coarse = report.forceVerificationFigure({
      steps: [{ force: 10_000, rising: [12_000, 12_010, 12_020] }],
      range: 25_000,
      resolution: 6,
    });
    expect(coarse.description).toContain('no class is reached by all');
  });

  test('lines that are drawn are those of their fits', () => {
    const line = (figure: Figure, k = 0) => layers(figure).filter(({ mark }) => mark.type === 'line')[k]!.data.values.map(({ x, y }) => [Number(x), Number(y)] as const); // prettier-ignore
    const slope = (points: readonly (readonly [number, number])[]) => {
      const [[x1, y1], [x2, y2]] = [points[0]!, points[points.length - 1]!];
      return (y2 - y1) / (x2 - x1);
    };
    const stress = Array.from({ length: 20 }, (_, i) => 10 * i);
    const strain = stress.map((R) => R / 200_000);
    const curve = { strain, stress, transverseStrain: strain.map((e) => -0.29 * e) };
    expect(slope(line(report.poissonFigure(curve, { first: 2, last: 18 }), 1))).toBeCloseTo(-0.29, 9);
    // r = −m/(1 + m): 1.5 for m = −0.6
    const long = strain.map((e) => 100 * e + 0.02);
    const sheet = { strain: long, stress: long.map((_, i) => 1e-6 * i), transverseStrain: long.map((e) => (1 + e) ** -0.6 - 1) };
    expect(slope(line(report.strainRatioFigure(sheet, { from: 0.02, to: 0.1, modulus: 2e5 }), 1))).toBeCloseTo(-0.6, 9);
    const rates = line(report.rateSensitivityFigure({ stress: 300, strainRate: 0.001, otherStress: 330, otherStrainRate: 0.01 }));
    expect(Math.log(rates[1]![1] / rates[0]![1]) / Math.log(rates[1]![0] / rates[0]![0])).toBeCloseTo(Math.log10(1.1), 9);
    const leak = { time: [0, 20, 40, 60], pressure: [10, 9.98, 9.96, 9.94], bore: 40 };
    expect(slope(line(report.leakFigure(leak), 1))).toBeCloseTo(-0.01, 9);
    const friction = { pressure: [5, 10, 15], risingForce: [6100, 12_300, 18_500], fallingForce: [6300, 12_700, 19_100] };
    // 100 N at 6.2 kN, 300 N at 18.8 kN
    expect(slope(line(report.frictionFigure(friction, { bore: 40 })))).toBeCloseTo(200 / 12.6, 6);
    const pairs = { indicated: [0, 5, 10, 15, 20], reference: [12, 6011, 12_013, 18_010, 24_012] };
    expect(slope(line(report.calibrationFigures(required(fitCalibration(pairs)), pairs).line))).toBeCloseTo(1.2, 3);
    const force = Array.from({ length: 50 }, (_, i) => 200 * (i + 1));
    const pulls = [40, 80].map((effectiveLength) => ({
      force,
      effectiveLength,
      area: 50,
      travel: force.map((F) => F * (2e-5 + effectiveLength / (210_000 * 50))),
    }));
    const fitted = required(fitCompliance(pulls));
    expect(slope(line(report.complianceFigure(fitted, { pulls })))).toBeCloseTo(0.02, 9);
    expect(refusal(() => report.complianceFigure({ ...fitted, modulus: undefined }, { pulls }))).toBe('missing options.modulus');
    const step = { reference: 1, rising: [1.004, 1.006], falling: [1.009] };
    const errors = marksOf(report.displacementVerificationFigure({ steps: [step], resolution: 0.002 }), 'triangle-down');
    expect(Number(errors[0]!['y'])).toBeCloseTo(0.9, 9);
  });

  test('a decision: what passes begins at the edge of the guard band, and the verdict is said', () => {
    const made = report.decisionFigure({ value: 241, standardUncertainty: 3 }, { lower: 235, rule: 'guarded' }, { unit: 'MPa' });
    const passes = layers(made).find(({ mark }) => mark.type === 'rect')!.data.values[0]!;
    expect(Number(passes['x'])).toBeCloseTo(235 + 1.645 * 3, 2);
    expect(made.description).toBe('241\u00a0MPa with an expanded uncertainty of 6.0\u00a0MPa: pass.');
    expect(report.decisionFigure({ value: 241 }, { upper: 240 }).description).toBe('241: fail.');
  });

  test('Monte Carlo: the shares of the bars make the whole', () => {
    const bars = layers(light['distribution']!).find(({ mark }) => mark.type === 'rect')!;
    // beyond four standard deviations nothing is drawn
    expect(bars.data.values.reduce((sum, { y2 }) => sum + Number(y2), 0)).toBeCloseTo(100, 0);
  });

  test('a distribution of three readings has no mean or variance to be drawn by', () => {
    const source = { readings: [7.99, 8.01] };
    const two = required(monteCarlo(({ d }) => d, { d: { uncertainty: source } }, { trials: 5000 }));
    const drawn = report.distributionFigure(two);
    expect(JSON.stringify(drawn)).toMatch(/trials: 95\.45?.% of them lie from/);
    expect(JSON.stringify(drawn)).not.toContain('NaN');
  });

  test('a distribution without scatter, a chart of equal values and a budget without doubt are drawn all the same', async () => {
    const one = {
      mean: 5,
      standardUncertainty: 0,
      skewness: 0,
      coverage: 0.95,
      interval: [5, 5] as const,
      shortestInterval: [5, 5] as const,
      intervalErrors: [0, 0] as const,
    };
    const still = { ...one, quantiles: new Float64Array(101).fill(5), trials: 100, failed: 0, meanError: 0, uncertaintyError: 0 };
    expect(await drawFigure(report.distributionFigure(still))).not.toContain('NaN');
    expect(await drawFigure(report.checkPieceFigure([3, 3, 3], checkPieceChart([3, 3, 3])))).not.toContain('NaN');
    const budget = {
      value: 1,
      standardUncertainty: 0,
      coverage: 0.95,
      coverageFactor: 2,
      expandedUncertainty: 0,
      lines: [],
      correlations: [],
      findings: [],
    };
    expect(await drawFigure(report.budgetFigure(budget))).not.toContain('NaN');
  });

  test('many sources of a budget stand together, and names from outside are text and nothing else', async () => {
    const line = {
      type: 'B',
      distribution: 'normal',
      value: 1,
      standardUncertainty: 1,
      sensitivity: 1,
      contribution: 1,
      share: 0.05,
    } as const;
    const lines = Array.from({ length: 20 }, (_, k) => ({ ...line, input: k === 0 ? `"]; throw new Error('</svg>'); //` : `x${k}` }));
    const budget = {
      value: 1,
      standardUncertainty: 1,
      coverage: 0.95,
      coverageFactor: 2,
      expandedUncertainty: 2,
      lines,
      correlations: [],
      findings: [],
    };
    const svg = await drawFigure(report.budgetFigure(budget));
    expect(svg).toContain('8 others');
    expect(svg).toContain('&lt;/svg&gt;');
    expect(svg).toContain('40\u00a0%');
  });

  test('what is no result is refused by name', () => {
    expect(refusal(() => report.budgetFigure({ ok: false } as never))).toBe('missing budget.value');
    expect(refusal(() => report.batchesFigure(undefined as never))).toBe('missing comparison');
    expect(refusal(() => report.hardeningFigures({} as never))).toBe('missing picture.strain');
    expect(refusal(() => report.replicatesFigures({ properties: 5 } as never))).toBe('wrong-type result.properties');
    expect(refusal(() => report.consistencyFigure({ links: [], findings: [] }))).toBe('empty web.links');
    expect(
      refusal(() => report.windowsFigure({ strain: [0, 1], stress: [0, 1] } as never, { slope: 1, first: 0, last: 9, alternatives: [] })),
    ).toBe('out-of-range line.last');
    expect(refusal(() => report.checkPieceFigure([1, 2], checkPieceChart([1, 2]), { unit: 'stone' as never }))).toBe(
      'out-of-range options.unit',
    );
    expect(refusal(() => report.barbaFigure({} as never, {} as never))).toMatch(/^missing /);
  });
});

describe('room', () => {
  test('names are moved apart by no more than they need, and those that are apart stay', () => {
    expect(apart([10, 10.5, 30], 2)).toEqual([9.25, 11.25, 30]);
    expect(apart([5], 2)).toEqual([5]);
    expect(apart([3, 2, 1], 1)).toEqual([3, 2, 1]);
    expect(apart([], 1)).toEqual([]);
  });

  test('an axis holds its values, also one value or none', () => {
    expect(extentOf([[0, 10]], 0.1)).toEqual({ from: -1, to: 11 });
    expect(extentOf([[4]], 0.1)).toEqual({ from: 2, to: 6 });
    expect(extentOf([[0]])).toEqual({ from: -0.5, to: 0.5 });
    expect(extentOf([])).toEqual({ from: 0, to: 1 });
  });

  test('names stand on the side that has room, in letters that fill their square too', () => {
    const sided = (text: string) => {
      const figure = report.barbaFigure({ elongation: 0.3, gaugeLength: 5.65, area: 1 }, { elongation: 0.24, gaugeLength: 11.3, area: 1 }, {
        language: { ...english, tag: 'zh', phrases: { 'uniform part': text } },
      }); // prettier-ignore
      const named = layers(figure).find(({ data }) => data.values.some(({ text: one }) => one === text))!;
      return (named.mark as unknown as { align: string }).align;
    };
    expect(sided('均匀部分')).toBe('left');
    expect(allText(light['barba']!.layer as FigureValue)).toContain('uniform part');
  });
});
