/**
 * `npm run study:fits`: fits of flow laws on random curves: is the optimum the best, are the standard errors those of repeated noise, and how
 * long does a long curve take beside SciPy's `curve_fit` (where it is found), both by processor time on one thread.
 */
import { spawnSync } from 'node:child_process';
import {
  fitHockettSherby,
  fitHollomon,
  fitLudwik,
  fitSwift,
  fitVoce,
  hockettSherby,
  hollomon,
  ludwik,
  swift,
  voce,
  type CurveColumns,
  type FitReason,
  type FitSummary,
  type HardeningLaw,
  type Outcome,
} from '../src/index.js';
import { randomNumbers } from '../src/numeric/index.js';

type Parameters = Record<string, number>;
interface Kind {
  readonly name: string;
  readonly draw: (u: () => number) => Parameters;
  readonly law: (parameters: never) => HardeningLaw;
  readonly fit: (flow: CurveColumns) => Outcome<FitSummary<string>, FitReason>;
  /** The same law for SciPy, with a start near enough. */
  readonly python: string;
}

const kinds: readonly Kind[] = [
  {
    name: 'Hollomon',
    draw: (u) => ({ strengthCoefficient: 400 + 800 * u(), exponent: 0.05 + 0.4 * u() }),
    law: hollomon,
    fit: fitHollomon,
    python: 'lambda e, K, n: K * e**n, (500, 0.1)',
  },
  {
    name: 'Ludwik',
    draw: (u) => ({ yieldStress: 150 + 300 * u(), strengthCoefficient: 300 + 500 * u(), exponent: 0.3 + 0.5 * u() }),
    law: ludwik,
    fit: fitLudwik,
    python: 'lambda e, s, K, n: s + K * e**n, (200, 400, 0.5)',
  },
  {
    name: 'Swift',
    draw: (u) => ({ strengthCoefficient: 400 + 800 * u(), prestrain: 0.002 + 0.02 * u(), exponent: 0.1 + 0.3 * u() }),
    law: swift,
    fit: fitSwift,
    python: 'lambda e, K, e0, n: K * (e0 + e)**n, (500, 0.01, 0.2)',
  },
  {
    name: 'Voce',
    draw: (u) => ({ saturationStress: 400 + 300 * u(), initialStress: 150 + 150 * u(), rate: 5 + 20 * u() }),
    law: voce,
    fit: fitVoce,
    python: 'lambda e, t, f, r: t - (t - f) * np.exp(-r * e), (500, 200, 10)',
  },
  {
    name: 'Hockett-Sherby',
    draw: (u) => ({ saturationStress: 450 + 300 * u(), initialStress: 150 + 150 * u(), rate: 3 + 6 * u(), power: 0.6 + 0.35 * u() }),
    law: hockettSherby,
    fit: fitHockettSherby,
    python: 'lambda e, t, f, N, p: t - (t - f) * np.exp(-N * e**p), (600, 200, 7, 0.8)',
  },
];

const flowOf = (law: HardeningLaw, n: number, noise: number, normal: () => number) => {
  const to = Math.max(0.05, law.neckingStrain);
  const strain = Float64Array.from({ length: n }, (_, i) => 0.002 + ((to - 0.002) * i) / (n - 1));
  return { strain, stress: strain.map((e) => law.stress(e) * (1 + noise * normal())) };
};
const restOf = (law: HardeningLaw, { strain, stress }: { strain: Float64Array; stress: Float64Array }): number =>
  strain.reduce((sum, e, i) => sum + (stress[i]! - law.stress(e)) ** 2, 0);

/** Median processor time of a call [ms]: others on the machine count little. */
function time(call: () => unknown): number {
  for (let k = 0; k < 15; k += 1) call();
  const taken = Array.from({ length: 15 }, () => {
    const start = process.cpuUsage();
    for (let k = 0; k < 3; k += 1) call();
    const { user, system } = process.cpuUsage(start);
    return (user + system) / 3000;
  });
  return taken.sort((a, b) => a - b)[7]!;
}

/** Libraries below NumPy on one thread: those that wait would count as time of the processor. */
const env = { ...process.env, OMP_NUM_THREADS: '1', OPENBLAS_NUM_THREADS: '1', MKL_NUM_THREADS: '1' };

function scipy(python: string, { strain, stress }: { strain: Float64Array; stress: Float64Array }): number | undefined {
  const program = `
import sys, time, numpy as np
from scipy.optimize import curve_fit
e, s = np.frombuffer(sys.stdin.buffer.read(), dtype=np.float64).reshape(2, -1)
law, start = ${python}
taken = []
for _ in range(7):
    begin = time.process_time()
    curve_fit(law, e, s, p0=start, maxfev=20000)
    taken.append(time.process_time() - begin)
print(sorted(taken)[3] * 1e3)`;
  const input = Buffer.concat([strain, stress].map(({ buffer, byteOffset, byteLength }) => Buffer.from(buffer, byteOffset, byteLength)));
  const { status, stdout } = spawnSync('python3', ['-c', program], { input, env });
  return status === 0 ? Number(stdout.toString()) : undefined;
}

const CURVES = 1000;
console.log(
  '| law | optimum no worse than the truth, noise 0.1 % | noise 0.5 % | standard errors / scatter of repeated noise | curve_fit / fit at 1e5 |',
);
console.log('| --- | --- | --- | --- | --- |');
for (const { name, draw, law, fit, python } of kinds) {
  const { uniform, normal } = randomNumbers(23);
  const good = [0.001, 0.005].map((noise) => {
    let count = 0;
    for (let k = 0; k < CURVES; k += 1) {
      const truth = law(draw(uniform) as never);
      const flow = flowOf(truth, 300, noise, normal);
      const found = fit(flow);
      if (found.ok && found.converged && found.residualSumOfSquares <= restOf(truth, flow) * (1 + 1e-12)) count += 1;
    }
    return `${count} of ${CURVES}`;
  });
  const truth = draw(uniform);
  const clean = flowOf(law(truth as never), 300, 0, normal);
  const values: Parameters[] = [];
  const errors: Parameters[] = [];
  for (let k = 0; k < CURVES; k += 1) {
    const found = fit({ strain: clean.strain, stress: clean.stress.map((s) => s + 0.5 * normal()) });
    if (!found.ok) continue;
    values.push(found as unknown as Parameters);
    errors.push(found.standardErrors);
  }
  const ratios = Object.keys(truth).map((parameter) => {
    const mean = values.reduce((sum, one) => sum + one[parameter]!, 0) / values.length;
    const scatter = Math.sqrt(values.reduce((sum, one) => sum + (one[parameter]! - mean) ** 2, 0) / (values.length - 1));
    return (errors.reduce((sum, one) => sum + one[parameter]!, 0) / errors.length / scatter).toFixed(2);
  });
  const long = flowOf(law(truth as never), 100_000, 0.001, normal);
  const own = time(() => fit(long));
  const other = scipy(python, long);
  console.log(
    `| ${name} | ${good.join(' | ')} | ${ratios.join(', ')} | ${other === undefined ? 'not measured' : (other / own).toFixed(1)} |`,
  );
}
