import { describe, expect, test } from 'vitest';
import { required, yieldPoints, type YieldOptions } from '../../src/index.js';
import { spoiltByPauses } from '../../src/curve/yield/upperYield.js';

type Points = readonly (readonly [strain: number, stress: number])[];
const columns = (points: Points) => ({ strain: points.map(([e]) => e), stress: points.map(([, R]) => R) });
const of = (points: Points, options?: YieldOptions) => yieldPoints(columns(points), options);

describe('what a pause spoils', () => {
  const marks = (points: Points, ...pauses: (readonly [number, number])[]) => {
    const { strain, stress } = columns(points);
    const spoilt = spoiltByPauses({ strain: Float64Array.from(strain), stress: Float64Array.from(stress) }, pauses);
    return spoilt && [...spoilt.keys()].filter((i) => spoilt[i] === 1);
  };
  const points: Points = [300, 310, 290, 310, 305, 310, 320].map((R, i) => [0.001 * i, R] as const);

  test('all of it, and what follows until the stress is back where it was', () => {
    expect(marks(points, [1, 3])).toEqual([2, 3, 4]);
    expect(marks(points, [1, 4])).toEqual([2, 3, 4]);
    expect(marks(points, [1, 2])).toEqual([2]);
    expect(marks(points, [1, 2], [3, 3])).toEqual([2, 4]);
    expect(marks(points)).toBeUndefined();
  });

  test('at most over 0.5 % strain', () => {
    const low: Points = [
      [0, 300],
      [0.001, 290],
      [0.005, 295],
      [0.0051, 295],
      [0.006, 310],
    ];
    expect(marks(low, [0, 1])).toEqual([1, 2]);
  });
});

describe('the upper yield point', () => {
  const hardening: Points = [
    [0.01, 390],
    [0.02, 390],
    [0.022, 410],
    [0.024, 430],
  ];

  test('of equal peaks the first is it', () => {
    expect(required(of([[0, 0], [0.002, 400], [0.0021, 400], [0.0024, 390], [0.003, 390], ...hardening])).upper.index).toBe(1);
  });

  test('no higher stress follows over the strain asked for, its end included', () => {
    const passed = (back: number) =>
      of(
        [
          [-0.002, 0],
          [0, 400],
          [0.0005, 390],
          [back, 390],
          [0.0012, 420],
          [0.003, 450],
        ],
        { minimumStrain: 0.001 },
      );
    expect(required(passed(0.001)).upper.index).toBe(1);
    expect(passed(0.0009)).toMatchObject({ ok: false, reason: 'no-fall' });
  });

  test('the yielding range begins with the first sample that has fallen', () => {
    const found = required(
      of([
        [-0.002, 0],
        [0, 400],
        [0.0001, 390],
        [0.0003, 385],
        [0.0006, 386],
        [0.003, 388],
        [0.01, 388],
        [0.02, 388],
        [0.022, 408],
        [0.024, 428],
      ]),
    );
    expect(found.lower).toEqual({ stress: 385, strain: 0.0003, index: 3 });
  });

  test('a fall in a pause counts as one from the least fall on, and above a fifth of the maximum', () => {
    const paused = (peak: number, low: number) =>
      of(
        [
          [0, 0],
          [0.001, peak],
          [0.0011, low],
          [0.0012, peak],
          [0.002, 300],
          [0.003, 500],
        ],
        { pauses: [[1, 2]] },
      );
    expect(paused(200, 198.9)).toMatchObject({ reason: 'fall-in-pause' });
    expect(paused(200, 199.1)).toMatchObject({ reason: 'no-fall' });
    expect(paused(100, 90)).toMatchObject({ reason: 'fall-in-pause' });
    expect(paused(99, 90)).toMatchObject({ reason: 'no-fall' });
  });

  /** 200 MPa and 1 MPa up and down in turn: every second sample falls by 1 %. */
  const noisy = (n: number): Points => Array.from({ length: n }, (_, i) => [i * 1e-4, 200 + (i % 2 === 0 ? 1 : -1)] as const);

  test('of fewer than thirty samples noise is not asked', () => {
    expect(of(noisy(30))).toMatchObject({ reason: 'fall-within-noise' });
    expect(of(noisy(29)).ok).toBe(true);
  });

  test('where a pause explains a fall, noise does not', () => {
    const points = noisy(60).map(([e, R], i) => [e, i > 20 && i < 25 ? 150 : R] as const);
    expect(of(points, { pauses: [[20, 24]] })).toMatchObject({ reason: 'fall-in-pause' });
  });
});
