import { PROOF_OFFSET } from '../../base/index.js';
import { slopeSpread } from './linearPart.js';
import { LEAST_WINDOW_POINTS } from '../window/windowChoice.js';
import type { ElasticLine, LinearPart, LineTrust } from './ModulusFit.js';
import type { WindowEnvelope } from './windowEnvelope.js';

/** @internal Doubts of an offset, as shares of it, from which on a proof strength is doubtful, and unusable (common practice). */
export const trustLimits = { doubtful: 0.05, unusable: 0.2 } as const;
/** Fewer samples than this have no standard error. */
const NO_ERROR = 3;

type Line = Pick<ElasticLine, 'slope' | 'relativeStandardError' | 'points'>;

/** @internal How far a slope is in doubt, as a share of it: by its scatter, a curve without a linear part, other windows, or the steps of its strain, whichever is largest. */
export const slopeInDoubt = (
  { slope, relativeStandardError }: Omit<Line, 'points'>,
  linear: LinearPart | undefined,
  envelope: WindowEnvelope | undefined,
  stepShare = 0,
): number =>
  Math.max(relativeStandardError, linear?.share ?? 0, envelope?.verdict === 'fragile' ? slopeSpread(envelope, slope) : 0, stepShare);

/** @internal Trust in the 0.2 % proof strength that a line will give, the curve crossing its offset line at about this stress. */
export function lineTrust(
  line: Line,
  offsetStress: number,
  linear: LinearPart | undefined,
  envelope: WindowEnvelope | undefined,
  stepShare = 0,
): LineTrust {
  const leverage = offsetStress / line.slope / PROOF_OFFSET;
  const offsetDoubt = leverage * slopeInDoubt(line, linear, envelope, stepShare);
  const shaken = envelope?.verdict === 'fragile' || linear?.verdict !== 'found' || line.points < LEAST_WINDOW_POINTS;
  const unusable = offsetDoubt > trustLimits.unusable || line.points < NO_ERROR;
  return { leverage, offsetDoubt, verdict: unusable ? 'unusable' : shaken || offsetDoubt > trustLimits.doubtful ? 'doubtful' : 'sound' };
}
