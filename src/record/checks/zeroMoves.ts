import { firstChange } from '../../numeric/index.js';
import { clearOfNoise } from '../survey/habit.js';
import type { RecordOutline } from '../survey/recordOutline.js';
import type { ZeroSurvey } from './zeros.js';

/** @internal A zero that was set while the piece was loaded. */
export interface ZeroMove {
  /** First sample that counts from the new zero. */
  readonly at: number;
  /** Fall of the force [N]. */
  readonly fall: number;
}

/** Least fall in one sample, as a share of the highest force. */
const SHARE = 0.02;
/** Least fall in one sample, in steps of the reading. */
const STEPS = 5;
/** Least fall in one sample, as a multiple of the changes beside it. */
const TIMES = 5;
/** Samples on either side whose changes are compared with the fall. */
const BESIDE = 4;
/** Share of the highest force that the new level stays below: nothing is read right after zero is pressed. */
const NOTHING = 0.02;
/** Share of the fall by which the level after fracture may differ from it. */
const AGREES = 0.3;
/** Share of the fall, and of the highest force, by which the force rises again at least. */
const GOES_ON = 0.05;

/** @internal Sudden falls of the force after which it goes on from a new zero: it reads nothing right after, or after fracture less than before loading by the fall. */
export function findZeroMoves(
  { force, blocks, motion, habit, highest, first, last }: RecordOutline,
  { from, before, after }: ZeroSurvey,
): ZeroMove[] {
  const least = clearOfNoise(habit, SHARE * highest, STEPS);
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
