/** @internal Means of x and y over cells of equal numbers of samples. */
export interface CellMeans {
  readonly x: Float64Array;
  readonly y: Float64Array;
  /** Samples in a cell; 1 where there were few enough to stay as they are. */
  readonly size: number;
}

/** @internal Samples first to last (included) condensed to about so many means, which describe a smooth curve as well at a fraction of the work. Where there are few samples they are viewed, not copied. */
export function cellMeans(x: Float64Array, y: Float64Array, first: number, last: number, wanted: number): CellMeans {
  const size = Math.max(1, Math.floor((last - first + 1) / wanted));
  if (size === 1) return { x: x.subarray(first, last + 1), y: y.subarray(first, last + 1), size };
  const cells = Math.floor((last - first + 1) / size);
  const means = { x: new Float64Array(cells), y: new Float64Array(cells), size };
  for (let k = 0, i = first; k < cells; k += 1) {
    let sumX = 0;
    let sumY = 0;
    for (const stop = i + size; i < stop; i += 1) {
      sumX += x[i]!;
      sumY += y[i]!;
    }
    means.x[k] = sumX / size;
    means.y[k] = sumY / size;
  }
  return means;
}
