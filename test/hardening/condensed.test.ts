import { describe, expect, it } from 'vitest';
import { condensed } from '../../src/hardening/fits/condensed.js';
import { randomNumbers } from '../../src/numeric/index.js';

const { uniform, normal } = randomNumbers(11);

/** Sum of squared residuals over samples, or over weighted points. */
const restOf = (law: (x: number) => number, x: Float64Array, y: Float64Array, weights?: Float64Array): number =>
  x.reduce((sum, one, i) => sum + (weights?.[i] ?? 1) * (y[i]! - law(one)) ** 2, 0);

describe('condensed', () => {
  // uneven steps, now and then back
  const x = new Float64Array(20_000);
  for (let i = 0, at = 0.01; i < x.length; i += 1) {
    at += 1e-5 * (uniform() < 0.1 ? -0.5 : 2 * uniform());
    x[i] = at;
  }

  it('keeps the sum of squares of every parabola to rounding, but for one constant', () => {
    const y = x.map((e) => 300 + 900 * e - 1200 * e * e + 3 * normal());
    const few = condensed(x, y);
    expect(few.x.length).toBeLessThan(1500);
    for (const [a, b, c] of [
      [300, 900, -1200],
      [310, 850, -900],
      [0, 0, 0],
    ] as const) {
      const law = (e: number): number => a + b * e + c * e * e;
      expect((restOf(law, few.x, few.y, few.weights) + few.rest) / restOf(law, x, y)).toBeCloseTo(1, 12);
    }
    expect(few.weights.reduce((sum, one) => sum + one, 0)).toBeCloseTo(x.length, 6);
  });

  it('keeps that of a power law far below its noise', () => {
    const y = x.map((e) => 800 * e ** 0.2 * (1 + 0.001 * normal()));
    const few = condensed(x, y);
    for (const [K, n] of [
      [800, 0.2],
      [805, 0.203],
    ] as const) {
      const law = (e: number): number => K * e ** n;
      expect((restOf(law, few.x, few.y, few.weights) + few.rest) / restOf(law, x, y)).toBeCloseTo(1, 6);
    }
  });

  it('leaves samples alone where x stands still, or there are few', () => {
    const still = new Float64Array(1000).fill(0.1);
    const y = still.map((_, i) => i);
    expect(condensed(still, y)).toEqual({ x: still, y, weights: new Float64Array(1000).fill(1), rest: 0 });
    expect(condensed(x.subarray(0, 50), y.subarray(0, 50)).y).toEqual(y.subarray(0, 50).slice());
    expect(condensed(new Float64Array(0), new Float64Array(0)).rest).toBe(0);
  });
});
