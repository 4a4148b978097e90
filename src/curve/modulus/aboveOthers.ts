import { isGiven } from './linearPart.js';
import type { AboveOthers, ElasticLine, LineExplanation } from './ModulusFit.js';
import { slopeDoubt } from './slopeDoubt.js';
import { WINDOW_SHARE } from '../window/windowChoice.js';

/** Twice what an extensometer of class 1 is allowed to be off (ISO 9513): once for the window, once for the others. */
const ALLOWED = 0.02;
/** Standard uncertainties of the slope by its scatter. */
const SURE = 1.5;

/**
 * @internal Whether a searched line that rises by so much [MPa] is steeper than all windows of the lower half, where a straight part is as steep. What noise and
 * steps of the strain take off the shorter ones goes by the square, and by the power 3/2, of how much shorter they are, and is allowed.
 */
export function aboveOthers(
  line: Pick<ElasticLine, 'criterion' | 'offsetStress' | 'points' | 'slope' | 'standardError'>,
  rise: number,
  {
    envelope,
    residuals,
    noiseFlattening,
    strainSteps,
    remainingToe,
  }: Pick<LineExplanation, 'envelope' | 'residuals' | 'noiseFlattening' | 'strainSteps' | 'remainingToe'>,
): AboveOthers | undefined {
  const { criterion, offsetStress, slope } = line;
  // a toe that reaches so far makes the others flat
  if (!envelope || remainingToe || offsetStress === undefined || isGiven(line)) return undefined;
  const { spanShare = WINDOW_SHARE } = criterion as { readonly spanShare?: number };
  const longer = spanShare > 0 ? Math.max(1, rise / (spanShare * offsetStress)) : 1;
  const allowed = ALLOWED + (noiseFlattening?.slopeShare ?? 0) * longer ** 2 + (strainSteps?.slopeShare ?? 0) * longer ** 1.5;
  const [lowest, highest] = envelope.slope;
  if (slope <= highest * (1 + allowed) + SURE * slopeDoubt(line, residuals)) return undefined;
  return { slopeShare: 1 - (lowest + highest) / 2 / slope };
}
