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
    expect(of(noisy(29))).toMatchObject({ reason: 'no-hardening-after' });
  });

  test('where a pause explains a fall, noise does not', () => {
    const points = noisy(60).map(([e, R], i) => [e, i > 20 && i < 25 ? 150 : R] as const);
    expect(of(points, { pauses: [[20, 24]] })).toMatchObject({ reason: 'fall-in-pause' });
  });
});

describe('a force that is read in steps', () => {
  /** To 300 MPa and then hardening by 1 GPa, read in steps of 4 MPa, less so many steps over 0.1 % strain. */
  const read = (steps: number, step = 4): Points =>
    Array.from({ length: 1500 }, (_, i) => {
      const e = i * 2e-5;
      const fall = e > 0.003 && e < 0.004 ? steps * step : 0;
      return [e, step * Math.round(Math.min(200_000 * e, 300 + 1000 * e) / step) - fall] as const;
    });

  test('has a yield point from a fall of three steps on', () => {
    expect(of(read(1))).toMatchObject({ reason: 'fall-within-noise', message: 'falls are within the noise of 1.15 MPa' });
    expect(of(read(2))).toMatchObject({ reason: 'fall-within-noise' });
    expect(required(of(read(3))).upper.stress).toBe(304);
    // in finer steps half a per cent is more than two of them
    expect(required(of(read(4, 0.5))).lower.stress).toBeCloseTo(303 - 2, 9);
  });
});

describe('an upper yield point above the maximum of hardening', () => {
  /** To ReH of 460 MPa, a fall to 400 over samples of 0.01 % strain, a level of 1.5 %, hardening to 440 MPa at 14 %, and a neck. */
  const fallOver = (samples: number, change: (stress: number, strain: number) => number = (R) => R): Points => {
    const points: [number, number][] = [];
    const add = (e: number, R: number) => points.push([e, change(R, e)]);
    for (let i = 0; i <= 100; i += 1) add((i / 100) * 0.0023, (460 * i) / 100);
    for (let i = 1; i <= samples; i += 1) add(0.0023 + i * 1e-4, 460 - (60 * i) / samples);
    const begin = 0.0023 + samples * 1e-4;
    for (let i = 1; i <= 150; i += 1) add(begin + i * 1e-4, 400);
    for (let i = 1; i <= 400; i += 1) add(begin + 0.015 + i * 3e-4, 400 + 40 * (1 - (1 - i / 400) ** 2));
    for (let i = 1; i <= 100; i += 1) add(begin + 0.135 + i * 5e-4, 440 - i);
    return points;
  };

  test.each([1, 2, 3, 5, 10])('is found where its fall takes %d samples', (samples) => {
    const { upper, lower, extension } = required(of(fallOver(samples), { modulus: 200_000 }));
    expect([upper.stress, lower.stress]).toEqual([460, 400]);
    // the steepest line, over 0.2 % strain, meets the level next to its end
    expect(Math.abs(extension! - (samples * 1e-4 + 0.015))).toBeLessThan(0.001);
  });

  test('also with a step in its fall', () => {
    const stepped = fallOver(10, (R, e) => (e > 0.00265 && e < 0.00275 ? 450 : R));
    expect(required(of(stepped)).lower.stress).toBe(400);
  });

  test('a curve that only falls has none, with a short wave or a pause in its neck neither', () => {
    /** A maximum of 500 MPa, and a neck that a rise of 5 MPa interrupts. */
    const neck = (width: number): Points => [
      [0, 0],
      [0.0025, 500],
      [0.0027, 496],
      [0.004, 480],
      [0.006, 470],
      [0.006 + width, 475],
      [0.012, 440],
    ];
    expect(of(neck(0.0019))).toMatchObject({ reason: 'no-hardening-after' });
    expect(of(neck(0.0021)).ok).toBe(true);
    const paused: Points = [...neck(0.0021).slice(0, 4), [0.00401, 460], [0.0061, 479], [0.008, 470], [0.012, 440]];
    expect(of(paused).ok).toBe(true);
    // what the pause spoilt leaves a third of the fall without samples: no yield point, and no neck for sure
    expect(of(paused, { pauses: [[3, 4]] })).toMatchObject({ ok: false, reason: 'ends-after-fall' });
  });
});
