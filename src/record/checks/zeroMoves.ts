import { firstChange } from '../../numeric/index.js';
import type { RecordOutline } from '../survey/recordOutline.js';
import type { ZeroSurvey } from './zeros.js';

/** @internal A zero that was set while the piece was loaded. */
export interface ZeroMove {
  /** First sample that counts from the new zero. */
  readonly at: number;
  /** Fall of the force [N]. */
  readonly fall: number;
}

/** A fall in one sample: so many deviations and steps, times the changes beside it, and this share of the highest force. */
const DEVIATIONS = 10;
const STEPS = 5;
const TIMES = 5;
const SHARE = 0.02;
/** Samples beside it; the new level is nothing to this share; the level after fracture agrees with the fall to that share. */
const BESIDE = 4;
const NOTHING = 0.02;
const AGREES = 0.3;
/** The force goes on rising by at least this share of the fall, and of the highest force. */
const GOES_ON = 0.05;

/** @internal Sudden falls of the force after which it goes on from a new zero: nothing is read right after, or after fracture so much less than before loading. */
export function findZeroMoves(
  { force, blocks, motion, habit, highest, first, last }: RecordOutline,
  { from, before, after }: ZeroSurvey,
): ZeroMove[] {
  const least = Math.max(DEVIATIONS * habit.noise, STEPS * habit.step, SHARE * highest);
  const moves: ZeroMove[] = [];
  const end = last - BESIDE;
  // changes of the least size are looked at too
  const next = (after: number): number => firstChange(force, least * (1 - Number.EPSILON), after, end, blocks);
  for (let i = next(Math.max(first, from) + BESIDE); i < end; i = next(i + 1)) {
    const fall = force[i - 1]! - force[i]!;
    if (fall < least) continue;
    let beside = 0;
    for (let k = 1; k < BESIDE; k += 1)
      beside = Math.max(beside, Math.abs(force[i - k]! - force[i - k - 1]!), Math.abs(force[i + k]! - force[i + k - 1]!));
    if (fall < TIMES * beside) continue;
    // the drive neither stopped nor went back
    if (motion && motion.values[i]! < motion.values[i - 1]! - Math.max(3 * motion.step, 6 * motion.noise)) continue;
    const zeroed = Math.abs(force[i]!) < NOTHING * highest;
    const offset = after !== undefined && Math.abs((before ?? 0) - after - fall) < AGREES * fall;
    if (!zeroed && !offset) continue;
    let risen = -Infinity;
    for (let k = i; k <= last; k += 1) risen = Math.max(risen, force[k]! - force[i]!);
    if (risen > GOES_ON * Math.max(fall, highest)) moves.push({ at: i, fall });
  }
  return moves;
}
