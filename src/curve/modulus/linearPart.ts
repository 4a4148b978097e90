import { bendDoubt } from './beginningYield.js';
import type { ElasticLine, LinearPart, LineExplanation } from './ModulusFit.js';
import type { WindowEnvelope } from './windowEnvelope.js';

/** From which shares on there is no linear part. */
export interface LinearLimits {
  /** Share of the slope that may be lost: by a fall from 0.2-0.3 to 0.3-0.4 of the offset stress, and by yielding and toe within the window, two signs of the same thing. */
  readonly slopeFall: number;
  /** Highest less lowest slope of the envelope, over the lowest; also how far a given window may lie off it. */
  readonly slopeSpread: number;
  /** Change of slope over the window by a parabola. */
  readonly bendLimit: number;
  /** What steps of the strain reading leave open of the slope: beyond it nothing is known of a linear part. */
  readonly stepDoubt: number;
}

/**
 * @internal The limits when nothing is asked.
 *
 * A tenth of the slope is the most that a fall from one band to the next, or yielding and toe in the window, may take (common practice). A window
 * whose slope changes by 0.2 from end to end has a line that is a tenth less steep than its steeper end. Windows that lie 0.25 apart are further apart than noise and
 * a toe drive those of sound records on a hand-pumped frame. A tenth is also the most that steps may leave open: with fewer than five of them in a
 * window a line cannot be told from a curve.
 */
export const linearLimits: LinearLimits = { slopeFall: 0.1, slopeSpread: 0.25, bendLimit: 0.2, stepDoubt: 0.1 };

/** A fall counts from so many standard errors on, for both of its bands are short. */
const FALL = 4;
/** A bend of the window itself from these on: E is sooner withheld than stated where the bend cannot be told from noise. */
const BEND = 2;

/** @internal True of a line whose window somebody chose, by its samples or by limits. */
export const isGiven = ({ criterion: { by } }: Pick<ElasticLine, 'criterion'>): boolean => by !== 'lower-bound' && by !== 'relative-error';

/** How far slopes lie apart, as a share of the lower; all of it where one falls. */
const apart = (low: number, high: number): number => (low > 0 ? high / low - 1 : 1);

/** @internal How far the slopes of an envelope and of a line by the same bounds lie apart, as a share of the lowest; all of it where one falls. */
export const slopeSpread = ({ slope: [low, high] }: Pick<WindowEnvelope, 'slope'>, own = low): number =>
  apart(Math.min(low, own), Math.max(high, own));

/** How far a line lies off all slopes of an envelope, as a share of the lower one. */
const offOthers = ({ slope: [low, high] }: Pick<WindowEnvelope, 'slope'>, own: number): number =>
  own < low ? apart(own, low) : own > high ? apart(high, own) : 0;

/**
 * A window that rises by half as much again as the least rise (0.2), and is as steep as any other, is a linear part by itself: what lies below it
 * is a toe. On curves without one the steepest window is as short as the bounds allow.
 */
const LONG = 0.3;
const AS_STEEP = 0.95;

/**
 * @internal Whether there is a linear part, by what explains a line that rises by a share of the offset stress, its window searched or `given`; undefined where nothing of it is known, as by a strain of too few steps.
 *
 * The envelope sees what the fall misses: a toe that flattens the lower band, and a fall that drowns in noise. Where a toe and yielding balance, so that
 * windows agree on a slope that is too low, the power law of the yielding still tells it.
 */
export function linearPart(
  { slope, rise, given = false }: { readonly slope: number; readonly rise: number; readonly given?: boolean },
  {
    slopeFall: fall,
    envelope,
    residuals,
    beginningYield,
    remainingToe,
    strainSteps,
  }: Pick<LineExplanation, 'slopeFall' | 'envelope' | 'residuals' | 'beginningYield' | 'remainingToe' | 'strainSteps'>,
  limits: LinearLimits,
): LinearPart | undefined {
  if (!fall && !envelope && !residuals) return undefined;
  if (strainSteps && strainSteps.slopeShare > limits.stepDoubt) return undefined;
  if (fall && fall.value > limits.slopeFall && fall.value > FALL * fall.standardError)
    return { verdict: 'none', why: 'slope-falls', share: fall.value };
  // a window that somebody chose is no witness against the curve
  const spread = envelope ? slopeSpread(envelope, given ? undefined : slope) : 0;
  const itself = envelope && rise >= LONG && slope >= AS_STEEP * envelope.slope[1];
  if (spread > limits.slopeSpread && !itself)
    return { verdict: 'none', why: fall && fall.value < 0 ? 'toe-reaches-up' : 'windows-apart', share: spread };
  const off = envelope && given ? offOthers(envelope, slope) : 0;
  if (off > limits.slopeSpread) return { verdict: 'none', why: 'window-apart', share: off };
  const bend = residuals ? Math.abs(residuals.slopeChange) : 0;
  if (residuals && bend > limits.bendLimit && bend > BEND * residuals.slopeChangeError)
    return { verdict: 'none', why: 'window-bent', share: bend };
  const lost = bendDoubt({ beginningYield, remainingToe });
  if (lost > limits.slopeFall) return { verdict: 'none', why: 'yields-early', share: lost };
  return { verdict: 'found' };
}
