import { tieOf } from '../src/curve/window/windowIncumbent.js';
import type { WindowTask } from '../src/curve/window/windowTask.js';

/** A window with its score. */
export interface ScoredWindow {
  readonly first: number;
  readonly last: number;
  readonly score: number;
  readonly rise: number;
}

/** Every window, one by one, with the same rule for ties as the search: what it is compared with, for result and for cost. */
export function everyWindow(task: WindowTask): ScoredWindow | undefined {
  const { strain, stress, start, end, span, points, slope, score } = task;
  const close: ScoredWindow[] = [];
  let top = -Infinity;
  const x0 = strain[(start + end) >> 1]!;
  const y0 = stress[(start + end) >> 1]!;
  for (let i = start; i < end; i += 1) {
    let sx = 0;
    let sr = 0;
    let sxx = 0;
    let sxr = 0;
    let srr = 0;
    for (let j = i; j < end; j += 1) {
      const u = strain[j]! - x0;
      const v = stress[j]! - y0 - slope * u;
      sx += u;
      sr += v;
      sxx += u * u;
      sxr += u * v;
      srr += v * v;
      const n = j - i + 1;
      const xx = sxx - (sx * sx) / n;
      if (n < points || !(xx > 0)) continue;
      const xr = sxr - (sx * sr) / n;
      const d = xr / xx;
      const rise = (slope + d) * (strain[j]! - strain[i]!);
      if (rise < span || slope + d <= 0) continue;
      const value = score(slope + d, Math.sqrt(Math.max(0, srr - (sr * sr) / n - d * xr) / ((n - 2) * xx)));
      if (top > -Infinity && value < top - 2 * tieOf(task, top)) continue;
      close.push({ first: i, last: j, score: value, rise });
      top = Math.max(top, value);
    }
  }
  return close
    .filter((one) => one.score >= top - tieOf(task, top))
    .reduce<ScoredWindow | undefined>((a, b) => (a && a.rise >= b.rise ? a : b), undefined);
}
