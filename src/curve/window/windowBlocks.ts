import { offer, type Incumbent } from './windowIncumbent.js';
import type { WindowMoments } from './windowMoments.js';
import type { WindowTask } from './windowTask.js';

/** Less than 1 by more than the rounding of a product of sums. */
const ALMOST = 1 - 1e-12;

/** @internal Tries every window that starts in block a and ends in block b. */
export function tryBlocks(task: WindowTask, { base, sums, size, room }: WindowMoments, a: number, b: number, best: Incumbent): void {
  const { strain, stress, start, points, span, score, slopeFor, perError } = task;
  const { slope, x0, y0 } = base;
  let needed = slopeFor(best.floor) - slope;
  let errors = perError(best.floor) ** 2;
  const n = task.end - start;
  const apart = a < b;
  const bFirst = start + b * size;
  const bCount = Math.min(size, n - b * size);
  for (let j = 0; j < bCount; j += 1) {
    const u = strain[bFirst + j]! - x0;
    room[2 * j] = u;
    room[2 * j + 1] = stress[bFirst + j]! - y0 - slope * u;
  }
  // the blocks between, then from the end of block a backwards
  const p = 5 * (a + 1);
  const q = 5 * b;
  let ax = apart ? sums[q]! - sums[p]! : 0;
  let ar = apart ? sums[q + 1]! - sums[p + 1]! : 0;
  let axx = apart ? sums[q + 2]! - sums[p + 2]! : 0;
  let axr = apart ? sums[q + 3]! - sums[p + 3]! : 0;
  let arr = apart ? sums[q + 4]! - sums[p + 4]! : 0;
  for (let i = Math.min((a + 1) * size, n) - 1; i >= a * size; i -= 1) {
    const firstX = strain[start + i]! - x0;
    if (apart) {
      const v = stress[start + i]! - y0 - slope * firstX;
      ax += firstX;
      ar += v;
      axx += firstX * firstX;
      axr += firstX * v;
      arr += v * v;
    }
    let sx = ax;
    let sr = ar;
    let sxx = axx;
    let sxr = axr;
    let srr = arr;
    for (let j = apart ? 0 : i - b * size; j < bCount; j += 1) {
      const u = room[2 * j]!;
      const v = room[2 * j + 1]!;
      sx += u;
      sr += v;
      sxx += u * u;
      sxr += u * v;
      srr += v * v;
      const count = b * size + j - i + 1;
      if (count < points) continue;
      // without a division or a root, and enough for most: d - needed >= perError standard errors, squared and times (count - 2) nxx²
      const nxx = count * sxx - sx * sx;
      const nxr = count * sxr - sx * sr;
      const above = nxr - needed * nxx;
      if (above < 0 || above * above * (count - 2) < errors * (ALMOST * (count * srr - sr * sr) * nxx - nxr * nxr)) continue;
      const xx = sxx - (sx * sx) / count;
      if (!(xx > 0)) continue;
      const xr = sxr - (sx * sr) / count;
      const d = xr / xx;
      if (slope + d <= 0) continue;
      const rise = (slope + d) * (u - firstX);
      // of samples at one strain rounding may leave a square, but no rise
      if (!(rise > 0) || rise < span) continue;
      const rest = Math.max(0, srr - (sr * sr) / count - d * xr);
      const value = score(slope + d, Math.sqrt(rest / ((count - 2) * xx)));
      if (value < best.floor) continue;
      offer(task, best, i, b * size + j, slope + d, value, rise);
      needed = slopeFor(best.floor) - slope;
      errors = perError(best.floor) ** 2;
    }
  }
}
