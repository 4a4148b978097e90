import type { LineExplanation, RecordedCurve } from '../../curve/index.js';
import type { FrameShare } from './frameShare.js';
import type { LineNumbers } from './lineKernel.js';
import type { LineThresholds } from '../common/thresholds.js';

/** @internal True where the strain is the piece's own: an extensometer's, or travel less a frame that takes out more than next to nothing. */
export const isStrainOfPiece = ({ basis }: Pick<RecordedCurve, 'basis'>, share: FrameShare | undefined): boolean =>
  basis !== 'travel' || (share !== undefined && !share.vanishing);

/** @internal A relative standard error beyond which a slope is no modulus: a tenth is also the most that steps of the strain may leave open. */
export const MOST_SCATTER = 0.1;

/** @internal True where the slope of the elastic line is the modulus: of the piece's own strain, on a part known to be linear, by enough samples of little scatter. */
export const slopeIsModulus = (
  { line }: Pick<LineNumbers, 'line'>,
  { linearPart }: Pick<LineExplanation, 'linearPart'>,
  { leastElasticPoints }: Pick<LineThresholds, 'leastElasticPoints'>,
  strainOfPiece = true,
): boolean =>
  line.ok &&
  strainOfPiece &&
  line.points >= leastElasticPoints &&
  line.relativeStandardError <= MOST_SCATTER &&
  linearPart?.verdict === 'found';
