import { soundLength } from '../../base/index.js';
import { firstChange, noiseLevel, resolution } from '../../numeric/index.js';
import { clearOfNoise } from '../survey/habit.js';
import type { RecordOutline } from '../survey/recordOutline.js';

/** @internal A motion that jumps between two samples while the force goes on as before. */
export interface Jump {
  /** The sample after the jump. */
  readonly at: number;
  /** Its size [unit of the motion]. */
  readonly size: number;
}

/** Least jump, as a multiple of the largest change near it. */
const TIMES = 5;
/** Samples on either side whose changes are near. */
const NEAR = 5;
/** Least jump, as a multiple of what the motion does in a sample around there. */
const PACES = 10;
/** Samples on either side over which that pace is taken. */
const AROUND = 25;
/** Least jump, in steps of the reading. */
const STEPS = 5;
/** Least jump, as a share of the whole way. */
const SHARE = 0.003;
/** A time step that is longer than its neighbours by this factor explains a jump. */
const GAP = 4;
/** More jumps than this are the way of the motion, and none of them counts. */
const MOST = 20;

/** @internal Jumps of a motion in the loaded part without one of the force. */
export function findJumps(outline: RecordOutline, motion: Float64Array): Jump[] {
  const { force, time, first, habit, highest } = outline;
  const last = Math.min(outline.last, soundLength(motion) - 1);
  const end = last - 1;
  const blocks = outline.motion?.values === motion ? outline.motion.blocks : undefined;
  const next = (change: number, from: number): number => firstChange(motion, change, from, end, blocks);
  // most motions have no such change at all, and their noise and steps need not be found
  const share = SHARE * Math.abs(motion[last]! - motion[first]!);
  if (next(share, first + 2) >= end) return [];
  const reading = { noise: noiseLevel(motion, first, last + 1), step: resolution(motion.subarray(0, last + 1)) };
  const least = clearOfNoise(reading, share, STEPS);
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
  return found.length > MOST ? [] : found;
}
