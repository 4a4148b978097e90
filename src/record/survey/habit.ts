import { medianChange, noiseLevel } from '../../numeric/index.js';

/** @internal How one column behaves over the loaded part. */
export interface ColumnHabit {
  /** Standard deviation of its noise [unit of the column]. */
  readonly noise: number;
  /** One step of its reading [unit of the column]; 0 where it is not stepped. */
  readonly step: number;
  /** Its usual change from sample to sample. Found when it is asked for, which is seldom: a function, since an object with a getter is slow to make. */
  readonly usual: () => number;
}

/** Noise and step of a reading. */
type Reading = Pick<ColumnHabit, 'noise' | 'step'>;

/** Places at which the usual change is taken. */
const PLACES = 501;
/** Standard deviations of the noise that nothing but an event exceeds. */
const DEVIATIONS = 10;
/** Steps of the reading that nothing but an event exceeds. */
const STEPS = 3;
/** Standard deviations within which two readings of one level lie. */
const BACK = 4;

/** @internal The habit of a column from its first to its last loaded sample. */
export const habitOf = (column: Float64Array, step: number, first: number, last: number): ColumnHabit => ({
  noise: noiseLevel(column, first, last + 1),
  step,
  usual: () => medianChange(column, first + 1, last + 1, Math.max(1, Math.floor((last - first) / PLACES))),
});

/** @internal The least change of a column that is clear of its noise and of its steps, and no less than what is asked for otherwise [unit of the column]. */
export const clearOfNoise = ({ noise, step }: Reading, least = 0, steps = STEPS): number =>
  Math.max(least, DEVIATIONS * noise, steps * step);

/** @internal A column is back at a level where it comes as near to it as this [unit of the column]. */
export const backWithin = ({ noise, step }: Reading): number => BACK * noise + step;
