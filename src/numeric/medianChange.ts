import { medianOf } from './median.js';

/** @internal Median of the absolute changes from the sample before, at every so many samples of a range (from 1 on); 0 of none. */
export function medianChange(column: Float64Array, first: number, end: number, stride: number): number {
  // of its full length at once: a list that grows costs more than the median
  const changes = new Array<number>(Math.max(0, Math.ceil((end - first) / stride)));
  for (let k = 0, i = first; k < changes.length; k += 1, i += stride) changes[k] = Math.abs(column[i]! - column[i - 1]!);
  return medianOf(changes);
}
