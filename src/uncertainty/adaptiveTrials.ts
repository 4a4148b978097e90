import { mean, normalQuantile, sampleDeviation } from '../numeric/index.js';
import { intervalsOf } from './trialDistribution.js';
import { mergeTrials } from './mergeTrials.js';
import { numericalTolerance } from './numericalTolerance.js';
import type { StopSignal, TrialSet } from './TrialSet.js';

/** @internal When to stop. */
export interface AdaptiveTask {
  readonly run: (firstTrial: number, trials: number) => TrialSet;
  readonly coverage: number;
  /** Digits of the standard uncertainty that must be stable; undefined: all trials are run. */
  readonly digits: number | undefined;
  readonly most: number;
  /** False where the trials have no variance: then the interval alone must be stable. */
  readonly hasVariance: boolean;
  readonly progress: ((done: number, most: number) => void) | undefined;
  readonly signal: StopSignal | undefined;
}

/** @internal All trials of a run, and where it stood when it ended. */
export interface RunEnd {
  readonly whole: TrialSet;
  readonly converged: boolean;
  /** δ of all trials so far, where digits were asked for. */
  readonly tolerance: number;
}

/** Least trials in a block (JCGM 101, 7.9.4). */
const BLOCK = 10_000;
/** Trials that should lie outside an interval for its ends to be known (JCGM 101, 7.9.4). */
const OUTSIDE = 100;

/** @internal Least number of trials for an interval; a rounding error does not raise it by one. */
export const leastTrials = (coverage: number): number => Math.ceil((OUTSIDE / (1 - coverage)) * (1 - 1e-12));

/** Mean, standard deviation and ends of the interval of one block. */
function figures(values: Float64Array, coverage: number): readonly number[] {
  if (values.length < 2) return [0, 0, 0, 0];
  return [mean(values), sampleDeviation(values), ...intervalsOf(values.slice().sort(), coverage).interval];
}

/**
 * @internal Blocks of trials until mean, standard uncertainty and both ends of the interval are stable: twice the standard deviation of each
 * average over the blocks is at most δ (JCGM 101, 7.9); without a variance, the ends alone, within δ of the interval. Rests after each block, for others to have their turn.
 */
export function* adaptiveTrials({
  run,
  coverage,
  digits,
  most,
  hasVariance,
  progress,
  signal,
}: AdaptiveTask): Generator<undefined, RunEnd, undefined> {
  const block = Math.max(BLOCK, leastTrials(coverage));
  const parts: TrialSet[] = [];
  const blocks: (readonly number[])[] = [];
  const judged = hasVariance ? [0, 1, 2, 3] : [2, 3];
  let done = 0;
  let tolerance = 0;
  let converged = false;
  while (done < most && !converged) {
    const part = run(done, Math.min(block, most - done));
    parts.push(part);
    done += part.trials;
    if (digits !== undefined) {
      blocks.push(figures(part.outputs['value']!.values, coverage));
      const h = blocks.length;
      const ofBlocks = (k: number): Float64Array => Float64Array.from(blocks, (one) => one[k]!);
      const average = (k: number): number => mean(ofBlocks(k));
      // half the interval of a normal distribution is so many standard uncertainties
      const size = hasVariance ? average(1) : (average(3) - average(2)) / 2 / normalQuantile((1 + coverage) / 2);
      tolerance = numericalTolerance(size, digits);
      converged = h > 1 && judged.every((k) => (2 * sampleDeviation(ofBlocks(k))) / Math.sqrt(h) <= tolerance);
    }
    progress?.(done, most);
    yield;
    if (signal?.aborted === true) break;
  }
  return { whole: mergeTrials(parts), converged, tolerance };
}
