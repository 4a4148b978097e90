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

/** @internal What a first look at the columns of a record tells. */
export interface RecordSurvey {
  /** Sample of the highest force. */
  readonly top: number;
  /** One step of the reading of the force [N]; 0 where it is not stepped. */
  readonly forceStep: number;
  /** Noise of the force [N]. */
  readonly forceNoise: number;
  readonly clock: ClockSurvey | undefined;
  readonly motion: MotionSurvey | undefined;
}

/** How the motion runs; what lies beyond the highest force may go back as it likes. */
function surveyMotion(force: Float64Array, motion: Float64Array, column: MotionSurvey['column'], top: number): MotionSurvey {
  const end = soundLength(motion);
  const step = resolution(motion);
  const tolerated = Math.max(3 * step, 8 * noiseLevel(motion, 0, end));
  let farthest = motion[0]!;
  let repeated = 0;
  let backward = 0;
  let largest = 0;
  let inside = false;
  let i = 1;
  for (const last = Math.min(top, end - 1); i <= last; i += 1) {
    const x = motion[i]!;
    // as most samples do: goes on, so that it repeats nothing
    if (x > farthest) {
      inside = false;
      farthest = x;
      continue;
    }
    if (x === motion[i - 1] && force[i] === force[i - 1]) repeated += 1;
    if (x === farthest) inside = false;
    else if (farthest - x > tolerated) {
      if (!inside) backward += 1;
      inside = true;
      if (farthest - x > largest) largest = farthest - x;
    }
  }
  for (; i < end; i += 1) if (motion[i] === motion[i - 1] && force[i] === force[i - 1]) repeated += 1;
  return { column, end, step, repeated, backward, largest };
}

/** @internal The time of a record whose clock runs: it never goes back, nor stands all the while. */
export const runningTime = ({ time }: TensionRecord, { clock }: RecordSurvey): Float64Array | undefined =>
  clock?.backward === 0 && clock.usual > 0 ? time : undefined;

/** @internal Looks once at each column of a record. */
export function surveyRecord(record: TensionRecord, gap = GAP): RecordSurvey {
  const { force, time } = record;
  const clock = time && surveyClock(time, gap);
  const column = motionOf(record, ofPiece);
  const values = record[column];
  const top = maximumIndex(force);
  return {
    top,
    forceStep: resolution(force),
    forceNoise: noiseLevel(force),
    clock,
    motion: values && surveyMotion(force, values, column, top),
  };
}
