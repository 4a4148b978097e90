/** Terms below this share of the sum are left out. */
const NEGLIGIBLE = 1e-18;

/** Sum of the values at whole steps from the peak outwards, one way. */
function outwards(f: (x: number) => number, peak: number, step: number, sum: number): number {
  let total = sum;
  for (let k = 1; ; k += 1) {
    const value = f(peak + k * step);
    total += value;
    if (!(value > NEGLIGIBLE * total)) return total;
  }
}

/**
 * @internal Integral over the whole axis of a smooth function of 0 or more with a single peak: the trapezoidal rule outwards from the
 * peak. It gains twice the digits with every halving of the step (Trefethen and Weideman, 2014), so after a change below 1e-11 the error is negligible.
 */
export function trapezoid(f: (x: number) => number, peak: number, step: number): number {
  let last = Infinity;
  for (let h = step, k = 0; ; h /= 2, k += 1) {
    const integral = h * outwards(f, peak, -h, outwards(f, peak, h, f(peak)));
    if (k === 12 || Math.abs(integral - last) <= 1e-11 * integral) return integral;
    last = integral;
  }
}
