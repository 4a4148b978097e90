import type { StressStrainCurve } from '../../base/index.js';
import { proofStrengthKernel, trustLimits, type ElasticLine } from '../../curve/index.js';

/** Stresses at an offset that lie farther apart, as a share of the lowest, are not known (common practice); on a level of yielding they agree however far the offset moves. */
const APART = 0.01;

/** @internal What a doubt that moves an offset by a share of it weighs, by the stresses that it leaves open [MPa]: where they agree, the strength is known. */
export function offsetWeight(share: number, stresses: readonly number[]): 'note' | 'caution' | 'fault' {
  if (Math.max(...stresses) <= (1 + APART) * Math.min(...stresses)) return 'note';
  return share > trustLimits.unusable ? 'fault' : 'caution';
}

/**
 * @internal Lowest and highest stress at an offset where the elastic line is turned about the middle of its window by a share of its slope, either way [MPa]: between the end of
 * the window and the highest stress, where a line does not meet the curve.
 */
export function turnedStrengths(
  curve: StressStrainCurve,
  { slope, first, last }: Pick<ElasticLine, 'slope' | 'first' | 'last'>,
  {
    stress,
    offset,
    highest,
    doubt,
  }: { readonly stress: number; readonly offset: number; readonly highest: number; readonly doubt: number },
): readonly [number, number] {
  const middle = (curve.strain[first]! + curve.strain[last]!) / 2;
  const range = { from: first, peak: highest, resolution: 0, end: highest + 1 };
  const turned = (factor: number): number | undefined => {
    if (factor <= 0) return undefined;
    const found = proofStrengthKernel(curve, { slope: factor * slope, shift: middle * (1 - 1 / factor), offset }, range);
    return found.ok ? found.stress : undefined;
  };
  // a flatter line meets the curve later
  const [flatter, steeper] = [turned(1 - doubt) ?? curve.stress[highest]!, turned(1 + doubt) ?? curve.stress[last]!];
  return [Math.min(stress, flatter, steeper), Math.max(stress, flatter, steeper)];
}
