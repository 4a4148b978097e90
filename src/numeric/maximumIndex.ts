/** @internal Sample of the highest value in a range, the first of equals. */
export function maximumIndex(column: Float64Array, first = 0, end = column.length): number {
  let best = first;
  let highest = column[first]!;
  for (let i = first + 1; i < end; i += 1)
    if (column[i]! > highest) {
      highest = column[i]!;
      best = i;
    }
  return best;
}
