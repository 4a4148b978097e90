import { firstFall } from '../../numeric/index.js';
import { LOADED, type OutlinedMotion, type RecordOutline } from '../survey/recordOutline.js';

/** @internal An excursion: samples of where it leaves, of the lowest force in it, and of where it is back. */
export type Stretch = readonly [number, number, number];

/** @internal Share of fall over stiffness by which the motion goes back at least where the drive does: the piece is unloaded. */
export const REVERSED_SHARE = 0.5;
/** Share of its fall that the force has regained when the motion is back: a piece that was unloaded is loaded again, one that yields is not. */
const REGAINED = 0.5;

/** Where the play of a drive is taken up: the force is back before the motion has gone as far again beyond where it turned; else where it was. */
function takenUp(force: Float64Array, values: Float64Array, [turn, valley, back]: Stretch, end: number): number {
  const farthest = 2 * values[turn]! - values[valley]!;
  for (let k = back; k <= end && values[k]! <= farthest; k += 1) if (force[k]! >= force[turn]!) return k;
  return back;
}

/**
 * @internal Where the drive went back under load, each from where the motion turned to where it is back there, or the force is, whichever comes first: on a
 * plateau of yielding a force that was higher before is not reached again for long. Where a play has to be taken up first, the force is waited for. What
 * does not come back is none.
 */
export function findTurns(
  outline: RecordOutline,
  { values, blocks, end: reads }: OutlinedMotion,
  least: number,
  still: number,
  from: number,
): Stretch[] {
  const { force, highest, stiffness, top } = outline;
  const end = Math.min(outline.last, reads);
  // most motions never go back so far
  if (firstFall(values, still, from, end + 1, blocks) > end) return [];
  const found: Stretch[] = [];
  let turn = from;
  for (let i = from + 1; i <= end; i += 1) {
    // after the maximum a force that is gone has broken the piece
    if (i > top && force[i]! < LOADED * highest) break;
    if (values[i]! >= values[turn]!) {
      turn = i;
      continue;
    }
    const fall = force[turn]! - force[i]!;
    if (fall < least || values[turn]! - values[i]! <= Math.max(still, (REVERSED_SHARE * fall) / stiffness)) continue;
    let valley = i;
    let back = i;
    while (back <= end && values[back]! < values[turn]! && force[back]! < force[turn]!) {
      if (force[back]! < force[valley]!) valley = back;
      back += 1;
    }
    if (back > end) break;
    if (force[back]! - force[valley]! < REGAINED * (force[turn]! - force[valley]!)) {
      turn = back;
      i = back;
      continue;
    }
    if (force[turn]! - force[back]! >= least) back = takenUp(force, values, [turn, valley, back], end);
    found.push([turn, valley, back]);
    turn = back;
    i = back;
  }
  return found;
}
