/**
 * @internal Sums that tell the least squares of a corner at any place: powers of the distance from the left end of a region over all places
 * before each, and of the distance from the right end over all places from each on. Shifted to a corner they lose few digits, since the distances
 * are counted from the side that they belong to.
 */
export interface CornerSums {
  /** Distances from the left end, ascending, over the span. */
  readonly place: Float64Array;
  /**
   * Row by row: over the places before each, sums of the distance to the powers 1 to 6, and of y with the powers 0 to 3; over those from it on, sums of
   * the distance from the right end to the powers 1 to 4, and of y with the powers 0 to 2.
   */
  readonly powers: Float64Array;
  /** Sums of y and of its square. */
  readonly sum: number;
  readonly squares: number;
}

/** Length of a row, and where the sums over the right side begin in it. */
const ROW = 17;
const RIGHT = 10;
/** Pivots below this share of the diagonal mean that the terms depend on each other. */
const SINGULAR = 1e-13;

/** Both columns by ascending x; as they are where they ascend. */
function ascending(x: Float64Array, y: Float64Array): readonly [Float64Array, Float64Array] {
  let i = 1;
  while (i < x.length && x[i]! >= x[i - 1]!) i += 1;
  if (i >= x.length) return [x, y];
  const order = Uint32Array.from(x, (_, k) => k).sort((a, b) => x[a]! - x[b]!);
  return [Float64Array.from(order, (k) => x[k]!), Float64Array.from(order, (k) => y[k]!)];
}

/** @internal The sums of a region that begins at `low` and is `span` wide, y being the force less `mean`. */
export function cornerSums(strain: Float64Array, force: Float64Array, low: number, span: number, mean = 0): CornerSums {
  const [x, y] = ascending(strain, force);
  const n = x.length;
  const place = new Float64Array(n);
  const powers = new Float64Array(ROW * (n + 1));
  let sum = 0;
  let squares = 0;
  // the sums in variables of the loops: to read each one back from its column would cost more than to add to it
  let [p1, p2, p3, p4, p5, p6, q1, q2, q3] = [0, 0, 0, 0, 0, 0, 0, 0, 0];
  for (let i = 0, at = ROW; i < n; i += 1, at += ROW) {
    const a = (x[i]! - low) / span;
    const aa = a * a;
    const aaa = aa * a;
    const value = y[i]! - mean;
    place[i] = a;
    sum += value;
    squares += value * value;
    powers[at] = p1 += a;
    powers[at + 1] = p2 += aa;
    powers[at + 2] = p3 += aaa;
    powers[at + 3] = p4 += aa * aa;
    powers[at + 4] = p5 += aa * aaa;
    powers[at + 5] = p6 += aaa * aaa;
    powers[at + 6] = sum;
    powers[at + 7] = q1 += value * a;
    powers[at + 8] = q2 += value * aa;
    powers[at + 9] = q3 += value * aaa;
  }
  let [r1, r2, r3, r4, s0, s1, s2] = [0, 0, 0, 0, 0, 0, 0];
  for (let i = n - 1, at = ROW * i + RIGHT; i >= 0; i -= 1, at -= ROW) {
    const b = 1 - place[i]!;
    const bb = b * b;
    const value = y[i]! - mean;
    powers[at] = r1 += b;
    powers[at + 1] = r2 += bb;
    powers[at + 2] = r3 += bb * b;
    powers[at + 3] = r4 += bb * bb;
    powers[at + 4] = s0 += value;
    powers[at + 5] = s1 += value * b;
    powers[at + 6] = s2 += value * bb;
  }
  return { place, powers, sum, squares };
}

/**
 * @internal Least squares for corners at places w, evenly apart: height, square and cube on the left, square on the right, of t = place − w. Height and
 * sum of squares of each, one after the other, are written into `found`; the sum is infinite where there is none, or no maximum.
 */
export function cornersAt(
  { place, powers, sum, squares }: CornerSums,
  first: number,
  step: number,
  count: number,
  found: Float64Array,
): void {
  const n = place.length;
  // how many places lie before w: begin with their share by distance, since a record passes its region at about a constant rate
  let from = Math.min(n, Math.max(0, Math.floor(first * n)));
  for (let k = 0; k < count; k += 1) {
    const w = first + k * step;
    found[2 * k + 1] = Infinity;
    while (from < n && place[from]! < w) from += 1;
    while (from > 0 && place[from - 1]! >= w) from -= 1;
    const at = ROW * from;
    const p0 = from;
    const p1 = powers[at]!;
    const p2 = powers[at + 1]!;
    const p3 = powers[at + 2]!;
    const p4 = powers[at + 3]!;
    const p5 = powers[at + 4]!;
    const p6 = powers[at + 5]!;
    const q0 = powers[at + 6]!;
    const q1 = powers[at + 7]!;
    const q2 = powers[at + 8]!;
    const q3 = powers[at + 9]!;
    // powers of t by the binomials, and y with them
    const l2 = p2 - w * (2 * p1 - w * p0);
    const l3 = p3 - w * (3 * p2 - w * (3 * p1 - w * p0));
    const l4 = p4 - w * (4 * p3 - w * (6 * p2 - w * (4 * p1 - w * p0)));
    const l5 = p5 - w * (5 * p4 - w * (10 * p3 - w * (10 * p2 - w * (5 * p1 - w * p0))));
    const l6 = p6 - w * (6 * p5 - w * (15 * p4 - w * (20 * p3 - w * (15 * p2 - w * (6 * p1 - w * p0)))));
    const yl2 = q2 - w * (2 * q1 - w * q0);
    const yl3 = q3 - w * (3 * q2 - w * (3 * q1 - w * q0));
    const r0 = n - from;
    const r1 = powers[at + RIGHT]!;
    const r2 = powers[at + RIGHT + 1]!;
    const r3 = powers[at + RIGHT + 2]!;
    const z = 1 - w;
    const b2 = r2 - z * (2 * r1 - z * r0);
    const b4 = powers[at + RIGHT + 3]! - z * (4 * r3 - z * (6 * r2 - z * (4 * r1 - z * r0)));
    const yr2 = powers[at + RIGHT + 6]! - z * (2 * powers[at + RIGHT + 5]! - z * powers[at + RIGHT + 4]!);
    // of the normal equations the square on the right and the height are eliminated, the two terms on the left remain
    if (!(b4 > 0)) continue;
    const share = b2 / b4;
    const nn = n - share * b2;
    const y0 = sum - share * yr2;
    if (!(nn > SINGULAR * n)) continue;
    const a = l4 - (l2 * l2) / nn;
    if (!(a > SINGULAR * l4)) continue;
    const b = l5 - (l2 * l3) / nn;
    const c = l6 - (l3 * l3) / nn - (b * b) / a;
    if (!(c > SINGULAR * l6)) continue;
    const y2 = yl2 - (l2 * y0) / nn;
    const cube = (yl3 - (l3 * y0) / nn - (b * y2) / a) / c;
    const square = (y2 - b * cube) / a;
    const height = (y0 - l2 * square - l3 * cube) / nn;
    const falls = (yr2 - b2 * height) / b4;
    // a maximum only where both sides fall away from it
    if (!(square < 0 && falls < 0)) continue;
    found[2 * k] = height;
    found[2 * k + 1] = Math.max(0, squares - height * sum - square * yl2 - cube * yl3 - falls * yr2);
  }
}

/** @internal {@link cornersAt} one place; undefined where there is none. */
export function cornerAt(sums: CornerSums, place: number): { readonly height: number; readonly rest: number } | undefined {
  const found = new Float64Array(2);
  cornersAt(sums, place, 0, 1, found);
  return found[1]! < Infinity ? { height: found[0]!, rest: found[1]! } : undefined;
}
