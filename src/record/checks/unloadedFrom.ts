import { clearOfNoise } from '../survey/habit.js';
import type { RecordOutline } from '../survey/recordOutline.js';

/** Least fall, as a share of the highest force. */
const SHARE = 0.01;
/** Share of the highest force below which the force let go may be what the oil held after a fracture. */
const HELD = 0.3;
/** Share of fall over stiffness by which the motion must go back: a curve hardly goes back at less than half its elastic slope. */
const ELASTIC = 0.5;
/** Share of the fall that one sample may take: a fracture takes most of it at once, a drive that lets go takes several samples. */
const AT_ONCE = 0.5;

/**
 * @internal The last sample before the drive let the force go and the motion went back elastically with it to the end of the record: a test
 * that was stopped and unloaded. The motion may go back at a fracture as well: a travel by what the frame gave, an extensometer by the part of the
 * piece that did not break. Then the force is gone at once, while a drive takes several samples.
 */
export function unloadedFrom({ force, motion, top, last, highest, habit, stiffness }: RecordOutline): number | undefined {
  if (!motion || stiffness <= 0) return undefined;
  const { values, end } = motion;
  // a motion that ends before the force is gone shows nothing of it
  if (end < last) return undefined;
  const until = Math.min(last + 1, force.length - 1, end);
  // where the motion is farthest, the last of several such samples
  let turn = top;
  for (let i = top + 1; i <= until; i += 1) if (values[i]! >= values[turn]!) turn = i;
  const fall = force[turn]! - force[until]!;
  if (force[turn]! < HELD * highest || fall < clearOfNoise(habit, SHARE * highest)) return undefined;
  const back = values[turn]! - values[until]!;
  if (back < clearOfNoise(motion, (ELASTIC * fall) / stiffness)) return undefined;
  let atOnce = 0;
  for (let i = turn; i < until; i += 1) atOnce = Math.max(atOnce, force[i]! - force[i + 1]!);
  return atOnce < AT_ONCE * fall ? turn : undefined;
}
