/** What the searches for disturbances and for bulges of the force share: the samples, the limits, and whether the motion went on meanwhile. */

/** @internal Force and motion sample by sample; a dip is looked for as a bulge of both turned backwards and upside down. */
export interface ForceAndMotion {
  readonly force: Float64Array;
  readonly motion: Float64Array;
}

/** @internal Limits of a search, as noise and steps of the record and its elastic line make them. */
export interface SearchLimits {
  /** Highest force [N]. */
  readonly highestForce: number;
  /** Slope of the elastic line of piece and frame [N per unit of the motion]. */
  readonly stiffness: number;
  /** Standard deviation of the force less its elastic part [N]. */
  readonly noise: number;
  /** Least height of a disturbance [N]. */
  readonly leastHeight: number;
  /** Two forces that differ by no more are the same but for noise [N]. */
  readonly forceDoubt: number;
  /** Two motions that differ by no more are the same but for noise [unit of the motion]. */
  readonly motionDoubt: number;
}

/** While the force is disturbed the motion keeps this share of its pace before and after at least (common practice): a fall during which it stands is friction of the drive, or relaxation. */
const LEAST_PACE = 0.5;
/** And it goes back by no more than this share of what piece and frame would spring back by for the height: a stroke of the drive goes back by all of it (common practice). */
const MOST_BACKWARD = 0.25;

/** @internal Whether the motion goes on from the sample before a disturbance to the one after it, and as far on either side. */
export function motionGoesOn(
  { motion }: ForceAndMotion,
  { motionDoubt, stiffness }: SearchLimits,
  [before, after]: readonly [number, number],
  height: number,
): boolean {
  const samples = after - before;
  const [first, last] = [Math.max(0, before - samples), Math.min(motion.length - 1, after + samples)];
  let farthest = motion[first]!;
  let backward = 0;
  for (let i = first; i <= last; i += 1) {
    farthest = Math.max(farthest, motion[i]!);
    backward = Math.max(backward, farthest - motion[i]!);
  }
  if (backward > motionDoubt + (MOST_BACKWARD * height) / stiffness) return false;
  const way = motion[after]! - motion[before]!;
  const paces = [(motion[before]! - motion[first]!) / (before - first), (motion[last]! - motion[after]!) / (last - after)];
  // at an end of the record there is no pace on one side
  return way + motionDoubt >= LEAST_PACE * samples * Math.min(...paces.filter((one) => !Number.isNaN(one)));
}

/** @internal Whether the motion keeps one pace, within a factor of two, from each of some samples to the next. */
export function motionKeepsPace({ motion }: ForceAndMotion, { motionDoubt }: SearchLimits, samples: readonly number[]): boolean {
  const [first, last] = [samples[0]!, samples[samples.length - 1]!];
  const pace = (motion[last]! - motion[first]!) / (last - first);
  return samples.slice(1).every((to, k) => {
    const from = samples[k]!;
    const [way, usual] = [motion[to]! - motion[from]!, pace * (to - from)];
    return way + motionDoubt >= LEAST_PACE * usual && way - motionDoubt <= usual / LEAST_PACE;
  });
}
