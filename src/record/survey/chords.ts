import { firstReaching, ranked, type BlockExtremes } from '../../numeric/index.js';

/** What rises: force over motion, from a first sample on, the force by blocks where they are known. */
export interface Rise {
  readonly force: Float64Array;
  readonly blocks?: BlockExtremes | undefined;
  readonly first: number;
}

/**
 * @internal Slopes of the chords of force over motion between the first crossings of levels up to a sample, each over a span of levels; the levels are shares of
 * the force at that sample. Undefined where the motion does not go on over a chord.
 */
export function chordSlopes(
  { force, blocks, first }: Rise,
  motion: Float64Array,
  top: number,
  levels: readonly number[],
  span: number,
): (number | undefined)[] {
  const places: number[] = [];
  let i = first;
  for (const level of levels) {
    i = firstReaching(force, level * force[top]!, i, top + 1, blocks);
    if (i > top) break;
    places.push(i);
  }
  return places.slice(span).map((to, k) => {
    const from = places[k]!;
    const way = motion[to]! - motion[from]!;
    return way > 0 ? (force[to]! - force[from]!) / way : undefined;
  });
}

/** Levels between which the stiffness is looked for, as shares of the highest force. */
const LEVELS = Array.from({ length: 15 }, (_, k) => 0.05 * (k + 1));
/** Levels that one of its chords spans. */
const SPAN = 3;

/** @internal Chords that one slip of the extensometer can steepen at the most: those that hold it. */
export const SLIPPED_CHORDS = SPAN;

/**
 * @internal The steepest chord [N per unit of motion] on the way up to a sample: nearly the elastic stiffness; 0 where there is none. Some of the steepest may
 * be passed over, where something may have steepened them.
 */
export function steepestChord(rise: Rise, motion: Float64Array, top: number, passed = 0): number {
  const slopes = chordSlopes(rise, motion, top, LEVELS, SPAN).filter((one) => one !== undefined);
  return slopes.length === 0 ? 0 : Math.max(0, ranked(slopes, Math.max(0, slopes.length - 1 - passed)));
}
