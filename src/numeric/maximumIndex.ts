/** @internal Sample of the highest value in a range, the first of equals. */
export function maximumIndex(column: Float64Array, first = 0, end = column.length): number {
  let best = first;
  let highest = column[first]!;
  let i = first + 1;
  while (i < end) {
    // four at a time as long as none is higher
    while (i + 3 < end && !(column[i]! > highest || column[i + 1]! > highest || column[i + 2]! > highest || column[i + 3]! > highest))
      i += 4;
    for (const stop = Math.min(i + 4, end); i < stop; i += 1)
      if (column[i]! > highest) {
        highest = column[i]!;
        best = i;
      }
  }
  return best;
}
