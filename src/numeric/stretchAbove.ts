import { firstBelow } from './firstBelow.js';
import { reachedSince } from './reachedSince.js';

/** @internal First and last sample of the stretch about a sample in which a column is at or above a level, before `end`. */
export const stretchAbove = (column: Float64Array, level: number, at: number, end = column.length): readonly [number, number] => [
  reachedSince(column, level, at),
  firstBelow(column, level, at + 1, end) - 1,
];
