/** @internal Points that stand for many samples, with weights, and the squares about a parabola in each stretch that they leave out. */
export interface CondensedPoints {
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly weights: Float64Array;
  readonly rest: number;
}

/** A long column is cut into so many stretches, and into more where x changes by more than this share of itself within one. */
const STRETCHES = 128;
const WIDEST = 0.06;
/** Samples of a stretch that stay as they are. */
const FEW = 6;
/** Of the moments: norms below this share say that x takes fewer than three values. */
const SINGULAR = 1e-9;

/** One past the last sample of the stretch from `first` on. */
function stretchEnd(x: Float64Array, first: number, most: number): number {
  let size = Math.min(most, x.length - first);
  const reach = WIDEST * Math.abs(x[first]!);
  while (size > FEW && Math.abs(x[first + size - 1]! - x[first]!) > reach) size >>= 1;
  return first + size;
}

/** The three roots of t³ + p t² + q t + r, all real. */
function roots(p: number, q: number, r: number): readonly [number, number, number] {
  const radius = Math.sqrt(Math.max(0, p * p - 3 * q)) / 3;
  const cosine = ((p * q) / 6 - r / 2 - (p * p * p) / 27) / (radius * radius * radius);
  const angle = Math.acos(Math.min(1, Math.max(-1, cosine))) / 3;
  const at = (k: number): number => 2 * radius * Math.cos(angle - (2 * Math.PI * k) / 3) - p / 3;
  return [at(0), at(1), at(2)];
}

/**
 * @internal Three weighted points for each stretch of samples, such that for any law f that is a parabola within each stretch the sum of squared
 * residuals is the same up to a constant, for every set of parameters.
 *
 * The polynomials orthogonal over the samples of a stretch (from sums of powers up to the fifth) give Gauss's rule with three nodes, which integrates
 * powers up to the fifth as the samples do; y at the nodes is the least-squares parabola. What a law has beyond a parabola enters only by its
 * fourth derivative, since the third orthogonal polynomial vanishes at the nodes.
 */
export function condensed(x: Float64Array, y: Float64Array): CondensedPoints {
  const n = x.length;
  const most = Math.max(1, Math.ceil(n / STRETCHES));
  const points: { x: number[]; y: number[]; weights: number[] } = { x: [], y: [], weights: [] };
  let rest = 0;
  for (let first = 0, end: number; first < n; first = end) {
    end = stretchEnd(x, first, most);
    const left = end - first > FEW ? stretch(x, y, first, end, points) : undefined;
    if (left !== undefined) rest += left;
    else
      for (let i = first; i < end; i += 1) {
        points.x.push(x[i]!);
        points.y.push(y[i]!);
        points.weights.push(1);
      }
  }
  return { x: Float64Array.from(points.x), y: Float64Array.from(points.y), weights: Float64Array.from(points.weights), rest };
}

/** Appends the three points of a stretch, and gives the squares about its parabola; undefined where x takes fewer than three values. */
function stretch(
  x: Float64Array,
  y: Float64Array,
  first: number,
  end: number,
  into: { readonly x: number[]; readonly y: number[]; readonly weights: number[] },
): number | undefined {
  const centre = (x[first]! + x[end - 1]!) / 2;
  const scale = Math.abs(x[end - 1]! - x[first]!) / 2;
  const y0 = y[(first + end) >> 1]!;
  if (!(scale > 0)) return undefined;
  const per = 1 / scale;
  let [m1, m2, m3, m4, m5, q0, q1, q2, yy] = [0, 0, 0, 0, 0, 0, 0, 0, 0];
  for (let i = first; i < end; i += 1) {
    const t = (x[i]! - centre) * per;
    const v = y[i]! - y0;
    const tt = t * t;
    const ttt = tt * t;
    m1 += t;
    m2 += tt;
    m3 += ttt;
    m4 += tt * tt;
    m5 += ttt * tt;
    q0 += v;
    q1 += t * v;
    q2 += tt * v;
    yy += v * v;
  }
  // orthogonal polynomials 1, t − a, t² + e t + f over the samples, and their norms
  const n0 = end - first;
  const a = m1 / n0;
  const n1 = m2 - a * m1;
  if (!(n1 > SINGULAR * n0)) return undefined;
  const b = (m3 - 2 * a * m2 + a * a * m1) / n1;
  const e = -(a + b);
  const f = a * b - n1 / n0;
  const n2 = m4 + e * m3 + f * m2;
  if (!(n2 > SINGULAR * n0)) return undefined;
  const c = (m5 + 2 * e * m4 + (e * e + 2 * f) * m3 + 2 * e * f * m2 + f * f * m1) / n2;
  const d = n2 / n1;
  const [c0, c1, c2] = [q0 / n0, (q1 - a * q0) / n1, (q2 + e * q1 + f * q0) / n2];
  for (const t of roots(e - c, f - c * e - d, d * a - c * f)) {
    const p1 = t - a;
    const p2 = t * t + e * t + f;
    into.x.push(centre + scale * t);
    into.y.push(y0 + c0 + c1 * p1 + c2 * p2);
    into.weights.push(1 / (1 / n0 + (p1 * p1) / n1 + (p2 * p2) / n2));
  }
  return Math.max(0, yy - c0 * c0 * n0 - c1 * c1 * n1 - c2 * c2 * n2);
}
