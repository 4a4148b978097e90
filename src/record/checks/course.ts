/** @internal Force and motion as a search sees them, forwards or backwards. */
export interface Course {
  readonly force: Float64Array;
  readonly motion: Float64Array;
}

/** @internal What is known of a record. */
export interface Known {
  /** Highest force [N]. */
  readonly highest: number;
  /** Slope of the elastic line of piece and frame [N per unit of the motion]. */
  readonly stiffness: number;
  /** Standard deviation of the force less its elastic part [N]. */
  readonly noise: number;
  /** Least height of a disturbance [N]. */
  readonly least: number;
  /** Forces within this of each other are the same [N]. */
  readonly close: number;
  /** Motions within this of each other are the same [unit of the motion]. */
  readonly still: number;
}

/** The motion goes on meanwhile at this share of its pace before and after at least, and goes back by no more than this share of what the height gives. */
const GOES_ON = 0.5;
const GOES_BACK = 0.25;

/** @internal Whether the motion goes on past a bulge as before and after it. */
export function goesOn({ motion }: Course, { still, stiffness }: Known, [foot, back]: readonly [number, number], height: number): boolean {
  const span = back - foot;
  const [before, after] = [Math.max(0, foot - span), Math.min(motion.length - 1, back + span)];
  let farthest = motion[before]!;
  let backward = 0;
  for (let i = before; i <= after; i += 1) {
    farthest = Math.max(farthest, motion[i]!);
    backward = Math.max(backward, farthest - motion[i]!);
  }
  if (backward > still + (GOES_BACK * height) / stiffness) return false;
  const way = motion[back]! - motion[foot]!;
  const paces = [(motion[foot]! - motion[before]!) / (foot - before), (motion[after]! - motion[back]!) / (after - back)];
  return way + still >= GOES_ON * span * Math.min(...paces.filter((one) => !Number.isNaN(one)));
}

/** @internal Whether the motion goes on at one pace, within a factor of two, over all of some stretches. */
export function goesOnEvenly({ motion }: Course, { still }: Known, places: readonly number[]): boolean {
  const [first, last] = [places[0]!, places[places.length - 1]!];
  const pace = (motion[last]! - motion[first]!) / (last - first);
  return places.slice(1).every((to, k) => {
    const [way, usual] = [motion[to]! - motion[places[k]!]!, pace * (to - places[k]!)];
    return way + still >= usual * GOES_ON && way - still <= usual / GOES_ON;
  });
}
