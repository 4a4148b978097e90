import { soundLength, type TensionRecord } from '../../base/index.js';
import { firstFall, highestSample, noiseLevel, resolution, type BlockExtremes } from '../../numeric/index.js';
import { GAP_STEPS, surveyClock, type ClockSurvey } from './clock.js';
import { motionColumn, ofPiece } from './motionColumn.js';
import { recordBlocks, type RecordBlocks } from './recordBlocks.js';

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

/** @internal What a first look at the columns of a record shows. */
export interface RecordSurvey {
  /** Its columns by blocks. */
  readonly blocks: RecordBlocks;
  /** Sample of the highest force. */
  readonly top: number;
  /** One step of the reading of the force [N]; 0 where it is not stepped. */
  readonly forceStep: number;
  /** Noise of the force [N]. */
  readonly forceNoise: number;
  readonly clock: ClockSurvey | undefined;
  readonly motion: MotionSurvey | undefined;
}

/** Times that a motion goes back by more than is tolerated before it is as far again, and the largest way. */
function waysBack(motion: Float64Array, tolerated: number, end: number, blocks: BlockExtremes) {
  let [backward, largest] = [0, 0];
  const next = (from: number): number => firstFall(motion, tolerated, from, end, blocks);
  for (let from = 0, i = next(0); i < end; i = next(from)) {
    const farthest = motion[highestSample(motion, blocks, from, i)]!;
    backward += 1;
    for (; i < end && motion[i]! < farthest; i += 1) largest = Math.max(largest, farthest - motion[i]!);
    from = i;
  }
  return { backward, largest };
}

/** Samples equal to the one before. */
function repeatsOf(force: Float64Array, motion: Float64Array, end: number): number {
  let repeated = 0;
  for (let i = 1; i < end; i += 1) if (motion[i] === motion[i - 1] && force[i] === force[i - 1]) repeated += 1;
  return repeated;
}

/** How the motion runs; what lies beyond the highest force may go back as it likes. */
function surveyMotion(
  force: Float64Array,
  motion: Float64Array,
  column: MotionSurvey['column'],
  top: number,
  blocks: BlockExtremes,
): MotionSurvey {
  const end = soundLength(motion);
  const step = resolution(motion);
  const tolerated = Math.max(3 * step, 8 * noiseLevel(motion, 0, end));
  return { column, end, step, repeated: repeatsOf(force, motion, end), ...waysBack(motion, tolerated, Math.min(top + 1, end), blocks) };
}

/** @internal The time of a record whose clock runs: it never goes back, nor stands all the while. */
export const runningTime = ({ time }: TensionRecord, { clock }: RecordSurvey): Float64Array | undefined =>
  clock?.backward === 0 && clock.usual > 0 ? time : undefined;

/** @internal Looks once at each column of a record. */
export function surveyRecord(record: TensionRecord, gap = GAP_STEPS, blocks = recordBlocks(record)): RecordSurvey {
  const { force, time } = record;
  const clock = time && surveyClock(time, gap);
  const column = motionColumn(record, ofPiece);
  const values = record[column];
  const top = highestSample(force, blocks.force);
  return {
    blocks,
    top,
    forceStep: resolution(force),
    forceNoise: noiseLevel(force),
    clock,
    motion: values && surveyMotion(force, values, column, top, blocks[column]!),
  };
}
