import type { FindingEntry } from './FindingEntry.js';

/** @internal Findings about uncertainty. */
export const uncertaintyEntries = {
  'budget-not-linear': {
    severity: 'caution', about: 'method',
    message: 'The model bends within the uncertainty of {input}: what the budget leaves out is {share} % of the variance.',
    remedy: 'Check by Monte Carlo, and state its interval; the distribution is probably skewed.',
  },
  'one-term-dominates': {
    severity: 'note', about: 'method',
    message: '{input} makes {share} % of the variance of {symbol}.',
    remedy: 'Improve this one first; check by Monte Carlo, since its shape is the shape of the result.',
  },
  'few-degrees-of-freedom': {
    severity: 'caution', about: 'method',
    message: 'The uncertainty of {symbol} rests on few effective degrees of freedom, {freedom}: the coverage factor is {factor}.',
    remedy: 'Take more readings of what dominates, or use a pooled standard deviation.',
  },
  'uncertainty-incomplete': {
    severity: 'note', about: 'method',
    message: 'Uncertainties leave out what was not given: {missing}.',
    remedy: 'Give their uncertainties; what is left out counts as exact.',
  },
  'uncertainty-large': {
    severity: 'caution', about: 'method',
    message: 'The standard uncertainty of {input} is {share} % of its value.',
    remedy: 'See whether per cent or another unit was meant: relative uncertainties are fractions (0.005 is 0.5 %), lengths are in mm.',
  },
  'zero-uncertainty-large': {
    severity: 'caution', about: 'method',
    message: 'The standard uncertainty of the zero of the force is {share} % of the highest force.',
    remedy: 'See whether another unit was meant: it is in N, and no share of the force.',
  },
  'uncertainty-not-determined': {
    severity: 'caution', about: 'method',
    message: 'No uncertainty is stated for {symbols}: with {input} changed by however small a share of its uncertainty, the test gives no value.',
    remedy: 'State a smaller uncertainty of it, or run Monte Carlo and state its interval with the trials that failed.',
  },
  'noise-decides': {
    severity: 'caution', about: 'method',
    message: 'No uncertainty is stated for {symbols}: with other noise of the same size most repeats of the test have no such value.',
    remedy: 'Noise may have made the value: report it only where the curve shows it. Log with less noise.',
  },
  'budgets-not-linear': {
    severity: 'caution', about: 'method',
    message: 'The test answers {input} by a curve within its uncertainty: budgets leave out up to {share} % of the variance ({symbols}).',
    remedy: 'Check these by Monte Carlo, and state its intervals; the distributions are probably skewed.',
  },
  'budgets-of-few-degrees-of-freedom': {
    severity: 'caution', about: 'method',
    message: 'Uncertainties rest on few effective degrees of freedom, {freedom} at the least: {symbols}.',
    remedy: 'Take more readings of what dominates, or use a pooled standard deviation.',
  },
  'noise-correlated': {
    severity: 'caution', about: 'record',
    message: 'The noise of neighbouring samples goes together (correlation {correlation}): the elastic window follows it, and its choice is a line of the budgets.',
    remedy: 'Find the source of the slow disturbance; choose the window yourself, and wide.',
  },
  'budget-not-validated': {
    severity: 'caution', about: 'method',
    message: 'Budget and Monte Carlo differ at the ends of the interval of {symbol} by {low} and {high} {unit}, where {tolerance} {unit} is allowed.',
    remedy: 'State the interval of Monte Carlo; the model is not linear enough, or the shape not normal enough, for the budget.',
  },
  'budgets-not-validated': {
    severity: 'caution', about: 'method',
    message: 'Budget and Monte Carlo differ at the ends of the interval by more than is allowed: {symbols}.',
    remedy: 'State the intervals of Monte Carlo for these; the model is not linear enough, or the shape not normal enough, for the budget.',
  },
  'budget-trials-few': {
    severity: 'note', about: 'method',
    message: 'The trials are too few to tell whether the interval of the budget holds: {symbols}.',
    remedy: 'Run more trials where that matters; four times as many know the ends twice as well.',
  },
  'monte-carlo-not-converged': {
    severity: 'caution', about: 'method',
    message: 'Monte Carlo ended after {trials} trials before its results were stable within {tolerance}.',
    remedy: 'Allow more trials, or ask for fewer digits.',
  },
  'monte-carlo-no-variance': {
    severity: 'caution', about: 'method',
    message: '{input} has {freedom} degrees of freedom. With 2 or fewer, as of three readings, its trials have no variance: they give {symbol} no standard uncertainty, but an interval.',
    remedy: 'State the interval, and the standard uncertainty of the budget; four readings or a pooled standard deviation give trials a variance.',
  },
  'monte-carlo-trials-few': {
    severity: 'caution', about: 'method',
    message: '{trials} trials are few for an interval of {coverage} %: its ends are known from {least} on.',
    remedy: 'Run more trials, or leave their number out: the run then ends when its results are stable.',
  },
  'monte-carlo-trials-failed': {
    severity: 'caution', about: 'method',
    message: 'Trials without a value of {symbol}: {failed} of {trials}.',
    remedy: 'The distribution is of those that gave one; see whether the value exists at all within its uncertainty.',
  },
} as const satisfies Readonly<Record<string, FindingEntry>>;
