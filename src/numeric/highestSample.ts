import type { BlockExtremes } from './blockExtremes.js';
import { maximumIndex } from './maximumIndex.js';

/** @internal Sample of the highest value of a column without NaN, or of a range of it, the first of equals. */
export function highestSample(column: Float64Array, { size, highest }: BlockExtremes, first = 0, end = column.length): number {
  // blocks that lie within the range, and what is left of it on either side
  const [begin, stop] = [Math.ceil(first / size), end === column.length ? highest.length : Math.floor(end / size)];
  if (begin >= stop) return maximumIndex(column, first, end);
  const block = size * maximumIndex(highest, begin, stop);
  const inside = maximumIndex(column, block, Math.min(block + size, end));
  const before = first < begin * size ? maximumIndex(column, first, begin * size) : inside;
  const best = column[before]! >= column[inside]! ? before : inside;
  const after = stop * size < end ? maximumIndex(column, stop * size, end) : best;
  return column[after]! > column[best]! ? after : best;
}
