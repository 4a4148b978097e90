/** @internal First sample in a range that is at or above a level, four at a time; `end` where none is. */
export function firstReaching(column: Float64Array, level: number, first: number, end: number): number {
  let i = first;
  while (i + 3 < end && column[i]! < level && column[i + 1]! < level && column[i + 2]! < level && column[i + 3]! < level) i += 4;
  while (i < end && column[i]! < level) i += 1;
  return i;
}
