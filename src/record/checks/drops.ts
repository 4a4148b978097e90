import { firstFall, firstReaching } from '../../numeric/index.js';
import { findHiddenTurns } from './hiddenTurns.js';
import { clearOfNoise } from '../survey/habit.js';
import type { OutlinedMotion, RecordOutline } from '../survey/recordOutline.js';
import { ELASTIC_SHARE, SUDDEN_SAMPLES, suddenFalls, type SuddenFall } from './suddenFalls.js';
import { findTurns, type Stretch } from './turns.js';

/** @internal A fall of the force that it makes good later. */
export interface Drop {
  /** Sample of the force before it, of the lowest force, and where the force is back, or the motion where it turned; else the record's maximum. */
  readonly range: readonly [number, number, number];
  /** Fall of the force [N]. */
  readonly fall: number;
  /**
   * - `slip`: the force comes back along the elastic slope, farther on: the piece moved in the grips
   * - `reversal`: the drive went back and the force with it
   * - `backlash`: the motion went back by far more than the force asks for
   * - `yield`: the force comes back slowly: the material yields
   */
  readonly kind: 'slip' | 'reversal' | 'backlash' | 'yield';
  /** Motion that was lost [unit of the motion]; for a slip the way in the grips. */
  readonly way: number;
}

/** @internal True of a fall in which the drive went back. */
export const isOfDrive = ({ kind }: Drop): boolean => kind === 'reversal' || kind === 'backlash';

/** Least fall, as a share of the highest force. */
const SHARE = 0.01;
/** Standard deviations by which the way of a slip stands out. */
const DEVIATIONS = 10;
/** Most falls that come back elastically; more of them are serrations of the material. */
const SERRATIONS = 5;
/** Share of a fall by which one sample must exceed what the motion gives to be off itself: then the fall is its own. */
const RAISED = 0.75;

/** Falls from the highest force so far, each to where that force is reached again; what lies within turns of the drive is passed over. */
function falls({ force, blocks }: RecordOutline, least: number, turns: readonly Stretch[], first: number, top: number): Stretch[] {
  // falls of the least size count too
  if (firstFall(force, least * (1 - Number.EPSILON), first, top + 1, blocks) > top) return [];
  const found: Stretch[] = [];
  const away = new Uint8Array(force.length);
  for (const [turn, , back] of turns) away.fill(1, turn + 1, back);
  let peak = first;
  let highestYet = force[first]!;
  for (let i = first + 1; i <= top; i += 1) {
    if (away[i] === 1) continue;
    const F = force[i]!;
    if (F >= highestYet) {
      peak = i;
      highestYet = F;
      continue;
    }
    if (highestYet - F < least) continue;
    let valley = i;
    let back = i;
    while (back < top && force[back]! < highestYet) {
      back += 1;
      if (away[back] === 0 && force[back]! < force[valley]!) valley = back;
    }
    found.push([peak, valley, back]);
    peak = back;
    highestYet = force[back]!;
    i = back;
  }
  return found;
}

/** Slope of the rise after a valley: over its first part, where the recovery shows most plainly. */
function recovery({ force }: RecordOutline, motion: Float64Array, [peak, valley, back]: Stretch): number {
  const fall = force[peak]! - force[valley]!;
  let i = firstReaching(force, force[valley]! + 0.2 * fall, valley, back);
  const j = firstReaching(force, force[valley]! + 0.8 * fall, i, back);
  // a force that is back within a sample rose from the one before
  if (j === i) i = Math.max(valley, i - 1);
  const way = motion[j]! - motion[i]!;
  return way > 0 ? (force[j]! - force[i]!) / way : j > i ? Infinity : 0;
}

/** Rise of the force to a sample that its motion, to a step of its reading, does not give. */
function unexplainedRise({ force, stiffness }: RecordOutline, motion: Float64Array, step: number, at: number): number {
  return at > 0 ? force[at]! - force[at - 1]! - stiffness * (motion[at]! - motion[at - 1]! + step) : 0;
}

/** Rise before a sample over which its slope is taken, as a share of its force. */
const BEFORE = 0.2;

/** True where the piece yields already before a sample: over the last fifth of its force the rise is far from elastic. */
function yields({ force, stiffness, first }: RecordOutline, motion: Float64Array, at: number): boolean {
  let i = at;
  while (i > first && force[i]! > (1 - BEFORE) * force[at]!) i -= 1;
  return force[at]! - force[i]! < ELASTIC_SHARE * stiffness * (motion[at]! - motion[i]!);
}

/** The least way of a slip that stands out: of the noise and the steps of the motion, and of how well the force is known to be back. */
const doubtOfWay = ({ habit, stiffness }: RecordOutline, { noise, step }: OutlinedMotion): number =>
  DEVIATIONS * Math.hypot(noise, habit.noise / stiffness) + step + habit.step / stiffness;

/** A fall that the drive did not make, with its cause; undefined where nothing is to be said of it. */
function kindOf(outline: RecordOutline, motion: OutlinedMotion, range: Stretch, still: number): Drop | undefined {
  const [peak, valley, back] = range;
  const { force, stiffness } = outline;
  const { values } = motion;
  const fall = force[peak]! - force[valley]!;
  const way = values[valley]! - values[peak]!;
  if (recovery(outline, values, range) < ELASTIC_SHARE * stiffness) return { range, fall, way, kind: 'yield' };
  if (unexplainedRise(outline, values, motion.step, peak) > RAISED * fall) return undefined;
  const sudden = valley - peak <= SUDDEN_SAMPLES;
  // without a clock a slow fall at a standstill may be a pause of the hand
  if (!sudden && outline.time === undefined && Math.abs(way) <= still) return undefined;
  const lost = values[back]! - values[peak]! - (force[back]! - force[peak]!) / stiffness;
  // a piece that was unloaded and loaded again: of a slip nothing shows, as on an extensometer, which does not see the jaws
  if (lost <= doubtOfWay(outline, motion)) return { range, fall, way: Math.max(-way, fall / stiffness), kind: 'reversal' };
  // what an extensometer reads beyond yielding is strain, and the fall a serration
  const kind = motion.column !== 'travel' && yields(outline, values, peak) ? 'yield' : 'slip';
  return { range, fall, way: lost, kind };
}

/** @internal The falls of a record. */
export interface Drops {
  /** Falls whose cause is known. */
  readonly drops: readonly Drop[];
  /** Short falls of which noise hides whether the drive went back. */
  readonly untold: readonly Stretch[];
  /** Sudden falls within a longer one of the material, over which the travel leapt ahead: a slip or a burst of yielding, each written as a slip. */
  readonly leaps: readonly Drop[];
}

const within = ({ range: [turn, , back] }: SuddenFall, { range: [peak, , end] }: Drop): boolean => peak < turn && back <= end;

/** A slip on a yield plateau: the sudden fall that holds its lowest force, not all the way since the peak of yielding. */
function localised(drop: Drop, sudden: readonly SuddenFall[]): Drop {
  const own = drop.kind === 'slip' ? sudden.find((one) => within(one, drop) && one.range[1] === drop.range[1]) : undefined;
  return own ? { ...drop, range: own.range, fall: own.fall, way: own.way } : drop;
}

/** Leaps of the travel within the falls of the material, or within those whose own slip lies elsewhere. */
function leapsOf(falls: readonly Drop[], slips: readonly Drop[], turns: readonly Stretch[], sudden: readonly SuddenFall[]): Drop[] {
  const known = [...turns, ...slips.map(({ range }) => range)];
  const leaps = sudden.filter(
    (one) =>
      one.leaps && falls.some((fall) => within(one, fall)) && !known.some(([turn, , back]) => turn < one.range[2] && one.range[0] < back),
  );
  return leaps.length > SERRATIONS ? [] : leaps.map(({ range, fall, way }) => ({ range, fall, way, kind: 'slip' }));
}

/** @internal The falls of a record from a sample on, each with its cause; those that pauses and zeros set under load explain are left out. */
export function findDrops(outline: RecordOutline, explained: readonly (readonly [number, number])[], from: number): Drops {
  const { motion, force, stiffness, habit, highest } = outline;
  if (!motion || stiffness <= 0) return { drops: [], untold: [], leaps: [] };
  const { values } = motion;
  const first = Math.max(outline.first, from);
  const least = clearOfNoise(habit, SHARE * highest);
  const still = clearOfNoise(motion);
  const seen = findTurns(outline, motion, least, still, first);
  const hidden = findHiddenTurns(outline, motion, seen, first, explained);
  const turns = [...seen, ...hidden.turns].sort((a, b) => a[0] - b[0]);
  const ofDrive = turns.map((range): Drop => {
    const [turn, valley] = range;
    const fall = force[turn]! - force[valley]!;
    const way = values[turn]! - values[valley]!;
    return { range, fall, way, kind: way > (2 * fall) / stiffness + still ? 'backlash' : 'reversal' };
  });
  const isExplained = ([peak, valley]: Stretch): boolean => explained.some(([begin, end]) => begin <= valley && end >= peak);
  const others = falls(outline, least, turns, first, Math.min(outline.top, motion.end)).flatMap((range): Drop[] => {
    const drop = isExplained(range) ? undefined : kindOf(outline, motion, range, still);
    return drop ? [drop] : [];
  });
  // an extensometer does not see the jaws
  const sudden =
    motion.column === 'travel' && others.length > 0
      ? suddenFalls(outline, motion, least, others[0]!.range[0]).filter(({ range }) => !isExplained(range))
      : [];
  const local = others.map((one) => localised(one, sudden));
  const slips = local.filter(({ kind }) => kind === 'slip');
  const yielding = local.filter(({ kind }) => kind === 'yield');
  const kept = local.length - yielding.length > SERRATIONS ? yielding : local;
  return {
    drops: [...ofDrive, ...kept].sort((a, b) => a.range[0] - b.range[0]),
    untold: hidden.untold,
    leaps: leapsOf(others, slips, turns, sudden),
  };
}
