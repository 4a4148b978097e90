import type { RemainingToe, SlopeFall } from './ModulusFit.js';
import { BANDS } from './slopeFall.js';

/** A rise of slope from band to band counts from so many standard errors on, and from this share: both bands are short, and noise that drifts bends them. */
const RISE = 4;
const LEAST = 0.1;
/** Middle of the upper band, and the step from band to band. */
const UPPER = (BANDS[1] + BANDS[2]) / 2;
const STEP = BANDS[1] - BANDS[0];
/** Least distance of window and upper band, in steps, that tells how fast a toe ends; nearer it is taken to halve from step to step. */
const APART = 0.5;
const HALF = 0.5;
/** A toe that ends more slowly is no toe: all of the curve bends. */
const SLOWEST = 0.9;
const ROUNDS = 30;

/**
 * @internal What is left of a toe in a window whose middle lies at a share of the offset stress; undefined where the slope does not rise over the bands below.
 *
 * $$ \frac1{m_1} - \frac1{m_2} = a, \qquad \frac1{m_2} - \frac{1 - y}{m} = a \frac{q (1 - q^k)}{1 - q}, \qquad \frac{\Delta m}{m} = m\, a \frac{q^{k+1}}{1 - q} $$
 *
 * A toe ends as an exponential of the stress: what it adds to the strain per stress falls by the factor q from band to band, and by q^k from the upper band to the
 * window, k steps above. The slopes m₁ and m₂ of the bands and m of the window, less the share y that yielding takes off it, tell q, and with it the rest.
 */
export function remainingToe(
  slope: number,
  middle: number,
  yielded: number,
  { fall: { value, standardError }, above }: { readonly fall: SlopeFall; readonly above: number },
): RemainingToe | undefined {
  if (!(value < -Math.max(LEAST, RISE * standardError)) || !(above > 0)) return undefined;
  // 1/m₁ − 1/m₂ with m₂ = (1 − fall) m₁
  const a = -value / above;
  const k = (middle - UPPER) / STEP;
  const left = (q: number): number => (slope * a * q ** (k + 1)) / (1 - q);
  if (k < APART) return { slopeShare: left(HALF) };
  const ended = (1 / above - (1 - yielded) / slope) / a;
  const until = (q: number): number => (q * (1 - q ** k)) / (1 - q);
  if (until(SLOWEST) <= ended) return undefined;
  let [low, high] = [0, SLOWEST];
  for (let round = 0; round < ROUNDS; round += 1) {
    const q = (low + high) / 2;
    if (until(q) > ended) high = q;
    else low = q;
  }
  return { slopeShare: left(low) };
}
