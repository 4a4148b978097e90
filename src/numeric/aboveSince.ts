import type { BlockExtremes } from './blockExtremes.js';

/** @internal First sample from which on a column lies above a level up to `end`; `end` where the sample before it does not. */
export function aboveSince(column: Float64Array, level: number, end: number, { size, lowest }: BlockExtremes): number {
  let i = end;
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
