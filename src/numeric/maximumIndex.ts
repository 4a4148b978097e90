import { firstReaching } from './firstReaching.js';

/** How many samples, evenly apart, are looked at first. */
const PROBES = 64;

/**
 * @internal Sample of the highest value in a range, the first of equals. In a rising column nearly every sample would be a new highest one. So a few samples all over the column are compared first, and blocks that cannot hold the highest are passed over.
 */
export function maximumIndex(column: Float64Array, first = 0, end = column.length): number {
  let best = first;
  let highest = column[first]!;
  const stride = Math.ceil((end - first) / PROBES);
  for (let i = first + stride; i < end; i += stride)
    if (column[i]! > highest) {
      highest = column[i]!;
      best = i;
    }
  const probed = best;
  let i = first;
  while (i < end) {
    // four at a time as long as none is higher
    while (i + 3 < end && !(column[i]! > highest || column[i + 1]! > highest || column[i + 2]! > highest || column[i + 3]! > highest))
      i += 4;
    for (const stop = Math.min(i + 4, end); i < stop; i += 1)
      if (column[i]! > highest) {
        highest = column[i]!;
        best = i;
      }
  }
  // none is higher than the highest of the few, but one before it may be equally high
  return best === probed ? firstReaching(column, highest, first, best) : best;
}
