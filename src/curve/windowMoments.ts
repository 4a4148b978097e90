/** @internal Samples of a block; the ends of windows within a block are tried one by one. */
export const BLOCK = 16;

/** @internal A line near the answer, taken off the stress before sums are made: what remains is small, so no digits are lost. */
export interface BaseLine {
  readonly slope: number;
  /** Strain about which x is counted, and stress of the line there. */
  readonly x0: number;
  readonly y0: number;
}

/**
 * @internal Running moments at the edges of blocks. Ranges of blocks are the nodes of a binary tree: node 1 holds all `width` (a power of
 * two) of them, nodes 2k and 2k + 1 are the halves of node k; blocks from `blocks` on are empty.
 */
export interface WindowMoments {
  readonly base: BaseLine;
  /** Room for x and r of one block, written anew by each pair of blocks that is tried. */
  readonly block: { readonly x: Float64Array; readonly r: Float64Array };
  /** At each edge, sums over all samples before it of x, r, x², xr, r², one after the other. */
  readonly sums: Float64Array;
  readonly blocks: number;
  readonly width: number;
  /** By node: no more and no less than any running sum of r within it, both of its ends included. */
  readonly lowest: Float64Array;
  readonly highest: Float64Array;
  /** Where x goes back: by block, the smallest x from it on, and the largest up to it; both absent where x never does. */
  readonly leastFrom: Float64Array | undefined;
  readonly greatestUpTo: Float64Array | undefined;
}

/** Least x from each block on, and greatest up to it. */
function ranges(strain: Float64Array, start: number, end: number, blocks: number, x0: number) {
  const n = end - start;
  const leastFrom = new Float64Array(blocks);
  const greatestUpTo = new Float64Array(blocks);
  for (let block = 0, high = -Infinity; block < blocks; block += 1) {
    for (let i = block * BLOCK, stop = Math.min(i + BLOCK, n); i < stop; i += 1) if (strain[start + i]! > high) high = strain[start + i]!;
    greatestUpTo[block] = high - x0;
  }
  for (let block = blocks - 1, low = Infinity; block >= 0; block -= 1) {
    for (let i = block * BLOCK, stop = Math.min(i + BLOCK, n); i < stop; i += 1) if (strain[start + i]! < low) low = strain[start + i]!;
    leastFrom[block] = low - x0;
  }
  return { leastFrom, greatestUpTo };
}

/** @internal Moments of samples start to end (end excluded) about a line. */
export function windowMoments(strain: Float64Array, stress: Float64Array, start: number, end: number, base: BaseLine): WindowMoments {
  const { slope, x0, y0 } = base;
  const n = end - start;
  const blocks = Math.ceil(n / BLOCK);
  const width = 2 ** Math.ceil(Math.log2(Math.max(1, blocks)));
  const sums = new Float64Array(5 * (blocks + 1));
  const lowest = new Float64Array(2 * width).fill(Infinity);
  const highest = new Float64Array(2 * width).fill(-Infinity);
  let sx = 0;
  let sr = 0;
  let sxx = 0;
  let sxr = 0;
  let srr = 0;
  let goesBack = false;
  let before = -Infinity;
  for (let block = 0, i = start; block < blocks; block += 1) {
    // sums of a block begin anew, so that those of the next need not wait for them
    let bx = 0;
    let br = 0;
    let bxx = 0;
    let bxr = 0;
    let brr = 0;
    for (const stop = Math.min(i + BLOCK, end); i < stop; i += 1) {
      const u = strain[i]! - x0;
      const v = stress[i]! - y0 - slope * u;
      if (!goesBack && u < before) goesBack = true;
      before = u;
      bx += u;
      br += v;
      bxx += u * u;
      bxr += u * v;
      brr += v * v;
    }
    const edge = sr;
    sx += bx;
    sr += br;
    sxx += bxx;
    sxr += bxr;
    srr += brr;
    // between its edges a running sum strays by no more than half the sum of |r|; the sum is at most the root of n times that of r²
    const stray = Math.sqrt(BLOCK * brr) / 2;
    lowest[width + block] = (sr < edge ? sr : edge) - stray;
    highest[width + block] = (sr > edge ? sr : edge) + stray;
    const at = 5 * (block + 1);
    sums[at] = sx;
    sums[at + 1] = sr;
    sums[at + 2] = sxx;
    sums[at + 3] = sxr;
    sums[at + 4] = srr;
  }
  for (let node = width - 1; node > 0; node -= 1) {
    const left = 2 * node;
    const right = left + 1;
    lowest[node] = lowest[left]! < lowest[right]! ? lowest[left]! : lowest[right]!;
    highest[node] = highest[left]! > highest[right]! ? highest[left]! : highest[right]!;
  }
  return {
    base,
    block: { x: new Float64Array(BLOCK), r: new Float64Array(BLOCK) },
    sums,
    blocks,
    width,
    lowest,
    highest,
    ...(goesBack ? ranges(strain, start, end, blocks, x0) : { leastFrom: undefined, greatestUpTo: undefined }),
  };
}
