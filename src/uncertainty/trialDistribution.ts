import {
  failure,
  requireBetween,
  requireColumn,
  requireObject,
  requireOptions,
  requireWhole,
  success,
  type Outcome,
} from '../base/index.js';
import { TWO_SIGMA } from './coverageFactor.js';
import type { TrialValues } from './TrialSet.js';

/** The distribution of a result, from trials. */
export interface TrialDistribution {
  /** Mean; absent where an input rests on two readings, whose Student's t has none. */
  readonly mean?: number;
  /** Standard deviation of the trials: the standard uncertainty; absent where an input rests on three readings or fewer, whose Student's t has no variance. */
  readonly standardUncertainty?: number;
  /** Skewness: third central moment over the cube of the standard deviation [1]; 0 where nothing varies; absent likewise. */
  readonly skewness?: number;
  /** Coverage probability of the intervals [1]. */
  readonly coverage: number;
  /** Probabilistically symmetric coverage interval: as much below as above. */
  readonly interval: readonly [number, number];
  /** Shortest coverage interval. */
  readonly shortestInterval: readonly [number, number];
  /** Standard errors of the ends of `interval`, by the number of trials. */
  readonly intervalErrors: readonly [number, number];
  /** Values at probabilities 0, 0.01, ... 1: their differences are the widths of bars of equal area. */
  readonly quantiles: Float64Array;
  /** Trials that gave a value. */
  readonly trials: number;
  /** Trials that gave none. */
  readonly failed: number;
  /** Standard error of the mean, by the number of trials; absent likewise. */
  readonly meanError?: number;
  /** Standard error of the standard uncertainty, by the number of trials; absent likewise. */
  readonly uncertaintyError?: number;
}

/** Options of {@link trialDistribution}. */
export interface DistributionOptions {
  /** Coverage probability, above 0 and below 1; default 0.9545. */
  readonly coverage?: number | undefined;
}

/** @internal Checks a coverage probability. */
export const requireCoverageProbability = (from: string, value: number | undefined): number =>
  requireBetween(from, 'options.coverage', value ?? TWO_SIGMA, 1e-6, 1 - 1e-9);

const PLACES = 100;

/**
 * Standard errors of the ends of the symmetric interval: how many of M trials lie below an end of probability p scatters by √(M p (1 − p)), and
 * the error is how far the values go as so many trials are counted off, to the side where that is farther. Needs no shape.
 */
function endErrors(sorted: Float64Array, coverage: number, ends: readonly [number, number]): [number, number] {
  const n = sorted.length;
  const below = (1 - coverage) / 2;
  const off = Math.sqrt(n * below * (1 - below));
  const at = (place: number): number => sorted[Math.min(n - 1, Math.max(0, Math.round(place)))]!;
  return [below * n, (1 - below) * n].map((place, k) => Math.max(ends[k]! - at(place - off), at(place + off) - ends[k]!)) as [
    number,
    number,
  ];
}

/** @internal Ends of the symmetric and of the shortest interval of sorted values (JCGM 101, 7.7). */
export function intervalsOf(sorted: Float64Array, coverage: number): { interval: [number, number]; shortestInterval: [number, number] } {
  const n = sorted.length;
  const q = Math.min(n - 1, Math.round(coverage * n));
  const low = Math.floor((n - 1 - q) / 2);
  let best = 0;
  for (let r = 1; r + q < n; r += 1) if (sorted[r + q]! - sorted[r]! < sorted[best + q]! - sorted[best]!) best = r;
  return { interval: [sorted[low]!, sorted[low + q]!], shortestInterval: [sorted[best]!, sorted[best + q]!] };
}

/**
 * Mean, standard uncertainty and coverage intervals of the values that trials gave.
 *
 * $$ \tilde y = \frac{1}{M} \sum_r y_r, \qquad u^2(\tilde y) = \frac{1}{M - 1} \sum_r (y_r - \tilde y)^2, \qquad [y_{(r)}, y_{(r+q)}], \quad q = pM $$
 *
 * @remarks
 * The intervals lie between sorted values, so they assume no shape. Of a skewed distribution the shortest interval is the one to state, and says
 * where the values are dense.
 *
 * @param output - `values` and how many trials `failed`, as of `monteCarloTrials`.
 * @param options - Coverage.
 * @returns The distribution, or `too-few-trials` where fewer than 2 gave a value.
 * @throws {@link InputError} `missing`, `wrong-type`, `not-finite`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * const values = Array.from({ length: 1000 }, (_, k) => (k + 0.5) / 1000);
 * required(trialDistribution({ values, failed: 0 }, { coverage: 0.9 })).interval; // => [0.0495, 0.9495]
 * ```
 *
 * @see JCGM 101:2008, coverage interval for the output quantity. Checked in `test/uncertainty/monteCarlo.test.ts`.
 */
export function trialDistribution(
  output: { readonly values: ArrayLike<number>; readonly failed: TrialValues['failed'] },
  options: DistributionOptions = {},
): Outcome<Required<TrialDistribution>, 'too-few-trials'> {
  const from = 'trialDistribution';
  requireObject(from, 'output', output);
  const values = requireColumn(from, 'output.values', output.values, { least: 0 });
  const failed = requireWhole(from, 'output.failed', output.failed, 0, Number.MAX_SAFE_INTEGER);
  requireOptions(from, options, ['coverage']);
  const coverage = requireCoverageProbability(from, options.coverage);
  const n = values.length;
  if (n < 2) return failure('too-few-trials', `${n} of ${n + failed} trials gave a value`);
  const sorted = values.slice().sort();
  // about the median, and in the order of the trials, so that who ran them changes no bit
  const middle = sorted[n >> 1]!;
  let sum = 0;
  for (let k = 0; k < n; k += 1) sum += values[k]! - middle;
  const mean = middle + sum / n;
  let [m2, m3, m4] = [0, 0, 0];
  for (let k = 0; k < n; k += 1) {
    const d = values[k]! - mean;
    m2 += d * d;
    m3 += d * d * d;
    m4 += d * d * d * d;
  }
  const standardUncertainty = Math.sqrt(m2 / (n - 1));
  const quantiles = Float64Array.from({ length: PLACES + 1 }, (_, k) => {
    const at = (k / PLACES) * (n - 1);
    const below = Math.floor(at);
    return sorted[below]! + (at - below) * (sorted[Math.min(n - 1, below + 1)]! - sorted[below]!);
  });
  const intervals = intervalsOf(sorted, coverage);
  return success({
    mean,
    standardUncertainty,
    skewness: m2 > 0 ? m3 / n / (m2 / n) ** 1.5 : 0,
    coverage,
    ...intervals,
    intervalErrors: endErrors(sorted, coverage, intervals.interval),
    quantiles,
    trials: n,
    failed,
    meanError: standardUncertainty / Math.sqrt(n),
    uncertaintyError: m2 > 0 ? (standardUncertainty / 2) * Math.sqrt(Math.max(0, (n * m4) / m2 ** 2 - 1) / n) : 0,
  });
}
