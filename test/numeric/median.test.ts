import { describe, expect, it } from 'vitest';
import { median, medianOf, randomNumbers } from '../../src/numeric/index.js';

const { uniform } = randomNumbers(5);

/** The median by sorting. */
function bySorting(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const half = values.length >> 1;
  return values.length % 2 === 1 ? sorted[half]! : (sorted[half - 1]! + sorted[half]!) / 2;
}

describe('median', () => {
  it('is that of sorted values, whatever their number, order and ties', () => {
    const kinds: readonly ((i: number, n: number) => number)[] = [
      () => uniform() - 0.5,
      () => Math.round(6 * uniform()),
      (i) => i,
      (i) => -i,
      () => 7,
      (i, n) => (i < n - 1 ? 1 : 0),
      (i, n) => Math.abs(i - n / 2),
    ];
    for (const kind of kinds)
      for (const n of [1, 2, 3, 4, 5, 8, 40, 301, 1000]) {
        const values = Array.from({ length: n }, (_, i) => kind(i, n));
        expect(median(values)).toBe(bySorting(values));
      }
  });

  it('leaves the values that it is given, unless they may be moved about', () => {
    const values = Float64Array.of(3, 1, 2);
    expect(median(values)).toBe(2);
    expect([...values]).toEqual([3, 1, 2]);
    expect(medianOf(values)).toBe(2);
    expect([...values].sort()).toEqual([1, 2, 3]);
  });

  it('of nothing is 0', () => {
    expect(median([])).toBe(0);
  });
});
