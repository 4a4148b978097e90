import { OFFSET } from './coarseLine.js';

/** What yielding that has begun within a window takes off the slope of its line. */
export interface BeginningYield {
  /** Exponent N of the plastic strain, e_p = 0.002 (R/Rp0.2)^N, by the offsets of 0.05 % and 0.2 % [1]. */
  readonly exponent: number;
  /** Share of the slope that this plastic strain takes off within the window [1]. */
  readonly slopeShare: number;
}

/** The smaller of the two offsets that tell the exponent. */
const SMALL_OFFSET = OFFSET / 4;
/** From this exponent on a curve is a corner: nothing of it reaches down into a window. */
const CORNER = 100;
/** Steps over the window in which the local slopes are summed. */
const STEPS = 16;

/**
 * @internal The yielding that reaches into a window, by a power law through the plastic strains at two offsets; undefined for a curve with a corner or a yield
 * point, and where the curve does not tell both.
 *
 * $$ N = \frac{\ln 4}{\ln (R_{p0.2} / R_{p0.05})}, \qquad -\frac{\Delta m}{m} = m \, \overline{\mathrm{d}e_p / \mathrm{d}R} $$
 */
export function beginningYield(
  slope: number,
  [low, high]: readonly [number, number],
  proofOf: (offset: number) => number | undefined,
): BeginningYield | undefined {
  const proof = proofOf(OFFSET);
  const small = proofOf(SMALL_OFFSET);
  if (proof === undefined || small === undefined || small <= 0 || small >= proof) return undefined;
  const exponent = Math.log(OFFSET / SMALL_OFFSET) / Math.log(proof / small);
  if (exponent > CORNER) return undefined;
  // the slope of a least-squares line is the mean of the local ones, with weights 6 t (1 - t) over the window
  let perStress = 0;
  for (let k = 0; k < STEPS; k += 1) {
    const t = (k + 0.5) / STEPS;
    const R = Math.max(low + t * (high - low), 0);
    perStress += (((6 * t * (1 - t)) / STEPS) * exponent * OFFSET * (R / proof) ** (exponent - 1)) / proof;
  }
  return { exponent, slopeShare: slope * perStress };
}

/**
 * @internal Relative standard uncertainty of a slope by the bends of its curve: what yielding takes off it, and once more for the toe, since the steepest
 * place of a curve is where the two balance.
 */
export const bendDoubt = (found: BeginningYield | undefined): number => 2 * (found?.slopeShare ?? 0);
