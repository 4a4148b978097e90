import { soundLength, type TensionRecord } from '../base/index.js';
import { maximumIndex, noiseLevel } from '../numeric/index.js';
import { GAP, surveyClock, type ClockSurvey } from './clock.js';
import { motionOf, ofPiece } from './motionOf.js';
import { resolution } from './resolution.js';

/** How the motion of a record runs. */
export interface MotionSurvey {
  readonly column: 'extension' | 'strain' | 'travel';
  /** One past the last sample that is a number. */
  readonly end: number;
  /** One step of the reading [its unit]; 0 where it is not stepped. */
  readonly step: number;
  /** Samples equal to the one before in force and motion. */
  readonly repeated: number;
  /** Times that it goes back before the highest force by more than its steps and noise, and the largest way. */
  readonly backward: number;
  readonly largest: number;
}

/** @internal What one walk over the columns of a record tells. */
export interface RecordSurvey {
  /** Sample of the highest force. */
  readonly top: number;
  readonly clock: ClockSurvey | undefined;
  readonly motion: MotionSurvey | undefined;
}

/** Highest force and motion in one walk; what lies beyond the highest force may go back as it likes. */
function surveyMotion(force: Float64Array, motion: Float64Array, column: MotionSurvey['column']): { top: number; motion: MotionSurvey } {
  const end = soundLength(motion);
  const step = resolution(motion);
  const tolerated = Math.max(3 * step, 8 * noiseLevel(motion, 0, end));
  let top = 0;
  let highest = force[0]!;
  let farthest = motion[0]!;
  let forceBefore = highest;
  let motionBefore = farthest;
  let repeated = 0;
  let backward = 0;
  let largest = 0;
  let inside = false;
  // as they stood at the highest force
  let backwardThere = 0;
  let largestThere = 0;
  for (let i = 1; i < end; i += 1) {
    const F = force[i]!;
    const x = motion[i]!;
    if (x === motionBefore && F === forceBefore) repeated += 1;
    forceBefore = F;
    motionBefore = x;
    if (x >= farthest) {
      inside = false;
      farthest = x;
    } else if (farthest - x > tolerated) {
      if (!inside) backward += 1;
      inside = true;
      if (farthest - x > largest) largest = farthest - x;
    }
    if (F > highest) {
      top = i;
      highest = F;
      backwardThere = backward;
      largestThere = largest;
    }
  }
  const later = end < force.length ? maximumIndex(force, Math.max(end, 1) - 1) : top;
  if (force[later]! > highest) return { top: later, motion: { column, end, step, repeated, backward, largest } };
  return { top, motion: { column, end, step, repeated, backward: backwardThere, largest: largestThere } };
}

/** @internal The time of a record whose clock runs: it never goes back, nor stands all the while. */
export const runningTime = ({ time }: TensionRecord, { clock }: RecordSurvey): Float64Array | undefined =>
  clock?.backward === 0 && clock.usual > 0 ? time : undefined;

/** @internal Walks once over force and motion, and once over time. */
export function surveyRecord(record: TensionRecord, gap = GAP): RecordSurvey {
  const { force, time } = record;
  const clock = time && surveyClock(time, gap);
  const column = motionOf(record, ofPiece);
  const motion = record[column];
  if (!motion) return { top: maximumIndex(force), clock, motion: undefined };
  return { clock, ...surveyMotion(force, motion, column) };
}
