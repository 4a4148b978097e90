import { InputError, requireBetween, requireOptions } from '../base/index.js';
import { choleskyFactor } from '../numeric/index.js';
import type { CheckedInput } from './components.js';

/** A correlation between two inputs. */
export interface InputCorrelation {
  /** Names of the two inputs. */
  readonly between: readonly [string, string];
  /** Correlation coefficient, −1 to 1. */
  readonly coefficient: number;
}

/** @internal Correlations after their checks: the whole matrix row by row, and its lower factor. */
export interface CheckedCorrelations {
  readonly matrix: Float64Array;
  readonly factor: Float64Array;
  /** Whether an input is correlated with any other. */
  readonly tied: readonly boolean[];
}

/** @internal Checks correlations between inputs: known names, each pair once, a matrix without negative eigenvalues. */
export function requireCorrelations(
  from: string,
  inputs: readonly CheckedInput[],
  given: readonly InputCorrelation[] = [],
): CheckedCorrelations {
  const n = inputs.length;
  const matrix = new Float64Array(n * n);
  for (let i = 0; i < n; i += 1) matrix[n * i + i] = 1;
  const tied = inputs.map(() => false);
  if (!Array.isArray(given)) throw new InputError(from, 'options.correlations', 'wrong-type', 'must be an array', given);
  (given as readonly InputCorrelation[]).forEach((one, k) => {
    const path = `options.correlations[${k}]`;
    requireOptions(from, one, ['between', 'coefficient'], path);
    if (!Array.isArray(one.between) || (one.between as readonly string[]).length !== 2)
      throw new InputError(from, `${path}.between`, 'wrong-type', 'must be two names', one.between);
    const [a, b] = (one.between as readonly string[]).map((name, side) => {
      const at = inputs.findIndex((input) => input.name === name);
      if (at < 0) throw new InputError(from, `${path}.between[${side}]`, 'out-of-range', 'must name an input', name);
      return at;
    }) as [number, number];
    if (a === b || matrix[n * a + b] !== 0)
      throw new InputError(from, `${path}.between`, 'out-of-range', 'must be two different inputs, each pair once', one.between.join(', '));
    const r = requireBetween(from, `${path}.coefficient`, one.coefficient, -1, 1);
    matrix[n * a + b] = r;
    matrix[n * b + a] = r;
    if (r !== 0) tied[a] = tied[b] = true;
  });
  const factor = choleskyFactor(matrix, n);
  if (!factor)
    throw new InputError(from, 'options.correlations', 'out-of-range', 'must be possible together (no negative eigenvalue)', 'none');
  return { matrix, factor, tied };
}
