import { aboveSince, mean, median } from '../../numeric/index.js';
import type { RecordOutline } from '../survey/recordOutline.js';

/** @internal What the force reads when nothing pulls. */
export interface ZeroSurvey {
  /** First sample that counts: after a step of the zero while nothing moved (someone pressed tare), else 0. */
  readonly from: number;
  /** Size of that step [N], where there was one. */
  readonly tareStep: number | undefined;
  /** Force before loading [N], where the record has a stretch of it; and the middle of that stretch, as a sample. */
  readonly before: number | undefined;
  readonly beforeAt: number;
  /** Force after fracture [N], where the record goes on; and the middle of that stretch, as a sample. */
  readonly after: number | undefined;
  readonly afterAt: number;
}

/** Least samples of a level. */
const LEAST = 5;
/** Standard deviations of the noise within which a level is flat. */
const FLAT = 5;
/** Least step of the zero, as a share of the highest force. */
const STEP_SHARE = 0.002;
/** Share of the highest force above which the piece is being loaded. */
const LOADING = 0.1;
/** Share of the usual change from sample to sample that a drifting zero stays below. */
const CREEP = 0.05;

/** True where the force stays at one level from one sample to another (end excluded). */
function isFlat(force: Float64Array, from: number, to: number, tolerance: number): boolean {
  const level = mean(force.subarray(from, to));
  for (let i = from; i < to; i += 1) if (Math.abs(force[i]! - level) > tolerance) return false;
  return true;
}

/** The sample after the last step of the force between two flat levels, before the loading. */
function tareStepAt({ force, blocks, habit, highest, top, motion, stiffness }: RecordOutline): number {
  const tolerance = Math.max(FLAT * habit.noise, 1.5 * habit.step, 1e-9 * highest);
  const least = Math.max(2 * tolerance, STEP_SHARE * highest);
  // the loading begins where the force leaves the lower part for good
  const end = aboveSince(force, LOADING * highest, top, blocks);
  for (let i = end - LEAST; i >= LEAST; i -= 1) {
    if (Math.abs(force[i]! - force[i - 1]!) < least) continue;
    if (!isFlat(force, i - LEAST, i, tolerance) || !isFlat(force, i, i + LEAST, tolerance)) continue;
    const moved = motion ? Math.abs(motion.values[i + 1]! - motion.values[i - 2]!) : 0;
    // a drive that pulls would raise the force by as much over that way
    if (0.2 * moved * stiffness < least) return i;
  }
  return 0;
}

/** Level of the force from a sample on, as long as it is flat; undefined for fewer than ten samples. */
function levelBefore(
  { force, habit, highest, top }: RecordOutline,
  from: number,
): { readonly level: number; readonly at: number } | undefined {
  const tolerance = Math.max(FLAT * habit.noise, 1.5 * habit.step, 0.001 * highest);
  const start = median(force.subarray(from, Math.min(from + 2 * LEAST, top)));
  let end = from;
  while (end < top && Math.abs(force[end]! - start) <= tolerance) end += 1;
  if (end - from < 2 * LEAST) return undefined;
  // the last quarter may be the beginning of the loading; and a rise within the stretch is loading, not zero
  const usable = from + Math.ceil(0.75 * (end - from));
  const half = (from + usable) >> 1;
  const drift = Math.abs(mean(force.subarray(half, usable)) - mean(force.subarray(from, half)));
  const scatter = (3 * Math.max(habit.noise, habit.step)) / Math.sqrt((usable - from) / 4);
  // a zero that drifts does so far more slowly than a hand loads
  const loading = drift > Math.max(scatter, 1e-6 * highest) && drift > CREEP * habit.usual() * (half - from);
  return loading ? undefined : { level: mean(force.subarray(from, usable)), at: (from + usable - 1) / 2 };
}

/** @internal What the force reads before loading and after fracture. */
export function surveyZeros(outline: RecordOutline): ZeroSurvey {
  const { force, last } = outline;
  const step = tareStepAt(outline);
  const n = force.length;
  const tail = n - 1 - last;
  const quiet = last + 1 + (tail >> 2);
  const before = levelBefore(outline, step);
  return {
    from: step,
    tareStep: step === 0 ? undefined : mean(force.subarray(step, step + LEAST)) - mean(force.subarray(step - LEAST, step)),
    before: before?.level,
    beforeAt: before?.at ?? 0,
    // right after the fracture the train still swings
    after: tail >= LEAST ? median(force.subarray(quiet)) : undefined,
    afterAt: (quiet + n - 1) / 2,
  };
}
