/** @internal A line by running sums, as what it adds to the base line: c + d x. */
export interface LineOfSums {
  readonly c: number;
  readonly d: number;
  /** Sum of (x - mean)²; a line where it is above 0. */
  readonly xx: number;
  /** Sum of the squares of its residuals. */
  readonly rest: number;
}

/** @internal The line through so many samples between two places of running sums: of x, r, x², x r and r². */
export function lineOfSums(sums: Float64Array, from: number, to: number, count: number): LineOfSums {
  const x = sums[to]! - sums[from]!;
  const r = sums[to + 1]! - sums[from + 1]!;
  const xx = sums[to + 2]! - sums[from + 2]! - (x * x) / count;
  const xr = sums[to + 3]! - sums[from + 3]! - (x * r) / count;
  const d = xr / xx;
  return { c: (r - d * x) / count, d, xx, rest: Math.max(0, sums[to + 4]! - sums[from + 4]! - (r * r) / count - d * xr) };
}

/** @internal Sum of (r - c - d x)² over so many samples between two places of the same sums; rounding may leave it below 0. */
export function squaresOfSums(sums: Float64Array, from: number, to: number, count: number, c: number, d: number): number {
  const x = sums[to]! - sums[from]!;
  const r = sums[to + 1]! - sums[from + 1]!;
  const xx = sums[to + 2]! - sums[from + 2]!;
  const xr = sums[to + 3]! - sums[from + 3]!;
  const rr = sums[to + 4]! - sums[from + 4]!;
  return rr - 2 * c * r - 2 * d * xr + 2 * c * d * x + c * c * count + d * d * xx;
}
