/** @internal A straight line through samples first to last. */
export interface LineFit {
  readonly slope: number;
  readonly intercept: number;
  readonly standardError: number;
  readonly rSquared: number;
  readonly residualStandardDeviation: number;
  readonly points: number;
}

/** What the line taken off may have left of the residuals, as a multiple of their sum of squares, before digits are lost. */
const STEEP = 1e4;

/**
 * @internal Least-squares line through samples first to last (included), or undefined where x does not vary.
 *
 * One walk, about the middle sample and with a line of a near slope taken off, so that neither a large offset nor small residuals cost
 * digits; where that slope was not near, a second walk with the one found. Without one given it is that between the end samples.
 */
export function lineFit(x: Float64Array, y: Float64Array, first: number, last: number, near?: number): LineFit | undefined {
  const points = last - first + 1;
  const x0 = x[first + (points >> 1)]!;
  const y0 = y[first + (points >> 1)]!;
  const chord = (y[last]! - y[first]!) / (x[last]! - x[first]!);
  let base = near ?? (Number.isFinite(chord) ? chord : 0);
  for (let again = true; ; again = false) {
    let sx = 0;
    let sr = 0;
    let sxx = 0;
    let sxr = 0;
    let srr = 0;
    for (let i = first; i <= last; i += 1) {
      const u = x[i]! - x0;
      const r = y[i]! - y0 - base * u;
      sx += u;
      sr += r;
      sxx += u * u;
      sxr += u * r;
      srr += r * r;
    }
    const xx = sxx - (sx * sx) / points;
    if (points < 2 || !(xx > 0)) return undefined;
    const xr = sxr - (sx * sr) / points;
    const rr = srr - (sr * sr) / points;
    const d = xr / xx;
    const slope = base + d;
    const rest = Math.max(0, rr - d * xr);
    if (again && d * xr > STEEP * rest) {
      base = slope;
      continue;
    }
    const yy = rr + base * (2 * xr + base * xx);
    const variance = points > 2 ? rest / (points - 2) : 0;
    return {
      slope,
      intercept: y0 + (sr - d * sx) / points - slope * x0,
      standardError: Math.sqrt(variance / xx),
      rSquared: yy > 0 ? 1 - rest / yy : 1,
      residualStandardDeviation: Math.sqrt(variance),
      points,
    };
  }
}
