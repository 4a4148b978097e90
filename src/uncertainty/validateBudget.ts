import {
  finding,
  InputError,
  requireBetween,
  requireNonNegative,
  requireObject,
  requirePair,
  requireWhole,
  type Finding,
  unitInWords,
} from '../base/index.js';
import type { UncertaintyBudget } from './Budget.js';
import { numericalTolerance } from './numericalTolerance.js';
import type { TrialDistribution } from './trialDistribution.js';

/** How a budget compares with trials. */
export interface BudgetValidation {
  /** `valid` where both ends of the interval agree within the tolerance, `not-valid` where one does not, `too-few-trials` where its error by the number of trials leaves that open. */
  readonly verdict: 'valid' | 'not-valid' | 'too-few-trials';
  /** Whether the verdict is `valid`. */
  readonly valid: boolean;
  /** How far the lower ends are apart [unit of the result]. */
  readonly low: number;
  /** How far the upper ends are apart [unit of the result]. */
  readonly high: number;
  /** Standard errors of both, by the number of trials [unit of the result]. */
  readonly errors: readonly [number, number];
  /** How far they may be apart: numerical tolerance δ of the budget's standard uncertainty [unit of the result]. */
  readonly tolerance: number;
  /** `budget-not-validated` where they do not agree, `budget-trials-few` where the trials do not tell. */
  readonly findings: readonly Finding[];
}

/** @internal Standard errors that make sure: of the many ends of a test hardly one is beyond by chance. */
export const SURE_ERRORS = 3;
/** Ends whose doubled standard error is within this share of δ count as known (JCGM 101, validation; from memory). */
const KNOWN = 1 / 5;

/** @internal The verdict over differences that are known to their standard errors. */
export function verdictOf(
  differences: readonly [number, number],
  errors: readonly [number, number],
  tolerance: number,
): BudgetValidation['verdict'] {
  const doubts = errors.map((error) => (2 * error <= KNOWN * tolerance ? 0 : SURE_ERRORS * error));
  if (differences.some((d, k) => d - doubts[k]! > tolerance)) return 'not-valid';
  return differences.every((d, k) => d + doubts[k]! <= tolerance) ? 'valid' : 'too-few-trials';
}

/**
 * Compares the interval of a budget with that of Monte Carlo: whether the budget may be used for such results.
 *
 * $$ d_{low} = |y - U_p - y_{low}|, \qquad d_{high} = |y + U_p - y_{high}|, \qquad d_{low},\, d_{high} \le \delta $$
 *
 * @remarks
 * δ is half of the last digit of the budget's standard uncertainty that is worth stating. Both must have the same coverage. The ends of trials have
 * standard errors s of their own: where 2 s is above δ/5, a difference counts as above δ only if it is with 3 s taken off, and as within only if it is with 3 s
 * added; else the trials are too few to tell. A valid budget may serve for similar results without trials.
 *
 * @param budget - As `uncertaintyBudget` makes it.
 * @param distribution - As `monteCarlo` or `trialDistribution` makes it; its probabilistically symmetric interval counts. Without `intervalErrors` the ends count as known.
 * @param digits - Digits of the standard uncertainty that are worth stating; default 1.
 * @returns Differences, their errors, tolerance and verdict.
 * @throws {@link InputError} `missing`, `wrong-type`; `out-of-range` where the coverages differ, or for digits.
 *
 * @example
 * ```ts
 * const x = { value: 1, uncertainty: 0.1 };
 * const trials = required(monteCarlo(({ a, b }) => a + b, { a: x, b: x }, { trials: 20000 }));
 * validateBudget(uncertaintyBudget(({ a, b }) => a + b, { a: x, b: x }), trials).verdict; // => 'valid'
 * ```
 *
 * @see JCGM 101:2008, validation of the GUM uncertainty framework. Checked in `test/handbook/uncertainty.test.ts` and `test/uncertainty/validateBudget.test.ts`.
 */
export function validateBudget(
  budget: UncertaintyBudget,
  distribution: Pick<TrialDistribution, 'interval' | 'coverage'> & Partial<Pick<TrialDistribution, 'intervalErrors'>>,
  digits = 1,
): BudgetValidation {
  const from = 'validateBudget';
  requireObject(from, 'budget', budget);
  requireObject(from, 'distribution', distribution);
  requireBetween(from, 'distribution.coverage', distribution.coverage, 0, 1);
  const [lower, upper] = requirePair(from, 'distribution.interval', distribution.interval);
  const errors = requirePair(from, 'distribution.intervalErrors', distribution.intervalErrors ?? [0, 0]);
  errors.forEach((error, k) => requireNonNegative(from, `distribution.intervalErrors[${k}]`, error));
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
  const verdict = verdictOf([low, high], errors, tolerance);
  return {
    verdict,
    valid: verdict === 'valid',
    low,
    high,
    errors,
    tolerance,
    findings: {
      valid: [],
      'not-valid': [finding('budget-not-validated', { symbol, low, high, tolerance, unit: unitInWords(budget.unit ?? '1') })],
      'too-few-trials': [finding('budget-trials-few', { symbols: symbol })],
    }[verdict],
  };
}
