import { describe, expect, test } from 'vitest';
import { monteCarlo, required, trialDistribution, uncertaintyBudget, validateBudget, type UncertainInputs } from '../../src/index.js';
import { randomNumbers } from '../../src/numeric/index.js';
import { refusal } from '../support/thrown.js';

type Model = (inputs: Readonly<Record<'a' | 'b' | 'c', number>>) => number;
const SEEDS = 300;

/** How often each verdict falls over many runs. */
function verdicts(model: Model, inputs: UncertainInputs<'a' | 'b' | 'c'>, trials: number): Readonly<Record<string, number>> {
  const budget = uncertaintyBudget(model, inputs);
  const found: Record<string, number> = { valid: 0, 'not-valid': 0, 'too-few-trials': 0 };
  for (let seed = 1; seed <= SEEDS; seed += 1)
    found[validateBudget(budget, required(monteCarlo(model, inputs, { trials, seed }))).verdict]! += 1;
  return found;
}
const normal = (u: number) => ({ value: 10, uncertainty: u });
const sum: Model = ({ a, b, c }) => a + b - c;

describe('a linear model of normal inputs, whose budget is exact', () => {
  // u = 9.4 asks most: δ is 0.05 u, where 2000 trials know an end to 0.06 u. u = 1.06 asks least
  test.each([
    [9.4, 500],
    [9.4, 2000],
    [1.06, 500],
    [1.06, 2000],
  ])('u = %d, %d trials: hardly ever called not valid', (u, trials) => {
    const part = u / Math.sqrt(3);
    const { 'not-valid': wrong, valid } = verdicts(sum, { a: normal(part), b: normal(part), c: normal(part) }, trials);
    // beyond three standard errors on the side that counts, at either end: 0.3 %, and a few times that where few trials lie outside
    expect(wrong).toBeLessThanOrEqual(0.02 * SEEDS);
    // 2000 trials leave 3 · 0.06 u open, and δ is 0.47 u
    if (u === 1.06 && trials === 2000) expect(valid).toBeGreaterThan(0.9 * SEEDS);
  });

  test('so many trials that their error is small beside δ settle it', () => {
    const part = normal(9.4 / Math.sqrt(3));
    const inputs = { a: part, b: part, c: part };
    // 2 · 0.06 u √(2000 / M) = δ / 5 at M = 260 000
    const found = validateBudget(uncertaintyBudget(sum, inputs), required(monteCarlo(sum, inputs, { trials: 400_000 })));
    expect(found).toMatchObject({ verdict: 'valid', valid: true, findings: [] });
    expect(2 * Math.max(...found.errors)).toBeLessThan(found.tolerance / 5);
  });

  test('where they leave it open a note says so', () => {
    const inputs = { a: normal(9.4), b: normal(0), c: normal(0) };
    const found = validateBudget(
      uncertaintyBudget(sum, inputs, { symbol: 'y' }),
      required(monteCarlo(sum, inputs, { trials: 2000, seed: 3 })),
    );
    expect(found).toMatchObject({ verdict: 'too-few-trials', valid: false });
    expect(found.findings).toMatchObject([{ code: 'budget-trials-few', severity: 'note', values: { symbols: 'y' } }]);
  });
});

describe('a budget that is not right', () => {
  test.each<[string, Model, UncertainInputs<'a' | 'b' | 'c'>]>([
    // the interval of a rectangular distribution ends at 0.9545 √3 u = 1.65 u, where the budget has 2 u
    ['one rectangular input', sum, { a: { value: 10, uncertainty: { halfWidth: 9.4 * Math.sqrt(3) } }, b: normal(0), c: normal(0) }],
    // its lower end lies at exp(−0.6), 0.149 above that of the budget, 1 − 0.6; δ is 0.05, and 2000 trials know the end to 0.010
    ['an exponential', ({ a }) => Math.exp(a), { a: { value: 0, uncertainty: 0.3 }, b: normal(0), c: normal(0) }],
    // as E by travel: 1 / (1 ∓ 0.4) is 0.71 and 1.67 where the budget has 0.6 and 1.4
    ['a soft frame', ({ a }) => 1 / a, { a: { value: 1, uncertainty: 0.2 }, b: normal(0), c: normal(0) }],
  ])('%s: 2000 trials tell, whatever the seed', (_, model, inputs) => {
    const { 'not-valid': found, valid } = verdicts(model, inputs, 2000);
    expect(valid).toBe(0);
    expect(found).toBeGreaterThan(0.98 * SEEDS);
  });
});

describe('standard errors of the ends', () => {
  test.each([500, 2000])('%d trials of a normal distribution: √(p (1 − p) / M) over its density', (trials) => {
    const { normal: draw } = randomNumbers(6);
    const runs = Array.from({ length: 400 }, () =>
      required(trialDistribution({ values: Float64Array.from({ length: trials }, draw), failed: 0 }, { coverage: 0.95 })),
    );
    const p = 0.025;
    const z = 1.959964;
    const expected = (Math.sqrt((p * (1 - p)) / trials) / Math.exp(-(z ** 2) / 2)) * Math.sqrt(2 * Math.PI);
    for (const k of [0, 1]) {
      const ends = runs.map(({ interval }) => interval[k]!);
      const middle = ends.reduce((a, b) => a + b, 0) / ends.length;
      const scatter = Math.sqrt(ends.reduce((a, b) => a + (b - middle) ** 2, 0) / (ends.length - 1));
      // 400 runs know a standard deviation to 3.5 %; the approximation for many trials is good to a few per cent at 500
      expect(Math.abs(scatter / expected - 1)).toBeLessThan(0.15);
      const stated = runs.reduce((a, { intervalErrors }) => a + intervalErrors[k]!, 0) / runs.length;
      // taken to the farther side, it errs on the safe one
      expect(stated / expected).toBeGreaterThan(0.95);
      expect(stated / expected).toBeLessThan(1.6);
    }
  });

  test('ends that do not scatter have none', () => {
    expect(required(trialDistribution({ values: [2, 2, 2], failed: 0 })).intervalErrors).toEqual([0, 0]);
  });

  test('an interval from elsewhere counts as known; errors below 0 are refused', () => {
    const budget = uncertaintyBudget(({ x }) => x, { x: { value: 0, uncertainty: 1 } });
    const { coverage } = budget;
    expect(validateBudget(budget, { interval: [-2.4, 2.4], coverage }).verdict).toBe('valid');
    expect(validateBudget(budget, { interval: [-2.6, 2], coverage }).verdict).toBe('not-valid');
    expect(validateBudget(budget, { interval: [-2.4, 2.4], coverage, intervalErrors: [0.1, 0.1] }).verdict).toBe('too-few-trials');
    expect(refusal(() => validateBudget(budget, { interval: [-2, 2], coverage, intervalErrors: [0, -1] }))).toBe(
      'out-of-range distribution.intervalErrors[1]',
    );
  });
});
