/** Pivots below this share of the diagonal mean that rows depend on each other. */
const SINGULAR = 1e-13;

/** @internal Inverse of a symmetric positive definite matrix of n rows, row by row, by Cholesky's factors; undefined where it is singular. */
export function choleskyInverse(matrix: ArrayLike<number>, n: number): Float64Array | undefined {
  const L = new Float64Array(n * n);
  for (let i = 0; i < n; i += 1)
    for (let j = 0; j <= i; j += 1) {
      let sum = matrix[n * i + j]!;
      for (let k = 0; k < j; k += 1) sum -= L[n * i + k]! * L[n * j + k]!;
      if (i !== j) L[n * i + j] = sum / L[n * j + j]!;
      else if (sum > SINGULAR * matrix[n * i + i]!) L[n * i + i] = Math.sqrt(sum);
      else return undefined;
    }
  const inverse = new Float64Array(n * n);
  const v = new Float64Array(n);
  for (let column = 0; column < n; column += 1) {
    for (let i = 0; i < n; i += 1) {
      let sum = i === column ? 1 : 0;
      for (let k = 0; k < i; k += 1) sum -= L[n * i + k]! * v[k]!;
      v[i] = sum / L[n * i + i]!;
    }
    for (let i = n - 1; i >= 0; i -= 1) {
      let sum = v[i]!;
      for (let k = i + 1; k < n; k += 1) sum -= L[n * k + i]! * v[k]!;
      v[i] = sum / L[n * i + i]!;
      inverse[n * i + column] = v[i]!;
    }
  }
  return inverse;
}
