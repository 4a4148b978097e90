import type { StressStrainCurve } from '../../base/index.js';
import type { ElasticLine } from '../../curve/index.js';

/** @internal The line with another slope, turned about the middle of its window. */
export function turned<T extends ElasticLine>(line: T, { strain }: StressStrainCurve, factor: number): T {
  const middle = (strain[line.first]! + strain[line.last]!) / 2;
  const slope = factor * line.slope;
  const intercept = line.intercept + (line.slope - slope) * middle;
  return { ...line, slope, intercept, strainShift: -intercept / slope };
}
