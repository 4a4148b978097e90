import type { RecordOutline } from '../survey/recordOutline.js';

/** Falls below so many standard deviations and steps, or this share of the highest force, are none. */
const DEVIATIONS = 10;
const STEPS = 3;
const SHARE = 0.01;
/** Below this share of the highest force what is let go may be what the oil held after a fracture. */
const HELD = 0.3;
/** An elastic piece goes back by fall over stiffness; half of it is enough, for a curve hardly goes back at less than its elastic slope. */
const ELASTIC = 0.5;
/** A fracture takes most of the force at once; a drive that lets go takes it in several samples. */
const AT_ONCE = 0.5;

/**
 * @internal The last sample before the drive let the force go and the motion went back elastically with it to the end of the record: a test
 * that was stopped and unloaded. At a fracture a motion may go back as well, by what the frame gave or, of an extensometer, by the part of the
 * piece that did not break: then the force goes at once, not in steps as a drive lets it go.
 */
export function unloadedFrom({ force, motion, top, last, highest, habit, stiffness }: RecordOutline): number | undefined {
  if (!motion || stiffness <= 0) return undefined;
  const { values, noise, step, end } = motion;
  // a motion that ends before the force is gone does not tell
  if (end < last) return undefined;
  const until = Math.min(last + 1, force.length - 1, end);
  // the farthest of the motion, the last of several
  let turn = top;
  for (let i = top + 1; i <= until; i += 1) if (values[i]! >= values[turn]!) turn = i;
  const fall = force[turn]! - force[until]!;
  if (force[turn]! < HELD * highest || fall < Math.max(DEVIATIONS * habit.noise, STEPS * habit.step, SHARE * highest)) return undefined;
  const back = values[turn]! - values[until]!;
  if (back < Math.max((ELASTIC * fall) / stiffness, STEPS * step, DEVIATIONS * noise)) return undefined;
  let atOnce = 0;
  for (let i = turn; i < until; i += 1) atOnce = Math.max(atOnce, force[i]! - force[i + 1]!);
  return atOnce < AT_ONCE * fall ? turn : undefined;
}
