import type { WindowTask } from '../../src/curve/window/windowTask.js';

/** A window with what its line amounts to, free of rounding. */
export interface ExactWindow {
  readonly first: number;
  readonly last: number;
  readonly score: number;
  readonly rise: number;
}

/** Bits of the fraction by which every number of a record becomes a whole one. */
const BITS = 200;
const whole = (x: number): bigint => BigInt(x * 2 ** BITS);
const ratio = (over: bigint, under: bigint): number => Number((over << BigInt(BITS)) / under) / 2 ** BITS;

/** All windows of a task in fractions of whole numbers: only the last root, the score and the rise are rounded, each once. */
export function exactWindows({ strain, stress, start, end, points, span, score }: WindowTask): ExactWindow[] {
  const x = Array.from(strain, whole);
  const y = Array.from(stress, whole);
  const found: ExactWindow[] = [];
  for (let first = start; first < end; first += 1) {
    let [n, sx, sy, sxx, sxy, syy] = [0n, 0n, 0n, 0n, 0n, 0n];
    for (let last = first; last < end; last += 1) {
      const [u, v] = [x[last]! - x[first]!, y[last]! - y[first]!];
      n += 1n;
      sx += u;
      sy += v;
      sxx += u * u;
      sxy += u * v;
      syy += v * v;
      const xx = n * sxx - sx * sx;
      const xy = n * sxy - sx * sy;
      if (n < points || xx <= 0n || xy <= 0n) continue;
      const rise = ratio(xy * u, xx << BigInt(BITS));
      if (rise <= 0 || rise < span) continue;
      const variance = ratio(xx * (n * syy - sy * sy) - xy * xy, xx * xx * (n - 2n));
      found.push({ first, last, rise, score: score(ratio(xy, xx), Math.sqrt(variance)) });
    }
  }
  return found;
}

/** The widest of the windows whose scores tie with the highest, within a tie or so many of them. */
export function widestExact(windows: readonly ExactWindow[], tie: number): ExactWindow {
  const top = windows.reduce((most, { score }) => Math.max(most, score), -Infinity);
  return windows.filter(({ score }) => score >= top - tie).reduce((a, b) => (b.rise > a.rise ? b : a));
}
