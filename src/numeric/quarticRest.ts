import type { CubicFit } from './cubicFit.js';

/** Of the fourth power a cubic leaves more than this share, unless x takes fewer than five values. */
const SINGULAR = 1e-13;

/**
 * @internal Sum of squares about the least-squares quartic of points whose cubic is known; undefined where x takes fewer than five values. What the
 * cubic leaves of the points is held against what it leaves of the fourth power, so that few digits are lost.
 */
export function quarticRest(x: Float64Array, y: Float64Array, { centre, scale, coefficients, inverse }: CubicFit): number | undefined {
  const per = 1 / scale;
  const [a = 0, b = 0, c = 0, d = 0] = coefficients;
  let [s4, s5, s6, s7, s8, rest, explained] = [0, 0, 0, 0, 0, 0, 0];
  for (let i = 0; i < x.length; i += 1) {
    const u = (x[i]! - centre) * per;
    const uu = u * u;
    const power = uu * uu;
    const e = y[i]! - a - u * (b + u * (c + u * d));
    s4 += power;
    s5 += power * u;
    s6 += power * uu;
    s7 += power * uu * u;
    s8 += power * power;
    rest += e * e;
    explained += e * power;
  }
  const sums = [s4, s5, s6, s7];
  let left = s8;
  for (let j = 0; j < 4; j += 1) for (let k = 0; k < 4; k += 1) left -= sums[j]! * inverse[4 * j + k]! * sums[k]!;
  return left > SINGULAR * s8 ? Math.max(0, rest - (explained * explained) / left) : undefined;
}
