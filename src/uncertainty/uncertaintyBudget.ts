import {
  baseUnits,
  finding,
  InputError,
  requireFinite,
  requireFunction,
  requireObject,
  requireOneOf,
  requireOptions,
  requireText,
  type BaseUnit,
  type Finding,
} from '../base/index.js';
import { requireInputs, type CheckedInput } from './components.js';
import { requireCorrelations, type InputCorrelation } from './correlations.js';
import { coverageOf, requireCoverage, type CoverageOptions } from './coverageFactor.js';
import { halving } from './halving.js';
import { sensitivity, type Model } from './sensitivity.js';
import type { BudgetLine, UncertaintyBudget } from './Budget.js';
import type { UncertainInputs } from './UncertaintySource.js';

/** Options of {@link uncertaintyBudget}. */
export interface BudgetOptions extends CoverageOptions {
  /** Symbol of the result, for tables and findings. */
  readonly symbol?: string | undefined;
  /** Unit of the result. */
  readonly unit?: BaseUnit | undefined;
  /** Correlations between inputs; default none. */
  readonly correlations?: readonly InputCorrelation[] | undefined;
  /** Partial derivatives that are known; the others are taken from the model. */
  readonly sensitivities?: Readonly<Record<string, number>> | undefined;
}

/** Shares of the variance from which a finding speaks: of one line, and of what the linear model leaves out. */
const DOMINATES = 0.5;
const NOT_LINEAR = 0.02;
/** @internal Share of its value from which the doubt of a scale, a length or an area is probably per cent or another unit (common practice). */
export const LARGE_DOUBT = 0.1;
/** Effective degrees of freedom below which a factor of 2 is far off. */
const FEW = 10;
/** A second difference below this share of the value, and of the change by one u, is rounding of a linear model: some fifty units of the last digit. */
const ROUNDING = 1e-14;

/** An input with how the result answers to it. */
interface Answered extends CheckedInput {
  readonly slope: number;
  readonly bend: number;
}

/** Variance of the result. */
function varianceOf(inputs: readonly Answered[], matrix: Float64Array): number {
  const parts = inputs.map(({ slope, standardUncertainty }) => slope * standardUncertainty);
  return parts.reduce((sum, a, i) => sum + parts.reduce((inner, b, j) => inner + a * b * matrix[parts.length * i + j]!, 0), 0);
}

/** The lines of a budget. */
function linesOf(inputs: readonly Answered[], matrix: Float64Array, variance: number): BudgetLine[] {
  const n = inputs.length;
  return inputs.flatMap(({ name, unit, value, components, standardUncertainty, slope }, i) => {
    const contribution = slope * standardUncertainty;
    const tie = inputs.reduce((sum, other, j) => (i === j ? sum : sum + other.slope * other.standardUncertainty * matrix[n * i + j]!), 0);
    const cross = contribution * tie;
    const rest = variance - contribution ** 2 - 2 * cross;
    return components.map((one): BudgetLine => {
      const part = standardUncertainty > 0 ? (one.standardUncertainty / standardUncertainty) ** 2 : 0;
      const own = (slope * one.standardUncertainty) ** 2;
      // of p, the size of the contribution: where the slope falls, the tie turns
      const toHalve = halving({ own, beside: Math.max(0, contribution ** 2 - own), tie: Math.sign(slope) * tie, rest });
      return {
        input: name,
        ...(one.name === undefined ? {} : { source: one.name }),
        type: one.type,
        distribution: one.distribution,
        value,
        ...(unit === undefined ? {} : { unit }),
        standardUncertainty: one.standardUncertainty,
        ...(one.degreesOfFreedom === Infinity ? {} : { degreesOfFreedom: one.degreesOfFreedom }),
        sensitivity: slope,
        contribution: slope * one.standardUncertainty,
        share: variance > 0 ? (own + cross * part) / variance : 0,
        ...(toHalve === undefined ? {} : { toHalve }),
      };
    });
  });
}

/** Effective degrees of freedom of Welch and Satterthwaite. */
function freedomOf(lines: readonly BudgetLine[], variance: number): number {
  const sum = lines.reduce((rest, line) => rest + line.contribution ** 4 / (line.degreesOfFreedom ?? Infinity), 0);
  return sum > 0 ? variance ** 2 / sum : Infinity;
}

/**
 * An uncertainty budget by the Guide: what each input adds to the uncertainty of a result, and which one to improve.
 *
 * $$ u_c^2(y) = \sum_i \sum_j c_i c_j\, r_{ij}\, u(x_i)\, u(x_j), \qquad c_i = \frac{\partial f}{\partial x_i}, \qquad \nu_{eff} = \frac{u_c^4}{\sum_i (c_i u_i)^4 / \nu_i}, \qquad U = k\, u_c $$
 *
 * @remarks
 * The sensitivities come from the model itself, by central differences with a step of an eighth of the uncertainty and one
 * extrapolation. The model must be smooth and defined within one standard uncertainty of the estimates. k is the quantile of Student's t
 * at the effective degrees of freedom cut to a whole number; with correlated inputs the effective degrees of freedom are only a guide. A
 * line's `toHalve` tells by what its source alone must shrink for u_c to halve. Findings tell where one source makes more than half of the
 * variance, where the effective degrees of freedom are below 10, and where second-order terms exceed 2 % of the variance (the ends of the
 * interval are then off by about a third of u): check those by `monteCarlo`.
 *
 * @param model - The result as a function of the inputs by name.
 * @param inputs - For each name an estimate and where its uncertainty comes from; one source or several.
 * @param options - Symbol and unit of the result, correlations, known sensitivities, coverage.
 * @returns Value, combined and expanded uncertainty, and the lines they are made of.
 * @throws {@link InputError} `missing`, `wrong-type`, `empty`, `too-few`, `not-positive`, `out-of-range`, `ambiguous`, `unknown-option`;
 * `not-finite` also where the model gives no number at or near the estimates.
 *
 * @example
 * ```ts
 * const budget = uncertaintyBudget(({ F, d }) => F / ((Math.PI / 4) * d ** 2), {
 *   F: { value: 22619, uncertainty: { halfWidth: 226 } },
 *   d: { value: 8, uncertainty: [{ standardDeviation: 0.006, count: 3 }, { halfWidth: 0.01 }] },
 * });
 * budget.standardUncertainty; // => 2.704
 * budget.lines[0]?.share; // => 0.922
 * ```
 *
 * @see JCGM 100:2008, determining combined standard uncertainty; annex G. Checked in `test/handbook/uncertainty.test.ts`.
 */
export function uncertaintyBudget<Name extends string>(
  model: (inputs: Readonly<Record<Name, number>>) => number,
  inputs: UncertainInputs<Name>,
  options: BudgetOptions = {},
): UncertaintyBudget {
  const from = 'uncertaintyBudget';
  return budgetOf(from, model, requireInputs(from, inputs), options);
}

const optionNames = ['symbol', 'unit', 'correlations', 'sensitivities', 'coverage', 'coverageFactor'];

/** @internal {@link uncertaintyBudget} of checked inputs; with given sensitivities the curvature of the model over one u may be given too. */
export function budgetOf(
  from: string,
  model: Model,
  inputs: readonly CheckedInput[],
  options: BudgetOptions,
  bends: Readonly<Record<string, number>> = {},
): UncertaintyBudget {
  requireOptions(from, options, optionNames);
  requireFunction(from, 'model', model);
  if (options.symbol !== undefined) requireText(from, 'options.symbol', options.symbol);
  if (options.unit !== undefined) requireOneOf(from, 'options.unit', options.unit, baseUnits);
  const coverage = requireCoverage(from, options);
  const known = requireObject(from, 'options.sensitivities', options.sensitivities ?? {}) as Readonly<Record<string, number>>;
  requireOptions(
    from,
    known,
    inputs.map(({ name }) => name),
    'options.sensitivities',
  );
  for (const [name, c] of Object.entries(known)) requireFinite(from, `options.sensitivities.${name}`, c);
  const { matrix, tied } = requireCorrelations(from, inputs, options.correlations);

  const value = model(Object.fromEntries(inputs.map(({ name, value: x }) => [name, x])));
  if (!Number.isFinite(value)) throw new InputError(from, 'model', 'not-finite', 'must give a number at the estimates', value);
  const answered: Answered[] = inputs.map((input) => {
    const slope = known[input.name];
    return {
      ...input,
      ...(slope === undefined ? sensitivity(from, model, inputs, input, value) : { slope, bend: bends[input.name] ?? 0 }),
    };
  });
  const variance = Math.max(0, varianceOf(answered, matrix));
  const standardUncertainty = Math.sqrt(variance);
  const lines = linesOf(answered, matrix, variance);
  const freedom = freedomOf(lines, variance);
  const k = coverageOf(coverage, freedom);
  const dominant = variance > 0 ? lines.reduce((best, line, i) => (line.share > lines[best]!.share ? i : best), 0) : undefined;
  const { symbol = 'the result', unit } = options;

  const findings: Finding[] = inputs
    .filter((one) => one.positive === true && one.standardUncertainty > LARGE_DOUBT * one.value)
    .map((one) => finding('uncertainty-large', { input: one.name, share: (100 * one.standardUncertainty) / one.value }));
  // the change by one u counts as well: even where it cancels in the sum, it was rounded
  const straight = (one: Answered): boolean =>
    Math.abs(one.bend) <=
    ROUNDING * Math.max(Math.abs(value), Math.abs(one.value * one.slope), Math.abs(one.slope) * one.standardUncertainty);
  const curved = answered
    .filter((one) => !straight(one))
    .reduce<Answered | undefined>((worst, one) => (worst && Math.abs(worst.bend) >= Math.abs(one.bend) ? worst : one), undefined);
  // a normal input with f'' u²/2 = b adds 2 b² to the variance
  const left = curved === undefined ? 0 : variance > 0 ? (2 * curved.bend ** 2) / variance : 1;
  if (curved && left > NOT_LINEAR) findings.push(finding('budget-not-linear', { input: curved.name, share: 100 * left }));
  const most = dominant === undefined ? undefined : lines[dominant];
  if (most && lines.length > 1 && most.share > DOMINATES)
    findings.push(finding('one-term-dominates', { input: labelOf(most), share: 100 * most.share, symbol }));
  if (freedom < FEW && !tied.includes(true))
    findings.push(finding('few-degrees-of-freedom', { symbol, freedom, factor: k.coverageFactor }));
  return {
    ...(options.symbol === undefined ? {} : { symbol: options.symbol }),
    ...(unit === undefined ? {} : { unit }),
    value,
    standardUncertainty,
    ...(value === 0 ? {} : { relativeStandardUncertainty: standardUncertainty / Math.abs(value) }),
    ...(freedom === Infinity ? {} : { degreesOfFreedom: freedom }),
    ...k,
    expandedUncertainty: k.coverageFactor * standardUncertainty,
    lines,
    ...(dominant === undefined ? {} : { dominant }),
    correlations: (options.correlations ?? []).map(({ between, coefficient }) => ({ between: [...between] as const, coefficient })),
    findings,
  };
}

/** @internal A line's name in a sentence. */
export const labelOf = ({ input, source }: Pick<BudgetLine, 'input' | 'source'>): string =>
  source === undefined || source === input ? input : `${input} (${source})`;
