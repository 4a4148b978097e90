import { choleskyInverse } from './choleskyInverse.js';

/** @internal Sum of squares about the least-squares polynomial of a degree; undefined where x takes too few values. */
export function polynomialRest(x: Float64Array, y: Float64Array, degree: number): number | undefined {
  const n = x.length;
  const centre = (x[0]! + x[n - 1]!) / 2;
  const scale = Math.abs(x[n - 1]! - x[0]!) / 2 || 1;
  let mean = 0;
  for (let i = 0; i < n; i += 1) mean += y[i]!;
  mean /= n;
  const powers = Array<number>(2 * degree + 1).fill(0);
  const right = Array<number>(degree + 1).fill(0);
  const per = 1 / scale;
  let yy = 0;
  for (let i = 0; i < n; i += 1) {
    const u = (x[i]! - centre) * per;
    const v = y[i]! - mean;
    yy += v * v;
    let power = 1;
    for (let k = 0; k <= degree; k += 1, power *= u) {
      powers[k]! += power;
      right[k]! += power * v;
    }
    for (let k = degree + 1; k <= 2 * degree; k += 1, power *= u) powers[k]! += power;
  }
  const order = degree + 1;
  const inverse = choleskyInverse(
    Array.from({ length: order * order }, (_, k) => powers[(k % order) + Math.floor(k / order)]!),
    order,
  );
  if (!inverse) return undefined;
  let explained = 0;
  for (let j = 0; j < order; j += 1) for (let k = 0; k < order; k += 1) explained += right[j]! * inverse[order * j + k]! * right[k]!;
  return Math.max(0, yy - explained);
}
