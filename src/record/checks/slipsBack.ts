import { soundLength, type TensionRecord } from '../../base/index.js';
import { firstReaching, meansOf, medianOf, noiseLevel, QUARTILE, resolution } from '../../numeric/index.js';
import type { Jump } from './jumps.js';
import { SLIPPED_CHORDS, steepestChord } from '../survey/chords.js';
import type { RecordOutline } from '../survey/recordOutline.js';
import { ELASTIC_SHARE } from './suddenFalls.js';

/** Samples on either side that show a step: those up to half of the highest force, divided by this. */
const PARTS = 20;
/** Least samples on either side. */
const LEAST = 6;
/** Least step, in standard deviations of what noise makes of one. */
const DEVIATIONS = 8;
/** Least step, in spreads of the steps found elsewhere. */
const SPREADS = 8;
/** Least step, in steps of the readings. */
const STEPS = 3;
/** Share of a step that comes within three samples. */
const FOR_THE_MOST = 0.5;
/** Multiple of the elastic extension at the highest force up to which it is looked for: there is room for a toe. */
const FAR = 4;
/** Cells on either side of a place in a first look at a long record. */
const CELLS = 16;
/** Share of the least step that the first look must show for the record to be read sample by sample. */
const FIRST_LOOK = 0.5;

/**
 * Step between each sample and the one before it, by least squares of a straight line with a step over m samples on either side.
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

/** The part of a record in which slips are looked for, up to its end, and its elastic slope [N per unit of motion]. */
interface Part {
  readonly force: Float64Array;
  readonly motion: Float64Array;
  readonly stiffness: number;
  /** Noise of the force [N]. */
  readonly forceNoise: number;
  /** Samples on either side that show a step. */
  readonly beside: number;
  /** What noise and steps of the force alone ask of a step [unit of the motion]. */
  readonly floor: number;
  /** One step of the reading of the motion, found when it is asked for [unit of the motion]. */
  readonly motionStep: () => number;
}

/** The motion of a part with its steps. */
interface Stepped {
  /** Motion less its elastic part. */
  readonly rest: Float64Array;
  /** Step of that at each place. */
  readonly steps: Float64Array;
  /** Least step that nothing but a slip makes. */
  readonly least: number;
  /** Whether the piece is elastic beside a place. */
  readonly elastic: (i: number) => boolean;
  /** Whether a step back beside which the piece is elastic is as large. */
  readonly reaches: (least: number) => boolean;
}

/** The steps of a part, of means of its samples in cells; undefined where none reaches a share of the floor, and where hardly anything is elastic. */
function stepped(
  { force, motion, stiffness, forceNoise, beside, floor, motionStep }: Part,
  width: number,
  share: number,
): Stepped | undefined {
  const [F, x] = [meansOf(force, width), meansOf(motion, width)];
  const m = Math.floor(beside / width);
  const rest = new Float64Array(x.length);
  for (let i = 0; i < rest.length; i += 1) rest[i] = x[i]! - x[0]! - F[i]! / stiffness;
  const steps = stepsAlong(rest, m);
  const elastic = (i: number): boolean => {
    const rise = F[i + m - 1]! - F[i - m]!;
    return rise > 2 * DEVIATIONS * forceNoise && rise > ELASTIC_SHARE * stiffness * (x[i + m - 1]! - x[i - m]! - steps[i]!);
  };
  const reaches = (least: number): boolean => {
    for (let i = m; i + m <= rest.length; i += 1) if (-steps[i]! >= least && elastic(i)) return true;
    return false;
  };
  if (!reaches(share * floor)) return undefined;
  const own: number[] = [];
  for (let i = m; i + m <= rest.length; i += 1) if (elastic(i)) own.push(Math.abs(steps[i]!));
  if (own.length < m) return undefined;
  const noise = Math.hypot(noiseLevel(motion, 0, own.length * width), forceNoise / stiffness);
  const least = Math.max(DEVIATIONS * noise * Math.sqrt(8 / beside), (SPREADS * medianOf(own)) / QUARTILE, STEPS * motionStep(), floor);
  return { rest, steps, least, elastic, reaches };
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
  const beside = Math.max(LEAST, Math.round((firstReaching(force, highest / 2, first, end, blocks) - first) / PARTS));
  if (!(stiffness > 0) || end - first < 4 * beside) return [];

  const part: Part = {
    force: force.subarray(first, end),
    motion: motion.subarray(first, end),
    stiffness,
    forceNoise: habit.noise,
    beside,
    floor: Math.max((DEVIATIONS * habit.noise * Math.sqrt(8 / beside)) / stiffness, (STEPS * habit.step) / stiffness),
    motionStep: () => resolution(motion.subarray(0, end)),
  };
  // most records show no step that is as large as the floor, and no more of them is looked at
  const width = Math.floor(beside / CELLS);
  if (width > 1) {
    const coarse = stepped(part, width, FIRST_LOOK);
    if (!coarse?.reaches(FIRST_LOOK * coarse.least)) return [];
  }
  const fine = stepped(part, 1, 1);
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
