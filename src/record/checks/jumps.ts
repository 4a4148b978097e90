import { soundLength } from '../../base/index.js';
import type { RecordOutline } from '../survey/recordOutline.js';
import { firstChange, noiseLevel, resolution } from '../../numeric/index.js';

/** @internal A motion that jumps between two samples while the force goes on as before. */
export interface Jump {
  /** The sample after the jump. */
  readonly at: number;
  /** Its size [unit of the motion]. */
  readonly size: number;
}

/** A jump is so many times the largest of the changes near it, and so many deviations and steps. */
const TIMES = 5;
const NEAR = 5;
/** And so many times what the motion does in a sample around there. */
const PACES = 10;
const AROUND = 25;
const DEVIATIONS = 10;
const STEPS = 5;
/** And at least this share of the whole way. */
const SHARE = 0.003;
/** A gap in time explains a jump. */
const GAP = 4;

/** @internal Jumps of a motion in the loaded part without one of the force. */
export function findJumps(outline: RecordOutline, motion: Float64Array): Jump[] {
  const { force, time, first, habit, highest } = outline;
  const last = Math.min(outline.last, soundLength(motion) - 1);
  const end = last - 1;
  const blocks = outline.motion?.values === motion ? outline.motion.blocks : undefined;
  const next = (change: number, from: number): number => firstChange(motion, change, from, end, blocks);
  // before its noise and its steps are looked at: most motions have no such change at all
  const share = SHARE * Math.abs(motion[last]! - motion[first]!);
  if (next(share, first + 2) >= end) return [];
  const least = Math.max(share, DEVIATIONS * noiseLevel(motion, first, last + 1), STEPS * resolution(motion.subarray(0, last + 1)));
  const found: Jump[] = [];
  for (let i = next(least, first + 2); i < end; i = next(least, i + 1)) {
    const size = motion[i]! - motion[i - 1]!;
    let near = 0;
    for (let k = 1; k <= NEAR; k += 1) {
      if (i - k > first) near = Math.max(near, Math.abs(motion[i - k]! - motion[i - k - 1]!));
      if (i + k <= last) near = Math.max(near, Math.abs(motion[i + k]! - motion[i + k - 1]!));
    }
    if (Math.abs(size) < TIMES * near) continue;
    // a logger that repeats samples catches up by as much as it missed
    let missed = 1;
    while (i - missed > first && motion[i - missed] === motion[i - missed - 1]) missed += 1;
    const [from, to] = [Math.max(first, i - AROUND), Math.min(last, i + AROUND)];
    const pace = Math.abs(motion[to]! - motion[from]! - size) / (to - from);
    if (Math.abs(size) < PACES * missed * pace) continue;
    if (time && time[i]! - time[i - 1]! > GAP * Math.max(time[i - 1]! - time[i - 2]!, time[i + 1]! - time[i]!)) continue;
    const rise = Math.abs(force[i]! - force[i - 1]!);
    if (rise > Math.max(6 * habit.noise, 3 * habit.step, 0.01 * highest) && rise > 6 * habit.usual()) continue;
    found.push({ at: i, size });
  }
  return found.length > 20 ? [] : found;
}
