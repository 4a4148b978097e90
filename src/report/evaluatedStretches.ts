import { departuresOf, loadingRanges } from '../methods/index.js';
import type { Presentation } from './presentation.js';
import type { TensionOrCurve } from './TensionOrCurve.js';

/** A stretch of a curve: its first sample, one past its last, and its colour. */
type Stretch = readonly [from: number, to: number, color: string];

/**
 * @internal The stretches in which a curve of so many samples is drawn: what was evaluated, over all of it in grey where unloadings and slips were left out,
 * and what a figure says of that.
 */
export function evaluatedStretches({ interruptions = [] }: TensionOrCurve, end: number, { say, colours }: Presentation) {
  const kept = loadingRanges(departuresOf(interruptions).excursions, end);
  if (!kept) return { stretches: [[0, end, colours.curve]] as const satisfies readonly Stretch[], sentences: [] };
  const evaluated = kept.map(([first, last]): Stretch => [first, last + 1, colours.curve]);
  return {
    stretches: [[0, end, colours.axis], ...evaluated] satisfies readonly Stretch[],
    sentences: [say('Unloadings and slips that the evaluation leaves out are drawn in grey: {count}.', { count: kept.length - 1 })],
  };
}
