/** @internal Means of x and y over cells of equal numbers of samples. */
export interface CellMeans {
  readonly x: Float64Array;
  readonly y: Float64Array;
  /** Samples in a cell; 1 where there were few enough to stay as they are. */
  readonly size: number;
}

/** @internal Means of a column over cells of so many samples; a rest at its end that fills no cell is left out. Single samples are viewed, not copied. */
export function meansOf(column: Float64Array, size: number): Float64Array {
  if (size === 1) return column;
  const means = new Float64Array(Math.floor(column.length / size));
  for (let k = 0, i = 0; k < means.length; k += 1) {
    let sum = 0;
    for (const stop = i + size; i < stop; i += 1) sum += column[i]!;
    means[k] = sum / size;
  }
  return means;
}

/** @internal Samples first to last (included) condensed to about so many means, which describe a smooth curve as well at a fraction of the work. */
export function cellMeans(x: Float64Array, y: Float64Array, first: number, last: number, wanted: number): CellMeans {
  const size = Math.max(1, Math.floor((last - first + 1) / wanted));
  const means = (column: Float64Array): Float64Array => meansOf(column.subarray(first, last + 1), size);
  return { x: means(x), y: means(y), size };
}
