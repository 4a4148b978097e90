/** @internal A straight line through samples first to last. */
export interface LineFit {
  readonly slope: number;
  readonly intercept: number;
  readonly standardError: number;
  readonly rSquared: number;
  readonly residualStandardDeviation: number;
  readonly points: number;
}

/**
 * @internal Least-squares line through samples first to last (included), or undefined where x does not vary.
 *
 * Two passes about the means, so that a large offset of x or y costs no digits; the residuals are summed about the line itself.
 */
export function lineFit(x: Float64Array, y: Float64Array, first: number, last: number): LineFit | undefined {
  const points = last - first + 1;
  const x0 = x[first]!;
  const y0 = y[first]!;
  let sumX = 0;
  let sumY = 0;
  for (let i = first; i <= last; i += 1) {
    sumX += x[i]! - x0;
    sumY += y[i]! - y0;
  }
  const meanX = x0 + sumX / points;
  const meanY = y0 + sumY / points;
  let xx = 0;
  let xy = 0;
  let yy = 0;
  for (let i = first; i <= last; i += 1) {
    const u = x[i]! - meanX;
    const v = y[i]! - meanY;
    xx += u * u;
    xy += u * v;
    yy += v * v;
  }
  if (points < 2 || !(xx > 0)) return undefined;
  const slope = xy / xx;
  let rest = 0;
  for (let i = first; i <= last; i += 1) {
    const e = y[i]! - meanY - slope * (x[i]! - meanX);
    rest += e * e;
  }
  const variance = points > 2 ? rest / (points - 2) : 0;
  return {
    slope,
    intercept: meanY - slope * meanX,
    standardError: Math.sqrt(variance / xx),
    rSquared: yy > 0 ? 1 - rest / yy : 1,
    residualStandardDeviation: Math.sqrt(variance),
    points,
  };
}
