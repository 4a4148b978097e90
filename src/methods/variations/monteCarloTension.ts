import {
  finding,
  InputError,
  requireFunction,
  requireObject,
  type BaseUnit,
  type Finding,
  type TensionColumns,
  type TestPiece,
} from '../../base/index.js';
import {
  existingMoments,
  mergeTrials,
  requireSignal,
  requireTrialSet,
  trialDistribution,
  withoutVariance,
  type BudgetValidation,
  type StopSignal,
  type TrialDistribution,
  type TrialSet,
} from '../../uncertainty/index.js';
import { budgetAgainstTrials } from './budgetAgainstTrials.js';
import { tensionTrials, type TensionTrialOptions } from './monteCarloTensionTrials.js';
import { quantitiesOf } from '../budgets/statedResult.js';
import type { TensionResult } from '../evaluation/TensionResult.js';

/** Options of {@link monteCarloTension}. */
export interface MonteCarloTensionOptions extends Omit<TensionTrialOptions, 'firstTrial'> {
  /** Trials that were run elsewhere and put together: then none are run here. */
  readonly part?: TrialSet | undefined;
  /** Called after each hundred trials, with how many are done and how many there will be. */
  readonly progress?: ((done: number, most: number) => void) | undefined;
  /** Looked at after each hundred trials. */
  readonly signal?: StopSignal | undefined;
}

/** The distribution of one quantity. */
export interface TensionDistribution extends TrialDistribution {
  /** Symbol as in the result. */
  readonly symbol: string;
  /** Unit of all values. */
  readonly unit: BaseUnit;
  /** The value that the analysis gives. */
  readonly value: number;
  /** How the budget's interval compares, about the middle of the trials where noise moved the value from it; absent where there is no budget. */
  readonly validation?: Omit<BudgetValidation, 'findings'> | undefined;
}

/** What a Monte Carlo run over a tension test gives. */
export interface MonteCarloTension {
  /** The analysis, with its budgets. */
  readonly result: TensionResult;
  /** Distributions by symbol. */
  readonly distributions: Readonly<Record<string, TensionDistribution>>;
  /** Seed of the run. */
  readonly seed: number;
  /** Trials that were run. */
  readonly trials: number;
  /** Whether all trials were run, or it was told to stop. */
  readonly ended: 'all-trials' | 'aborted';
  /** Doubts about the run. */
  readonly findings: readonly Finding[];
}

const SLICE = 100;

/** All trials, or those that were run before it was told to stop: the first slice in any case. */
function inSlices(
  run: (first: number, trials: number) => TrialSet,
  trials: number,
  progress: MonteCarloTensionOptions['progress'],
  signal: StopSignal | undefined,
): TrialSet {
  const parts: TrialSet[] = [];
  for (let done = 0; done < trials && !(done > 0 && signal?.aborted === true);) {
    const slice = run(done, Math.min(SLICE, trials - done));
    parts.push(slice);
    done += slice.trials;
    progress?.(done, trials);
  }
  return mergeTrials(parts);
}

/**
 * Monte Carlo over a whole tension test: every trial draws force, dimensions, lengths, frame and noise from what is doubtful about them, and
 * evaluates the record again, with the exact search for the elastic window.
 *
 * $$ (F, x)_r = k_F F + z + \varepsilon_F,\; k_x x + \varepsilon_x, \quad d_r, L_r, C_{f,r} \;\to\; R_{p,r}, R_{m,r}, E_r, \dots $$
 *
 * @remarks
 * Needs no derivatives: choice of the window, crossing, maximum and frame are taken as they are, so a skewed E on a soft frame comes out
 * skewed. Fresh noise, as strong as the elastic part shows or as `noise` says, is added to the record with most of its own noise taken out by
 * sliding parabolas, so that it is not counted twice. Each quantity with a budget is compared with it, as `validateBudget` does: about the middle of the trials,
 * for the value holds its own noise and the trials do not; where the budget has lines that no trial draws, such as *shift by noise*, it may be wider; and what the
 * 40 repeats leave open of the line *noise* is allowed beside δ. The same seed gives the same result; how to
 * share the work among workers stands at `monteCarloTensionTrials`.
 *
 * @param record - As of `analyseTension`.
 * @param testPiece - As of `analyseTension`.
 * @param options - As of `analyseTension`, with `uncertainty` (its coverage is that of the intervals); seed, trials (default 2000), callback and signal.
 * @returns The analysis with its budgets, the distribution of every quantity, and doubts about the run.
 * @throws {@link InputError} As `analyseTension`; `missing` without `uncertainty`; `out-of-range` for a part of another seed.
 *
 * @example
 * ```ts
 * const stress = Array.from({ length: 21 }, (_, i) => 20 * i);
 * const record = { force: stress.map((R) => 50.26548 * R), extension: stress.map((R) => 40 * (R / 70000 + 0.002 * (R / 350) ** 20)) };
 * const piece = { section: round({ diameter: 8 }), gaugeLength: 40 };
 * const { distributions } = monteCarloTension(record, piece, { uncertainty: { force: 0.005 }, trials: 100 });
 * distributions['Rm']?.standardUncertainty?.toFixed(0); // => '2'
 * ```
 *
 * @see JCGM 101:2008, Monte Carlo method. Checked in `test/methods/monteCarloTension.test.ts`.
 */
export function monteCarloTension(record: TensionColumns, testPiece: TestPiece, options: MonteCarloTensionOptions): MonteCarloTension {
  const from = 'monteCarloTension';
  const { part, progress, signal, ...trialOptions } = requireObject(from, 'options', options) as MonteCarloTensionOptions;
  if (part !== undefined) requireTrialSet(from, 'options.part', part);
  if (progress !== undefined) requireFunction(from, 'options.progress', progress);
  requireSignal(from, signal);
  const { run, result, inputs, lines, trials, seed } = tensionTrials(from, record, testPiece, trialOptions, ['seed', 'trials']);
  if (part && part.seed !== seed)
    throw new InputError(from, 'options.part.seed', 'out-of-range', `must be the seed of the run (${seed})`, part.seed);
  const whole = part ? mergeTrials([part]) : inSlices(run, trials, progress, signal);
  const findings: Finding[] = [];
  const distributions: Record<string, TensionDistribution> = {};
  for (const { symbol, unit, value } of quantitiesOf(result)) {
    const output = whole.outputs[symbol];
    const budget = result.uncertainty?.[symbol];
    if (!output) continue;
    const distribution = trialDistribution(output, { coverage: budget?.coverage ?? options.uncertainty?.coverage });
    if (output.failed > 0) findings.push(finding('monte-carlo-trials-failed', { failed: output.failed, trials: whole.trials, symbol }));
    if (!distribution.ok) continue;
    // what an input does not touch keeps its variance
    const touched = inputs.filter(({ name }) => budget?.lines.some(({ input, sensitivity }) => input === name && sensitivity !== 0));
    const none = withoutVariance(touched);
    if (none) findings.push(finding('monte-carlo-no-variance', { symbol, ...none }));
    const validation = budget && budgetAgainstTrials(budget, distribution, lines);
    distributions[symbol] = { symbol, unit, value, ...existingMoments(distribution, none), ...(validation ? { validation } : {}) };
  }
  const symbolsOf = (verdict: BudgetValidation['verdict']): string =>
    Object.values(distributions)
      .filter(({ validation }) => validation?.verdict === verdict)
      .map(({ symbol }) => symbol)
      .join(', ');
  const [wrong, open] = [symbolsOf('not-valid'), symbolsOf('too-few-trials')];
  if (wrong) findings.push(finding('budgets-not-validated', { symbols: wrong }));
  if (open) findings.push(finding('budget-trials-few', { symbols: open }));
  return { result, distributions, seed, trials: whole.trials, ended: whole.trials < trials && !part ? 'aborted' : 'all-trials', findings };
}
