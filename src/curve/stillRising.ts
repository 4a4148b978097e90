import { firstReaching, linearLeastSquares, maximumIndex, normalCdf, studentQuantile } from '../numeric/index.js';

/** The last stretch is this share of the loading, by about so many means over equal parts of it. */
const STRETCH = 0.1;
const PLACES = 20;
/** Loading begins at this share of the highest stress: slack and the way to the piece lie before. */
const LOADED = 0.05;
/** Of fewer means no slope and its error can be told. */
const FEWEST = 5;
/** A slope at the end is told from none by so many standard errors, in the normal case. */
const SURE = normalCdf(3);
/** Over the stretch it makes this share of the stress at least: what is less is the round top of a curve (common practice). */
const FLAT = 1e-4;

/** Means of the stretch from a place on, over equal parts of x, each where it has samples; x counts from the end, in lengths of the stretch. */
function meansFrom(x: ArrayLike<number>, y: Float64Array, end: number, width: number, spoilt: Uint8Array | undefined) {
  const last = x[end - 1]!;
  const sums = Array.from({ length: PLACES }, () => ({ u: 0, y: 0, count: 0 }));
  for (let i = 0; i < end; i += 1) {
    const u = (x[i]! - last) / width;
    if (!(u >= -1) || spoilt?.[i] === 1) continue;
    const sum = sums[Math.min(PLACES - 1, Math.floor((u + 1) * PLACES))]!;
    sum.u += u;
    sum.y += y[i]!;
    sum.count += 1;
  }
  return sums.filter(({ count }) => count > 0).map((sum) => ({ u: sum.u / sum.count, y: sum.y / sum.count }));
}

/**
 * @internal True where the stress still rises at the end of a curve, beyond its noise: by the slope there of the parabola through the last tenth of the loading,
 * against its standard error. Which sample is the highest does not tell it: noise puts that anywhere. Where the curve has too few samples for that, the last is asked.
 */
export function stillRising(x: ArrayLike<number>, y: Float64Array, end: number, spoilt?: Uint8Array): boolean {
  const loaded = firstReaching(y, LOADED * y[maximumIndex(y, 0, end)]!, 0, end);
  const width = STRETCH * (x[end - 1]! - x[Math.min(loaded, end - 1)]!);
  const means = width > 0 ? meansFrom(x, y, end, width, spoilt) : [];
  const columns = [0, 1, 2].map((power) => Float64Array.from(means, ({ u }) => u ** power));
  const stress = Float64Array.from(means, (one) => one.y);
  const fit = means.length < FEWEST ? undefined : linearLeastSquares(columns, stress);
  if (!fit) return y.subarray(0, end - 1).every((one) => one < y[end - 1]!);
  const free = means.length - 3;
  const slope = fit.parameters[1]!;
  const error = Math.sqrt((fit.inverse[1]![1]! * fit.residualSumOfSquares) / free);
  return slope > Math.max(studentQuantile(SURE, free) * error, FLAT * Math.abs(fit.parameters[0]!));
}
