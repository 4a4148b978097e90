import { reachedSince } from '../../numeric/index.js';

/** @internal First and last sample whose value lies between two limits on the way up to the maximum; the first is not before the last where there are no two. */
export function between(column: Float64Array, from: number, to: number, maximum: number): readonly [number, number] {
  let last = 0;
  while (last + 3 <= maximum && column[last]! <= to && column[last + 1]! <= to && column[last + 2]! <= to && column[last + 3]! <= to)
    last += 4;
  while (last <= maximum && column[last]! <= to) last += 1;
  last -= 1;
  return [reachedSince(column, from, last), last];
}
