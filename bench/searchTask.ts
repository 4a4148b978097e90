import { coarseLine } from '../src/curve/modulus/coarseLine.js';
import { leastRise, type WindowTask } from '../src/curve/window/windowTask.js';
import { maximumIndex } from '../src/numeric/index.js';

type Scoring = Pick<WindowTask, 'score' | 'slopeFor' | 'perError' | 'unit'>;
export const lowerBound: Scoring = { score: (slope, error) => slope - 4 * error, slopeFor: (score) => score, perError: () => 4, unit: 0 };
export const relativeError: Scoring = {
  score: (slope, error) => (slope > 0 ? -error / slope : -Infinity),
  slopeFor: () => 0,
  perError: (score) => -1 / score,
  unit: 1,
};

/** The search that `fitModulus` makes for a curve, for comparison with others; undefined where there is no coarse line. */
export function searchTask(
  { strain, stress }: { readonly strain: Float64Array; readonly stress: Float64Array },
  scoring = lowerBound,
): WindowTask | undefined {
  const coarse = coarseLine(strain, stress, maximumIndex(stress));
  if (!coarse) return undefined;
  const { end, slope, offsetStress } = coarse;
  let start = end;
  while (start > 0 && stress[start - 1]! >= 0.2 * offsetStress) start -= 1;
  return { strain, stress, start, end, slope, span: leastRise(0.2, offsetStress), points: 8, gap: 0, ...scoring };
}
