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

/** @internal Heights for names that would stand on each other: in the same order, at least so far apart, and as near to their own as can be. */
export function apart(heights: readonly number[], least: number): number[] {
  const order = heights.map((_, k) => k).sort((a, b) => heights[a]! - heights[b]!);
  // piles of names, each about the mean of what its names want
  const piles: { readonly names: readonly number[]; readonly middle: number }[] = [];
  const edge = (pile: { readonly names: readonly number[]; readonly middle: number }, sign: number): number =>
    pile.middle + (sign * least * (pile.names.length - 1)) / 2;
  for (const k of order) {
    let pile = { names: [k], middle: heights[k]! };
    for (let below = piles[piles.length - 1]; below && edge(pile, -1) - edge(below, 1) < least; below = piles[piles.length - 1]) {
      piles.pop();
      const names = [...below.names, ...pile.names];
      pile = { names, middle: names.reduce((sum, one) => sum + heights[one]!, 0) / names.length };
    }
    piles.push(pile);
  }
  const placed = [...heights];
  for (const pile of piles) pile.names.forEach((k, j) => (placed[k] = edge(pile, -1) + j * least));
  return placed;
}
