/**
 * `npm run bench`: costs as ratios measured in one run. A pass is one sum over two columns, unrolled by four. Compared with a search
 * through every window in plain TypeScript and, where `python3` with NumPy and SciPy is found, with what one would write there: a short script, and one
 * with every step that is numeric work, whose numbers must be those of the package (checkSameSteps.ts).
 * `-- --long` adds 1e7 samples, `-- --figure FILE` draws cost against the number of samples.
 */
import { spawnSync } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { fitModulusKernel } from '../src/curve/index.js';
import { windowSearch } from '../src/curve/window/windowSearch.js';
import { analyseTension, monteCarloTensionTrials, sectionFromArea, type TensionRecord } from '../src/index.js';
import { columnsHash } from '../src/methods/common/columnsHash.js';
import { median } from '../src/numeric/index.js';
import { drawFigure } from '../src/render/index.js';
import { checkSameSteps, type SameSteps } from './checkSameSteps.js';
import { everyWindow } from './everyWindow.js';
import { searchTask } from './searchTask.js';
import { knownCurve, scenarios, type Scenario } from './scenarios.js';

const { values } = parseArgs({ options: { long: { type: 'boolean', default: false }, figure: { type: 'string' } } });
const AREA = 50;
const LENGTH = 50;
const SECONDS = 130;
const piece = { section: sectionFromArea({ area: AREA }), gaugeLength: LENGTH };

/** Median times of calls [ms] that are made in turn, after some that warm them up: what else the machine does then falls on all of them alike. */
function inTurn(times: number, ...calls: readonly (() => unknown)[]): number[] {
  const taken = calls.map(() => [] as number[]);
  for (let k = -Math.floor(times / 3); k < times; k += 1)
    calls.forEach((call, i) => {
      const start = performance.now();
      call();
      if (k >= 0) taken[i]!.push(performance.now() - start);
    });
  return taken.map((one) => median(one));
}

/** Median time of one call [ms]. */
const time = (call: () => unknown, times: number): number => inTurn(times, call)[0]!;

/** One pass: the sum of both columns, four at a time. */
function pass(x: Float64Array, y: Float64Array): number {
  let [a, b, c, d] = [0, 0, 0, 0];
  for (let i = 0; i + 3 < x.length; i += 4) {
    a += x[i]! + y[i]!;
    b += x[i + 1]! + y[i + 1]!;
    c += x[i + 2]! + y[i + 2]!;
    d += x[i + 3]! + y[i + 3]!;
  }
  return a + b + c + d;
}

const python = 'bench/reference.py';
const hasPython = spawnSync('python3', ['-c', 'import numpy, scipy']).status === 0;
/** One thread, on which it is quicker than on two: the products are short, and threads of a shared machine wait for each other. */
const env = { ...process.env, OMP_NUM_THREADS: '1', OPENBLAS_NUM_THREADS: '1', MKL_NUM_THREADS: '1' };
/** What the Python side took and found; undefined where there is no Python with NumPy and SciPy. */
function reference(columns: readonly Float64Array[], ...args: readonly (string | number)[]): Record<string, number> | undefined {
  if (!hasPython) return undefined;
  const input = Buffer.concat(columns.map(({ buffer, byteOffset, byteLength }) => Buffer.from(buffer, byteOffset, byteLength)));
  const { status, stdout, stderr } = spawnSync('python3', ['-B', python, ...args.map(String)], { input, env, maxBuffer: 1e8 });
  if (status !== 0) throw new Error(stderr.toString());
  return JSON.parse(stdout.toString()) as Record<string, number>;
}

const times = (n: number): number => Math.max(25, Math.min(2000, Math.round(3e6 / n)));
const ratio = (value: number): string => (value >= 100 ? value.toFixed(0) : value >= 10 ? value.toFixed(1) : value.toFixed(2));
const none = 'not measured';
const drawn: { readonly what: string; readonly n: number; readonly ms: number }[] = [];

console.log('## The elastic line: a steel curve, 30 % of the samples up to the proof strength\n');
console.log('| samples | fitModulus / pass | gap 1e-4 / pass | every window in TypeScript / search | every window in NumPy / search |');
console.log('| --- | --- | --- | --- | --- |');
for (const n of [1e3, 1e4, 1e5, 1e6, ...(values.long ? [1e7] : [])]) {
  const curve = knownCurve('steel', n, 5);
  const task = searchTask(curve);
  if (!task) throw new Error('no coarse line');
  const [one, exact, gap] = inTurn(
    times(n),
    () => pass(curve.strain, curve.stress),
    () => fitModulusKernel(curve, { by: 'lower-bound' }),
    () => fitModulusKernel(curve, { by: 'lower-bound', gap: 1e-4 }),
  ) as [number, number, number];
  const every =
    n <= 1e4
      ? inTurn(
          n === 1e3 ? 50 : 3,
          () => windowSearch(task),
          () => everyWindow(task),
        )
      : undefined;
  // search and NumPy in turn too
  const rounds = Array.from({ length: n <= 1e4 ? 3 : n === 1e5 ? 1 : 0 }, () => {
    const search = time(() => windowSearch(task), times(n));
    const repeats = n === 1e5 ? 1 : n === 1e4 ? 3 : 25;
    const found = reference([curve.strain, curve.stress], 'window', task.start, task.end, task.span, task.slope, repeats);
    return found ? [{ found, over: found['ms']! / search }] : [];
  }).flat();
  const numpy = rounds[0]?.found;
  if (numpy) {
    const best = windowSearch(task)?.best;
    if (!best || Math.abs(numpy['score']! - best.score) > 1e-9 * best.score) throw new Error(`NumPy finds ${JSON.stringify(numpy)}`);
  }
  drawn.push(
    { what: 'one pass over two columns', n, ms: one },
    { what: 'fitModulus', n, ms: exact },
    { what: 'fitModulus, gap 1e-4', n, ms: gap },
    ...(every === undefined ? [] : [{ what: 'every window, TypeScript', n, ms: every[1]! }]),
    ...(numpy ? [{ what: 'every window, NumPy', n, ms: numpy['ms']! }] : []),
  );
  console.log(
    `| ${n} | ${ratio(exact / one)} | ${ratio(gap / one)} | ${every === undefined ? none : ratio(every[1]! / every[0]!)} | ${numpy ? ratio(median(rounds.map(({ over }) => over))) : none} |`,
  );
}

console.log('\n## fitModulus / pass by kind of curve, exact (gap 1e-4)\n');
console.log(`| samples | ${scenarios.join(' | ')} | median |\n|${' --- |'.repeat(scenarios.length + 2)}`);
for (const n of [1e3, 1e4, 1e5, 1e6]) {
  const passes: [number[], number[]] = [[], []];
  const cells = scenarios.map((scenario: Scenario) => {
    const curve = knownCurve(scenario, n, 5);
    const [one, exact, gap] = inTurn(
      Math.min(times(n), 200),
      () => pass(curve.strain, curve.stress),
      () => fitModulusKernel(curve, { by: 'lower-bound' }),
      () => fitModulusKernel(curve, { by: 'lower-bound', gap: 1e-4 }),
    ) as [number, number, number];
    passes[0].push(exact / one);
    passes[1].push(gap / one);
    return `${ratio(exact / one)} (${ratio(gap / one)})`;
  });
  console.log(`| ${n} | ${cells.join(' | ')} | ${ratio(median(passes[0]))} (${ratio(median(passes[1]))}) |`);
}

/** Force, extension and time of a curve. */
const recordOf = ({ stress, strain }: { readonly stress: Float64Array; readonly strain: Float64Array }) => ({
  force: stress.map((R) => R * AREA),
  extension: strain.map((e) => e * LENGTH),
  time: strain.map((_, i) => (i * SECONDS) / strain.length),
});

console.log('\n## A whole analysis\n');
console.log(
  '| samples | analyseTension / pass | of which search | of which hash | the rest | short script / analyseTension | same steps / analyseTension |',
);
console.log('| --- | --- | --- | --- | --- | --- | --- |');
for (const n of [1e3, 1e4, 1e5, 1e6]) {
  const scripts = (scenario: Scenario, repeats: number) => {
    const curve = knownCurve(scenario, n, 5);
    const record = recordOf(curve);
    const columns = [record.force, record.extension, record.time];
    const same = reference(columns, 'same-steps', AREA, LENGTH, repeats) as SameSteps | undefined;
    if (same) checkSameSteps(record, curve, analyseTension(record, piece), same);
    return { curve, record, columns, same };
  };
  scripts('yield point', 1);
  const repeats = Math.max(7, Math.min(300, Math.round(3e5 / n)));
  const { curve, record, columns, same } = scripts('steel', repeats);
  const short = reference(columns, 'analysis', AREA, LENGTH, repeats);
  const one = time(() => pass(curve.strain, curve.stress), times(n));
  const whole = time(() => analyseTension(record, piece), times(n));
  const search = time(() => fitModulusKernel(curve, { by: 'lower-bound' }), times(n));
  const hash = time(() => columnsHash({ ...record }), times(n));
  drawn.push(
    { what: 'analyseTension', n, ms: whole },
    ...(short ? [{ what: 'NumPy, short script', n, ms: short['ms']! }] : []),
    ...(same ? [{ what: 'NumPy, same steps', n, ms: same.ms }] : []),
  );
  const over = (script: { readonly ms?: number } | undefined): string => (script?.ms === undefined ? none : ratio(script.ms / whole));
  console.log(
    `| ${n} | ${ratio(whole / one)} | ${ratio(search / one)} | ${ratio(hash / one)} | ${ratio((whole - search - hash) / one)} | ${over(short)} | ${over(same)} |`,
  );
}
console.log('\n## Trials of a Monte Carlo run over a record of 1000 samples, search and all\n');
console.log('| kind of curve | seconds for 10 000 | of processor time | trial / pass | trial / analyseTension |');
console.log('| --- | --- | --- | --- | --- |');
for (const scenario of ['steel', 'aluminium', 'yield point'] as const) {
  const curve = knownCurve(scenario, 1e3, 5);
  const record: TensionRecord = { force: curve.stress.map((R) => R * AREA), extension: curve.strain.map((e) => e * LENGTH) };
  const one = time(() => pass(curve.strain, curve.stress), times(1e3));
  const whole = time(() => analyseTension(record, piece), 500);
  const run = (trials: number) => monteCarloTensionTrials(record, piece, { uncertainty: { force: 0.005 }, trials });
  run(1000);
  const [start, used] = [performance.now(), process.cpuUsage()];
  run(10_000);
  const ms = performance.now() - start;
  const { user, system } = process.cpuUsage(used);
  console.log(
    `| ${scenario} | ${(ms / 1e3).toFixed(1)} | ${((user + system) / 1e6).toFixed(1)} | ${ratio(ms / 1e4 / one)} | ${ratio(ms / 1e4 / whole)} |`,
  );
}
if (!hasPython) console.log('\npython3 with NumPy and SciPy was not found: not compared with it.');

if (values.figure !== undefined)
  writeFileSync(
    values.figure,
    await drawFigure({
      $schema: 'https://vega.github.io/schema/vega-lite/v6.json',
      title: 'Cost against the number of samples',
      description: 'Time in milliseconds against the number of samples, both logarithmic',
      width: 460,
      height: 320,
      layer: [
        {
          data: { values: drawn },
          mark: { type: 'line', point: true },
          encoding: {
            x: { field: 'n', type: 'quantitative', scale: { type: 'log' }, title: 'samples', axis: { format: '.0e' } },
            y: { field: 'ms', type: 'quantitative', scale: { type: 'log' }, title: 'time (ms)', axis: { format: '.0e' } },
            color: { field: 'what', type: 'nominal', title: null },
            strokeDash: { field: 'what', type: 'nominal', title: null },
          },
        },
      ],
      config: { font: 'sans-serif' },
    }),
  );
