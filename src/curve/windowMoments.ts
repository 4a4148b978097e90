/** @internal Samples of a block; the ends of windows within a block are tried one by one. */
export const BLOCK = 8;

/** @internal Running moments at the edges of blocks, about the middle of the range. */
export interface WindowMoments {
  /** Strain less that of the middle sample, and stress less a line of the expected slope: what remains is small, so no digits are lost. */
  readonly x: Float64Array;
  readonly r: Float64Array;
  /** At each edge, sums over all samples before it of x, r, x², xr, r², one after the other. */
  readonly sums: Float64Array;
  readonly blocks: number;
  readonly slope: number;
  /** Where x goes back: the smallest x from each block on, and the largest up to it; both absent where it never does. */
  readonly lowest: Float64Array | undefined;
  readonly highest: Float64Array | undefined;
}

/** @internal Moments of samples start to end (end excluded), stress taken relative to a line of slope `slope`. */
export function windowMoments(strain: Float64Array, stress: Float64Array, start: number, end: number, slope: number): WindowMoments {
  const n = end - start;
  const blocks = Math.ceil(n / BLOCK);
  const x = new Float64Array(n);
  const r = new Float64Array(n);
  const sums = new Float64Array(5 * (blocks + 1));
  const middle = strain[start + (n >> 1)]!;
  const level = stress[start + (n >> 1)]!;
  let sx = 0;
  let sr = 0;
  let sxx = 0;
  let sxr = 0;
  let srr = 0;
  let goesBack = false;
  let before = -Infinity;
  for (let block = 0, i = 0; block < blocks; block += 1) {
    for (const stop = Math.min(i + BLOCK, n); i < stop; i += 1) {
      const u = strain[start + i]! - middle;
      const v = stress[start + i]! - level - slope * u;
      x[i] = u;
      r[i] = v;
      if (u < before) goesBack = true;
      before = u;
      sx += u;
      sr += v;
      sxx += u * u;
      sxr += u * v;
      srr += v * v;
    }
    const at = 5 * (block + 1);
    sums[at] = sx;
    sums[at + 1] = sr;
    sums[at + 2] = sxx;
    sums[at + 3] = sxr;
    sums[at + 4] = srr;
  }
  if (!goesBack) return { x, r, sums, blocks, slope, lowest: undefined, highest: undefined };
  const lowest = new Float64Array(blocks).fill(Infinity);
  const highest = new Float64Array(blocks).fill(-Infinity);
  for (let i = 0, high = -Infinity; i < n; i += 1) highest[Math.floor(i / BLOCK)] = high = Math.max(high, x[i]!);
  for (let i = n - 1, low = Infinity; i >= 0; i -= 1) lowest[Math.floor(i / BLOCK)] = low = Math.min(low, x[i]!);
  return { x, r, sums, blocks, slope, lowest, highest };
}
