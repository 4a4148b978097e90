import { normalQuantile } from '../../numeric/index.js';
import type { TensionTask } from './tensionModel.js';
import type { KnownNoise } from './tensionNoise.js';

/** Means over so many samples, and no more than this share of the range, tell the level that noise leaves. */
const SAMPLES = 15;
const SHARE = 1 / 3;

/** Lowest mean of so many neighbours from one sample to another (included). */
function lowestMean(values: Float64Array, first: number, last: number, count: number): number {
  let sum = 0;
  for (let i = first; i < first + count; i += 1) sum += values[i]!;
  let lowest = sum;
  for (let i = first + count; i <= last; i += 1) {
    sum += values[i]! - values[i - count]!;
    lowest = Math.min(lowest, sum);
  }
  return lowest / count;
}

/**
 * @internal By how much noise may have pulled ReL below the curve [MPa]: as far as the means of neighbours stay above it, and no further than the lowest of so many
 * normal samples lies below the middle. So a serration deeper than noise is not taken for it. Undefined without yielding.
 */
export function shiftOfLowest(
  { recorded: { stress }, lengths, numbers: { yielding } }: TensionTask,
  noise: KnownNoise,
): number | undefined {
  if (yielding?.ok !== true) return undefined;
  const { upper, lower, hardeningStart } = yielding;
  const last = Math.min(hardeningStart ?? Infinity, stress.length - 1);
  const samples = last - upper.index + 1;
  const count = Math.min(SAMPLES, Math.floor(SHARE * samples));
  if (count < 2) return undefined;
  const above = lowestMean(stress, upper.index, last, count) - lower.stress;
  // the middle of the lowest of n: half of the n-th root of one half lies below it
  const reach = normalQuantile(1 - 0.5 ** (1 / samples));
  return Math.max(0, Math.min(above, (-reach * noise.force) / lengths.area));
}
