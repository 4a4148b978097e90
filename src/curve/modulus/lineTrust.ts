import { PROOF_OFFSET } from '../../base/index.js';
import { slopeSpread } from './linearPart.js';
import { LEAST_WINDOW_POINTS } from '../window/windowChoice.js';
import type { ElasticLine, LinearPart, LineTrust } from './ModulusFit.js';
import type { WindowEnvelope } from './windowEnvelope.js';

const DOUBTFUL = 0.05;
const UNUSABLE = 0.2;
/** Fewer samples than this have no standard error. */
const NO_ERROR = 3;

/** @internal Trust in the 0.2 % proof strength that a line will give, the curve crossing its offset line at about this stress. */
export function lineTrust(
  { slope, relativeStandardError, points }: Pick<ElasticLine, 'slope' | 'relativeStandardError' | 'points'>,
  offsetStress: number,
  linear: LinearPart | undefined,
  envelope: WindowEnvelope | undefined,
  stepShare = 0,
): LineTrust {
  const leverage = offsetStress / slope / PROOF_OFFSET;
  const fragile = envelope?.verdict === 'fragile';
  const doubt = Math.max(relativeStandardError, linear?.share ?? 0, fragile ? slopeSpread(envelope, slope) : 0, stepShare);
  const offsetDoubt = leverage * doubt;
  const shaken = fragile || linear?.verdict !== 'found' || points < LEAST_WINDOW_POINTS;
  const unusable = offsetDoubt > UNUSABLE || points < NO_ERROR;
  return { leverage, offsetDoubt, verdict: unusable ? 'unusable' : shaken || offsetDoubt > DOUBTFUL ? 'doubtful' : 'sound' };
}
