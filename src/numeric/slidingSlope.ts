/** Least number of samples after which the sums start anew, about a value nearby: without it rounding grows with the cube of the number of samples. */
const RESTART = 128;

/**
 * @internal Slope by the sample number, and value, at the middle of a least-squares parabola (or line, whose middle slope is the same) over
 * 2 · half + 1 samples, for every sample that has half of them on either side; NaN elsewhere. The value is that of a parabola.
 */
export function slidingSlope(y: Float64Array, half: number): { readonly value: Float64Array; readonly slope: Float64Array } {
  const n = y.length;
  const m = 2 * half + 1;
  const value = new Float64Array(n).fill(NaN);
  const slope = new Float64Array(n).fill(NaN);
  // sums over k = −half … half of k² and k⁴
  let a2 = 0;
  let a4 = 0;
  for (let k = 1; k <= half; k += 1) {
    a2 += 2 * k * k;
    a4 += 2 * k ** 4;
  }
  const determinant = m * a4 - a2 * a2;
  const perSlope = 1 / a2;
  const perValue = determinant > 0 ? 1 / determinant : 0;
  // a wide window costs more to sum anew, and its sums lose digits more slowly
  const restart = Math.max(RESTART, 2 * m);
  for (let start = half; start + half < n; start += restart) {
    const base = y[start]!;
    let s0 = 0;
    let s1 = 0;
    let s2 = 0;
    for (let k = -half; k <= half; k += 1) {
      const v = y[start + k]! - base;
      s0 += v;
      s1 += k * v;
      s2 += k * k * v;
    }
    for (let i = start; ;) {
      slope[i] = s1 * perSlope;
      value[i] = base + (perValue > 0 ? (a4 * s0 - a2 * s2) * perValue : s0 / m);
      i += 1;
      if (i === start + restart || i + half >= n) break;
      // the window moves on by one: every k falls by one
      const out = y[i - 1 - half]! - base;
      const next = y[i + half]! - base;
      s2 += s0 - 2 * s1 - (half + 1) ** 2 * out + half * half * next;
      s1 += -s0 + (half + 1) * out + half * next;
      s0 += next - out;
    }
  }
  return { value, slope };
}
