import { describe, expect, test } from 'vitest';
import {
  mergeTrials,
  monteCarlo,
  monteCarloAsync,
  monteCarloTrials,
  required,
  trialDistribution,
  uncertaintyBudget,
  validateBudget,
  type UncertaintySource,
} from '../../src/index.js';
import { randomStreams } from '../../src/numeric/index.js';
import { refusal } from '../support/thrown.js';

const MANY = 200_000;
const x = (uncertainty: UncertaintySource) => ({ x: { value: 5, uncertainty } });
const self = (inputs: Readonly<Record<'x', number>>): number => inputs.x;

describe('what is drawn', () => {
  // variance and kurtosis of each shape by its moments; the sampling error of u follows from the kurtosis
  test.each<[string, UncertaintySource, number, number]>([
    ['normal', 2, 2, 3],
    ['rectangular', { halfWidth: 3 }, Math.sqrt(3), 1.8],
    ['triangular', { halfWidth: 6, distribution: 'triangular' }, Math.sqrt(6), 2.4],
    ['arcsine', { halfWidth: 2, distribution: 'arcsine' }, Math.SQRT2, 1.5],
    ['trapezoidal', { halfWidth: 2, distribution: 'trapezoidal', top: 0.5 }, Math.sqrt((4 * 1.25) / 6), 2.3],
    ['t of 9 degrees of freedom', { standardUncertainty: 1, degreesOfFreedom: 9 }, Math.sqrt(9 / 7), 3 + 6 / 5],
  ])('%s: mean and standard deviation within four sampling errors', (_, source, deviation, kurtosis) => {
    const found = required(monteCarlo(self, x(source), { trials: MANY }));
    expect(Math.abs(found.mean! - 5)).toBeLessThan((4 * deviation) / Math.sqrt(MANY));
    expect(Math.abs(found.standardUncertainty! - deviation)).toBeLessThan(deviation * 2 * Math.sqrt((kurtosis - 1) / MANY));
    expect(Math.abs(found.skewness!)).toBeLessThan(0.1);
  });

  test('correlated normal inputs: the budget of sum and difference', () => {
    const inputs = { a: { value: 1, uncertainty: 3 }, b: { value: 2, uncertainty: 4 } };
    const correlations = [{ between: ['a', 'b'] as const, coefficient: -0.6 }];
    for (const model of [({ a, b }: Record<'a' | 'b', number>) => a + b, ({ a, b }: Record<'a' | 'b', number>) => a - b]) {
      const budget = uncertaintyBudget(model, inputs, { correlations });
      const found = required(monteCarlo(model, inputs, { correlations, trials: MANY }));
      expect(Math.abs(found.standardUncertainty! - budget.standardUncertainty)).toBeLessThan(4 * found.uncertaintyError!);
      expect(validateBudget(budget, found).valid).toBe(true);
    }
  });

  test('a correlation of exactly 1 moves both alike', () => {
    const inputs = { a: { value: 0, uncertainty: 1 }, b: { value: 0, uncertainty: 2 } };
    const set = monteCarloTrials(({ a, b }) => b - 2 * a, inputs, { correlations: [{ between: ['a', 'b'], coefficient: 1 }], trials: 100 });
    expect(Math.max(...set.outputs['value']!.values.map(Math.abs))).toBeLessThan(1e-12);
  });

  test('a linear model of many sources agrees with its budget within the sampling error', () => {
    const inputs = {
      a: { value: 3, uncertainty: [{ halfWidth: 1 }, { halfWidth: 1, distribution: 'triangular' as const }, 0.3] },
      b: { value: -2, uncertainty: { expanded: 1 } },
    };
    const model = ({ a, b }: Record<'a' | 'b', number>) => 2 * a - 3 * b;
    const budget = uncertaintyBudget(model, inputs);
    const found = required(monteCarlo(model, inputs, { trials: MANY }));
    expect(Math.abs(found.mean! - budget.value)).toBeLessThan(4 * found.meanError!);
    expect(Math.abs(found.standardUncertainty! - budget.standardUncertainty)).toBeLessThan(4 * found.uncertaintyError!);
  });
});

describe('trials and streams', () => {
  const inputs = { a: { value: 1, uncertainty: [0.1, { halfWidth: 1 }] }, b: { value: 2, uncertainty: { readings: [1, 2, 4, 2] } } };
  const model = ({ a, b }: Record<'a' | 'b', number>) => a * b;

  test('1, 2 and 8 workers in any order give the same values to the last bit', () => {
    const whole = monteCarloTrials(model, inputs, { trials: 1000, seed: 9 });
    for (const workers of [2, 8]) {
      const share = 1000 / workers;
      const parts = Array.from({ length: workers }, (_, k) =>
        monteCarloTrials(model, inputs, { firstTrial: k * share, trials: share, seed: 9 }),
      ).reverse();
      expect(mergeTrials(parts)).toEqual(whole);
    }
    const { values } = whole.outputs['value']!;
    expect(required(monteCarlo(model, inputs, { trials: 1000, seed: 9 }))).toMatchObject(
      required(trialDistribution({ values, failed: 0 })),
    );
  });

  test('other seeds and other trials give other numbers', () => {
    const first = new Set<number>();
    for (const seed of [0, 1, 2, -1, 2 ** 31])
      for (let k = 0; k < 200; k += 1) {
        const random = randomStreams(seed);
        random.at(k);
        first.add(random.uniform());
      }
    expect(first.size).toBe(1000);
  });

  test('neighbouring streams are not correlated', () => {
    const random = randomStreams(5);
    const draw = (k: number) => {
      random.at(k);
      return random.normal();
    };
    let sum = 0;
    for (let k = 0; k < 40_000; k += 1) sum += draw(k) * draw(k + 1);
    expect(Math.abs(sum / 40_000)).toBeLessThan(4 / Math.sqrt(40_000));
  });

  test('several outputs; what a trial cannot give is counted', () => {
    const set = monteCarloTrials(
      ({ a }) => ({ root: a > 1 ? Math.sqrt(a - 1) : undefined, twice: 2 * a }),
      { a: inputs.a },
      { trials: 500 },
    );
    const { root, twice } = set.outputs;
    expect(twice!.values).toHaveLength(500);
    expect(root!.values.length + root!.failed).toBe(500);
    expect(root!.failed).toBeGreaterThan(150);
    // an output that a part never saw failed in all of it
    const none = monteCarloTrials(() => ({ twice: 1 }), { a: 1 }, { firstTrial: 500, trials: 10 });
    expect(mergeTrials([set, none]).outputs['root']?.failed).toBe(root!.failed + 10);
  });
});

describe('few readings', () => {
  const micrometer = (readings: readonly number[]) => ({ x: { uncertainty: { readings } } });
  // 97.725 % quantile of t with 2 degrees of freedom, from its inverse in closed form: a √(2 / (1 − a²)), a = 2p − 1
  const t = 0.9545 * Math.sqrt(2 / (1 - 0.9545 ** 2));

  test('three have an interval but no variance: the same interval with every seed, no standard uncertainty', () => {
    for (const seed of [1, 2, 3]) {
      const found = required(monteCarlo(self, micrometer([7.99, 8.01, 8]), { seed }));
      expect(found.findings.map(({ code }) => code)).toEqual(['monte-carlo-no-variance']);
      expect(found.ended).toBe('converged');
      for (const name of ['standardUncertainty', 'skewness', 'meanError', 'uncertaintyError']) expect(found).not.toHaveProperty(name);
      expect(Math.abs(found.mean! - 8)).toBeLessThan(0.001);
      expect(Math.abs(found.interval[1] - 8 - (t * 0.01) / Math.sqrt(3))).toBeLessThan(found.tolerance!);
    }
    const fixed = required(monteCarlo(self, micrometer([7.99, 8.01, 8]), { trials: 5000 }));
    expect(fixed.findings.map(({ message }) => message)).toEqual([
      'x has 2 degrees of freedom. With 2 or fewer, as of three readings, its trials have no variance: they give the result no standard uncertainty, but an interval.',
    ]);
  });

  test('two have no mean either; four have a variance; three that are equal move nothing', () => {
    expect(required(monteCarlo(self, micrometer([7.99, 8.01]), { trials: 5000 }))).not.toHaveProperty('mean');
    const four = required(monteCarlo(self, micrometer([7.99, 8.01, 7.99, 8.01]), { trials: 5000 }));
    expect(four.findings).toEqual([]);
    expect(four.standardUncertainty).toBeGreaterThan(0);
    const equal = required(
      monteCarlo(({ a, b }) => a + b, { a: micrometer([8, 8, 8]).x, b: { value: 1, uncertainty: 1 } }, { trials: 5000 }),
    );
    expect(equal.findings).toEqual([]);
  });

  test('drawn with others by their correlation they are normal', () => {
    const inputs = { a: micrometer([7, 8, 9]).x, b: { value: 1, uncertainty: 1 } };
    const options = { correlations: [{ between: ['a', 'b'] as const, coefficient: 0.5 }], trials: 5000 };
    expect(required(monteCarlo(({ a, b }) => a + b, inputs, options)).findings).toEqual([]);
  });
});

test('trials too few for the ends of their interval are told', () => {
  const few = (trials: number, coverage?: number) =>
    required(monteCarlo(self, x(1), { trials, coverage })).findings.map(({ code, values }) => [code, values['least']]);
  expect(few(10)).toEqual([['monte-carlo-trials-few', 2198]]);
  expect(few(2197)).toHaveLength(1);
  expect(few(2198)).toEqual([]);
  expect(few(1000, 0.9)).toEqual([]);
});

describe('a run', () => {
  const normal = { x: { value: 0, uncertainty: 1 } };

  test('goes on until it is stable within its tolerance', () => {
    const found = required(monteCarlo(self, normal, { digits: 1 }));
    expect(found.ended).toBe('converged');
    expect(found.tolerance).toBe(0.5);
    expect(found.trials).toBe(20_000);
    const finer = required(monteCarlo(self, normal, { digits: 2, coverage: 0.95 }));
    expect(finer.trials).toBeGreaterThanOrEqual(20_000);
    expect(Math.abs(finer.interval[1] - 1.96)).toBeLessThan(finer.tolerance!);
  });

  test('ends at its most trials, with a finding', () => {
    const found = required(monteCarlo(self, normal, { digits: 4, mostTrials: 25_000 }));
    expect(found.ended).toBe('all-trials');
    expect(found.trials).toBe(25_000);
    expect(found.findings.map(({ code }) => code)).toEqual(['monte-carlo-not-converged']);
  });

  test('counts trials that failed, with a finding; all of them are a failure', () => {
    const some = required(monteCarlo(({ x: one }) => Math.sqrt(one), normal, { trials: 1000 }));
    expect(some.findings.at(-1)?.code).toBe('monte-carlo-trials-failed');
    expect(some.trials + some.failed).toBe(1000);
    expect(monteCarlo(() => NaN, normal, { trials: 100 })).toMatchObject({ ok: false, reason: 'too-few-trials' });
  });

  test('reports its progress, and stops when it is told to', () => {
    const seen: number[] = [];
    const signal = { aborted: false };
    const found = required(
      monteCarlo(self, normal, {
        trials: 50_000,
        progress: (done, most) => {
          expect(most).toBe(50_000);
          seen.push(done);
          signal.aborted = done >= 20_000;
        },
        signal,
      }),
    );
    expect(seen).toEqual([10_000, 20_000]);
    expect(found).toMatchObject({ ended: 'aborted', trials: 20_000 });
  });

  test('monteCarloAsync gives the same, and lets a timer stop it', async () => {
    const options = { trials: 30_000, seed: 4 };
    expect(await monteCarloAsync(self, normal, options)).toEqual(monteCarlo(self, normal, options));
    const controller = new AbortController();
    setTimeout(() => {
      controller.abort();
    });
    const found = required(
      await monteCarloAsync(self, normal, {
        trials: 5_000_000,
        signal: controller.signal,
        pause: () => new Promise((go) => setTimeout(go, 1)),
      }),
    );
    expect(found.ended).toBe('aborted');
    expect(found.trials).toBeLessThan(5_000_000);
  });

  test('a skewed model: the shortest interval is shorter, the skewness that of a lognormal', () => {
    const found = required(monteCarlo(({ x: one }) => Math.exp(0.5 * one), normal, { trials: MANY, coverage: 0.95 }));
    const w = Math.exp(0.25);
    const width = ([low, high]: readonly [number, number]) => high - low;
    expect(width(found.shortestInterval)).toBeLessThan(0.97 * width(found.interval));
    // (w + 2)√(w − 1); the sampling error of a third moment of so long a tail is a few percent
    expect(Math.abs(found.skewness! / ((w + 2) * Math.sqrt(w - 1)) - 1)).toBeLessThan(0.1);
    expect(found.quantiles).toHaveLength(101);
    expect(Math.abs(found.quantiles[50]! - 1)).toBeLessThan((4 * (0.5 * 1.2533)) / Math.sqrt(MANY));
  });

  test('nothing varies: no skewness, no error', () => {
    expect(required(trialDistribution({ values: [2, 2, 2], failed: 1 }))).toMatchObject({
      mean: 2,
      standardUncertainty: 0,
      skewness: 0,
      interval: [2, 2],
      uncertaintyError: 0,
      failed: 1,
    });
  });
});

describe('refusals', () => {
  const one = { x: { value: 0, uncertainty: 1 } };
  const set = monteCarloTrials(self, one, { trials: 10 });
  test.each<[string, () => unknown]>([
    ['wrong-type model', () => monteCarlo(1 as never, one)],
    ['wrong-type options.signal', () => monteCarlo(({ x }) => x, one, { signal: null as never })],
    ['wrong-type options.progress', () => monteCarlo(({ x }) => x, one, { progress: 5 as never })],
    ['wrong-type model', () => monteCarlo((() => ({ a: 1 })) as never, one)],
    ['out-of-range options.seed', () => monteCarlo(self, one, { seed: 0.5 })],
    ['out-of-range options.trials', () => monteCarlo(self, one, { trials: 0 })],
    ['out-of-range options.digits', () => monteCarlo(self, one, { digits: 1.5 })],
    ['out-of-range options.mostTrials', () => monteCarlo(self, one, { mostTrials: 0 })],
    ['out-of-range options.coverage', () => monteCarlo(self, one, { coverage: 0 })],
    ['unknown-option options.pause', () => monteCarlo(self, one, { pause: 1 } as never)],
    ['out-of-range options.firstTrial', () => monteCarloTrials(self, one, { firstTrial: -1 })],
    [
      'out-of-range options.correlations',
      () =>
        monteCarlo(
          ({ a, b }) => a + b,
          { a: { value: 0, uncertainty: { halfWidth: 1 } }, b: { value: 0, uncertainty: 1 } },
          {
            correlations: [{ between: ['a', 'b'], coefficient: 0.5 }],
          },
        ),
    ],
    ['empty parts', () => mergeTrials([])],
    ['out-of-range parts.firstTrial', () => mergeTrials([set, set])],
    ['out-of-range parts.seed', () => mergeTrials([set, { ...set, seed: 2, firstTrial: 10 }])],
    ['out-of-range output.failed', () => trialDistribution({ values: [1, 2], failed: -1 })],
    ['not-finite output.values[1]', () => trialDistribution({ values: [1, NaN], failed: 0 })],
    [
      'out-of-range distribution.coverage',
      () => validateBudget(uncertaintyBudget(self, one), required(monteCarlo(self, one, { coverage: 0.9, trials: 100 }))),
    ],
  ])('%s', (expected, call) => {
    expect(refusal(call)).toBe(expected);
  });

  test('an async run rejects', async () => {
    await expect(monteCarloAsync(1 as never, one)).rejects.toThrow('model must be a function');
  });
});
