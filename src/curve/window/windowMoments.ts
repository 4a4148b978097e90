import type { WindowTask } from './windowTask.js';

/** Samples of a block of a short and of a long record; the ends of windows within a block are tried one by one. */
const SHORT_BLOCK = 8;
const LONG_BLOCK = 16;
const LONG = 20_000;

/** @internal More than rounding takes off a difference of running sums of squares or products, as a share of them. */
export const ROUNDING = 1e-14;

/** @internal What a running sum of squares amounts to at most between two places: it may be counted from anywhere. */
export const greatest = (sums: Float64Array, from: number, to: number): number => Math.max(sums[to]!, -sums[from]!);

/** @internal A line that is taken off the stress before sums are made: what remains is small, so few digits are lost. */
export interface BaseLine {
  readonly slope: number;
  /** Strain about which x is counted, and stress of the line there. */
  readonly x0: number;
  readonly y0: number;
}

/** @internal Running moments at the edges of blocks of equal numbers of samples. */
export interface WindowMoments {
  readonly base: BaseLine;
  /** Samples of a block. */
  readonly size: number;
  readonly blocks: number;
  /** At each edge, sums over all samples before it of x, r, x², xr, r², one after the other; only their differences count. */
  readonly sums: Float64Array;
  /** Room for x and r of one block, written anew by each pair of blocks that is tried. */
  readonly room: Float64Array;
  /** Where x goes back: by block, the smallest x from it on, and the largest up to it; both absent where x never does. */
  readonly leastFrom: Float64Array | undefined;
  readonly greatestUpTo: Float64Array | undefined;
}

/** Least x from each block on, and greatest up to it. */
function ranges({ strain, start, end }: WindowTask, size: number, blocks: number, x0: number) {
  const leastFrom = new Float64Array(blocks);
  const greatestUpTo = new Float64Array(blocks);
  // four at a time as long as none is higher, or none lower
  for (let block = 0, high = -Infinity, i = start; block < blocks; block += 1) {
    const stop = Math.min(i + size, end);
    while (i + 3 < stop && !(strain[i]! > high || strain[i + 1]! > high || strain[i + 2]! > high || strain[i + 3]! > high)) i += 4;
    for (; i < stop; i += 1) if (strain[i]! > high) high = strain[i]!;
    greatestUpTo[block] = high - x0;
  }
  for (let block = blocks - 1, low = Infinity, i = end - 1; block >= 0; block -= 1) {
    const stop = start + block * size;
    while (i - 3 >= stop && !(strain[i]! < low || strain[i - 1]! < low || strain[i - 2]! < low || strain[i - 3]! < low)) i -= 4;
    for (; i >= stop; i -= 1) if (strain[i]! < low) low = strain[i]!;
    leastFrom[block] = low - x0;
  }
  return { leastFrom, greatestUpTo };
}

/** @internal Moments of the samples of a task, about a line of its slope through the middle one. */
export function windowMoments(task: WindowTask): WindowMoments {
  const { strain, stress, start, end, slope } = task;
  const n = end - start;
  const middle = start + (n >> 1);
  const x0 = strain[middle]!;
  const y0 = stress[middle]!;
  const size = n < LONG ? SHORT_BLOCK : LONG_BLOCK;
  const blocks = Math.ceil(n / size);
  const sums = new Float64Array(5 * (blocks + 1));
  let sx = 0;
  let sr = 0;
  let sxx = 0;
  let sxr = 0;
  let srr = 0;
  let goesBack = false;
  let before = -Infinity;
  for (let at = 5, i = start; i < end; at += 5) {
    // sums of a block begin anew, so that those of the next need not wait for them
    let bx = 0;
    let br = 0;
    let bxx = 0;
    let bxr = 0;
    let brr = 0;
    for (const stop = Math.min(i + size, end); i < stop; i += 1) {
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
    sums[at] = sx += bx;
    sums[at + 1] = sr += br;
    sums[at + 2] = sxx += bxx;
    sums[at + 3] = sxr += bxr;
    sums[at + 4] = srr += brr;
  }
  return {
    base: { slope, x0, y0 },
    size,
    blocks,
    sums,
    room: new Float64Array(2 * size),
    ...(goesBack ? ranges(task, size, blocks, x0) : { leastFrom: undefined, greatestUpTo: undefined }),
  };
}

/** Adds x, r, x², xr, r² of the samples from one up to another (excluded) to five sums. */
function addSamples({ strain, stress, start }: WindowTask, base: BaseLine, from: number, to: number, into: Float64Array, at: number): void {
  for (let i = start + from; i < start + to; i += 1) {
    const u = strain[i]! - base.x0;
    const v = stress[i]! - base.y0 - base.slope * u;
    into[at]! += u;
    into[at + 1]! += v;
    into[at + 2]! += u * u;
    into[at + 3]! += u * v;
    into[at + 4]! += v * v;
  }
}

/** @internal Sums before a sample: those at the edge of its block, and the samples from there on. */
export function sumsBefore(task: WindowTask, { base, sums, size }: WindowMoments, sample: number, into: Float64Array, at: number): void {
  const block = Math.floor(sample / size);
  for (let k = 0; k < 5; k += 1) into[at + k] = sums[5 * block + k]!;
  addSamples(task, base, block * size, sample, into, at);
}

/**
 * @internal The same moments about another line, summed from a block outwards to both sides: where the line runs through the samples
 * around that block, next to nothing is subtracted from next to nothing there, whatever the rest of the record.
 */
export function momentsAbout(task: WindowTask, moments: WindowMoments, slope: number, intercept: number, from: number): WindowMoments {
  const { size, blocks } = moments;
  const { x0 } = moments.base;
  const base = { slope, x0, y0: intercept + slope * x0 };
  const n = task.end - task.start;
  const sums = new Float64Array(5 * (blocks + 1));
  const block = new Float64Array(5);
  const next = (at: number, to: number, sign: number): void => {
    block.fill(0);
    const first = Math.min(at, to) * size;
    addSamples(task, base, first, Math.min(first + size, n), block, 0);
    for (let k = 0; k < 5; k += 1) sums[5 * to + k] = sums[5 * at + k]! + sign * block[k]!;
  };
  for (let at = from; at < blocks; at += 1) next(at, at + 1, 1);
  for (let at = from; at > 0; at -= 1) next(at, at - 1, -1);
  return { ...moments, base, sums };
}
