import { InputError, type TensionColumns, type TestPiece } from '../../base/index.js';
import { randomStreams } from '../../numeric/index.js';
import { collectTrials, drawInputs, requireCorrelations, requireRange, type TrialRange, type TrialSet } from '../../uncertainty/index.js';
import { runTension, type TensionRun } from '../tension/runTension.js';
import { NOISE } from '../budgets/noiseScatter.js';
import { slopeInputs } from '../budgets/tensionBudgets.js';
import { tensionModel } from '../budgets/tensionModel.js';
import { withoutNoise } from '../budgets/withoutNoise.js';
import { fillNoise, tensionNoise } from '../budgets/tensionNoise.js';
import type { TensionOptions } from '../evaluation/tensionOptions.js';

/** Options of {@link monteCarloTensionTrials}: those of the analysis, and which trials. */
export interface TensionTrialOptions extends TensionOptions, TrialRange {}

/** Trials when nothing is asked: the standard uncertainty is then known to 1.6 %. */
const TRIALS = 2000;

/** @internal Runs the analysis once, with doubts that must be given, and makes what runs its trials. */
export function tensionTrials(
  from: string,
  record: TensionColumns,
  testPiece: TestPiece,
  options: TensionTrialOptions,
  others: readonly string[],
) {
  const { seed, firstTrial, trials } = requireRange(from, options, TRIALS);
  const analysed: TensionRun = runTension(from, record, testPiece, options, others);
  const { task, doubts, result } = analysed;
  if (!doubts) throw new InputError(from, 'options.uncertainty', 'missing', 'must say what is doubtful', undefined);
  const { inputs } = doubts;
  const noise = tensionNoise(task, doubts.noise);
  const model = tensionModel(withoutNoise(task, noise));
  const correlations = requireCorrelations(from, inputs);
  const random = randomStreams(seed);
  const drawn: Record<string, number> = {};
  const normals = new Float64Array(inputs.length);
  const ofSlope = new Float64Array(1);
  const ofLine = slopeInputs(task, noise);
  const slopeDoubt = Math.hypot(...ofLine.map(({ standardUncertainty }) => standardUncertainty));
  const n = task.record.force.length;
  const forceNoise = new Float64Array(n);
  const displacementNoise = new Float64Array(n);
  const run = (first: number, count: number): TrialSet =>
    collectTrials(seed, first, count, (trial, keep) => {
      random.at(trial);
      drawInputs(random, inputs, correlations, drawn, normals);
      fillNoise(random, noise, forceNoise, displacementNoise);
      // last, so that what else a trial draws stands on the inputs and the noise alone
      random.normals(ofSlope);
      const slopeFactor = slopeDoubt > 0 ? 1 + slopeDoubt * ofSlope[0]! : undefined;
      for (const { symbol, value } of model({ inputs: drawn, forceNoise, displacementNoise, slopeFactor })) keep(symbol, value);
    });
  /** Lines of the budgets that a trial draws. */
  const lines: ReadonlySet<string> = new Set([...[...inputs, ...ofLine].map(({ name }) => name), NOISE]);
  return { run, result, inputs, lines, firstTrial, trials, seed };
}

/**
 * Trials of a Monte Carlo run over a whole tension test, or a part of them to be put together with others.
 *
 * $$ (F, x)_r = k_F F + z + \varepsilon_F,\; k_x x + \varepsilon_x \;\to\; R_{p,r}, R_{m,r}, E_r, \dots $$
 *
 * @remarks
 * What trial r draws depends on the seed and on r alone: workers that share the trials give the same values as one, to the last bit. Hand
 * the parts to `mergeTrials`, and the whole to `monteCarloTension` as `part`.
 *
 * @param record - As of `analyseTension`.
 * @param testPiece - As of `analyseTension`.
 * @param options - As of `analyseTension`, with `uncertainty`; seed, first trial and number of trials (default 0 to 1999).
 * @returns Values of every quantity by its symbol, in the order of their trials.
 * @throws {@link InputError} As `analyseTension`; `missing` without `uncertainty`.
 *
 * @example
 * ```ts
 * const stress = Array.from({ length: 21 }, (_, i) => 20 * i);
 * const record = { force: stress.map((R) => 50.26548 * R), extension: stress.map((R) => 40 * (R / 70000 + 0.002 * (R / 350) ** 20)) };
 * const piece = { section: round({ diameter: 8 }), gaugeLength: 40 };
 * const half = (firstTrial: number) => monteCarloTensionTrials(record, piece, { uncertainty: { force: 0.005 }, firstTrial, trials: 10 });
 * mergeTrials([half(0), half(10)]).outputs['Rm']?.values.length; // => 20
 * ```
 *
 * @see JCGM 101:2008, Monte Carlo method. Checked in `test/methods/monteCarloTension.test.ts`, which calls monteCarloTensionTrials.
 */
export function monteCarloTensionTrials(record: TensionColumns, testPiece: TestPiece, options: TensionTrialOptions): TrialSet {
  const { run, firstTrial, trials } = tensionTrials('monteCarloTensionTrials', record, testPiece, options, [
    'seed',
    'firstTrial',
    'trials',
  ]);
  return run(firstTrial, trials);
}
