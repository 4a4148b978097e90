import type { BlockExtremes } from '../../numeric/index.js';
import { chordSlopes } from '../survey/chords.js';

/** Levels between which the line is looked for, as shares of the highest force. */
const LEVELS = Array.from({ length: 29 }, (_, k) => 0.025 * (k + 2));
/** Levels that one chord of the force over the motion spans. */
const SPAN = 4;
/** Chords that must agree to make a straight line. None at lower forces may be steeper: where a metal hardens from the start, those are. */
const AGREEING = 3;
/** Share by which a chord may be flatter than the steepest one and still agree with it. */
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
