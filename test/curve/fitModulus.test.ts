import { describe, expect, test } from 'vitest';
import { fitModulus, required } from '../../src/index.js';
import { between } from '../../src/curve/modulus/between.js';
import { slopeFall } from '../../src/curve/modulus/slopeFall.js';
import { lineFit } from '../../src/numeric/index.js';
import { seeded } from '../support/random.js';
import { refusal } from '../support/thrown.js';

test('between two limits on the way up: both included, up to the maximum', () => {
  const column = Float64Array.of(0, 10, 20, 30, 25, 40, 10);
  expect(between(column, 10, 30, 5)).toEqual([1, 4]);
  expect(between(column, 10, 30, 2)).toEqual([1, 2]);
  expect(between(column, -1, 100, 5)).toEqual([0, 5]);
  expect(between(column, 11, 29, 5)).toEqual([2, 2]);
});

describe('windows that are given', () => {
  /** 100 GPa up to 200 MPa from an origin at 0.1 %, then half of it. */
  const strain = Float64Array.from({ length: 61 }, (_, i) => 0.001 + i * 1e-4);
  const stress = strain.map((_, i) => (i <= 20 ? 10 * i : 200 + 5 * (i - 20)));
  const of = (window: object) => fitModulus({ strain, stress }, { window: window as never });

  test.each([
    [{ by: 'strain', from: 0.0035, to: 0.005 }, 50_000, 25, 40],
    [{ by: 'strain', from: 0.001, to: 0.003 }, 100_000, 0, 20],
    [{ by: 'stress', from: 225, to: 300 }, 50_000, 25, 40],
    [{ by: 'samples', first: 30, last: 99 }, 50_000, 30, 60],
    [{ by: 'samples', first: 0, last: 20 }, 100_000, 0, 20],
  ])('%j', (window, slope, first, last) => {
    const line = required(of(window));
    expect(line.slope).toBeCloseTo(slope, 5);
    expect(line).toMatchObject({ first, last, points: last - first + 1, alternatives: [], eased: [], criterion: window });
    // the line meets zero stress where it was begun, or 200 MPa below the kink
    expect(line.strainShift).toBeCloseTo(slope === 100_000 ? 0.001 : 0.003 - 200 / 50_000, 9);
    expect(line.intercept).toBeCloseTo(-slope * line.strainShift, 6);
  });

  test('a level line does not rise, and one sample is no line', () => {
    const level = { strain, stress: strain.map(() => 5) };
    expect(fitModulus(level, { window: { by: 'samples', first: 0, last: 60 } })).toMatchObject({ ok: false, reason: 'no-rise' });
    expect(of({ by: 'stress', from: 95, to: 105 })).toMatchObject({ ok: false, reason: 'too-few-points' });
  });

  test.each([
    [
      { by: 'stress', from: 600, to: 900 },
      'no two samples up to the highest stress lie between 600 and 900 MPa, and the record has 0 to 400 MPa',
    ],
    [
      { by: 'stress', from: -300, to: -200 },
      'no two samples up to the highest stress lie between -300 and -200 MPa, and the record has 0 to 400 MPa',
    ],
    [
      { by: 'strain', from: 0.5, to: 0.6 },
      'no two samples up to the highest stress lie between the strains 0.5 and 0.6, and the record has 0.001 to 0.007',
    ],
    [{ by: 'samples', first: 5000, last: 6000 }, 'samples 5000 to 6000 were asked for, and the record ends with sample 60'],
    [{ by: 'samples', first: 60, last: 61 }, 'samples 60 to 61 were asked for, and the record ends with sample 60'],
  ])('%j: the limits are named with what the record has', (window, message) => {
    expect(of(window)).toEqual({ ok: false, reason: 'too-few-points', message });
  });

  test('a window must tell how it is chosen', () => {
    expect(refusal(() => of({ z: 3 }))).toBe('missing options.window.by');
    expect(refusal(() => of({ by: 'eye' }))).toBe('out-of-range options.window.by');
  });

  test('a line whose offset line is not met has no trust, one that meets it has', () => {
    const early = { strain: strain.slice(0, 21), stress: stress.slice(0, 21) };
    expect(required(fitModulus(early, { window: { by: 'samples', first: 0, last: 20 } }))).not.toHaveProperty('trust');
    // u beyond the kink the offset line of 0.2 % is met: 200 + 50 000 u = 100 000 u at 400 MPa, of which 0.4 % are elastic: twice the offset
    const late = {
      strain: Float64Array.from({ length: 81 }, (_, i) => 0.001 + i * 1e-4),
      stress: Float64Array.from({ length: 81 }, (_, i) => (i <= 20 ? 10 * i : 100 + 5 * i)),
    };
    expect(required(fitModulus(late, { window: { by: 'samples', first: 0, last: 20 } })).trust!.leverage).toBeCloseTo(2, 6);
  });
});

test('why there is no coarse line is told as it is', () => {
  // they rise, but only two lie above a fifth of the highest
  expect(fitModulus({ strain: [0, 0.001, 0.002], stress: [0, 70, 140] })).toMatchObject({
    reason: 'too-few-points',
    message: 'above a fifth of the highest stress no line through 3 samples or more rises',
  });
  expect(fitModulus({ strain: [1, 1, 1, 1], stress: [0, 50, 70, 140] })).toMatchObject({
    reason: 'too-few-points',
    message: 'all samples up to the highest stress have the same strain',
  });
});

describe('a window that is searched for', () => {
  /** A toe of twice the slope up to 45 MPa, 200 GPa up to 300 MPa, then 2 GPa. */
  const stress = Float64Array.from({ length: 401 }, (_, i) => (i <= 300 ? i : 300 + (i - 300) / 2));
  const strain = stress.map((R) => Math.min(R, 45) / 400_000 + Math.max(0, Math.min(R, 300) - 45) / 200_000 + Math.max(0, R - 300) / 2000);

  test.each(['lower-bound', 'relative-error'] as const)('%s: begins at a fifth of the offset stress, above a steep toe', (by) => {
    const line = required(fitModulus({ strain, stress }, { window: { by } }));
    expect(line.slope).toBeCloseTo(200_000, 4);
    expect(stress[line.first]!).toBeGreaterThanOrEqual(0.2 * line.offsetStress!);
    expect(stress[line.first - 1]!).toBeLessThan(0.2 * line.offsetStress!);
    expect(line.last).toBe(300);
    expect(line.eased).toEqual([]);
    expect(line.envelope).toBeDefined();
    // lower, where that is asked for
    expect(required(fitModulus({ strain, stress }, { window: { by: 'lower-bound', startShare: 0, spanShare: 0.05 } })).slope).toBeCloseTo(
      400_000,
      3,
    );
  });

  test('the score is the lower bound of the slope, or the relative error', () => {
    const { normal } = seeded(8);
    const noisy = { strain, stress: stress.map((R) => R + 0.5 * normal()) };
    const bound = required(fitModulus(noisy, { window: { by: 'lower-bound', z: 3 } }));
    expect(bound.score! / (bound.slope - 3 * bound.standardError)).toBeCloseTo(1, 9);
    expect(bound.criterion).toEqual({ by: 'lower-bound', z: 3, startShare: 0.2, spanShare: 0.2, gap: 0 });
    const relative = required(fitModulus(noisy, { window: { by: 'relative-error' } }));
    expect(relative.score! / -relative.relativeStandardError).toBeCloseTo(1, 9);
    expect(relative.criterion).toEqual({ by: 'relative-error', startShare: 0.2, spanShare: 0.2 });
  });
});

describe('fall of the slope from 20 to 30 to 40 % of the offset stress', () => {
  const { normal } = seeded(2);
  /** 200 GPa up to 30 % of 400 MPa, then 190 GPa, a sample each MPa. */
  const clean = Float64Array.from({ length: 200 }, (_, i) => i);
  const strain = clean.map((R) => Math.min(R, 120) / 200_000 + Math.max(0, R - 120) / 190_000);

  test('a twentieth, without error where there is no noise', () => {
    const { fall } = slopeFall({ strain, stress: clean }, 400, 200)!;
    expect(fall.value).toBeCloseTo(0.05, 9);
    expect(fall.standardError).toBeLessThan(1e-9);
  });

  test('its standard error is that of a ratio', () => {
    const stress = clean.map((R) => R + 0.3 * normal());
    const line = (low: number, high: number) => lineFit(strain, stress, ...between(stress, low, high, 199))!;
    const [lower, upper] = [line(80, 120), line(120, 160)];
    const { fall } = slopeFall({ strain, stress }, 400, 200)!;
    const ratio = upper.slope / lower.slope;
    expect(fall.value).toBeCloseTo(1 - ratio, 12);
    expect(fall.standardError).toBeCloseTo(ratio * Math.hypot(upper.standardError / upper.slope, lower.standardError / lower.slope), 12);
  });

  test('three samples in each band are needed, and a rise in the lower', () => {
    const of = (...R: number[]) =>
      slopeFall({ strain: Float64Array.from(R, (_, i) => i / 1000), stress: Float64Array.from(R) }, 100, R.length);
    expect(of(0, 20, 25, 30, 35, 40)).toBeDefined();
    expect(of(0, 20, 30, 35, 40)).toBeUndefined();
    expect(of(0, 20, 25, 29, 31, 40)).toBeUndefined();
    expect(of(0, 25, 25, 25, 31, 35, 40)).toBeUndefined();
  });
});
