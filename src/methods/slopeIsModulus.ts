import type { RecordedCurve } from '../curve/index.js';
import type { FrameShare } from './frameShare.js';
import { isCurved } from './lineFindings.js';
import type { LineNumbers } from './lineKernel.js';
import type { LineThresholds } from './thresholds.js';

/** @internal True where the strain is the piece's own: an extensometer's, or travel less a frame that takes out more than next to nothing. */
export const isStrainOfPiece = ({ basis }: Pick<RecordedCurve, 'basis'>, share: FrameShare | undefined): boolean =>
  basis !== 'travel' || (share !== undefined && !share.vanishing);

/** @internal True where the slope of the elastic line is the modulus: of the piece's own strain, on a straight line of enough samples. */
export const slopeIsModulus = (
  numbers: Pick<LineNumbers, 'line'>,
  { leastElasticPoints, slopeFall }: Pick<LineThresholds, 'leastElasticPoints' | 'slopeFall'>,
  strainOfPiece = true,
): boolean => numbers.line.ok && strainOfPiece && numbers.line.points >= leastElasticPoints && !isCurved(numbers, slopeFall);
