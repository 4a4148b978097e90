import { requireFunction, requireOptions } from '../base/index.js';
import { randomStreams } from '../numeric/index.js';
import { requireInputs } from './components.js';
import { requireCorrelations, type InputCorrelation } from './correlations.js';
import { drawInputs, requireNormalTies } from './drawInputs.js';
import { collectTrials, requireRange, type TrialRange, type TrialSet } from './TrialSet.js';
import type { UncertainInputs } from './UncertaintySource.js';
import { withoutVariance, type NoVariance } from './withoutVariance.js';

/** A model of one result, or of several by name; what a trial cannot give is NaN or absent. */
export type TrialModel<Name extends string = string> = (
  inputs: Readonly<Record<Name, number>>,
) => number | Readonly<Record<string, number | undefined>>;

/** Options of {@link monteCarloTrials}. */
export interface TrialOptions extends TrialRange {
  /** Correlations between normal inputs; default none. */
  readonly correlations?: readonly InputCorrelation[] | undefined;
}

/** Trials when nothing is asked. */
const TRIALS = 10_000;

/**
 * Trials of a Monte Carlo run, or a part of them to be put together with others.
 *
 * $$ y_r = f(x_{1,r}, \dots, x_{N,r}), \qquad r = r_0, \dots, r_0 + M - 1 $$
 *
 * @remarks
 * What trial r draws depends on the seed and on r alone, so a run split among any number of workers gives the same values to the last
 * bit: give each its `firstTrial` and `trials`, and put the parts together by `mergeTrials`. Sources with few degrees of freedom are drawn from
 * Student's t (with 2 or fewer its variance does not exist, and `monteCarlo` states no standard uncertainty). Correlated inputs are
 * drawn from a joint normal distribution.
 *
 * @param model - The result as a function of the inputs by name; one number, or several by name. The object that it is given is used again.
 * @param inputs - As of `uncertaintyBudget`.
 * @param options - Seed, range of trials (default 0 to 9999), correlations.
 * @returns Values of every output in the order of their trials.
 * @throws {@link InputError} `missing`, `wrong-type`, `empty`, `not-finite`, `not-positive`, `unknown-option`; `out-of-range` also for
 * correlations of inputs that are not normal.
 *
 * @example
 * ```ts
 * const inputs = { a: { value: 1, uncertainty: 0.1 }, b: { value: 2, uncertainty: { halfWidth: 0.2 } } };
 * const halves = [0, 500].map((firstTrial) => monteCarloTrials(({ a, b }) => a * b, inputs, { firstTrial, trials: 500 }));
 * const whole = monteCarloTrials(({ a, b }) => a * b, inputs, { trials: 1000 });
 * mergeTrials(halves).outputs['value']?.values[999] === whole.outputs['value']?.values[999]; // => true
 * ```
 *
 * @see JCGM 101:2008, Monte Carlo method. Checked in `test/uncertainty/monteCarlo.test.ts`.
 */
export function monteCarloTrials<Name extends string>(
  model: TrialModel<Name>,
  inputs: UncertainInputs<Name>,
  options: TrialOptions = {},
): TrialSet {
  const from = 'monteCarloTrials';
  requireOptions(from, options, ['seed', 'firstTrial', 'trials', 'correlations']);
  const { seed, firstTrial, trials } = requireRange(from, options, TRIALS);
  return trialRunner(from, model, inputs, options.correlations, seed).run(firstTrial, trials);
}

/** @internal Checks a model and its inputs once: `run` runs any range of trials, `none` is an input whose trials have no variance. */
export function trialRunner(
  from: string,
  model: TrialModel,
  inputs: UncertainInputs,
  given: readonly InputCorrelation[] | undefined,
  seed: number,
): { readonly run: (firstTrial: number, trials: number) => TrialSet; readonly none: NoVariance | undefined } {
  requireFunction(from, 'model', model);
  const checked = requireInputs(from, inputs);
  const correlations = requireCorrelations(from, checked, given);
  requireNormalTies(from, checked, correlations);
  const random = randomStreams(seed);
  const drawn = Object.fromEntries(checked.map(({ name, value }) => [name, value]));
  const normals = new Float64Array(checked.length);
  const run = (firstTrial: number, trials: number): TrialSet =>
    collectTrials(seed, firstTrial, trials, (trial, keep) => {
      random.at(trial);
      drawInputs(random, checked, correlations, drawn, normals);
      const result = model(drawn);
      if (typeof result === 'number') keep('value', result);
      else for (const name in result) keep(name, result[name]);
    });
  return { run, none: withoutVariance(checked, correlations.tied) };
}
