import { describe, expect, test } from 'vitest';
import { normalCdf, normalQuantile, randomStreams } from '../../src/numeric/index.js';
import { ziggurat } from '../../src/numeric/ziggurat.js';

const DRAWN = 1_000_000;
const column = new Float64Array(DRAWN);
randomStreams(7).normals(column);

describe('normal numbers by the ziggurat', () => {
  test('have the moments of the normal distribution within four standard errors', () => {
    // variances of x, x², x³ and x⁴ from the moments 1, 3, 15, 105
    const variances = [1, 3 - 1, 15, 105 - 9];
    [0, 1, 0, 3].forEach((expected, k) => {
      const mean = column.reduce((sum, x) => sum + x ** (k + 1), 0) / DRAWN;
      expect(Math.abs(mean - expected)).toBeLessThan(4 * Math.sqrt(variances[k]! / DRAWN));
    });
  });

  test('fall evenly into 1000 classes of equal probability', () => {
    const counts = new Float64Array(1000);
    for (const x of column) counts[Math.floor(1000 * normalCdf(x))]! += 1;
    const expected = DRAWN / 1000;
    const chiSquare = counts.reduce((sum, n) => sum + (n - expected) ** 2 / expected, 0);
    // mean 999 and variance 2 · 999
    expect(Math.abs(chiSquare - 999)).toBeLessThan(4 * Math.sqrt(2 * 999));
  });

  test('reach as far as they should: tails of either side, within and beyond the lowest layer', () => {
    for (const level of [2, 3, 3.4, 3.5, 4, 4.5])
      for (const side of [-1, 1]) {
        const expected = DRAWN * (1 - normalCdf(level));
        const found = column.reduce((n, x) => n + Number(side * x > level), 0);
        expect(Math.abs(found - expected)).toBeLessThan(4 * Math.sqrt(expected) + 1);
      }
    // beyond where the tail begins the classes are even too
    const tail = Array.from(column, Math.abs).filter((x) => x > 3.442619855899);
    const middle = -normalQuantile((1 - normalCdf(3.442619855899)) / 2);
    const above = tail.filter((x) => x > middle).length;
    expect(Math.abs(above - tail.length / 2)).toBeLessThan(2 * Math.sqrt(tail.length));
  });

  test('are not correlated with the one before, nor their squares', () => {
    for (const of of [(x: number) => x, (x: number) => (x * x - 1) / Math.SQRT2]) {
      let sum = 0;
      for (let k = 1; k < DRAWN; k += 1) sum += of(column[k]!) * of(column[k - 1]!);
      expect(Math.abs(sum / DRAWN)).toBeLessThan(4 / Math.sqrt(DRAWN));
    }
  });

  test('come one by one as they come in a column', () => {
    const random = randomStreams(7);
    expect(Array.from({ length: 20_000 }, () => random.normal())).toEqual(Array.from(column.subarray(0, 20_000)));
  });
});

test('layers of equal area close at the top of the curve', () => {
  const { width, edge } = ziggurat(() => 0.5);
  const curve = (x: number) => Math.exp(-0.5 * x * x);
  for (let i = 1; i < 127; i += 1) {
    const area = edge[i - 1]! * (curve(edge[i]!) - curve(edge[i - 1]!));
    expect(area).toBeCloseTo(9.91256303526217e-3, 14);
    expect(width[i]! * 2 ** 24).toBeCloseTo(edge[i - 1]!, 14);
  }
  // the place of the tail has twelve digits
  expect(edge[126]! * (1 - curve(edge[126]!))).toBeCloseTo(9.91256303526217e-3, 10);
  expect(edge[0]! * curve(edge[0]!) + Math.sqrt(2 * Math.PI) * (1 - normalCdf(edge[0]!))).toBeCloseTo(9.91256303526217e-3, 12);
  expect(edge[127]).toBe(0);
});
