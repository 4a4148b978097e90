import { levenbergMarquardt } from 'ml-levenberg-marquardt';
import { inverse, Matrix } from 'ml-matrix';

/** @internal A curve to fit: value and derivatives by the parameters, at sample i. */
export interface FitTask {
  readonly y: Float64Array;
  readonly start: readonly number[];
  readonly value: (i: number, parameters: readonly number[]) => number;
  readonly jacobian: (i: number, parameters: readonly number[]) => readonly number[];
}

/** @internal Where a fit ended. */
export interface FitEnd {
  readonly parameters: readonly number[];
  readonly residualSumOfSquares: number;
  readonly iterations: number;
  /** True where the last steps no longer moved the parameters, or no longer lowered the sum. */
  readonly converged: boolean;
  /** Covariance of the parameters; undefined where the data do not determine them. */
  readonly covariance: readonly (readonly number[])[] | undefined;
}

/** Steps in one call of the library, which has no test of convergence of its own. */
const STEPS = 4;
const MOST = 400;
const STILL = 1e-12;

/** Sum of squared residuals; infinite where the model is not a number. */
function sumOfSquares({ y, value }: FitTask, parameters: readonly number[]): number {
  let sum = 0;
  for (let i = 0; i < y.length; i += 1) sum += (y[i]! - value(i, parameters)) ** 2;
  return Number.isNaN(sum) ? Infinity : sum;
}

/** s² (JᵀJ)⁻¹, by scaled columns so that parameters of any size do. */
function covarianceOf(task: FitTask, parameters: readonly number[], rest: number): FitEnd['covariance'] {
  const n = task.y.length;
  const p = parameters.length;
  if (n <= p) return undefined;
  const scale = parameters.map((one) => Math.abs(one) || 1);
  const normal = Matrix.zeros(p, p);
  for (let i = 0; i < n; i += 1) {
    const row = task.jacobian(i, parameters);
    for (let j = 0; j < p; j += 1)
      for (let k = 0; k < p; k += 1) normal.set(j, k, normal.get(j, k) + row[j]! * scale[j]! * row[k]! * scale[k]!);
  }
  try {
    const inverted = inverse(normal).to2DArray();
    const covariance = inverted.map((row, j) => row.map((one, k) => (one * scale[j]! * scale[k]! * rest) / (n - p)));
    return covariance.every((row, j) => row[j]! >= 0 && row.every(Number.isFinite)) ? covariance : undefined;
  } catch {
    return undefined; // a singular matrix
  }
}

/**
 * @internal Least squares in any number of parameters; the one place that speaks to ml-levenberg-marquardt.
 *
 * The library damps in absolute terms, compares sums in absolute terms, stops only at its limit of iterations and accepts steps that
 * make things worse. So parameters are scaled to their start, y to its size; it is called for a few steps at a time, the best end is
 * kept, damping is raised where a call made things worse, until the parameters stand still.
 */
export function leastSquares(task: FitTask): FitEnd {
  const n = task.y.length;
  const p = task.start.length;
  const unit = task.y.reduce((most, one) => Math.max(most, Math.abs(one)), 0) || 1;
  const x = Float64Array.from({ length: n }, (_, i) => i);
  const y = task.y.map((one) => one / unit);
  let best = [...task.start];
  let rest = sumOfSquares(task, best);
  let damping = 1e-3;
  let iterations = 0;
  let converged = false;
  while (iterations < MOST && !converged) {
    const scale = best.map((one) => Math.abs(one) || 1);
    const own = (scaled: readonly number[]): number[] => scaled.map((one, k) => one * scale[k]!);
    let found: number[] | undefined;
    try {
      const end = levenbergMarquardt(
        { x, y },
        (scaled) => {
          const parameters = own(scaled);
          return (i) => task.value(i, parameters) / unit;
        },
        {
          initialValues: best.map((one, k) => one / scale[k]!),
          damping,
          errorTolerance: 0,
          maxIterations: STEPS,
          jacobianFunction: (scaled) => {
            const parameters = own(scaled);
            return (i) => task.jacobian(i, parameters).map((one, k) => (one * scale[k]!) / unit);
          },
        },
      );
      found = own(end.parameterValues);
    } catch {
      found = undefined; // a step left the model's range
    }
    iterations += STEPS;
    const after = found && found.every(Number.isFinite) ? sumOfSquares(task, found) : Infinity;
    if (found && after <= rest) {
      converged = found.every((one, k) => Math.abs(one - best[k]!) <= STILL * scale[k]!) || after === 0;
      best = found;
      rest = after;
      damping = Math.max(damping / 10, 1e-12);
    } else {
      // no better: at the optimum to the last digits, or a step too bold
      const moved = found && Number.isFinite(after) ? Math.max(...found.map((one, k) => Math.abs(one - best[k]!) / scale[k]!)) : Infinity;
      converged = moved < 1e-8 && after - rest <= 1e-12 * rest;
      damping *= 100;
      if (damping > 1e12) break;
    }
  }
  return {
    parameters: best,
    residualSumOfSquares: rest,
    iterations,
    converged,
    covariance: p > 0 ? covarianceOf(task, best, rest) : undefined,
  };
}
