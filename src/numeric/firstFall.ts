import type { BlockExtremes } from './blockExtremes.js';

/** @internal First sample in a range that lies below the highest of those before it by more than so much; `end` where none does. */
export function firstFall(
  column: Float64Array,
  least: number,
  first: number,
  end: number,
  { size, lowest, highest, fall }: BlockExtremes,
): number {
  let top = column[first]!;
  for (let i = first, next: number; i < end; i = next) {
    const block = Math.floor(i / size);
    next = Math.min((block + 1) * size, end);
    // in a block that is begun within, the highest may lie before
    const whole = i === block * size;
    if (whole && Math.max(top - lowest[block]!, fall[block]!) <= least) {
      top = Math.max(top, highest[block]!);
      continue;
    }
    for (; i < next; i += 1) {
      const value = column[i]!;
      if (value > top) top = value;
      else if (top - value > least) return i;
    }
  }
  return end;
}
