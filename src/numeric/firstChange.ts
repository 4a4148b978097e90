import type { BlockExtremes } from './blockExtremes.js';

/** First sample in a range (from 1 on) that differs from the one before by more than so much, four at a time; `end` where none does. */
function firstOfSamples(column: Float64Array, least: number, first: number, end: number): number {
  let i = first;
  let before = column[first - 1]!;
  for (; i + 3 < end; i += 4) {
    const a = column[i]!;
    const b = column[i + 1]!;
    const c = column[i + 2]!;
    const d = column[i + 3]!;
    if (Math.abs(a - before) > least || Math.abs(b - a) > least || Math.abs(c - b) > least || Math.abs(d - c) > least) break;
    before = d;
  }
  while (i < end && !(Math.abs(column[i]! - column[i - 1]!) > least)) i += 1;
  return i;
}

/** @internal First sample in a range (from 1 on) that differs from the one before by more than so much; `end` where none does. Known blocks of the column are passed over. */
export function firstChange(column: Float64Array, least: number, first: number, end: number, blocks?: BlockExtremes): number {
  if (!blocks) return firstOfSamples(column, least, first, end);
  const { size, lowest, highest } = blocks;
  for (let i = first, next: number; i < end; i = next) {
    const block = Math.floor(i / size);
    next = Math.min((block + 1) * size, end);
    const before = column[i - 1]!;
    if (Math.max(before, highest[block]!) - Math.min(before, lowest[block]!) <= least) continue;
    const found = firstOfSamples(column, least, i, next);
    if (found < next) return found;
  }
  return end;
}
