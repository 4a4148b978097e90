/** @internal First sample from which on a column is at or above a level up to `end`, four at a time; `end` where the sample before it is not. */
export function reachedSince(column: Float64Array, level: number, end: number): number {
  let i = end;
  while (i > 3 && column[i - 1]! >= level && column[i - 2]! >= level && column[i - 3]! >= level && column[i - 4]! >= level) i -= 4;
  while (i > 0 && column[i - 1]! >= level) i -= 1;
  return i;
}
