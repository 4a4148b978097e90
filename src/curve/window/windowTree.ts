import type { Incumbent } from './windowIncumbent.js';
import { lineOfSums, squaresOfSums } from './windowLine.js';
import type { WindowMoments } from './windowMoments.js';

/**
 * @internal Ranges of blocks as the nodes of a binary tree: node 1 holds all `width` (a power of two) of them, nodes 2k and 2k + 1 are the
 * halves of node k; blocks from `blocks` on are empty.
 */
export interface WindowTree {
  readonly width: number;
  /** The line of the incumbent, as what it adds to the base line: c + d x. */
  readonly c: number;
  readonly d: number;
  /** By node: no more and no less than any running sum of r - c - d x within it, both of its ends included. */
  readonly lowest: Float64Array;
  readonly highest: Float64Array;
}

/** The line through the blocks a to b (excluded), as what it adds to the base line. */
function lineOf({ sums, size }: WindowMoments, samples: number, a: number, b: number): { readonly c: number; readonly d: number } {
  const line = lineOfSums(sums, 5 * a, 5 * b, Math.min(b * size, samples) - a * size);
  return line.xx > 0 ? line : { c: 0, d: 0 };
}

/** @internal The tree of blocks, about the line of a window, or the base line where there is none yet. */
export function windowTree(moments: WindowMoments, samples: number, { first, last }: Incumbent): WindowTree {
  const { sums, blocks, size } = moments;
  const width = 2 ** Math.ceil(Math.log2(Math.max(1, blocks)));
  const lowest = new Float64Array(2 * width).fill(Infinity, width + blocks);
  const highest = new Float64Array(2 * width).fill(-Infinity, width + blocks);
  const { c, d } = lineOf(moments, samples, first < 0 ? 0 : Math.round(first / size), Math.round((last + 1) / size));
  let sum = sums[1]! - d * sums[0]!;
  for (let block = 0, p = 0; block < blocks; block += 1, p += 5) {
    const count = Math.min(size, samples - block * size);
    const x = sums[p + 5]! - sums[p]!;
    const r = sums[p + 6]! - sums[p + 1]!;
    const edge = sum;
    sum += r - c * count - d * x;
    // between its edges a running sum strays by no more than half the sum of |r - c - d x|, which is at most the root of n times that of squares
    const stray = Math.sqrt(size * Math.max(0, squaresOfSums(sums, p, p + 5, count, c, d))) / 2;
    lowest[width + block] = (sum < edge ? sum : edge) - stray;
    highest[width + block] = (sum > edge ? sum : edge) + stray;
  }
  for (let node = width - 1; node > 0; node -= 1) {
    const left = 2 * node;
    const right = left + 1;
    lowest[node] = lowest[left]! < lowest[right]! ? lowest[left]! : lowest[right]!;
    highest[node] = highest[left]! > highest[right]! ? highest[left]! : highest[right]!;
  }
  return { width, c, d, lowest, highest };
}
