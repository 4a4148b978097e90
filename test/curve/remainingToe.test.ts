import { expect, it } from 'vitest';
import { fitModulus } from '../../src/curve/index.js';
import { remainingToe } from '../../src/curve/modulus/remainingToe.js';
import { required } from '../../src/base/index.js';

const E = 200_000;

/** Slope [MPa] at a share of the offset stress where a toe adds so much strain per stress at none, and ends by a factor e over a share. */
const slopeAt = (at: number, start: number, over: number): number => 1 / (1 / E + start * Math.exp(-at / over));

/** The bands' slopes as a fall, without noise. */
const bands = (start: number, over: number) => {
  const [lower, above] = [0.25, 0.35].map((at) => slopeAt(at, start, over)) as [number, number];
  return { fall: { value: 1 - above / lower, standardError: 0.001 }, above };
};

it.each([
  [0.1, 0.5],
  [0.2, 0.5],
  [0.2, 0.7],
  [0.4, 0.6],
])('tells what is left of a toe that ends over %d of the offset stress, at %d of it', (over, middle) => {
  const start = 4 / E;
  const slope = slopeAt(middle, start, over);
  // the true share that the toe takes off there
  expect(remainingToe(slope, middle, 0, bands(start, over))?.slopeShare).toBeCloseTo(1 - slope / E, 6);
});

it('tells the same toe where yielding takes off its own share', () => {
  const [start, over, middle, yielded] = [4 / E, 0.2, 0.6, 0.03];
  const slope = slopeAt(middle, start, over);
  const found = remainingToe(slope * (1 - yielded), middle, yielded, bands(start, over))!;
  expect(found.slopeShare).toBeCloseTo((1 - slope / E) * (1 - yielded), 6);
});

it('takes a toe to halve from band to band where the window lies beside them', () => {
  const { above, fall } = bands(4 / E, 0.2);
  const a = -fall.value / above;
  expect(remainingToe(above, 0.35, 0, { above, fall })?.slopeShare).toBeCloseTo(above * a, 12);
});

it('is none where the slope does not rise by a tenth and beyond its error, or falls', () => {
  expect(remainingToe(E, 0.6, 0, { above: E, fall: { value: -0.2, standardError: 0.06 } })).toBeUndefined();
  expect(remainingToe(E, 0.6, 0, { above: E, fall: { value: -0.09, standardError: 0.001 } })).toBeUndefined();
  expect(remainingToe(E, 0.6, 0, { above: E, fall: { value: 0.2, standardError: 0.01 } })).toBeUndefined();
});

it('withholds no line above a toe that has ended, and doubts one that it reaches', () => {
  const record = (over: number) => {
    const stress = Array.from({ length: 400 }, (_, i) => i);
    const strain = stress.map((R) => R / E + 1.5e-3 * (1 - Math.exp(-R / over)) + 0.002 * (R / 400) ** 30);
    return required(fitModulus({ strain, stress }));
  };
  const [ended, reaches] = [record(15), record(50)];
  expect(ended.remainingToe?.slopeShare ?? 0).toBeLessThan(1e-3);
  expect(ended.linearPart?.verdict).toBe('found');
  const low = 1 - reaches.slope / E;
  expect(low).toBeGreaterThan(0.01);
  expect(reaches.remainingToe!.slopeShare).toBeGreaterThan(0.3 * low);
});
