/**
 * @internal Where a continuous function changes its sign between two places, to the last bits: Chandrupatla's method (1997), bisection
 * where it must, inverse quadratic interpolation where it may.
 */
export function findRoot(f: (x: number) => number, from: number, to: number): number {
  let [a, b] = [from, to];
  let [fa, fb] = [f(a), f(b)];
  if (fa === 0) return a;
  let c: number;
  let fc: number;
  let share = 0.5;
  for (let i = 0; i < 200 && fb !== 0; i += 1) {
    const x = a + share * (b - a);
    const fx = f(x);
    [c, fc] = [a, fa];
    if (fx > 0 === fa > 0) [a, fa] = [x, fx];
    else [c, fc, b, fb, a, fa] = [b, fb, a, fa, x, fx];
    const best = Math.abs(fa) < Math.abs(fb) ? a : b;
    const least = (2 * Number.EPSILON * Math.abs(best) + 1e-300) / Math.abs(b - a);
    if (least > 0.5 || fa === 0) return best;
    const xi = (a - b) / (c - b);
    const phi = (fa - fb) / (fc - fb);
    const mayInterpolate = phi ** 2 < xi && (1 - phi) ** 2 < 1 - xi;
    share = mayInterpolate ? (fa / (fb - fa)) * (fc / (fb - fc)) + ((c - a) / (b - a)) * (fa / (fc - fa)) * (fb / (fc - fb)) : 0.5;
    share = Math.min(1 - least, Math.max(least, share));
  }
  return b;
}

/** @internal The root of a rising function near a place: steps away from there double until the sign changes. */
export function risingRoot(f: (x: number) => number, near: number, step: number): number {
  let [low, high] = [near, near];
  for (let size = step; f(low) > 0 && size < 1e300; size *= 2) [low, high] = [low - size, low];
  for (let size = step; f(high) < 0 && size < 1e300; size *= 2) [low, high] = [high, high + size];
  return low === high ? low : findRoot(f, low, high);
}
