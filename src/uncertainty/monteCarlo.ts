import { finding, InputError, requireFunction, requireOptions, requireWhole, success, type Finding, type Outcome } from '../base/index.js';
import { adaptiveTrials, leastTrials, type RunEnd } from './adaptiveTrials.js';
import type { InputCorrelation } from './correlations.js';
import { trialRunner, type TrialModel } from './monteCarloTrials.js';
import { requireCoverageProbability, trialDistribution, type DistributionOptions, type TrialDistribution } from './trialDistribution.js';
import { requireRange, requireSignal, type StopSignal, type TrialSet } from './TrialSet.js';
import type { UncertainInputs } from './UncertaintySource.js';
import { existingMoments } from './withoutVariance.js';

/** Options of {@link monteCarlo}. */
export interface MonteCarloOptions extends DistributionOptions {
  /** Symbol of the result, for findings. */
  readonly symbol?: string | undefined;
  /** Seed, a whole number; default 1. */
  readonly seed?: number | undefined;
  /** Exactly so many trials; default: until the result is stable. */
  readonly trials?: number | undefined;
  /** Digits of the standard uncertainty that must be stable, 1 to 8; default 2. */
  readonly digits?: number | undefined;
  /** Trials after which a run ends at the latest; default 1e6. */
  readonly mostTrials?: number | undefined;
  /** Correlations between normal inputs; default none. */
  readonly correlations?: readonly InputCorrelation[] | undefined;
  /** Called after each block of trials, with how many are done and how many there are at most. */
  readonly progress?: ((done: number, most: number) => void) | undefined;
  /** Looked at after each block of trials. */
  readonly signal?: StopSignal | undefined;
}

/** What a Monte Carlo run gives. */
export interface MonteCarloResult extends TrialDistribution {
  /** Seed of the run. */
  readonly seed: number;
  /** Why it ended: stable, all trials run, or told to stop. */
  readonly ended: 'converged' | 'all-trials' | 'aborted';
  /** Numerical tolerance δ that it was to be stable within; absent where a number of trials was asked for. */
  readonly tolerance?: number | undefined;
  /** Doubts about the run. */
  readonly findings: readonly Finding[];
}

const MOST = 1_000_000;

/** @internal A run in blocks: goes on whenever its driver does, and returns the result. */
export function* monteCarloRun(
  from: string,
  model: TrialModel,
  inputs: UncertainInputs,
  options: MonteCarloOptions,
  others: readonly string[] = [],
): Generator<undefined, Outcome<MonteCarloResult, 'too-few-trials'>, undefined> {
  requireOptions(from, options, [
    ...['coverage', 'symbol', 'seed', 'trials', 'digits', 'mostTrials', 'correlations', 'progress', 'signal'],
    ...others,
  ]);
  const coverage = requireCoverageProbability(from, options.coverage);
  const { seed, trials } = requireRange(from, { seed: options.seed, trials: options.trials }, MOST);
  const stable = requireWhole(from, 'options.digits', options.digits ?? 2, 1, 8);
  const mostTrials = requireWhole(from, 'options.mostTrials', options.mostTrials ?? MOST, 1, 2 ** 30);
  const [digits, most] = options.trials === undefined ? [stable, mostTrials] : [undefined, trials];
  const { progress } = options;
  if (progress !== undefined) requireFunction(from, 'options.progress', progress);
  const signal = requireSignal(from, options.signal);
  const { run: runner, none } = trialRunner(from, model, inputs, options.correlations, seed);
  const run = (firstTrial: number, count: number): TrialSet => {
    const part = runner(firstTrial, count);
    if (!part.outputs['value'])
      throw new InputError(from, 'model', 'wrong-type', 'must give one number', Object.keys(part.outputs).join(', '));
    return part;
  };
  const { whole, converged, tolerance }: RunEnd = yield* adaptiveTrials({
    run,
    coverage,
    digits,
    most,
    hasVariance: none === undefined,
    progress,
    signal,
  });
  const distribution = trialDistribution(whole.outputs['value']!, { coverage });
  if (!distribution.ok) return distribution;
  const { symbol = 'the result' } = options;
  const { failed } = distribution;
  const findings: Finding[] = [];
  if (digits !== undefined && !converged) findings.push(finding('monte-carlo-not-converged', { trials: whole.trials, tolerance }));
  if (none) findings.push(finding('monte-carlo-no-variance', { symbol, ...none }));
  const least = leastTrials(coverage);
  if (whole.trials < least)
    findings.push(finding('monte-carlo-trials-few', { trials: whole.trials, coverage: Number((100 * coverage).toFixed(4)), least }));
  if (failed > 0) findings.push(finding('monte-carlo-trials-failed', { failed, trials: whole.trials, symbol }));
  return success({
    ...existingMoments(distribution, none),
    seed,
    ended: converged ? 'converged' : whole.trials < most ? 'aborted' : 'all-trials',
    ...(digits === undefined ? {} : { tolerance }),
    findings,
  });
}

/**
 * Propagation of distributions by Monte Carlo: the distribution of a result whose inputs are drawn from theirs, until it is stable.
 *
 * $$ y_r = f(x_{1,r}, \dots, x_{N,r}), \qquad 2 s_z \le \delta \;\text{for}\; z = \tilde y,\, u(\tilde y),\, y_{low},\, y_{high} $$
 *
 * @remarks
 * Needs no derivatives and assumes no shape of the result. Without `trials` it runs blocks of 10 000 (more for a coverage near 1) until twice
 * the standard deviation of each average over the blocks is within the numerical tolerance δ. The same seed gives the same result to the last
 * bit; to share the work among workers, use `monteCarloTrials`, `mergeTrials` and `trialDistribution`. It does not let others have a turn:
 * `monteCarloAsync` does. An input of three readings or fewer is drawn from a Student's t that has no variance: standard uncertainty and
 * skewness are then absent (of two readings the mean as well), a finding says so, and the interval holds.
 *
 * @param model - One number as a function of the inputs by name; NaN where it has none. The object that it is given is used again.
 * @param inputs - As of `uncertaintyBudget`.
 * @param options - Seed, when to stop, coverage (default 0.9545), correlations between normal inputs, callback and signal.
 * @returns The distribution, or `too-few-trials` where fewer than 2 trials gave a number.
 * @throws {@link InputError} `missing`, `wrong-type`, `empty`, `not-finite`, `not-positive`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * const x = { value: 0, uncertainty: { halfWidth: Math.sqrt(3) } };
 * const sum = required(monteCarlo(({ a, b, c, d }) => a + b + c + d, { a: x, b: x, c: x, d: x }, { coverage: 0.95, trials: 20000 }));
 * sum.interval[1]; // => 3.9
 * ```
 *
 * @see JCGM 101:2008, Monte Carlo method; adaptive procedure. Checked in `test/handbook/uncertainty.test.ts`.
 */
export function monteCarlo<Name extends string>(
  model: (inputs: Readonly<Record<Name, number>>) => number,
  inputs: UncertainInputs<Name>,
  options: MonteCarloOptions = {},
): Outcome<MonteCarloResult, 'too-few-trials'> {
  const run = monteCarloRun('monteCarlo', model, inputs, options);
  for (;;) {
    const step = run.next();
    if (step.done === true) return step.value;
  }
}
