import { soundLength, type TensionRecord } from '../../base/index.js';
import { firstReaching, meansOf, medianOf, noiseLevel, QUARTILE, resolution } from '../../numeric/index.js';
import type { Jump } from './jumps.js';
import { SLIPPED_CHORDS, steepestChord } from '../survey/chords.js';
import type { RecordOutline } from '../survey/recordOutline.js';
import { ELASTIC } from './suddenFalls.js';

/** A step is told by so many samples before it and after it, a twentieth of those up to half of the highest force, but no fewer. */
const BESIDE = 20;
const LEAST = 6;
/** It is so many standard deviations of what noise makes, spreads of the steps found elsewhere, and steps of the readings. */
const DEVIATIONS = 8;
const SPREADS = 8;
const STEPS = 3;
/** It comes within three samples for the most part. */
const FOR_THE_MOST = 0.5;
/** So many times the elastic extension leave room for a toe. */
const FAR = 4;
/** A long record is looked at in so many cells for the samples on either side first, and read sample by sample where these show half of a step. */
const CELLS = 16;
const FIRST_LOOK = 0.5;

/**
 * Step between a sample and the one before it, of a straight line over as many samples on either side, by least squares; at every place.
 * A parabola makes none.
 */
function stepsAlong(rest: Float64Array, m: number): Float64Array {
  const n = rest.length;
  const steps = new Float64Array(n);
  // sums of values and of values times place before each sample
  const sums = new Float64Array(n + 1);
  const turned = new Float64Array(n + 1);
  for (let i = 0; i < n; i += 1) {
    sums[i + 1] = sums[i]! + rest[i]!;
    turned[i + 1] = turned[i]! + i * rest[i]!;
  }
  // of the places t = -m + 1/2 ... m - 1/2: sum of squares, and of |t|
  const squares = (m * (4 * m * m - 1)) / 6;
  const half = (m * m) / 2;
  for (let i = m; i + m <= n; i += 1) {
    const before = sums[i]! - sums[i - m]!;
    const after = sums[i + m]! - sums[i]!;
    const all = turned[i + m]! - turned[i - m]! - (i - 0.5) * (before + after);
    steps[i] = ((after - before) / 2 - (half / squares) * all) / (m / 2 - (half * half) / squares);
  }
  return steps;
}

/** The motion of a piece less its elastic part, its steps, how large one is that nothing else makes, and where the piece is elastic beside it. */
interface Stepped {
  readonly rest: Float64Array;
  readonly steps: Float64Array;
  readonly least: number;
  readonly elastic: (i: number) => boolean;
  /** Whether some step back beside which the piece is elastic is so large. */
  readonly reaches: (least: number) => boolean;
}

/** @internal Where the extensometers of a record slipped back, by the columns that it has. */
export type SlipsBack = Readonly<Partial<Record<'extension' | 'strain', readonly Jump[]>>>;

/** @internal {@link findSlipsBack} in each extensometer of a record. */
export const slipsBackOf = ({ extension, strain }: TensionRecord, outline: RecordOutline): SlipsBack => ({
  ...(extension && { extension: findSlipsBack(outline, extension) }),
  ...(strain && { strain: findSlipsBack(outline, strain) }),
});

/** @internal The slips where no jump is that was found otherwise. */
export const besides = (slips: readonly Jump[], jumps: readonly Jump[]): Jump[] =>
  slips.filter(({ at }) => !jumps.some((jump) => Math.abs(jump.at - at) <= 1));

/**
 * @internal Places in the elastic part where an extensometer goes back at once while the force goes on: its knife edges slipped. It is looked for in the motion
 * less its elastic part: across a straight line that is a step.
 */
export function findSlipsBack(outline: RecordOutline, motion: Float64Array): Jump[] {
  const { force, blocks, first, top, highest, habit } = outline;
  const known = outline.motion?.values === motion ? outline.motion.blocks : undefined;
  const beyond = Math.min(top, soundLength(motion) - 1) + 1;
  const stiffness = steepestChord(outline, motion, beyond - 1, SLIPPED_CHORDS);
  // far beyond the elastic extension at the highest force nothing is elastic
  const end = stiffness > 0 ? firstReaching(motion, motion[first]! + (FAR * highest) / stiffness, first, beyond, known) : beyond;
  const beside = Math.max(LEAST, Math.round((firstReaching(force, highest / 2, first, end, blocks) - first) / BESIDE));
  if (!(stiffness > 0) || end - first < 4 * beside) return [];

  // what noise and steps of the force alone ask of a step: most records show none as large, and no more of them is looked at
  const floor = Math.max((DEVIATIONS * habit.noise * Math.sqrt(8 / beside)) / stiffness, (STEPS * habit.step) / stiffness);

  /** Of means of so many samples each; undefined where none is so large, and where hardly anything is elastic. */
  const stepped = (width: number, share: number): Stepped | undefined => {
    const [F, x] = [force, motion].map((column) => meansOf(column.subarray(first, end), width)) as [Float64Array, Float64Array];
    const m = Math.floor(beside / width);
    const rest = new Float64Array(x.length);
    for (let i = 0; i < rest.length; i += 1) rest[i] = x[i]! - x[0]! - F[i]! / stiffness;
    const steps = stepsAlong(rest, m);
    const elastic = (i: number): boolean => {
      const rise = F[i + m - 1]! - F[i - m]!;
      return rise > 2 * DEVIATIONS * habit.noise && rise > ELASTIC * stiffness * (x[i + m - 1]! - x[i - m]! - steps[i]!);
    };
    const reaches = (least: number): boolean => {
      for (let i = m; i + m <= rest.length; i += 1) if (-steps[i]! >= least && elastic(i)) return true;
      return false;
    };
    if (!reaches(share * floor)) return undefined;
    const own: number[] = [];
    for (let i = m; i + m <= rest.length; i += 1) if (elastic(i)) own.push(Math.abs(steps[i]!));
    if (own.length < m) return undefined;
    const noise = Math.hypot(noiseLevel(motion, first, first + own.length * width), habit.noise / stiffness);
    const least = Math.max(
      DEVIATIONS * noise * Math.sqrt(8 / beside),
      (SPREADS * medianOf(own)) / QUARTILE,
      STEPS * resolution(motion.subarray(0, end)),
      floor,
    );
    return { rest, steps, least, elastic, reaches };
  };

  const width = Math.floor(beside / CELLS);
  if (width > 1) {
    const coarse = stepped(width, FIRST_LOOK);
    if (!coarse?.reaches(FIRST_LOOK * coarse.least)) return [];
  }
  const fine = stepped(1, 1);
  if (!fine) return [];
  const { rest, steps, least, elastic } = fine;
  const found: Jump[] = [];
  for (let i = beside; i + beside <= rest.length; i += 1) {
    if (-steps[i]! < least || !elastic(i)) continue;
    let deepest = i;
    while (i + 1 + beside <= rest.length && i + 1 < deepest + beside && -steps[i + 1]! >= least) {
      i += 1;
      if (steps[i]! < steps[deepest]!) deepest = i;
    }
    const at = first + deepest;
    const sudden = rest[deepest + 1]! - rest[deepest - 2]! < FOR_THE_MOST * steps[deepest]!;
    if (sudden && motion[at]! < motion[at - 1]! && force[at]! - force[at - 1]! > -DEVIATIONS * habit.noise)
      found.push({ at, size: steps[deepest]! });
  }
  return found;
}
