/** @internal The steepest least-squares line over windows of a given width of x between two samples (end excluded), with √Σ(x − x̄)²; undefined where there is none. */
export function steepestLine(
  x: Float64Array,
  y: Float64Array,
  first: number,
  end: number,
  width: number,
): { readonly slope: number; readonly meanX: number; readonly meanY: number; readonly spread: number } | undefined {
  let best: { slope: number; meanX: number; meanY: number; spread: number } | undefined;
  if (end - first < 2) return undefined;
  const x0 = x[first]!;
  const y0 = y[first]!;
  let n = 0;
  let sx = 0;
  let sy = 0;
  let sxx = 0;
  let sxy = 0;
  // sums in variables of the loop: sums in a closure would allocate a number for every sample
  for (let i = first, j = first; i < end; i += 1) {
    for (; j < end && (x[j]! - x[i]! <= width || n < 2); j += 1) {
      const u = x[j]! - x0;
      const v = y[j]! - y0;
      n += 1;
      sx += u;
      sy += v;
      sxx += u * u;
      sxy += u * v;
    }
    const xx = sxx - (sx * sx) / n;
    const slope = (sxy - (sx * sy) / n) / xx;
    if (xx > 0 && n >= 2 && (!best || slope > best.slope)) best = { slope, meanX: x0 + sx / n, meanY: y0 + sy / n, spread: Math.sqrt(xx) };
    if (j === end) break;
    const u = x[i]! - x0;
    const v = y[i]! - y0;
    n -= 1;
    sx -= u;
    sy -= v;
    sxx -= u * u;
    sxy -= u * v;
  }
  return best;
}
