import type { StressStrainCurve } from '../../base/index.js';

/** What the residuals of a line tell beside their size. */
export interface LineResiduals {
  /** Runs of residuals of one sign. */
  readonly runs: number;
  /** Runs to be expected of as many residuals of either sign in random order. */
  readonly expectedRuns: number;
  /** Runs less those expected, in standard deviations: far below 0, neighbours are alike and the standard error is too small. */
  readonly runsDeviation: number;
  /** Change of slope from the first to the last sample, as a share of the slope, by a parabola through the same samples. */
  readonly slopeChange: number;
  /** Standard error of that change. */
  readonly slopeChangeError: number;
}

/** @internal A line through samples first to last. */
export interface WindowLine {
  readonly slope: number;
  readonly intercept: number;
  readonly first: number;
  readonly last: number;
}

/**
 * @internal Runs test and quadratic departure of the residuals of a least-squares line; undefined for fewer than five samples and where
 * strain takes fewer than three values.
 *
 * The parabola adds to the line a term in p = u² − bu − c that is orthogonal to it, u being strain about its mean; so its
 * coefficient is the sum of p times the residual over that of p², and the change of slope is twice the coefficient times the width.
 */
export function lineResiduals({ strain, stress }: StressStrainCurve, line: WindowLine): LineResiduals | undefined {
  const { slope, intercept, first, last } = line;
  const n = last - first + 1;
  if (n < 5) return undefined;
  let mean = 0;
  for (let i = first; i <= last; i += 1) mean += strain[i]! - strain[first]!;
  mean = strain[first]! + mean / n;
  let s2 = 0;
  let s3 = 0;
  let s4 = 0;
  let t1 = 0;
  let t2 = 0;
  let squares = 0;
  let above = 0;
  let runs = 0;
  let before: boolean | undefined;
  for (let i = first; i <= last; i += 1) {
    const u = strain[i]! - mean;
    const e = stress[i]! - intercept - slope * strain[i]!;
    const uu = u * u;
    s2 += uu;
    s3 += uu * u;
    s4 += uu * uu;
    t1 += u * e;
    t2 += uu * e;
    squares += e * e;
    const up = e > 0;
    if (up) above += 1;
    if (up !== before) runs += 1;
    before = up;
  }
  const b = s3 / s2;
  const pp = s4 - b * s3 - (s2 * s2) / n;
  if (!(pp > 1e-9 * s4)) return undefined;
  const bend = (t2 - b * t1) / pp;
  const rest = Math.max(0, squares - bend * bend * pp);
  const change = (2 * Math.abs(strain[last]! - strain[first]!)) / slope;
  const expectedRuns = (2 * above * (n - above)) / n + 1;
  const variance = ((expectedRuns - 1) * (expectedRuns - 2)) / (n - 1);
  return {
    runs,
    expectedRuns,
    runsDeviation: variance > 0 ? (runs - expectedRuns) / Math.sqrt(variance) : 0,
    slopeChange: bend * change,
    slopeChangeError: Math.sqrt(rest / (n - 3) / pp) * change,
  };
}
