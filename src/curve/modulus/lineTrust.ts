import { PROOF_OFFSET } from '../../base/index.js';
import { slopeSpread, type LinearPart } from './linearPart.js';
import { POINTS } from '../window/windowChoice.js';
import type { ElasticLine } from './ModulusFit.js';
import type { WindowEnvelope } from './windowEnvelope.js';

/** Whether the 0.2 % proof strength of a line can be trusted, told before it is used. */
export interface LineTrust {
  /** Elastic strain at the crossing over the offset, λ [1]. */
  readonly leverage: number;
  /**
   * What the doubt of the slope moves the offset by, as a share of it: λ times S_m(rel), or times the share by which other windows' slopes
   * disagree, the curve is bent, or steps of the strain reading leave the slope open, whichever is larger.
   */
  readonly offsetDoubt: number;
  /**
   * `sound` up to 5 % of the offset, `doubtful` up to 20 %, beyond that `unusable` (common practice). Never `sound` without a linear part that is known,
   * with a fragile envelope, or with fewer than 8 samples; two samples have no standard error, so their line is `unusable`.
   */
  readonly verdict: 'sound' | 'doubtful' | 'unusable';
}

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
  const shaken = fragile || linear?.verdict !== 'found' || points < POINTS;
  const unusable = offsetDoubt > UNUSABLE || points < NO_ERROR;
  return { leverage, offsetDoubt, verdict: unusable ? 'unusable' : shaken || offsetDoubt > DOUBTFUL ? 'doubtful' : 'sound' };
}
