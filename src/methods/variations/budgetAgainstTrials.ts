import {
  numericalTolerance,
  SURE_ERRORS,
  verdictOf,
  type BudgetValidation,
  type TrialDistribution,
  type UncertaintyBudget,
} from '../../uncertainty/index.js';
import { NOISE, REPEAT_FREEDOM } from '../budgets/noiseScatter.js';

const between = (x: number, low: number, high: number): number => Math.min(high, Math.max(low, x));

/**
 * @internal Compares a budget of a test with trials of the whole test, as `validateBudget` does, and no more than both can agree:
 *
 * - The value holds its own noise, which the trials draw anew about a record without it. So the intervals are compared about the middle of the trials,
 *   as far as noise, and what else the trials do not draw, may have moved it from the value.
 * - Lines that no trial draws (a shift by noise, a plateau) make the budget wide on purpose: then it may be wider, and not narrower.
 * - The line of the noise is known from some repeats: what that leaves open of the interval is allowed beside δ.
 */
export function budgetAgainstTrials(
  { value, standardUncertainty, expandedUncertainty, coverageFactor, lines }: UncertaintyBudget,
  { interval, intervalErrors: errors, quantiles }: TrialDistribution,
  drawn: ReadonlySet<string>,
): Omit<BudgetValidation, 'findings'> {
  const noise = lines.filter(({ input }) => input === NOISE);
  const beside = lines.filter(({ input }) => !drawn.has(input));
  const moved = SURE_ERRORS * Math.hypot(...[...noise, ...beside].map(({ contribution }) => contribution));
  const centre = between(quantiles[quantiles.length >> 1]!, value - moved, value + moved);
  const apart = (budgetIsNarrowerBy: number): number =>
    beside.length > 0 ? Math.max(0, budgetIsNarrowerBy) : Math.abs(budgetIsNarrowerBy);
  const low = apart(centre - expandedUncertainty - interval[0]);
  const high = apart(interval[1] - centre - expandedUncertainty);
  // u² has the relative standard error √(2 / ν) in its share by the noise, and u half of that
  const repeats = noise.map(({ contribution }) =>
    contribution === 0 ? 0 : (coverageFactor * contribution ** 2) / standardUncertainty / Math.sqrt(2 * REPEAT_FREEDOM),
  );
  const tolerance = numericalTolerance(standardUncertainty, 1) + SURE_ERRORS * Math.hypot(...repeats);
  const verdict = verdictOf([low, high], errors, tolerance);
  return { verdict, valid: verdict === 'valid', low, high, errors, tolerance };
}
