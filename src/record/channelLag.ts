import { firstReaching } from '../numeric/index.js';
import type { RecordOutline } from './recordOutline.js';

/** @internal By how much one channel is late. */
export interface ChannelLag {
  /** Samples by which the force is later than the motion; negative where the motion is later. */
  readonly samples: number;
  /** Correlation of the rates of force and motion with that lag, and without it. */
  readonly correlation: number;
  readonly without: number;
}

/** The rates are compared between these shares of the highest force. */
const FROM = 0.1;
const TO = 0.6;
/** At least and at most so many samples; lags up to so many. */
const LEAST = 100;
const MOST = 4096;
const FARTHEST = 50;
/** Products that are summed between two looks at whether a lag can still be one; even. */
const STRETCH = 64;
/** The speed must vary by this share, or there is nothing to compare. */
const VARIES = 0.1;
/** Correlation that a lag must reach, and by how much it must be better than none. */
const CLEAR = 0.6;
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

/** Correlation of a, so many samples later, with b; where it cannot exceed a bound, only what it does not exceed. */
function correlation(a: Float64Array, b: Float64Array, aSquares: Float64Array, bSquares: Float64Array, lag: number, bound: number): number {
  const from = lag < 0 ? -lag : 0;
  const to = Math.min(b.length, a.length - lag);
  // what the products from a sample on add up to at most (Cauchy and Schwarz)
  const mostFrom = (i: number): number => Math.sqrt((aSquares[to + lag]! - aSquares[i + lag]!) * (bSquares[to]! - bSquares[i]!));
  const whole = mostFrom(from);
  if (!(whole > 0)) return 0;
  let even = 0;
  let odd = 0;
  for (let i = from; i < to;) {
    const stop = Math.min(i + STRETCH, to);
    for (; i + 1 < stop; i += 2) {
      even += a[i + lag]! * b[i]!;
      odd += a[i + lag + 1]! * b[i + 1]!;
    }
    if (i < stop) {
      even += a[i + lag]! * b[i]!;
      i += 1;
    }
    const most = (even + odd + mostFrom(i)) / whole;
    if (most < bound) return most;
  }
  return (even + odd) / whole;
}

/** @internal The lag between force and motion, from how their rates pulse together; undefined where the drive is too even to tell. */
export function channelLag({ force, motion, first, top, highest }: RecordOutline): ChannelLag | undefined {
  if (!motion) return undefined;
  const end = Math.min(top, motion.end);
  const from = firstReaching(force, FROM * highest, first, end);
  const to = firstReaching(force, TO * highest, from, end);
  const count = Math.min(to - from, MOST);
  if (count < LEAST) return undefined;
  // the pulses of a hand last many samples: so many together that they stand out of the noise
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
  const farthest = Math.min(FARTHEST, count >> 2);
  const pullSquares = squaresBefore(pulls);
  const at = (samples: number, bound = -1): number => correlation(pulls, moves, pullSquares, moveSquares, samples, bound);
  const without = at(0);
  // of most records no lag comes near, and a part of each sum tells
  const clear = Math.max(CLEAR, without + BETTER);
  let size = 2;
  while (size <= farthest && at(size, clear) <= clear && at(-size, clear) <= clear) size += 1;
  if (size > farthest) return undefined;
  let best = { samples: 0, correlation: without };
  for (let k = 1; k <= farthest; k += 1)
    for (const samples of [k, -k]) {
      const found = at(samples, best.correlation);
      // pulses repeat: of equal answers the nearest
      if (found > best.correlation + 0.01) best = { samples, correlation: found };
    }
  return Math.abs(best.samples) >= 2 && best.correlation > clear ? { ...best, without } : undefined;
}
