import { finding, InputError, requireBetween, requireObject, requirePair, requireWhole, type Finding, unitInWords } from '../base/index.js';
import type { UncertaintyBudget } from './Budget.js';
import { numericalTolerance } from './numericalTolerance.js';
import type { TrialDistribution } from './trialDistribution.js';

/** How a budget compares with trials. */
export interface BudgetValidation {
  /** Whether both ends of the interval agree within the tolerance. */
  readonly valid: boolean;
  /** How far the lower ends are apart [unit of the result]. */
  readonly low: number;
  /** How far the upper ends are apart [unit of the result]. */
  readonly high: number;
  /** Numerical tolerance δ of the budget's standard uncertainty [unit of the result]. */
  readonly tolerance: number;
  /** `budget-not-validated` where they do not agree. */
  readonly findings: readonly Finding[];
}

/**
 * Compares the interval of a budget with that of Monte Carlo: whether the budget may be used for such results.
 *
 * $$ d_{low} = |y - U_p - y_{low}|, \qquad d_{high} = |y + U_p - y_{high}|, \qquad d_{low},\, d_{high} \le \delta $$
 *
 * @remarks
 * δ is half of the last digit of the budget's standard uncertainty that is worth stating. Both must have the same coverage, and Monte
 * Carlo enough trials that its own error is well below δ. A valid budget may serve for similar results without trials.
 *
 * @param budget - As `uncertaintyBudget` makes it.
 * @param distribution - As `monteCarlo` or `trialDistribution` makes it; its probabilistically symmetric interval counts.
 * @param digits - Digits of the standard uncertainty that are worth stating; default 1.
 * @returns Differences, tolerance and verdict.
 * @throws {@link InputError} `missing`, `wrong-type`; `out-of-range` where the coverages differ, or for digits.
 *
 * @example
 * ```ts
 * const x = { value: 1, uncertainty: 0.1 };
 * const { interval, coverage } = required(monteCarlo(({ a, b }) => a + b, { a: x, b: x }, { trials: 20000 }));
 * validateBudget(uncertaintyBudget(({ a, b }) => a + b, { a: x, b: x }), { interval, coverage }).valid; // => true
 * ```
 *
 * @see JCGM 101:2008, validation of the GUM uncertainty framework. Checked in `test/handbook/uncertainty.test.ts`.
 */
export function validateBudget(
  budget: UncertaintyBudget,
  distribution: Pick<TrialDistribution, 'interval' | 'coverage'>,
  digits = 1,
): BudgetValidation {
  const from = 'validateBudget';
  requireObject(from, 'budget', budget);
  requireObject(from, 'distribution', distribution);
  requireBetween(from, 'distribution.coverage', distribution.coverage, 0, 1);
  const [lower, upper] = requirePair(from, 'distribution.interval', distribution.interval);
  requireWhole(from, 'digits', digits, 1, 8);
  if (Math.abs(distribution.coverage - budget.coverage) > 1e-6)
    throw new InputError(
      from,
      'distribution.coverage',
      'out-of-range',
      `must be that of the budget (${budget.coverage})`,
      distribution.coverage,
    );
  const { value, expandedUncertainty, symbol = 'the result' } = budget;
  const tolerance = numericalTolerance(budget.standardUncertainty, digits);
  const low = Math.abs(value - expandedUncertainty - lower);
  const high = Math.abs(value + expandedUncertainty - upper);
  const valid = low <= tolerance && high <= tolerance;
  return {
    valid,
    low,
    high,
    tolerance,
    findings: valid ? [] : [finding('budget-not-validated', { symbol, low, high, tolerance, unit: unitInWords(budget.unit ?? '1') })],
  };
}
