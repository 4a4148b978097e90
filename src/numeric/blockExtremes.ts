/** @internal Lowest and highest value of each block of a column, so that a search passes over the blocks that cannot hold what it looks for. */
export interface BlockExtremes {
  /** Samples of a block; the last one may hold fewer. */
  readonly size: number;
  readonly lowest: Float64Array;
  readonly highest: Float64Array;
  /** How far it falls at the most, from the highest so far of the block. */
  readonly fall: Float64Array;
}

/** About so many blocks, each of at least so many samples. */
const BLOCKS = 4096;
const LEAST = 128;

/** @internal The extremes of a column by blocks; those of a block that begins with NaN are NaN, so that nothing is passed over by them. */
export function blockExtremes(column: Float64Array): BlockExtremes {
  const n = column.length;
  const size = Math.max(LEAST, Math.floor(n / BLOCKS));
  const blocks = Math.ceil(n / size);
  const lowest = new Float64Array(blocks);
  const highest = new Float64Array(blocks);
  const fall = new Float64Array(blocks);
  for (let k = 0, i = 0; k < blocks; k += 1) {
    let low = column[i]!;
    let high = low;
    let deepest = 0;
    for (const stop = Math.min(i + size, n); i < stop; i += 1) {
      const value = column[i]!;
      if (value >= high) high = value;
      else if (high - value >= deepest) {
        // nothing is lower that does not fall as deep
        deepest = high - value;
        if (value < low) low = value;
      }
    }
    lowest[k] = low;
    highest[k] = high;
    fall[k] = deepest;
  }
  return { size, lowest, highest, fall };
}
