import { firstFall, maximumIndex } from '../../numeric/index.js';
import { backWithin } from '../survey/habit.js';
import type { OutlinedMotion, RecordOutline } from '../survey/recordOutline.js';
import type { Stretch } from './turns.js';

/** @internal Most samples over which a sudden fall goes. */
export const SUDDEN_SAMPLES = 3;
/** @internal Share of the stiffness above which a rise is elastic. */
export const ELASTIC_SHARE = 0.5;
/** Share of the fall that the rise must give back; where more is missing, the level itself goes down. */
const REGAINED = 0.8;
/** The travel leaps where, less its elastic part, it goes on by more than this multiple of fall over stiffness. */
const LEAP = 2;
/** Standard deviations by which a way stands out of the noise of the motion. */
const DEVIATIONS = 10;

/** @internal A sudden fall of the force from where it stood, not from its highest so far, that comes back along the elastic line. */
export interface SuddenFall {
  /** Sample before it, of the lowest force, and where the rise leaves the elastic line. */
  readonly range: Stretch;
  /** Fall of the force [N]. */
  readonly fall: number;
  /** Motion that was lost in it [unit of the motion]. */
  readonly way: number;
  /** True where the motion leapt ahead meanwhile. */
  readonly leaps: boolean;
}

/** @internal Sudden falls of the least size that come back along the elastic line, farther on: a slip in the grips, or a burst of yielding. */
export function suddenFalls(
  outline: RecordOutline,
  { values, noise, step, end: reads }: OutlinedMotion,
  least: number,
  first: number,
): SuddenFall[] {
  const { force, blocks, stiffness, habit } = outline;
  const end = Math.min(outline.last, reads);
  const close = backWithin(habit);
  const doubt = DEVIATIONS * noise + step;
  const found: SuddenFall[] = [];
  for (let from = first; ;) {
    const fallen = firstFall(force, least, from, end + 1, blocks);
    if (fallen > end) return found;
    from = fallen;
    const level = force[maximumIndex(force, Math.max(first, fallen - SUDDEN_SAMPLES), fallen)]! - close;
    let turn = fallen - 1;
    while (force[turn]! < level) turn -= 1;
    let valley = fallen;
    for (let i = fallen; i <= Math.min(end, turn + SUDDEN_SAMPLES); i += 1) if (force[i]! < force[valley]!) valley = i;
    const fall = force[turn]! - force[valley]!;
    // a fall that goes on from before is none that is sudden
    if (fall < least || (turn > first && force[turn - 1]! > force[turn]! + close)) continue;
    let highest = valley;
    for (let i = valley + 1; i <= end; i += 1) {
      if (force[i]! > force[highest]!) highest = i;
      const rise = force[i]! - force[valley]!;
      if (force[highest]! >= force[turn]! - close || rise < ELASTIC_SHARE * stiffness * (values[i]! - values[valley]! - doubt)) break;
    }
    if (force[highest]! - force[valley]! < REGAINED * fall) continue;
    let back = valley;
    while (force[back]! < force[highest]! - close) back += 1;
    const way = values[back]! - values[turn]! - (force[back]! - force[turn]!) / stiffness;
    // what is back as suddenly as it fell is a spike
    if (back - turn > SUDDEN_SAMPLES && way > doubt)
      found.push({ range: [turn, valley, back], fall, way, leaps: way > (LEAP * fall) / stiffness + doubt });
    from = back;
  }
}
