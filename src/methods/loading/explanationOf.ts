import type { StressStrainCurve } from '../../base/index.js';
import { explainLine, type LineExplanation, type LinearLimits } from '../../curve/index.js';
import { maximumIndex } from '../../numeric/index.js';
import type { TensionNumbers } from './TensionNumbers.js';

/** @internal What explains the elastic line, on the curve whose origin the kernel moved and up to its maximum, its strain read in such steps; not needed by a repeated evaluation. */
export function explanationOf(
  { line, shift, highest }: Pick<TensionNumbers, 'line' | 'shift' | 'highest'>,
  curve: StressStrainCurve,
  strainStep: number,
  limits: LinearLimits,
): LineExplanation {
  if (!line.ok) return {};
  // a curve that an extensometer ends early may end before the highest force
  const maximum = highest < curve.stress.length ? highest : maximumIndex(curve.stress);
  return explainLine(
    curve,
    { ...line, intercept: line.intercept + line.slope * shift, strainShift: line.strainShift - shift },
    maximum,
    strainStep,
    limits,
  );
}
