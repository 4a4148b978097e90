/** @internal Least and greatest value of a range of a column without NaN. */
export function extent(column: Float64Array, first = 0, end = column.length): readonly [low: number, high: number] {
  let low = Infinity;
  let high = -Infinity;
  for (let i = first; i < end; i += 1) {
    if (column[i]! < low) low = column[i]!;
    if (column[i]! > high) high = column[i]!;
  }
  return [low, high];
}
