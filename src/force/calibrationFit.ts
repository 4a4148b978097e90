import { fExceeds, polynomialFit, type PolynomialFit } from '../numeric/index.js';

/** @internal Checked pairs of a calibration; weights of the squared residuals, or all equal. */
export interface WeightedPairs {
  readonly indicated: Float64Array;
  readonly reference: Float64Array;
  readonly weights: Float64Array | undefined;
}

/** @internal Chance that a channel is given a higher degree than it has, at most. */
export const SIGNIFICANCE = 0.05;
const HIGHEST = 3;
/** What is left of data without scatter, as a share of the forces squared, is rounding. */
const NOTHING = 1e-24;

/** @internal The highest degree that so many pairs can show. */
export const mostDegree = ({ indicated }: WeightedPairs): number => Math.min(HIGHEST, new Set(indicated).size - 1, indicated.length - 2);

/** @internal Variance of the residuals, which of data without scatter is that of rounding. */
export const scatterOf = ({ residualSumOfSquares, degreesOfFreedom }: PolynomialFit, { reference }: WeightedPairs): number =>
  Math.max(residualSumOfSquares, NOTHING * reference.reduce((sum, F) => sum + F * F, 0)) / degreesOfFreedom;

/**
 * @internal The polynomial of a degree, or of the one that F-tests choose: it is raised from 1 while a higher one lowers the sum of squares by more than
 * chance would. The tests share their level (Bonferroni), so that together they raise the degree of a straight line no more often than the level.
 */
export function calibrationFit(pairs: WeightedPairs, wanted: number | undefined): { readonly degree: number; readonly fit: PolynomialFit } {
  const { indicated, reference, weights } = pairs;
  const fitOf = (degree: number): PolynomialFit => polynomialFit(indicated, reference, degree, weights);
  let degree = wanted ?? 1;
  let fit = fitOf(degree);
  const most = mostDegree(pairs);
  if (wanted === undefined)
    for (let next = 2; next <= most; next += 1) {
      const higher = fitOf(next);
      const gain = (fit.residualSumOfSquares - higher.residualSumOfSquares) / (next - degree);
      const chance = fExceeds(gain / scatterOf(higher, pairs), next - degree, higher.degreesOfFreedom);
      if (chance < SIGNIFICANCE / (most - 1)) [degree, fit] = [next, higher];
    }
  return { degree, fit };
}
