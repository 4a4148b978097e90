/** Pivots below this share of the diagonal mean that rows depend on each other. */
const SINGULAR = 1e-13;

/**
 * @internal Inverse of a symmetric positive definite matrix of n rows, row by row, by Cholesky's factors; undefined where it is singular. All
 * in one plain array: for matrices of a few rows a typed one costs more than the sums.
 */
export function choleskyInverse(matrix: ArrayLike<number>, n: number): number[] | undefined {
  // filled with a fraction first, so that the engine stores doubles from the start
  const a = [0.5];
  for (let i = 0; i < n * n; i += 1) a[i] = matrix[i]!;
  for (let i = 0; i < n; i += 1)
    for (let j = 0; j <= i; j += 1) {
      let sum = a[n * i + j]!;
      for (let k = 0; k < j; k += 1) sum -= a[n * i + k]! * a[n * j + k]!;
      if (i !== j) a[n * i + j] = sum / a[n * j + j]!;
      else if (sum > SINGULAR * matrix[n * i + i]!) a[n * i + i] = Math.sqrt(sum);
      else return undefined;
    }
  // the inverse of the factor takes its place, and its square that of the matrix
  for (let i = 0; i < n; i += 1) {
    const pivot = 1 / a[n * i + i]!;
    a[n * i + i] = pivot;
    for (let j = 0; j < i; j += 1) {
      let sum = 0;
      for (let k = j; k < i; k += 1) sum -= a[n * i + k]! * a[n * k + j]!;
      a[n * i + j] = sum * pivot;
    }
  }
  for (let i = 0; i < n; i += 1)
    for (let j = 0; j <= i; j += 1) {
      let sum = 0;
      for (let k = i; k < n; k += 1) sum += a[n * k + i]! * a[n * k + j]!;
      a[n * i + j] = sum;
      a[n * j + i] = sum;
    }
  return a;
}
