/** @internal Ends of an axis that holds all values, with room beyond them as a share of their range (or of their size, where all are equal). */
export function extentOf(lists: readonly ArrayLike<number>[], room = 0.08): { readonly from: number; readonly to: number } {
  let low = Infinity;
  let high = -Infinity;
  for (const list of lists)
    for (let i = 0; i < list.length; i += 1) {
      low = Math.min(low, list[i]!);
      high = Math.max(high, list[i]!);
    }
  if (low > high) return { from: 0, to: 1 };
  // a range below the digits of its values cannot be drawn
  const size = Math.max(Math.abs(low), Math.abs(high));
  const beyond = high - low > 1e-9 * size ? room * (high - low) : 0.5 * size || 0.5;
  return { from: low - beyond, to: high + beyond };
}

/** @internal Heights for names that would stand on each other: in the same order, at least so far apart, as near to their own as can be. */
export function apart(heights: readonly number[], least: number): number[] {
  const order = heights.map((_, k) => k).sort((a, b) => heights[a]! - heights[b]!);
  const placed = [...heights];
  order.slice(1).forEach((k, j) => (placed[k] = Math.max(placed[k]!, placed[order[j]!]! + least)));
  // back down, by half of what the pile has grown above its top
  const grown = order.length > 0 ? placed[order[order.length - 1]!]! - heights[order[order.length - 1]!]! : 0;
  return placed.map((one) => one - grown / 2);
}
