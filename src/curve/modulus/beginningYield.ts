import { PROOF_OFFSET } from '../../base/index.js';
import type { BeginningYield, LineExplanation } from './ModulusFit.js';

/** Offsets below that of the proof strength, the larger first: one tells the exponent, the other whether it holds further down. */
const SMALL_OFFSETS = [PROOF_OFFSET / 4, PROOF_OFFSET / 20] as const;
/**
 * A curve this sharp, or this much sharper between the smaller offsets than between the larger, has a corner: nothing of it reaches down into a window. Between
 * 0.01 and 0.05 % a corner with Hollomon's law behind it, n from 0.1 to 0.5, is 2.0 to 2.5 times as sharp; a power law is as sharp, up to 1.3 times where noise
 * and a line that is too flat disturb it.
 */
const CORNER = 100;
const SHARPER = 1.6;
/** Steps over the window in which the local slopes are summed. */
const STEPS = 16;

/**
 * @internal The yielding that reaches into a window, by a power law through the plastic strains at the offsets of 0.05 % and 0.2 %; undefined for a
 * curve with a corner or a yield point, and where the curve does not tell them.
 *
 * $$ N = \frac{\ln 4}{\ln (R_{p0.2} / R_{p0.05})}, \qquad -\frac{\Delta m}{m} = m \, \overline{\mathrm{d}e_p / \mathrm{d}R} $$
 */
export function beginningYield(
  slope: number,
  [low, high]: readonly [number, number],
  proofOf: (offset: number) => number | undefined,
): BeginningYield | undefined {
  const [middle, small] = SMALL_OFFSETS;
  const [upper, at, lower] = [proofOf(PROOF_OFFSET), proofOf(middle), proofOf(small)];
  if (upper === undefined || at === undefined || lower === undefined || lower <= 0 || lower >= at || at >= upper) return undefined;
  const exponent = Math.log(PROOF_OFFSET / middle) / Math.log(upper / at);
  // hardening behind a corner is as flat as a power law
  if (exponent > CORNER || Math.log(middle / small) / Math.log(at / lower) > SHARPER * exponent) return undefined;
  // the slope of a least-squares line is the mean of the local ones, with weights 6 t (1 - t) over the window
  let perStress = 0;
  for (let k = 0; k < STEPS; k += 1) {
    const t = (k + 0.5) / STEPS;
    const R = Math.max(low + t * (high - low), 0);
    perStress += (((6 * t * (1 - t)) / STEPS) * exponent * PROOF_OFFSET * (R / upper) ** (exponent - 1)) / upper;
  }
  return { exponent, slopeShare: slope * perStress };
}

/**
 * @internal Relative standard uncertainty of a slope by the bends of its curve: what yielding takes off it, and once more for the toe, since the steepest
 * place of a curve is where the two balance; and what is left of a toe that shows below. All make it lower, so they add up.
 */
export const bendDoubt = ({ beginningYield, remainingToe }: Pick<LineExplanation, 'beginningYield' | 'remainingToe'>): number =>
  2 * (beginningYield?.slopeShare ?? 0) + (remainingToe?.slopeShare ?? 0);
