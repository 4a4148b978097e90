/** Whether the stress still rises at the end of a curve, by a parabola of stress over strain that is highest at 10 %. */
import { describe, expect, test } from 'vitest';
import { stillRising } from '../../src/curve/index.js';
import { seeded } from '../support/random.js';

const TOP = 0.1;
function ends(at: number, noise = 0, seed = 1, count = 1000): boolean {
  const { normal } = seeded(seed);
  const x = Float64Array.from({ length: count }, (_, i) => (at * (i + 1)) / count);
  return stillRising(
    x,
    x.map((e) => 400 * (1 - (1 - e / TOP) ** 2) + noise * normal()),
    count,
  );
}

describe('the end of a parabola', () => {
  // over the last tenth of the strain the slope at the end makes 0.2 (1 − x) x of the stress, x of the way to the top
  test.each([0.3, 0.6, 0.9, 0.99])('at %d of the way to its top it rises', (part) => {
    expect(ends(part * TOP)).toBe(true);
  });
  test.each([1, 1.01, 1.1])('at %d of it, it does not', (part) => {
    expect(ends(part * TOP)).toBe(false);
  });

  // the slope at the end of a parabola through n samples of noise s over one length has the standard error √(192/n) s: for 100 of 0.4 MPa 0.55 MPa
  test.each([1, 2, 3, 4, 5, 6])('noise neither makes nor hides it (seed %i)', (seed) => {
    expect(ends(TOP, 0.4, seed)).toBe(false);
    expect(ends(0.8 * TOP, 0.4, seed)).toBe(true);
  });
});

test('which sample is the highest does not matter', () => {
  const x = Float64Array.from({ length: 500 }, (_, i) => i / 5000);
  const y = x.map((e) => 3000 * e);
  y[480]! += 5;
  expect(stillRising(x, y, 500)).toBe(true);
});

test('what a pause spoils does not count', () => {
  const x = Float64Array.from({ length: 1000 }, (_, i) => Math.min(i, 799) / 8000);
  const y = x.map((e, i) => 3000 * e - (i > 799 ? 0.02 * (i - 799) : 0));
  const spoilt = new Uint8Array(1000).fill(1, 800);
  expect(stillRising(x, y, 1000, spoilt)).toBe(true);
});

test('of a few samples the last is asked', () => {
  const few = (...y: number[]) =>
    stillRising(
      Float64Array.from(y, (_, i) => i),
      Float64Array.from(y),
      y.length,
    );
  expect(few(0, 1, 2, 3)).toBe(true);
  expect(few(0, 1, 3, 3)).toBe(false);
  expect(few(0, 1, 3, 2)).toBe(false);
  expect(stillRising(new Float64Array(3), Float64Array.of(1, 2, 3), 3)).toBe(true);
});
