import type { BlockExtremes } from './blockExtremes.js';

/** First sample in a range that is below a level, of samples alone, four at a time. */
function belowOfSamples(column: Float64Array, level: number, first: number, end: number): number {
  let i = first;
  while (i + 3 < end && column[i]! >= level && column[i + 1]! >= level && column[i + 2]! >= level && column[i + 3]! >= level) i += 4;
  while (i < end && column[i]! >= level) i += 1;
  return i;
}

/** @internal First sample in a range that is below a level; `end` where none is. Known blocks of the column are passed over. */
export function firstBelow(column: Float64Array, level: number, first: number, end: number, blocks?: BlockExtremes): number {
  if (!blocks) return belowOfSamples(column, level, first, end);
  const { size, lowest } = blocks;
  for (let i = first, next: number; i < end; i = next) {
    const block = Math.floor(i / size);
    next = Math.min((block + 1) * size, end);
    if (lowest[block]! >= level) continue;
    const found = belowOfSamples(column, level, i, next);
    if (found < next) return found;
  }
  return end;
}
