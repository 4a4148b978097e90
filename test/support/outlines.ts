/** Outlines of records made by hand, so that each limit of a check is hit exactly. */
import { blockExtremes } from '../../src/numeric/index.js';
import type { OutlinedMotion, RecordOutline } from '../../src/record/survey/recordOutline.js';

/** An outline without noise and steps: loaded from the first to the last sample, with what is given in their place. */
export function outlineOf(
  force: ArrayLike<number>,
  travel: ArrayLike<number> | undefined,
  { motion, ...given }: Partial<Omit<RecordOutline, 'motion'>> & { readonly motion?: Partial<OutlinedMotion> } = {},
): RecordOutline {
  const own = Float64Array.from(force);
  const values = motion?.values ?? Float64Array.from(travel ?? []);
  const highest = own.reduce((a, b) => Math.max(a, b), 0);
  return {
    force: own,
    blocks: blockExtremes(own),
    time: undefined,
    motion: travel && {
      column: 'travel',
      values,
      blocks: blockExtremes(values),
      end: travel.length - 1,
      noise: 0,
      step: 0,
      usual: () => 0,
      ...motion,
    },
    top: own.indexOf(highest),
    highest,
    first: 0,
    last: own.length - 1,
    habit: { noise: 0, step: 0, usual: () => 0 },
    stiffness: 0,
    ...given,
  };
}
