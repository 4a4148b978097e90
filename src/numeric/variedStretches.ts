import type { BlockExtremes } from './blockExtremes.js';

/**
 * @internal Stretches of a column, from a sample to one (not included), where it varies by more than so much within so many samples before and after: what asks for more than that lies
 * nowhere else. A block that begins with NaN counts as one that does.
 */
export function variedStretches(
  { size, lowest, highest }: BlockExtremes,
  least: number,
  before: number,
  after: number,
  end: number,
): (readonly [number, number])[] {
  const found: [number, number][] = [];
  const [back, on] = [Math.ceil(before / size), Math.ceil(after / size)];
  for (let k = 0; k * size < end; k += 1) {
    let [low, high] = [Infinity, -Infinity];
    for (let j = Math.max(0, k - back); j <= Math.min(lowest.length - 1, k + on); j += 1) {
      low = Math.min(low, lowest[j]!);
      high = Math.max(high, highest[j]!);
    }
    if (high - low <= least) continue;
    const last = found.at(-1);
    const stop = Math.min(end, (k + 1) * size);
    if (last?.[1] === k * size) last[1] = stop;
    else found.push([k * size, stop]);
  }
  return found;
}
