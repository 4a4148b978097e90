/** @internal What is kept of so many samples where excursions are left out in their order, each from the sample where it leaves to the one where it is back. */
export function keptRanges(excursions: readonly (readonly [number, number])[], samples: number): [number, number][] {
  const ranges: [number, number][] = [];
  let next = 0;
  for (const [leaves, back] of excursions) {
    // one may lie within another
    if (leaves >= next) ranges.push([next, leaves]);
    next = Math.max(next, back);
  }
  ranges.push([next, samples - 1]);
  return ranges;
}
