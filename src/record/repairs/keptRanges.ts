/** @internal Ranges that are kept of a number of samples where excursions are left out, in their order; each goes from the sample where it leaves to the one where it is back. */
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

/** @internal The kept samples of a column, which may end before the record does. */
export function keptColumn(column: Float64Array, ranges: readonly (readonly [number, number])[]): Float64Array {
  const stretches = ranges.map(([first, last]) => column.subarray(first, last + 1));
  const kept = new Float64Array(stretches.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const stretch of stretches) {
    kept.set(stretch, at);
    at += stretch.length;
  }
  return kept;
}
