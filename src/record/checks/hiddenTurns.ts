import { firstFall, highestSample, mean, squaresAbout } from '../../numeric/index.js';
import { backWithin, clearOfNoise } from '../survey/habit.js';
import type { OutlinedMotion, RecordOutline } from '../survey/recordOutline.js';
import { SUDDEN_SAMPLES } from './suddenFalls.js';
import { REVERSED_SHARE, type Stretch } from './turns.js';

/** @internal Short falls of the force whose motion does not stand out of its noise sample by sample. */
export interface HiddenTurns {
  /** Those in which the drive went back, as lines through them show. */
  readonly turns: readonly Stretch[];
  /** Those of which the lines do not show it either. */
  readonly untold: readonly Stretch[];
}

/** Least fall, as a share of the highest force: 1 MPa in 400, the step that ISO 6892-1 rounds strengths to (from memory). */
const SHARE = 0.0025;
/** A fall is short as long as the piece yields by no more than this multiple of fall over stiffness. */
const SHORT = 2;
/** Standard errors by which an answer must be off to be sure (common practice). */
const SURE = 4;

/** Samples that are looked at, the motion of one less its elastic part, and the standard deviation of that. */
interface Search {
  readonly first: number;
  readonly end: number;
  readonly plastic: (i: number) => number;
  readonly deviation: number;
}

/** Short falls: each from the last sample at the level before it, over the lowest, to the first that is back there. */
function findDips(outline: RecordOutline, { first, end, plastic, deviation }: Search): Stretch[] {
  const { force, blocks, habit, highest, stiffness } = outline;
  const least = clearOfNoise(habit, SHARE * highest);
  const found: Stretch[] = [];
  for (let from = first; ;) {
    const fallen = firstFall(force, least, from, end + 1, blocks);
    if (fallen > end) return found;
    const level = force[highestSample(force, blocks, from, fallen)]! - backWithin(habit);
    let turn = fallen;
    while (force[turn]! < level) turn -= 1;
    let valley = fallen;
    let back = fallen;
    for (; back <= end && force[back]! < level; back += 1) {
      if (force[back]! < force[valley]!) valley = back;
      const elastic = (force[turn]! - force[valley]!) / stiffness;
      if (plastic(back) - plastic(turn) > SHORT * elastic + 2 * SURE * deviation) break;
    }
    // what is back as soon as a sudden fall goes is a spike
    const dips = back <= end && force[back]! >= level;
    if (dips && back - turn > SUDDEN_SAMPLES) found.push([turn, valley, back]);
    // a fall that is none hides no other in it
    from = dips ? back : fallen;
  }
}

/** A dip, what the piece yielded in it, as a share of what its fall gives elastically, and the standard error of that. */
interface Yielded {
  readonly dip: Stretch;
  readonly share: number;
  readonly error: number;
}

/**
 * The share and its error, by a line through the plastic motion over the greatest elastic fall so far: what yields, slips or relaxes goes on with it, and
 * what is loaded again stays. The motion before the dip is of no use, for a hand does not go on evenly.
 */
function yieldedIn({ force, stiffness }: RecordOutline, { plastic, deviation }: Search, dip: Stretch): Yielded {
  const [turn, , back] = dip;
  const fallen = new Float64Array(back - turn);
  const yielded = new Float64Array(back - turn);
  for (let i = turn; i < back; i += 1) {
    fallen[i - turn] = Math.max(fallen[i - turn - 1] ?? 0, (force[turn]! - force[i]!) / stiffness);
    yielded[i - turn] = plastic(i);
  }
  const middle = mean(fallen);
  const spread = squaresAbout(middle, fallen);
  const product = fallen.reduce((sum, x, i) => sum + (x - middle) * yielded[i]!, 0);
  return { dip, share: product / spread, error: deviation / Math.sqrt(spread) };
}

/** The turns of one family of dips: each by its own line where that is sure, the rest together by the mean of all of them. */
function turnsAmong(yielded: readonly Yielded[]): HiddenTurns {
  const limit = 1 - REVERSED_SHARE;
  const open = yielded.filter(({ share, error }) => Math.abs(share - limit) <= SURE * error);
  const weight = open.reduce((sum, { error }) => sum + error ** -2, 0);
  const common = open.reduce((sum, { share, error }) => sum + share * error ** -2, 0) / weight;
  const scatter = open.reduce((sum, { share, error }) => sum + ((share - common) / error) ** 2, 0) / Math.max(1, open.length - 1);
  const doubt = SURE * Math.sqrt(Math.max(1, scatter) / weight);
  const all = weight > 0 && common + doubt < limit;
  const turned = yielded.filter((one) => (open.includes(one) ? all : one.share < limit));
  const untold = weight > 0 && Math.abs(common - limit) > doubt ? [] : open;
  return { turns: turned.map(({ dip }) => dip), untold: untold.map(({ dip }) => dip) };
}

/**
 * @internal Falls of which single samples do not show for noise whether the drive went back; turns that are known are left out. The motion less its
 * elastic part stands still where a piece is unloaded and loaded again, and goes on by the whole fall over the stiffness where it yields, slips or
 * relaxes: a line over the dip shows it better than a sample does, and the mean of all that are left open better still. Falls in which the motion seems to
 * rest are a family of their own: those that are no turns are pauses.
 */
export function findHiddenTurns(
  outline: RecordOutline,
  { values, noise, step, end }: OutlinedMotion,
  known: readonly Stretch[],
  first: number,
  rests: readonly (readonly [number, number])[] = [],
): HiddenTurns {
  const { force, stiffness, habit, last } = outline;
  const search: Search = {
    first,
    end: Math.min(last, end),
    plastic: (i) => values[i]! - force[i]! / stiffness,
    deviation: Math.hypot(noise, step / Math.sqrt(12), habit.noise / stiffness),
  };
  const moving: Yielded[] = [];
  const resting: Yielded[] = [];
  for (const dip of findDips(outline, search)) {
    if (known.some(([turn, , back]) => turn < dip[2] && dip[0] < back)) continue;
    const family = rests.some(([begin, until]) => begin <= dip[1] && until >= dip[0]) ? resting : moving;
    family.push(yieldedIn(outline, search, dip));
  }
  const [found, rested] = [turnsAmong(moving), turnsAmong(resting)];
  return { turns: [...found.turns, ...rested.turns], untold: found.untold };
}
