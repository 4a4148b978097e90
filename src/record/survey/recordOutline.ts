import { soundLength, type TensionRecord } from '../../base/index.js';
import { blockExtremes, firstReaching, highestSample, median, noiseLevel, resolution, type BlockExtremes } from '../../numeric/index.js';
import { steepestChord } from './chords.js';
import { habitOf, type ColumnHabit } from './habit.js';
import { motionColumn, ofDrive } from './motionColumn.js';
import type { RecordSurvey } from './surveyRecord.js';

/** @internal The motion by which the drive is judged: travel, else extension, else strain. */
export interface OutlinedMotion extends ColumnHabit {
  readonly column: 'travel' | 'extension' | 'strain';
  readonly values: Float64Array;
  readonly blocks: BlockExtremes;
  /** Last sample that is a number; an extensometer may be taken off long before the force is gone. */
  readonly end: number;
}

/** @internal The rough shape of a record, that its checks and repairs share. */
export interface RecordOutline {
  readonly force: Float64Array;
  /** The force by blocks. */
  readonly blocks: BlockExtremes;
  readonly time: Float64Array | undefined;
  readonly motion: OutlinedMotion | undefined;
  /** Sample of the highest force, and that force [N]. */
  readonly top: number;
  readonly highest: number;
  /** First loaded sample, and the last one before the force is gone for good. */
  readonly first: number;
  readonly last: number;
  readonly habit: ColumnHabit;
  /** Steepest rise of force over motion on the way up [N per unit of motion]: nearly the elastic stiffness; 0 without motion. */
  readonly stiffness: number;
}

/** @internal Share of the highest force below which nothing is loaded: the piece is not yet pulled, or the force is gone. */
export const LOADED = 0.02;
/** Samples at the end of the record that show the level after fracture. */
const TAIL = 8;
/** Share of the highest force that the level after fracture stays below; a higher one is that of a load. */
const LOW = 0.3;
/** Standard deviations of the noise by which a loaded sample stands out of the level after fracture. */
const DEVIATIONS = 6;

/** The last sample before the force is gone for good: above the level at the end, where that is flat and far below the maximum. */
function lastLoaded(force: Float64Array, noise: number, top: number, highest: number): number {
  const n = force.length;
  const tail = force.subarray(Math.max(top + 1, n - TAIL));
  const level = tail.length === TAIL ? median(tail) : 0;
  // a tail that is not flat, or still high, is no tail
  const distinct = Math.max(LOADED * highest, DEVIATIONS * noise);
  const flat = tail.every((one) => Math.abs(one - level) < distinct);
  const zero = flat && level < LOW * highest ? level : 0;
  const loaded = zero + distinct;
  let last = n - 1;
  while (last > top && force[last]! < loaded) last -= 1;
  return last;
}

/** @internal The rough shape of a checked record; undefined where the force never rises. What a survey of it has found is not looked for again. */
export function recordOutline(record: TensionRecord, known?: RecordSurvey): RecordOutline | undefined {
  const { force, time } = record;
  const column = motionColumn(record, ofDrive);
  const values = record[column];
  const sound = values ? soundLength(values) : force.length;
  const blocks = known?.blocks.force ?? blockExtremes(force);
  const top = known?.top ?? highestSample(force, blocks);
  const highest = force[top]!;
  if (!(highest > 0)) return undefined;
  const first = firstReaching(force, LOADED * highest, 0, top, blocks);
  const last = lastLoaded(force, known?.forceNoise ?? noiseLevel(force), top, highest);
  const stepOf = (motion: Float64Array): number => (known?.motion?.column === column ? known.motion.step : resolution(motion));
  return {
    force,
    blocks,
    time,
    motion:
      values && sound > 2
        ? Object.assign(habitOf(values, stepOf(values), first, Math.min(last, sound - 1)), {
            column,
            values,
            blocks: known?.blocks[column] ?? blockExtremes(values),
            end: sound - 1,
          })
        : undefined,
    top,
    highest,
    first,
    last,
    habit: habitOf(force, known?.forceStep ?? resolution(force), first, last),
    stiffness: values ? steepestChord({ force, blocks, first }, values, Math.min(top, sound - 1)) : 0,
  };
}
