import type { LineExplanation } from '../curve/index.js';
import type { LineNumbers } from './lineKernel.js';
import type { LineThresholds } from './thresholds.js';

/** @internal True where the slope of the elastic line is the modulus: of the piece's own strain, on a linear part, by enough samples. */
export const slopeIsModulus = (
  { line }: Pick<LineNumbers, 'line'>,
  { linearPart }: Pick<LineExplanation, 'linearPart'>,
  { leastElasticPoints }: Pick<LineThresholds, 'leastElasticPoints'>,
  strainOfPiece = true,
): boolean => line.ok && strainOfPiece && line.points >= leastElasticPoints && linearPart?.verdict !== 'none';
