import { levenbergMarquardt } from 'ml-levenberg-marquardt';
import { EigenvalueDecomposition, inverse, Matrix } from 'ml-matrix';

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

/** Steps in one call of the library, which has no test of convergence of its own. */
const STEPS = 4;
const MOST = 400;
/** The fall of the sum, of the sum, below which the optimum is reached. */
const FLAT = 1e-12;
/** Least eigenvalue of the columns' correlations; below it, a combination of parameters has no effect. */
const SINGULAR = 1e-13;

/** Sum of squared residuals; infinite where the model is not a number. */
function sumOfSquares({ y, model }: FitTask, parameters: readonly number[]): number {
  const value = model(parameters);
  let sum = 0;
  for (let i = 0; i < y.length; i += 1) sum += (y[i]! - value(i)) ** 2;
  return Number.isNaN(sum) ? Infinity : sum;
}

/** JᵀJ, Jᵀr, and which parameters may move: one on a bound that the sum pushes outwards is held. */
function normalEquations(task: FitTask, parameters: readonly number[]) {
  const { y, bounds } = task;
  const p = parameters.length;
  const value = task.model(parameters);
  const rowOf = task.jacobian(parameters);
  const normal = Matrix.zeros(p, p);
  const gradient = new Float64Array(p);
  for (let i = 0; i < y.length; i += 1) {
    const row = rowOf(i);
    const residual = y[i]! - value(i);
    for (let j = 0; j < p; j += 1) {
      gradient[j]! += row[j]! * residual;
      for (let k = 0; k <= j; k += 1) normal.set(j, k, normal.get(j, k) + row[j]! * row[k]!);
    }
  }
  const held = (k: number): boolean => {
    const [low, high] = bounds?.[k] ?? [-Infinity, Infinity];
    return (parameters[k]! <= low && gradient[k]! <= 0) || (parameters[k]! >= high && gradient[k]! >= 0);
  };
  return { normal, gradient, free: parameters.map((_, k) => k).filter((k) => !held(k)) };
}

/** (JᵀJ)⁻¹ of the free parameters, the Gauss-Newton step, and how far it would lower the sum. */
function linearised(task: FitTask, parameters: readonly number[]) {
  const { normal, gradient, free } = normalEquations(task, parameters);
  // columns of length 1: parameters of any size do
  const size = free.map((k) => Math.sqrt(normal.get(k, k)));
  if (!size.every((one) => one > 0 && one < Infinity)) return undefined;
  const between = free.map((j, a) => free.map((k, b) => normal.get(Math.max(j, k), Math.min(j, k)) / (size[a]! * size[b]!)));
  if (
    free.length > 0 &&
    Math.min(...new EigenvalueDecomposition(new Matrix(between), { assumeSymmetric: true }).realEigenvalues) < SINGULAR
  )
    return undefined;
  const inverted = free.length > 0 ? inverse(new Matrix(between)).to2DArray() : [];
  const step = parameters.map(() => 0);
  const inverseNormal = parameters.map(() => parameters.map(() => 0));
  let fall = 0;
  free.forEach((j, a) => {
    free.forEach((k, b) => {
      const one = inverted[a]![b]! / (size[a]! * size[b]!);
      inverseNormal[j]![k] = one;
      step[j]! += one * gradient[k]!;
      fall += gradient[j]! * one * gradient[k]!;
    });
  });
  return { inverseNormal, step, fall };
}

/**
 * @internal Least squares in any number of parameters; the one place that speaks to ml-levenberg-marquardt.
 *
 * The library damps in absolute terms, compares sums in absolute terms, stops only at its limit of iterations, accepts steps that make
 * things worse and hands back its start where all did. So parameters are scaled to their size, y to its own; it is called for a few
 * steps at a time, the best end is kept, and damping is raised where a call was too bold. A standstill alone is no convergence: the
 * sum must be flat, which the Gauss-Newton step tells. That step is then taken, since sums cannot resolve the last digits.
 */
export function leastSquares(task: FitTask): FitEnd {
  const { bounds } = task;
  const n = task.y.length;
  const p = task.start.length;
  const unit = task.y.reduce((most, one) => Math.max(most, Math.abs(one)), 0) || 1;
  const x = Float64Array.from({ length: n }, (_, i) => i);
  const y = task.y.map((one) => one / unit);
  const total = task.y.reduce((sum, one) => sum + one * one, 0);
  const within = (values: readonly number[]): number[] =>
    values.map((one, k) => Math.min(Math.max(one, bounds?.[k]?.[0] ?? -Infinity), bounds?.[k]?.[1] ?? Infinity));
  let best = within(task.start);
  let rest = sumOfSquares(task, best);
  let damping = 1e-3;
  let iterations = 0;
  let converged = false;

  const call = (): number[] | undefined => {
    const from = best;
    // the library would clamp a held parameter only after it has bent the step of the others
    const free = bounds ? normalEquations(task, from).free : from.map((_, k) => k);
    const scale = free.map((k) => Math.abs(from[k]!) || 1);
    const own = (scaled: readonly number[]): number[] => {
      const parameters = [...from];
      free.forEach((k, a) => (parameters[k] = scaled[a]! * scale[a]!));
      return within(parameters);
    };
    if (free.length === 0) return undefined;
    try {
      const end = levenbergMarquardt(
        { x, y },
        (scaled) => {
          const value = task.model(own(scaled));
          return (i) => value(i) / unit;
        },
        {
          initialValues: free.map((k, a) => from[k]! / scale[a]!),
          ...(bounds
            ? { minValues: free.map((k, a) => bounds[k]![0] / scale[a]!), maxValues: free.map((k, a) => bounds[k]![1] / scale[a]!) }
            : {}),
          damping,
          errorTolerance: 0,
          maxIterations: STEPS,
          jacobianFunction: (scaled) => {
            const rowOf = task.jacobian(own(scaled));
            return (i) => {
              const row = rowOf(i);
              return free.map((k, a) => (row[k]! * scale[a]!) / unit);
            };
          },
        },
      );
      return own(end.parameterValues);
    } catch {
      return undefined; // a step left the model's range
    }
  };

  while (iterations < MOST && !converged && damping <= 1e12) {
    const found = call();
    iterations += STEPS;
    const after = found ? sumOfSquares(task, found) : Infinity;
    const before = rest;
    if (found && after < rest) {
      best = found;
      rest = after;
      damping = Math.max(damping / 10, 1e-12);
    } else damping *= 100;
    if (before - rest > 1e-9 * before) continue;
    const here = linearised(task, best);
    if (!here) continue;
    // the second term is what rounding does to the sum, the third what it does to residuals of nothing
    const flat = FLAT * rest + 1e-15 * Math.sqrt(rest * total) + 1e-28 * total;
    converged = here.fall <= flat;
    if (!converged) continue;
    const polished = within(best.map((one, k) => one + here.step[k]!));
    const polishedRest = sumOfSquares(task, polished);
    if (polishedRest <= rest + flat) [best, rest] = [polished, polishedRest];
  }
  const inverseNormal = n > p ? linearised(task, best)?.inverseNormal : undefined;
  return {
    parameters: best,
    residualSumOfSquares: rest,
    iterations,
    converged,
    covariance: inverseNormal?.map((row) => row.map((one) => (one * rest) / (n - p))),
  };
}
