import { describe, expect, it } from 'vitest';
import { cornerAt, cornerSums } from '../../src/hardening/necking/cornerSums.js';
import { linearLeastSquares, randomNumbers } from '../../src/numeric/index.js';

/** The same least squares by columns of the four terms, without any sums of powers. */
function direct(x: readonly number[], y: readonly number[], v: number, span: number): number {
  const t = x.map((one) => (one - v) / span);
  const columns = [
    () => 1,
    (one: number) => (one < 0 ? one ** 2 : 0),
    (one: number) => (one < 0 ? one ** 3 : 0),
    (one: number) => (one < 0 ? 0 : one ** 2),
  ];
  const fit = linearLeastSquares(
    columns.map((of) => Float64Array.from(t, of)),
    Float64Array.from(y),
  );
  return fit?.residualSumOfSquares ?? NaN;
}

describe('cornerAt', () => {
  const { normal } = randomNumbers(3);
  const low = 0.11;
  const span = 0.06;
  const x = Array.from({ length: 120 }, (_, i) => low + (span * i) / 119);
  const y = x.map((one) => {
    const t = (one - 0.14) / span;
    return (t < 0 ? -3 * t * t + 0.8 * t ** 3 : -9 * t * t) + 0.02 * normal();
  });
  const sums = cornerSums(Float64Array.from(x), Float64Array.from(y), low, span);

  it('leaves the same sum of squares as least squares over rows, at every place', () => {
    for (let w = 0.08; w < 0.93; w += 0.017) {
      const found = cornerAt(sums, w);
      if (found) expect(found.rest / direct(x, y, low + w * span, span)).toBeCloseTo(1, 9);
    }
    expect(cornerAt(sums, 0.5)?.height).toBeCloseTo(0, 1);
  });

  it('does not depend on the order of the samples', () => {
    const turned = cornerSums(Float64Array.from(x).reverse(), Float64Array.from(y).reverse(), low, span);
    expect(cornerAt(turned, 0.4)).toEqual(cornerAt(sums, 0.4));
  });

  it('is none where a side does not fall, or holds no samples', () => {
    const rising = cornerSums(Float64Array.from(x), Float64Array.from(x), low, span);
    expect(cornerAt(rising, 0.5)).toBeUndefined();
    expect(cornerAt(sums, 0)).toBeUndefined();
    expect(cornerAt(sums, 1.1)).toBeUndefined();
  });
});
