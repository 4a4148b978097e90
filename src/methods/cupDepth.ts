import { lineFit, maximumIndex, noiseLevel } from '../numeric/index.js';

/** @internal A cup in the columns of its record. */
export interface Cup {
  /** Travel at which the ball touches [mm], the frame taken out. */
  readonly contact: number;
  /** Sample of the highest force. */
  readonly highest: number;
  /** Sample at which the force begins to fall away, and the one at which it has fallen by the share asked for. */
  readonly crack?: { readonly begins: number; readonly fallen: number } | undefined;
}

/** The ball touches above this share of the maximum and so many standard deviations of noise; the first rise ends at so many times that. */
const TOUCH = 0.005;
const NOISE = 6;
const FIRST_RISE = 4;
/** The fall begins where this part of it has not yet gone. */
const BEGINS = 0.25;

/** Travel at which the first rise of the force meets zero. */
function contactOf(force: Float64Array, travel: Float64Array, highest: number): number {
  const level = Math.max(TOUCH * force[highest]!, NOISE * noiseLevel(force, 0, highest + 1));
  let first = highest;
  while (first > 0 && force[first - 1]! >= level) first -= 1;
  let last = first;
  while (last < highest && force[last]! < FIRST_RISE * level) last += 1;
  const line = lineFit(travel, force, first, last);
  // a rise of one sample, or a ball that springs back, gives no line
  return line && line.slope > 0 ? -line.intercept / line.slope : travel[first]!;
}

/** @internal Contact, maximum and crack of a cup; `travel` without the frame where that is known, `fall` the share of the force that a crack takes. */
export function cupDepth(force: Float64Array, travel: Float64Array, fall: number): Cup {
  const highest = maximumIndex(force);
  const contact = contactOf(force, travel, highest);
  const top = force[highest]!;
  let fallen = highest;
  while (fallen < force.length && force[fallen]! > (1 - fall) * top) fallen += 1;
  if (fallen === force.length) return { contact, highest };
  let begins = fallen;
  while (begins > highest && force[begins]! < (1 - BEGINS * fall) * top) begins -= 1;
  return { contact, highest, crack: { begins, fallen } };
}
