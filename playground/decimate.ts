import type { Points } from './hardening.js';

/** At most so many points of a stretch of a curve: first, lowest, highest and last of each part, in order, so that peaks stay. */
export function decimate({ x, y }: { readonly x: Float64Array; readonly y: Float64Array }, from: number, end: number, most = 1600): Points {
  const n = end - from;
  if (n <= most) return { x: x.subarray(from, end), y: y.subarray(from, end) };
  const parts = Math.floor(most / 4);
  const xs: number[] = [];
  const ys: number[] = [];
  for (let part = 0; part < parts; part += 1) {
    const first = from + Math.floor((part * n) / parts);
    const last = from + Math.floor(((part + 1) * n) / parts) - 1;
    let [low, high] = [first, first];
    for (let i = first; i <= last; i += 1) {
      if (y[i]! < y[low]!) low = i;
      if (y[i]! > y[high]!) high = i;
    }
    for (const i of [first, Math.min(low, high), Math.max(low, high), last]) {
      xs.push(x[i]!);
      ys.push(y[i]!);
    }
  }
  return { x: xs, y: ys };
}
