/**
 * `npm run study:modulus`: how well each way of choosing the elastic window finds a known slope, and what the proof strength makes of it.
 * Prints a Markdown table; with `-- --figure FILE` also writes the figure as Vega-Lite JSON and SVG.
 */
import { writeFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { analyseCurve, fitModulus, proofStrength, type WindowChoice } from '../src/index.js';
import { drawFigure } from '../src/render/index.js';
import { knownCurve, scenarios, type KnownCurve, type Scenario } from './scenarios.js';

const { values } = parseArgs({ options: { records: { type: 'string', default: '500' }, figure: { type: 'string' } } });
const RECORDS = Number(values.records);
/** In the RMS a single error counts for no more than this, and so does a record without a line [%]. */
const CLIPPED = 20;

const methods: readonly { readonly name: string; readonly window: (curve: KnownCurve) => WindowChoice }[] = [
  { name: 'lower bound, z = 4 (default)', window: () => ({ by: 'lower-bound' }) },
  { name: 'lower bound, z = 3', window: () => ({ by: 'lower-bound', z: 3 }) },
  { name: 'lower bound, z = 4, start ≥ 0', window: () => ({ by: 'lower-bound', startShare: 0 }) },
  { name: 'steepest (z = 0)', window: () => ({ by: 'lower-bound', z: 0 }) },
  { name: 'bounded gap 1e-4', window: () => ({ by: 'lower-bound', gap: 1e-4 }) },
  { name: 'relative standard error', window: () => ({ by: 'relative-error' }) },
  { name: 'fixed 20-50 % of yield', window: ({ proofStrength: R }) => ({ by: 'stress', from: 0.2 * R, to: 0.5 * R }) },
  { name: 'fixed 10-40 % of yield', window: ({ proofStrength: R }) => ({ by: 'stress', from: 0.1 * R, to: 0.4 * R }) },
  {
    name: 'fixed 10-40 % of Rm',
    window: ({ stress }) => {
      const top = stress.reduce((a, b) => Math.max(a, b));
      return { by: 'stress', from: 0.1 * top, to: 0.4 * top };
    },
  },
];

interface Errors {
  readonly slope: number[];
  readonly proof: number[];
}

function errorsOf(scenario: Scenario, n: number, window: (curve: KnownCurve) => WindowChoice): Errors {
  const errors: Errors = { slope: [], proof: [] };
  for (let seed = 1; seed <= RECORDS; seed += 1) {
    const curve = knownCurve(scenario, n, 7919 * seed + n);
    const line = fitModulus(curve, { window: window(curve) });
    if (!line.ok) {
      errors.slope.push(CLIPPED);
      continue;
    }
    errors.slope.push(100 * (line.slope / curve.modulus - 1));
    const proof = proofStrength(curve, { modulus: line.slope, strainShift: line.strainShift });
    if (proof.ok) errors.proof.push(100 * (proof.stress / curve.proofStrength - 1));
  }
  return errors;
}

const rms = (values: readonly number[]): number =>
  Math.sqrt(values.reduce((sum, one) => sum + Math.min(Math.abs(one), CLIPPED) ** 2, 0) / values.length);
/** Median, and half of what lies between the 16th and the 84th percentile. */
function centre(values: readonly number[]): readonly [number, number] {
  const sorted = [...values].sort((a, b) => a - b);
  const at = (share: number): number => sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? NaN;
  return [at(0.5), (at(0.84) - at(0.16)) / 2];
}
const cell = (values: readonly number[]): string => {
  const [middle, half] = centre(values);
  return `${middle.toFixed(2)} ± ${half.toFixed(2)} [${rms(values).toFixed(2)}]`;
};

const shown: { readonly method: string; readonly samples: number; readonly rms: number }[] = [];
console.log('\n### Records of which analyseCurve withholds E, 20 of each kind\n');
console.log(`| samples | ${scenarios.join(' | ')} | soft copper |`);
console.log(`| --- |${' --- |'.repeat(scenarios.length + 1)}`);
for (const n of [100, 300, 1000, 3000]) {
  const withheld = [...scenarios, 'soft copper' as const].map(
    (scenario) =>
      Array.from({ length: 20 }, (_, seed) => analyseCurve(knownCurve(scenario, n, seed))).filter(({ modulus }) => !modulus).length,
  );
  console.log(`| ${n} | ${withheld.join(' | ')} |`);
}
for (const n of [300, 1000, 10_000]) {
  console.log(`\n### ${n} samples, ${RECORDS} records of each kind: error of the slope in %, median ± half of 16-84 % [RMS]\n`);
  console.log(`| window | ${scenarios.join(' | ')} | all six, RMS | soft copper |`);
  console.log(`| --- |${' --- |'.repeat(scenarios.length + 2)}`);
  for (const { name, window } of methods) {
    const found = scenarios.map((scenario) => errorsOf(scenario, n, window).slope);
    const all = rms(found.flat());
    shown.push({ method: name, samples: n, rms: all });
    const copper = centre(errorsOf('soft copper', n, window).slope);
    console.log(`| ${name} | ${found.map(cell).join(' | ')} | **${all.toFixed(2)}** | ${copper[0].toFixed(0)} ± ${copper[1].toFixed(0)} |`);
  }
}

console.log('\n### 1000 samples: error of Rp0.2 in %, median ± half of 16-84 % [RMS], with the default window\n');
console.log(`| ${scenarios.join(' | ')} |\n|${' --- |'.repeat(scenarios.length)}`);
console.log(`| ${scenarios.map((scenario) => cell(errorsOf(scenario, 1000, () => ({ by: 'lower-bound' })).proof)).join(' | ')} |`);

if (values.figure !== undefined) {
  const figure = {
    $schema: 'https://vega.github.io/schema/vega-lite/v6.json',
    title: 'Error of the slope by the way the window is chosen',
    description: 'RMS error of the slope over six kinds of curves, by the way the window is chosen and the number of samples',
    width: 460,
    height: 260,
    layer: [
      {
        data: { values: shown },
        mark: { type: 'point', filled: true, size: 70 },
        encoding: {
          x: { field: 'rms', type: 'quantitative', title: 'RMS error of the slope over six kinds of curves (%)' },
          y: { field: 'method', type: 'nominal', title: null, sort: methods.map(({ name }) => name), axis: { labelLimit: 260 } },
          shape: { field: 'samples', type: 'nominal', title: 'samples' },
          color: { field: 'samples', type: 'nominal', title: 'samples', scale: { range: ['#9a6200', '#00618a', '#5b2c83'] } },
        },
      },
    ],
    config: { font: 'sans-serif' },
  };
  writeFileSync(values.figure, await drawFigure(figure));
}
