/**
 * @internal Sums that tell the least squares of a corner at any place: powers of the distance from the left end of a region over all places
 * before each, and of the distance from the right end over all places from each on. Shifted to a corner they lose few digits, since the distances
 * are counted from the side that they belong to.
 */
export interface CornerSums {
  /** Distances from the left end, ascending, over the span. */
  readonly place: Float64Array;
  /** Before each place: sums of the distance to the powers 0 to 6, and of y with the powers 0 to 3. */
  readonly left: Float64Array;
  /** From each place on: sums of the distance from the right end to the powers 0 to 4, and of y with the powers 0 to 2. */
  readonly right: Float64Array;
  /** Sums of y and of its square. */
  readonly sum: number;
  readonly squares: number;
}

const LEFT = 11;
const RIGHT = 8;
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

/** @internal The sums of a region that begins at `low` and is `span` wide. */
export function cornerSums(strain: Float64Array, force: Float64Array, low: number, span: number): CornerSums {
  const [x, y] = ascending(strain, force);
  const n = x.length;
  const place = new Float64Array(n);
  const left = new Float64Array(LEFT * (n + 1));
  const right = new Float64Array(RIGHT * (n + 1));
  let sum = 0;
  let squares = 0;
  // the sums in variables of the loops: to read each one back from its column would cost more than to add to it
  let [p1, p2, p3, p4, p5, p6, q1, q2, q3] = [0, 0, 0, 0, 0, 0, 0, 0, 0];
  for (let i = 0, at = LEFT; i < n; i += 1, at += LEFT) {
    const a = (x[i]! - low) / span;
    const aa = a * a;
    const aaa = aa * a;
    const value = y[i]!;
    place[i] = a;
    sum += value;
    squares += value * value;
    left[at] = i + 1;
    left[at + 1] = p1 += a;
    left[at + 2] = p2 += aa;
    left[at + 3] = p3 += aaa;
    left[at + 4] = p4 += aa * aa;
    left[at + 5] = p5 += aa * aaa;
    left[at + 6] = p6 += aaa * aaa;
    left[at + 7] = sum;
    left[at + 8] = q1 += value * a;
    left[at + 9] = q2 += value * aa;
    left[at + 10] = q3 += value * aaa;
  }
  let [r1, r2, r3, r4, s0, s1, s2] = [0, 0, 0, 0, 0, 0, 0];
  for (let i = n - 1, at = RIGHT * i; i >= 0; i -= 1, at -= RIGHT) {
    const b = 1 - place[i]!;
    const bb = b * b;
    const value = y[i]!;
    right[at] = n - i;
    right[at + 1] = r1 += b;
    right[at + 2] = r2 += bb;
    right[at + 3] = r3 += bb * b;
    right[at + 4] = r4 += bb * bb;
    right[at + 5] = s0 += value;
    right[at + 6] = s1 += value * b;
    right[at + 7] = s2 += value * bb;
  }
  return { place, left, right, sum, squares };
}

/**
 * @internal Least squares for a corner at place w: height, square and cube on the left, square on the right, of t = place − w; undefined where it is
 * none or no maximum.
 */
export function cornerAt(
  { place, left, right, sum, squares }: CornerSums,
  w: number,
): { readonly height: number; readonly rest: number } | undefined {
  // how many places lie before w: about this share of them, since a record goes through its region evenly
  let from = Math.floor(w * place.length);
  while (from < place.length && place[from]! < w) from += 1;
  while (from > 0 && place[from - 1]! >= w) from -= 1;
  const at = LEFT * from;
  const p0 = left[at]!;
  const p1 = left[at + 1]!;
  const p2 = left[at + 2]!;
  const p3 = left[at + 3]!;
  const p4 = left[at + 4]!;
  const p5 = left[at + 5]!;
  const p6 = left[at + 6]!;
  const q0 = left[at + 7]!;
  const q1 = left[at + 8]!;
  const q2 = left[at + 9]!;
  const q3 = left[at + 10]!;
  // powers of t by the binomials, and y with them
  const l2 = p2 - w * (2 * p1 - w * p0);
  const l3 = p3 - w * (3 * p2 - w * (3 * p1 - w * p0));
  const l4 = p4 - w * (4 * p3 - w * (6 * p2 - w * (4 * p1 - w * p0)));
  const l5 = p5 - w * (5 * p4 - w * (10 * p3 - w * (10 * p2 - w * (5 * p1 - w * p0))));
  const l6 = p6 - w * (6 * p5 - w * (15 * p4 - w * (20 * p3 - w * (15 * p2 - w * (6 * p1 - w * p0)))));
  const yl2 = q2 - w * (2 * q1 - w * q0);
  const yl3 = q3 - w * (3 * q2 - w * (3 * q1 - w * q0));
  const other = RIGHT * from;
  const z = 1 - w;
  const r2 = right[other + 2]! - z * (2 * right[other + 1]! - z * right[other]!);
  const r4 =
    right[other + 4]! - z * (4 * right[other + 3]! - z * (6 * right[other + 2]! - z * (4 * right[other + 1]! - z * right[other]!)));
  const yr2 = right[other + 7]! - z * (2 * right[other + 6]! - z * right[other + 5]!);
  // of the normal equations the square on the right and the height are eliminated, the two terms on the left remain
  const n = place.length;
  if (!(r4 > 0)) return undefined;
  const share = r2 / r4;
  const nn = n - share * r2;
  const y0 = sum - share * yr2;
  if (!(nn > SINGULAR * n)) return undefined;
  const a = l4 - (l2 * l2) / nn;
  if (!(a > SINGULAR * l4)) return undefined;
  const b = l5 - (l2 * l3) / nn;
  const c = l6 - (l3 * l3) / nn - (b * b) / a;
  if (!(c > SINGULAR * l6)) return undefined;
  const y2 = yl2 - (l2 * y0) / nn;
  const cube = (yl3 - (l3 * y0) / nn - (b * y2) / a) / c;
  const square = (y2 - b * cube) / a;
  const height = (y0 - l2 * square - l3 * cube) / nn;
  const falls = (yr2 - r2 * height) / r4;
  // a maximum only where both sides fall away from it
  if (!(square < 0 && falls < 0)) return undefined;
  return { height, rest: Math.max(0, squares - height * sum - square * yl2 - cube * yl3 - falls * yr2) };
}
