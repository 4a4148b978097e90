import { departuresOf, loadingRanges } from '../../methods/index.js';
import type { Presentation } from '../words/presentation.js';
import type { TensionOrCurve } from '../words/TensionOrCurve.js';
import { MOST_POINTS } from './thinned.js';

/** A stretch of a curve as it is drawn. */
interface Stretch {
  readonly from: number;
  /** One past its last sample. */
  readonly to: number;
  readonly color: string;
  /** At most so many points. */
  readonly most: number;
}

/** Even the shortest stretch may have so many points. */
const FEWEST = 20;

/**
 * @internal The stretches in which a curve of so many samples is drawn: what was evaluated, over all of it in grey where unloadings and slips were left out,
 * and what a figure says of that. However many there are, together they have about as many points as a single line.
 */
export function evaluatedStretches(
  { interruptions = [] }: TensionOrCurve,
  end: number,
  { say, colours }: Presentation,
): { readonly stretches: readonly Stretch[]; readonly sentences: readonly string[] } {
  const whole = { from: 0, to: end, color: colours.curve, most: MOST_POINTS };
  const kept = loadingRanges(departuresOf(interruptions).excursions, end);
  if (!kept) return { stretches: [whole], sentences: [] };
  const evaluated = kept.map(([first, last]): Stretch => {
    const samples = last - first + 1;
    return { from: first, to: last + 1, color: colours.curve, most: FEWEST + Math.floor((MOST_POINTS * samples) / end) };
  });
  return {
    stretches: [{ ...whole, color: colours.axis }, ...evaluated],
    sentences: [say('Unloadings and slips that the evaluation leaves out are drawn in grey: {count}.', { count: kept.length - 1 })],
  };
}
