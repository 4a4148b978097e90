/** @internal A parabola through samples, about the point `at`: value + slope·u + bend·u², u = x − at. */
export interface LocalParabola {
  readonly value: number;
  readonly slope: number;
  readonly bend: number;
  readonly residualStandardDeviation: number;
}

/** @internal Least-squares parabola through samples first to last (included, at least 4), or undefined where x takes fewer than 3 values. */
export function localParabola(x: Float64Array, y: Float64Array, first: number, last: number, at: number): LocalParabola | undefined {
  const n = last - first + 1;
  if (n < 4) return undefined;
  const scale = Math.max(Math.abs(x[last]! - at), Math.abs(x[first]! - at));
  if (!(scale > 0)) return undefined;
  let s1 = 0,
    s2 = 0,
    s3 = 0,
    s4 = 0,
    t0 = 0,
    t1 = 0,
    t2 = 0;
  const y0 = y[first]!;
  for (let i = first; i <= last; i += 1) {
    const u = (x[i]! - at) / scale;
    const v = y[i]! - y0;
    const uu = u * u;
    s1 += u;
    s2 += uu;
    s3 += uu * u;
    s4 += uu * uu;
    t0 += v;
    t1 += u * v;
    t2 += uu * v;
  }
  // normal equations of three unknowns by Cramer's rule; u is within ±1, so they are well scaled
  const a = s2 * s4 - s3 * s3;
  const b = s2 * s3 - s1 * s4;
  const c = s1 * s3 - s2 * s2;
  const determinant = n * a + s1 * b + s2 * c;
  if (!(Math.abs(determinant) > 1e-12 * n * n * n)) return undefined;
  const value = (a * t0 + b * t1 + c * t2) / determinant;
  const slope = (b * t0 + (n * s4 - s2 * s2) * t1 + (s1 * s2 - n * s3) * t2) / determinant;
  const bend = (c * t0 + (s1 * s2 - n * s3) * t1 + (n * s2 - s1 * s1) * t2) / determinant;
  let rest = 0;
  for (let i = first; i <= last; i += 1) {
    const u = (x[i]! - at) / scale;
    const e = y[i]! - y0 - value - slope * u - bend * u * u;
    rest += e * e;
  }
  return {
    value: y0 + value,
    slope: slope / scale,
    bend: bend / scale ** 2,
    residualStandardDeviation: n > 3 ? Math.sqrt(rest / (n - 3)) : 0,
  };
}
