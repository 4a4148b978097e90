import { maximumIndex } from '../../numeric/index.js';
import { contactsOf } from '../common/contactsOf.js';

/** @internal A cup in the columns of its record. */
export interface Cup {
  /** Travel at which the ball touches [mm], the frame taken out: the middle of what two laws of the first rise say. */
  readonly contact: number;
  /** Those two, the earlier first [mm]. */
  readonly between: readonly [number, number];
  /** Sample of the highest force. */
  readonly highest: number;
  /** Sample at which the force begins to fall away, and the one at which it has fallen by the share asked for. */
  readonly crack?: { readonly begins: number; readonly fallen: number } | undefined;
}

/** The fall begins where this part of it has not yet gone. */
const BEGINS = 0.25;

/** @internal Contact, maximum and crack of a cup; `travel` without the frame where that is known, `fall` the share of the force that a crack takes. */
export function cupDepth(force: Float64Array, travel: Float64Array, fall: number): Cup {
  const highest = maximumIndex(force);
  const between = contactsOf(force, travel, highest);
  const contact = (between[0] + between[1]) / 2;
  const top = force[highest]!;
  let fallen = highest;
  while (fallen < force.length && force[fallen]! > (1 - fall) * top) fallen += 1;
  if (fallen === force.length) return { contact, between, highest };
  let begins = fallen;
  while (begins > highest && force[begins]! < (1 - BEGINS * fall) * top) begins -= 1;
  return { contact, between, highest, crack: { begins, fallen } };
}
