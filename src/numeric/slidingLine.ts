/** Samples after which the running sums start anew about a place nearby, so that rounding cannot pile up. */
const RESTART = 512;

/**
 * @internal Slopes of least-squares lines through the 2 · half + 1 samples about i, for i rising by one from call to call (the first
 * call may begin anywhere inside); NaN where x does not vary.
 */
export function slidingLine(x: Float64Array, y: Float64Array, half: number): (i: number) => number {
  const n = 2 * half + 1;
  const sums = new Float64Array(4);
  let x0 = 0;
  let y0 = 0;
  let next = -1;
  let until = -1;
  const put = (j: number, sign: number): void => {
    const u = x[j]! - x0;
    const v = y[j]! - y0;
    sums[0]! += sign * u;
    sums[1]! += sign * v;
    sums[2]! += sign * u * u;
    sums[3]! += sign * u * v;
  };
  return (i) => {
    if (i !== next || i >= until) {
      x0 = x[i]!;
      y0 = y[i]!;
      until = i + RESTART;
      sums.fill(0);
      for (let j = i - half; j <= i + half; j += 1) put(j, 1);
    } else {
      put(i + half, 1);
      put(i - half - 1, -1);
    }
    next = i + 1;
    const xx = sums[2]! - (sums[0]! * sums[0]!) / n;
    return xx > 0 ? (sums[3]! - (sums[0]! * sums[1]!) / n) / xx : NaN;
  };
}
