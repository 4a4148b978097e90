import { levenbergMarquardt } from 'ml-levenberg-marquardt';
import { gaussNewton, type GaussNewtonEnd, type Sums } from './gaussNewton.js';

/** @internal A curve to fit: for given parameters, value and derivatives by the parameters, at sample i. */
export interface FitTask {
  readonly y: Float64Array;
  readonly start: readonly number[];
  /** Least and greatest value of each parameter; default none. */
  readonly bounds?: readonly (readonly [number, number])[] | undefined;
  readonly model: (parameters: readonly number[]) => (i: number) => number;
  readonly jacobian: (parameters: readonly number[]) => (i: number) => readonly number[];
}

/** @internal Where a fit ended. */
export interface FitEnd {
  readonly parameters: readonly number[];
  readonly residualSumOfSquares: number;
  readonly iterations: number;
  /** True where no small step lowers the sum: at an optimum, not merely at a standstill. */
  readonly converged: boolean;
  /** Covariance of the parameters, 0 for one on its bound; undefined where the data do not determine them. */
  readonly covariance: readonly (readonly number[])[] | undefined;
}

/** Steps in one call of the library, which has no test of convergence of its own, and in all of them. */
const STEPS = 4;
const MOST = 400;
/** The library is left where its calls lower the sum by less than this share. */
const STANDSTILL = 1e-9;
/** Damping of a start that may be far from the optimum. */
const CAREFUL = 1e-3;

/** Sum of squared residuals; infinite where the model is not a number. */
function sumOfSquares({ y, model }: FitTask, parameters: readonly number[]): number {
  const value = model(parameters);
  let sum = 0;
  for (let i = 0; i < y.length; i += 1) sum += (y[i]! - value(i)) ** 2;
  return Number.isNaN(sum) ? Infinity : sum;
}

/** JᵀJ (lower half), Jᵀr and the sum of squares. */
function sumsAt({ y, model, jacobian }: FitTask, parameters: readonly number[]): Sums {
  const p = parameters.length;
  const value = model(parameters);
  const rowOf = jacobian(parameters);
  const normal = Array<number>(p * p).fill(0);
  const gradient = Array<number>(p).fill(0);
  let rest = 0;
  for (let i = 0; i < y.length; i += 1) {
    const row = rowOf(i);
    const residual = y[i]! - value(i);
    rest += residual * residual;
    for (let j = 0; j < p; j += 1) {
      gradient[j]! += row[j]! * residual;
      for (let k = 0; k <= j; k += 1) normal[p * j + k]! += row[j]! * row[k]!;
    }
  }
  return { rest: Number.isNaN(rest) ? Infinity : rest, normal, gradient };
}

/**
 * Where the library comes to a standstill from a start. It damps in absolute terms, compares sums in absolute terms, stops only at its limit of
 * iterations, accepts steps that make things worse and hands back its start where all did. So parameters are scaled to their size, y to its
 * own; it is called for a few steps at a time, the best end is kept, and damping is raised where a call was too bold.
 */
function byLibrary(task: FitTask, start: readonly number[], within: (values: readonly number[]) => number[]) {
  const unit = task.y.reduce((most, one) => Math.max(most, Math.abs(one)), 0) || 1;
  const x = Float64Array.from({ length: task.y.length }, (_, i) => i);
  const y = task.y.map((one) => one / unit);
  const call = (from: readonly number[], damping: number): number[] | undefined => {
    const scale = from.map((one) => Math.abs(one) || 1);
    const own = (scaled: readonly number[]): number[] => within(scaled.map((one, k) => one * scale[k]!));
    try {
      const end = levenbergMarquardt(
        { x, y },
        (scaled) => {
          const value = task.model(own(scaled));
          return (i) => value(i) / unit;
        },
        {
          initialValues: from.map((one, k) => one / scale[k]!),
          damping,
          errorTolerance: 0,
          maxIterations: STEPS,
          jacobianFunction: (scaled) => {
            const rowOf = task.jacobian(own(scaled));
            return (i) => rowOf(i).map((one, k) => (one * scale[k]!) / unit);
          },
        },
      );
      return own(end.parameterValues);
    } catch {
      return undefined; // a step left the model's range
    }
  };
  let best = start;
  let rest = sumOfSquares(task, best);
  let iterations = 0;
  for (let damping = CAREFUL; iterations < MOST && damping <= 1e12; iterations += STEPS) {
    const found = call(best, damping);
    const after = found ? sumOfSquares(task, found) : Infinity;
    if (!found || !(after < rest)) {
      damping *= 100;
      continue;
    }
    const still = rest - after <= STANDSTILL * rest;
    [best, rest] = [found, after];
    damping = Math.max(damping / 10, 1e-12);
    if (still) break;
  }
  return { parameters: best, iterations };
}

/**
 * @internal Least squares in any number of parameters; the one place that speaks to ml-levenberg-marquardt.
 *
 * From where the library comes to a standstill Gauss-Newton steps, damped by the size of the columns, go on to the optimum. Where
 * they end in none, or in one that leaves a parameter open, they go from the start itself: an optimum counts before an end that is none,
 * then the lower one.
 */
export function leastSquares(task: FitTask): FitEnd {
  const { y, bounds, start } = task;
  const lowest = start.map((_, k) => bounds?.[k]?.[0] ?? -Infinity);
  const highest = start.map((_, k) => bounds?.[k]?.[1] ?? Infinity);
  const within = (values: readonly number[]): number[] => values.map((one, k) => Math.min(Math.max(one, lowest[k]!), highest[k]!));
  const sums = {
    lowest,
    highest,
    sumsAt: (parameters: readonly number[]) => sumsAt(task, parameters),
    samples: y.length,
    total: y.reduce((sum, one) => sum + one * one, 0),
  };
  const { parameters, iterations } = byLibrary(task, within(start), within);
  const isOptimum = (one: GaussNewtonEnd): boolean => one.converged && one.inverse !== undefined;
  let end = gaussNewton({ ...sums, start: parameters });
  let steps = iterations + end.iterations;
  if (!isOptimum(end)) {
    const other = gaussNewton({ ...sums, start, damping: CAREFUL });
    steps += other.iterations;
    if (isOptimum(other) || other.residualSumOfSquares < end.residualSumOfSquares) end = other;
  }
  const p = start.length;
  const spare = y.length - p;
  const variance = end.residualSumOfSquares / spare;
  const { inverse } = end;
  return {
    parameters: end.parameters,
    residualSumOfSquares: end.residualSumOfSquares,
    iterations: steps,
    converged: end.converged,
    covariance: spare > 0 && inverse ? start.map((_, j) => start.map((__, k) => inverse[p * j + k]! * variance)) : undefined,
  };
}
