/** Pivots below minus this, in units of the diagonal, mean that the matrix is not one of correlations. */
const NEGATIVE = 1e-10;

/**
 * @internal Lower factor L with L Lᵀ = matrix of n rows, row by row, for a symmetric matrix without negative eigenvalues (a correlation of
 * exactly 1 is allowed); undefined where there is one.
 */
export function choleskyFactor(matrix: ArrayLike<number>, n: number): Float64Array | undefined {
  const L = new Float64Array(n * n);
  for (let j = 0; j < n; j += 1) {
    let pivot = matrix[n * j + j]!;
    const unit = pivot;
    for (let k = 0; k < j; k += 1) pivot -= L[n * j + k]! ** 2;
    if (pivot < -NEGATIVE * unit) return undefined;
    const root = pivot > NEGATIVE * unit ? Math.sqrt(pivot) : 0;
    L[n * j + j] = root;
    for (let i = j + 1; i < n; i += 1) {
      let sum = matrix[n * i + j]!;
      for (let k = 0; k < j; k += 1) sum -= L[n * i + k]! * L[n * j + k]!;
      if (root > 0) L[n * i + j] = sum / root;
      else if (Math.abs(sum) > 1e-5 * unit) return undefined;
    }
  }
  return L;
}
