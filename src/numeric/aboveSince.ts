import type { BlockExtremes } from './blockExtremes.js';

/** @internal First sample from which on a column lies above a level up to `end`; `end` where the sample before it does not. Known blocks of the column are passed over. */
export function aboveSince(column: Float64Array, level: number, end: number, blocks?: BlockExtremes): number {
  let i = end;
  if (!blocks) {
    while (i > 0 && column[i - 1]! > level) i -= 1;
    return i;
  }
  const { size, lowest } = blocks;
  while (i > 0) {
    const begin = size * Math.floor((i - 1) / size);
    if (lowest[begin / size]! > level) i = begin;
    else {
      while (i > begin && column[i - 1]! > level) i -= 1;
      if (i > begin) return i;
    }
  }
  return 0;
}
