import type { BlockExtremes } from '../../numeric/index.js';
import { chordSlopes } from '../survey/chords.js';

/** The line is looked for by chords of the force over the motion that span so many of these shares of the highest force. */
const LEVELS = Array.from({ length: 29 }, (_, k) => 0.025 * (k + 2));
const SPAN = 4;
/** So many chords that agree within this share are a straight line; none below them is steeper, as those of a metal that hardens from the start are. */
const AGREEING = 3;
const ALIKE = 0.1;

/** @internal Slope of the straight part of the rise of a force over its motion; undefined where nothing shows that a part is straight. */
export function straightSlope(force: Float64Array, motion: Float64Array, top: number, blocks?: BlockExtremes): number | undefined {
  const slopes = chordSlopes({ force, blocks, first: 0 }, motion, top, LEVELS, SPAN).map((one) => one ?? 0);
  const alike = (one: number, steepest: number): boolean => one <= steepest && one >= (1 - ALIKE) * steepest;
  return [...slopes]
    .sort((a, b) => b - a)
    .find((steepest) => {
      const own = slopes.flatMap((one, k) => (alike(one, steepest) ? [k] : []));
      return steepest > 0 && own.length >= AGREEING && slopes.slice(0, own[0]).every((one) => one <= steepest);
    });
}
