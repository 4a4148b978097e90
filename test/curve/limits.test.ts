/** Proportional limit, fracture and lasting crossings: each rule from both sides. */
import { describe, expect, test } from 'vitest';
import { fracture, proportionalLimit, required, type ProportionalLine } from '../../src/index.js';
import { lineResiduals } from '../../src/curve/modulus/lineResiduals.js';
import { sustainedCrossing } from '../../src/curve/sustainedCrossing.js';
import { lineFit, polynomialFit } from '../../src/numeric/index.js';
import { seeded } from '../support/random.js';

describe('proportional limit by tangent', () => {
  /** 100 GPa up to 200 MPa, then what follows, a sample each 0.001 %. */
  const kinked = (n: number, slopeAfter: (i: number) => number) => {
    const stress = new Float64Array(n);
    for (let i = 1; i < n; i += 1) stress[i] = stress[i - 1]! + (i <= 200 ? 1 : slopeAfter(i));
    return { strain: stress.map((_, i) => i * 1e-5), stress };
  };
  const line: ProportionalLine = { modulus: 100_000, definition: 'tangent', tangentShare: 0.8 };
  // lines through five samples lose 0, 1, 2.5, 4 and 5 tenths of the slope across the kink: 0.8 lies a third of the way from 0.9 to 0.75
  const expected = 199 + 2 / 3;

  test('a fall of the slope that lasts counts, though the slope recovers later', () => {
    expect(
      required(
        proportionalLimit(
          kinked(400, (i) => (i <= 240 ? 0.5 : 1)),
          line,
        ),
      ).stress,
    ).toBeCloseTo(expected, 6);
  });

  test('and so does one up to the end of the record', () => {
    const short = kinked(205, () => 0.5);
    expect(proportionalLimit(short, line)).toEqual({
      ok: true,
      stress: expect.closeTo(expected, 6) as number,
      strain: expect.closeTo(expected * 1e-5, 10) as number,
      definition: 'tangent',
      standardUncertainty: expect.any(Number) as number,
    });
  });

  test('six samples from the first to the maximum are needed', () => {
    const curve = kinked(10, () => 1);
    expect(proportionalLimit(curve, { ...line, first: 5 })).toMatchObject({
      reason: 'too-few-points',
      message: 'only 5 samples lie below the maximum',
    });
    expect(proportionalLimit(curve, { ...line, first: 4 })).toMatchObject({ reason: 'not-reached' });
    expect(proportionalLimit(curve, { modulus: 100_000 })).toMatchObject({ reason: 'not-reached' });
  });

  test.each([4000, 40_000, 400_000])('of %d samples: where the slope of a Ramberg-Osgood curve is 0.9', (n) => {
    // 1/slope = 1/E + 20 · 0.002/250 (R/250)^19
    const stress = Float64Array.from({ length: n }, (_, i) => (280 * i) / (n - 1));
    const strain = stress.map((R) => R / 70_000 + 0.002 * (R / 250) ** 20);
    const exact = 250 * ((1 / 0.9 - 1) / 70_000 / (20 * (0.002 / 250))) ** (1 / 19);
    const { stress: found, strain: at } = required(proportionalLimit({ strain, stress }, { modulus: 70_000, definition: 'tangent' }));
    // within a step of the few thousand places, of which stretches of five are taken
    expect(Math.abs(found - exact)).toBeLessThan(0.15);
    expect(at).toBeCloseTo(found / 70_000 + 0.002 * (found / 250) ** 20, 6);
  });
});

describe('proportional limit by tangents in noise of the motion', () => {
  // straight up to 280 MPa; then the tangent falls as exp(-(e - 280/E)/τ), so that it is a share s of E at 280 + E τ (1 - s)
  const [modulus, tau] = [205_000, 6e-4];
  const elastic = 280 / modulus;
  const stressAt = (e: number) => (e < elastic ? modulus * e : 280 + modulus * tau * (1 - Math.exp(-(e - elastic) / tau)));
  const slowPull = (step: number, motionNoise: number, seed: number) => {
    const random = seeded(seed);
    const pulled = Array.from({ length: Math.floor(0.006 / step) }, (_, i) => i * step);
    return {
      stress: pulled.map((e) => stressAt(e) + 0.1 * random.normal()),
      strain: pulled.map((e) => e + (motionNoise / 48) * random.normal()),
    };
  };

  // noise of 0.3 µm in a travel over 48 mm is 20 of the steps between samples: a line of stress over strain is flattened by it
  test.each([
    ['tangent', 280 + 0.1 * modulus * tau],
    ['johnson', 280 + (1 / 3) * modulus * tau],
  ] as const)('%s: many samples in slow noise give the limit within its doubt', (definition, exact) => {
    for (let seed = 1; seed <= 6; seed += 1) {
      const { stress, standardUncertainty = NaN } = required(proportionalLimit(slowPull(3e-7, 3e-4, seed), { modulus, definition }));
      expect(standardUncertainty).toBeLessThan(0.03 * exact);
      expect(Math.abs(stress - exact)).toBeLessThan(2 * standardUncertainty);
    }
  });

  test.each(['tangent', 'johnson'] as const)(
    '%s: where noise makes tangents reach over a fifth of the limit none is given',
    (definition) => {
      for (let seed = 1; seed <= 6; seed += 1)
        expect(proportionalLimit(slowPull(1e-5, 3e-3, seed), { modulus, definition })).toMatchObject({
          reason: 'not-resolved',
          message: expect.stringMatching(/^noise makes a tangent reach over \d+ MPa$/) as string,
        });
    },
  );

  test('a travel in steps of a sixth of the limit tells none either', () => {
    const { strain, stress } = slowPull(2e-6, 0, 1);
    const coarse = strain.map((e) => Math.round(e * 4800) / 4800);
    expect(proportionalLimit({ strain: coarse, stress }, { modulus, definition: 'tangent' })).toMatchObject({ reason: 'not-resolved' });
  });

  test.each([
    ['stands', () => 0.1],
    ['goes back', (i: number) => -i],
    ['goes to and fro', (i: number) => i % 2],
    ['is next to nothing', (i: number) => 1e-30 * i],
  ])('a strain that %s gives none, and comes to an end', (_, strainAt) => {
    const stress = Array.from({ length: 40 }, (_, i) => i);
    const found = proportionalLimit({ strain: stress.map(strainAt), stress }, { modulus: 1, definition: 'tangent', first: 0 });
    expect(found).toMatchObject({ reason: 'not-reached' });
  });

  test('a rest of the hand in the elastic part is no fall of the tangent', () => {
    const { strain, stress } = slowPull(3e-7, 3e-4, 1);
    const random = seeded(9);
    const [held, rest] = [2000, 600];
    const at = <T>(list: readonly T[], still: (one: T) => T) => [
      ...list.slice(0, held),
      ...Array.from({ length: rest }, () => still(list[held]!)),
      ...list.slice(held),
    ];
    const exact = 280 + 0.1 * modulus * tau;
    const found = required(
      proportionalLimit(
        { strain: at(strain, () => held * 3e-7 + (3e-4 / 48) * random.normal()), stress: at(stress, () => stressAt(held * 3e-7)) },
        { modulus, definition: 'tangent' },
      ),
    );
    expect(Math.abs(found.stress - exact)).toBeLessThan(2 * found.standardUncertainty!);
  });
});

describe('proportional limit by deviation', () => {
  const strain = Float64Array.from({ length: 31 }, (_, i) => i / 8192);
  const leaving = (by: number, from: number, to: number, more: Partial<ProportionalLine> = {}) =>
    proportionalLimit(
      { strain, stress: strain.map((e, i) => 81_920 * e - (i >= from && i < to ? by : 0)) },
      { modulus: 81_920, definition: 'deviation', residualStandardDeviation: 1, ...more },
    );

  test('three standard deviations are none, more are', () => {
    expect(leaving(3, 16, 31)).toMatchObject({ ok: false, reason: 'not-reached' });
    expect(required(leaving(3.1, 16, 31)).stress).toBeCloseTo(156.9, 9);
  });

  test('from the very first sample', () => {
    expect(required(leaving(4, 0, 6, { first: 0 }))).toMatchObject({ stress: -4, strain: 0 });
  });
});

describe('fracture', () => {
  const of = (stress: readonly number[]) => fracture({ strain: stress.map((_, i) => i / 100), stress });

  test('of a long, noisy record the usual step is that of some hundred places', () => {
    // 3 MPa up and down in turn: 14.9 MPa, less than five such steps, belong to the neck, 15.1 to the collapse
    const neck = [0, 500, 1000, ...Array.from({ length: 1000 }, (_, k) => (k % 2 === 0 ? 900 : 903))];
    expect(of([...neck, 903 - 14.9, 400, 0])).toMatchObject({ index: neck.length, how: 'sudden-fall' });
    expect(of([...neck, 903 - 15.1, 400, 0])).toMatchObject({ index: neck.length - 1, how: 'sudden-fall' });
  });

  test('why there is none', () => {
    expect(of([0, 0])).toMatchObject({ reason: 'not-fractured' });
    expect(of([0, 1, 2])).toMatchObject({ reason: 'not-fractured', message: 'the record ends at 100.0 % of its maximum' });
  });

  test('a maximum at the first sample', () => {
    expect(of([400, 390, 380, 0])).toMatchObject({ index: 2, how: 'sudden-fall' });
    expect(of([400, 0])).toMatchObject({ index: 0 });
  });
});

describe('a crossing that lasts', () => {
  // slope 1 from the origin 10: the line is e - 10
  const crossing = (stress: readonly number[], first = 0, end = stress.length) =>
    sustainedCrossing(
      Float64Array.from(stress, (_, i) => 10 + i * 1e-5),
      Float64Array.from(stress, (R, i) => i * 1e-5 + R),
      1,
      10,
      first,
      end,
    );

  test('begins with the first of five samples below the line, where one on it is not below', () => {
    expect(crossing([1, 1, -1, -1, -1, -1, -1, 1])).toBe(2);
    expect(crossing([1, 1, -1, -1, -1, -1, 1, 1])).toBe(-1);
    expect(crossing([1, -1, -1, 1, -1, -1, -1, -1, -1, 1])).toBe(4);
    expect(crossing([-1, -1, -1, -1, -1])).toBe(0);
    expect(crossing([1, -1, -1, -1, -1, -1, 1, -1, -1, -1, -1, -1, 1], 3)).toBe(7);
  });

  test('or lasts up to the end in two samples', () => {
    expect(crossing([1, 1, -1, -1])).toBe(2);
    expect(crossing([1, 1, 1, -1])).toBe(-1);
    expect(crossing([-1, -1])).toBe(0);
    expect(crossing([1, -1, -1, 1], 0, 3)).toBe(1);
    expect(crossing([1, 1, 1, 1])).toBe(-1);
    expect(crossing([1, -1, 1, 1])).toBe(-1);
  });

  test('or over 0.05 % strain', () => {
    const wide = (gap: number) => sustainedCrossing(Float64Array.of(-1, 0, gap, 1), Float64Array.of(0, -1, -1, 2), 1, 0, 0, 4);
    expect(wide(0.0005)).toBe(1);
    expect(wide(0.0004)).toBe(-1);
  });
});

describe('residuals of a line', () => {
  const lineOf = (strain: readonly number[], stress: readonly number[]) => {
    const [x, y] = [Float64Array.from(strain), Float64Array.from(stress)];
    const { slope, intercept } = lineFit(x, y, 0, x.length - 1)!;
    return { slope, residuals: lineResiduals({ strain: x, stress: y }, { slope, intercept, first: 0, last: x.length - 1 }) };
  };

  test('five samples are enough, four are not', () => {
    expect(lineOf([0, 1, 2, 3], [0, 1, 2, 4]).residuals).toBeUndefined();
    expect(lineOf([0, 1, 2, 3, 4], [0, 1, 2, 3, 5]).residuals).toBeDefined();
  });

  test('unequal steps: the change of slope is that of a parabola by the general library', () => {
    const [x, y] = [
      [0, 1, 2, 3, 10],
      [0, 1.2, 1.9, 3.3, 9],
    ];
    const { slope, residuals } = lineOf(x, y);
    const { coefficients, covariance } = polynomialFit(Float64Array.from(x), Float64Array.from(y), 2);
    expect(residuals!.slopeChange).toBeCloseTo((2 * coefficients[2]! * 10) / slope, 9);
    expect(residuals!.slopeChangeError).toBeCloseTo((2 * Math.sqrt(covariance[2]![2]!) * 10) / slope, 9);
  });

  test('runs by Wald and Wolfowitz: mean 2ab/n + 1, variance 2ab (2ab - n)/(n² (n - 1))', () => {
    const of = (signs: readonly number[]) => {
      const x = Float64Array.from(signs, (_, i) => i);
      return lineResiduals(
        { strain: x, stress: x.map((e, i) => e + signs[i]!) },
        { slope: 1, intercept: 0, first: 0, last: x.length - 1 },
      )!;
    };
    // a = 4 above, b = 6 not above (one of them on the line), n = 10, six runs
    const { runs, expectedRuns, runsDeviation } = of([1, -1, 1, 1, 0, 1, -1, -1, -1, -1]);
    const twice = 2 * 4 * 6;
    expect(runs).toBe(6);
    expect(expectedRuns).toBeCloseTo(twice / 10 + 1, 12);
    expect(runsDeviation).toBeCloseTo((6 - twice / 10 - 1) / Math.sqrt((twice * (twice - 10)) / (100 * 9)), 12);
    // all on one side: one run is all that there can be
    expect(of([1, 1, 1, 1, 2])).toMatchObject({ runs: 1, expectedRuns: 1, runsDeviation: 0 });
  });
});
