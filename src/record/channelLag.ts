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

/** Correlation of a, so many samples later, with b. */
function correlation(a: Float64Array, b: Float64Array, aSquares: Float64Array, bSquares: Float64Array, lag: number): number {
  const from = lag < 0 ? -lag : 0;
  const to = Math.min(b.length, a.length - lag);
  let even = 0;
  let odd = 0;
  let i = from;
  let j = from + lag;
  for (; i + 1 < to; i += 2, j += 2) {
    even += a[j]! * b[i]!;
    odd += a[j + 1]! * b[i + 1]!;
  }
  if (i < to) even += a[j]! * b[i]!;
  const aa = aSquares[to + lag]! - aSquares[from + lag]!;
  const bb = bSquares[to]! - bSquares[from]!;
  return aa > 0 && bb > 0 ? (even + odd) / Math.sqrt(aa * bb) : 0;
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
  const at = (samples: number): number => correlation(pulls, moves, pullSquares, moveSquares, samples);
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
