/** @internal At x the straight line through the two points around it, and beyond the ends through the outermost two; at least two points, x ascending. */
export function betweenPoints(xs: Float64Array, ys: Float64Array, x: number): number {
  let low = 0;
  let high = xs.length - 1;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (xs[middle]! <= x) low = middle;
    else high = middle;
  }
  return ys[low]! + ((x - xs[low]!) / (xs[high]! - xs[low]!)) * (ys[high]! - ys[low]!);
}
