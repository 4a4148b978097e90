import { firstReaching } from '../../numeric/index.js';
import type { RecordOutline } from '../survey/recordOutline.js';

/** @internal By how much one channel is late. */
export interface ChannelLag {
  /** Samples by which the force is later than the motion; negative where the motion is later. */
  readonly samples: number;
  /** Correlation of the rates of force and motion with that lag, and without it. */
  readonly correlation: number;
  readonly without: number;
}

/** Share of the highest force from which on the rates are compared. */
const FROM = 0.1;
/** Share of the highest force up to which they are. */
const TO = 0.6;
/** Least samples that are compared. */
const LEAST = 100;
/** Most samples that are compared: the last ones. */
const MOST = 4096;
/** Greatest lag that is looked for [samples]. */
const FARTHEST = 50;
/** Share of its mean by which the speed must vary, or there is nothing to compare. */
const VARIES = 0.1;
/** Correlation that a lag must reach. */
const CLEAR = 0.6;
/** Correlation by which a lag must be better than none. */
const BETTER = 0.1;

/** Changes over a few samples, without their mean. */
function rates(column: Float64Array, from: number, count: number, width: number): Float64Array {
  const changes = new Float64Array(count - width);
  let sum = 0;
  for (let i = 0; i < changes.length; i += 1) {
    changes[i] = column[from + i + width]! - column[from + i]!;
    sum += changes[i]!;
  }
  const mean = sum / changes.length;
  for (let i = 0; i < changes.length; i += 1) changes[i]! -= mean;
  return changes;
}

/** Sums of the squares of all changes before each. */
function squaresBefore(changes: Float64Array): Float64Array {
  const sums = new Float64Array(changes.length + 1);
  for (let i = 0; i < changes.length; i += 1) sums[i + 1] = sums[i]! + changes[i]! * changes[i]!;
  return sums;
}

/** Sums of the products of a, shifted by a lag, with b, for all lags from -farthest on: four lags at a time, over a with zeros before and behind it. */
function productsOf(a: Float64Array, b: Float64Array, farthest: number): Float64Array {
  const n = b.length;
  const sums = new Float64Array((2 * farthest + 4) & ~3);
  const padded = new Float64Array(n + sums.length);
  padded.set(a, farthest);
  for (let k = 0; k < sums.length; k += 4) {
    let [s0, s1, s2, s3] = [0, 0, 0, 0];
    for (let i = 0, j = k; i < n; i += 1, j += 1) {
      const one = b[i]!;
      s0 += padded[j]! * one;
      s1 += padded[j + 1]! * one;
      s2 += padded[j + 2]! * one;
      s3 += padded[j + 3]! * one;
    }
    sums[k] = s0;
    sums[k + 1] = s1;
    sums[k + 2] = s2;
    sums[k + 3] = s3;
  }
  return sums;
}

/** @internal The lag between force and motion, from how their rates pulse together; undefined where the drive is too even to show one. */
export function channelLag({ force, blocks, motion, first, top, highest }: RecordOutline): ChannelLag | undefined {
  if (!motion) return undefined;
  const end = Math.min(top, motion.end);
  const from = firstReaching(force, FROM * highest, first, end, blocks);
  const to = firstReaching(force, TO * highest, from, end, blocks);
  const count = Math.min(to - from, MOST);
  if (count < LEAST) return undefined;
  // the pulses of a hand last many samples: rates over as many of them stand out of the noise
  const start = to - count;
  const quiet = 4 * Math.max(motion.noise, motion.step / 3);
  for (let width = Math.max(1, Math.floor(count / 200)); width <= count / 8; width *= 2) {
    const moves = rates(motion.values, start, count, width);
    const mean = ((motion.values[to]! - motion.values[start]!) / count) * width;
    const squares = squaresBefore(moves);
    const spread = Math.sqrt(squares[moves.length]! / moves.length);
    if (spread > VARIES * mean && spread > quiet) return bestLag(rates(force, start, count, width), moves, squares, count);
  }
  return undefined;
}

/** The lag at which the rates agree best, where that is clearly better than none. */
function bestLag(pulls: Float64Array, moves: Float64Array, moveSquares: Float64Array, count: number): ChannelLag | undefined {
  const n = moves.length;
  const farthest = Math.min(FARTHEST, count >> 2);
  const pullSquares = squaresBefore(pulls);
  const products = productsOf(pulls, moves, farthest);
  // correlation of the pulls, shifted by a lag, with the moves, over the samples that both have then
  const at = (lag: number): number => {
    const [from, to] = [Math.max(0, -lag), Math.min(n, n - lag)];
    const squares = (pullSquares[to + lag]! - pullSquares[from + lag]!) * (moveSquares[to]! - moveSquares[from]!);
    return squares > 0 ? products[farthest + lag]! / Math.sqrt(squares) : 0;
  };
  const without = at(0);
  let best = { samples: 0, correlation: without };
  for (let size = 1; size <= farthest; size += 1)
    for (const samples of [size, -size]) {
      const found = at(samples);
      // pulses repeat: of equal answers the nearest
      if (found > best.correlation + 0.01) best = { samples, correlation: found };
    }
  const clear = Math.abs(best.samples) >= 2 && best.correlation > CLEAR && best.correlation > without + BETTER;
  return clear ? { ...best, without } : undefined;
}
