import type { TensionNumbers } from '../loading/TensionNumbers.js';
import type { LoadingPart } from './loadingPart.js';

/** @internal By what the upper yield strength may have been above its highest sample: the force went on unseen between two samples. */
export interface MissedPeak {
  /** Stress rate over the elastic window [MPa/s]. */
  readonly rate: number;
  /** Longest time between two samples from the elastic line to the one after the peak [s]. */
  readonly longest: number;
  /** The most that the peak may have been higher [MPa]. */
  readonly loss: number;
}

/** A fall is followed by the samples where the time between two takes no more of it than this share; and how many samples tell how fast it goes. */
const FOLLOWED = 1 / 3;
const FEW = 3;

/** The steepest of the first falls after a sample [MPa/s]. */
function fallingRate(stress: Float64Array, time: Float64Array, peak: number): number {
  let steepest = 0;
  for (let i = peak; i < Math.min(peak + FEW, stress.length - 1); i += 1) {
    const step = time[i + 1]! - time[i]!;
    if (step > 0) steepest = Math.max(steepest, (stress[i]! - stress[i + 1]!) / step);
  }
  return steepest;
}

/** @internal By what ReH may be too low, by the time of the loading and the stress rate over the elastic window; undefined without a yield point, or without time. */
export function missedPeak(
  time: Float64Array | undefined,
  rate: number | undefined,
  { input, numbers: { line, yielding } }: LoadingPart & { readonly numbers: Pick<TensionNumbers, 'line' | 'yielding'> },
): MissedPeak | undefined {
  if (!line.ok || yielding?.ok !== true || !time || rate === undefined || !(rate > 0)) return undefined;
  const { stress } = input.curve;
  const { upper, lower } = yielding;
  let longest = (time[line.last]! - time[line.first]!) / (line.last - line.first);
  const end = Math.min(upper.index + 1, time.length - 1);
  for (let i = line.last + 1; i <= end; i += 1) longest = Math.max(longest, time[i]! - time[i - 1]!);
  // on either side of a peak the higher sample is no further below it than the stress rises, or falls, from one to the next; a fall that is over at once tells nothing
  const fall = longest * fallingRate(stress, time, upper.index);
  const followed = fall <= FOLLOWED * (stress[upper.index]! - stress[lower.index]!);
  return { rate, longest, loss: followed ? Math.min(rate * longest, fall) : rate * longest };
}
