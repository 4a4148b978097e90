import { linearLeastSquares } from '../../numeric/index.js';
import { CORNER_PARAMETERS, neckingCorner } from './neckingCorner.js';

/** Places of the kink that are tried, away from both ends of the region by this share of it. */
const PLACES = 100;
const MARGIN = 0.1;
/** Parameters of the shape: place, height, slope and curvature on either side. */
const PARAMETERS = 6;
/** Degree of the smooth curve that a kink must be told from: one more than the quartic that the onset of necking is weighed against. */
const SMOOTH = 5;
/** By so much its criterion of Bayes and Schwarz must be better: odds of a million to one. */
const SURELY = 28;

/** Criterion of Bayes and Schwarz of a sum of squares. */
const criterion = (n: number, rest: number, parameters: number): number => n * Math.log(rest / n) + parameters * Math.log(n);

/**
 * @internal The strain at which a force that still rises begins to fall at once: two parabolas that meet there with other slopes. Neither a smooth maximum nor
 * one whose curvature jumps follows it. Undefined where these follow the samples as well, and where no kink is surer.
 */
export function neckingKink(strain: Float64Array, force: Float64Array): number | undefined {
  const n = strain.length;
  if (n <= 2 * PARAMETERS) return undefined;
  const low = strain[0]!;
  const span = strain[n - 1]! - low;
  if (!(span > 0)) return undefined;
  // about the middle, so that few digits are lost
  const u = strain.map((one) => (2 * (one - low)) / span - 1);
  const powers = Array.from({ length: SMOOTH + 1 }, (_, k) => u.map((one) => one ** k));
  let best = { rest: Infinity, place: NaN };
  for (let k = 0; k <= PLACES; k += 1) {
    const place = (1 - 2 * MARGIN) * ((2 * k) / PLACES - 1);
    const left = u.map((one) => Math.min(0, one - place));
    const right = u.map((one) => Math.max(0, one - place));
    const fit = linearLeastSquares([powers[0]!, left, left.map((one) => one * one), right, right.map((one) => one * one)], force);
    if (!fit || !(fit.residualSumOfSquares < best.rest)) continue;
    // it rises up to the kink, and less or not at all beyond
    const [, before, , beyond] = fit.parameters as [number, number, number, number];
    if (before > 0 && beyond < before / 2) best = { rest: fit.residualSumOfSquares, place };
  }
  const smooth = linearLeastSquares(powers, force)?.residualSumOfSquares ?? 0;
  const corner = neckingCorner(strain, force)?.residualSumOfSquares ?? Infinity;
  const other = Math.min(criterion(n, smooth, SMOOTH + 1), criterion(n, corner, CORNER_PARAMETERS));
  return criterion(n, best.rest, PARAMETERS) < other - SURELY ? low + (span * (best.place + 1)) / 2 : undefined;
}
