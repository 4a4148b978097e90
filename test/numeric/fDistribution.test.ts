import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fExceeds } from '../../src/numeric/fDistribution.js';
import { incompleteBeta } from '../../src/numeric/incompleteBeta.js';

/*
 * Values of SciPy 1.17: scipy.stats.f.sf(f, d1, d2) and scipy.special.betainc(a, b, x), printed with repr().
 * for f, d1, d2 in [...]: print(repr(float(stats.f.sf(f, d1, d2))))
 */
const exceeded: readonly (readonly [number, number, number, number])[] = [
  [0.5, 1, 1, 0.6081734479693928],
  [10.13, 1, 3, 0.04998772585997864],
  [5.591, 1, 7, 0.05000696549164137],
  [5.143, 2, 6, 0.05000465782210645],
  [3.936, 1, 100, 0.05000408215316358],
  [0.01, 2, 5, 0.9900695822980478],
  [3.098, 3, 20, 0.050018370106771834],
  [1000, 1, 2, 0.0009985024956328606],
  [15, 2, 30, 3.0517578125e-5],
  [1, 5, 10, 0.46511942653780036],
  [6.66, 1, 1000, 0.010001643330201006],
  [250, 4, 2, 0.003988031920191553],
  [1, 10, 10, 0.5],
  [1e-6, 1, 4, 0.99925000015625],
  [1.7, 50, 60, 0.02481728994907702],
  [1.3, 200, 300, 0.01999576573720876],
];

const beta: readonly (readonly [number, number, number, number])[] = [
  [0.5, 0.5, 0.1, 0.20483276469913345],
  [0.5, 5, 0.01, 0.24284189089843747],
  [5, 0.5, 0.99, 0.7571581091015623],
  [2, 3, 0.5, 0.6875],
  [10, 2, 0.8, 0.3221225472000001],
  [0.5, 50, 0.02, 0.8437564921331819],
  [100, 100, 0.48, 0.2859671528122592],
  [1, 1, 0.3, 0.3],
  [1000, 2, 0.999, 0.7353908495419277],
  [0.5, 1500, 0.002, 0.9857346646828021],
  [30, 0.5, 0.97, 0.17821754497024148],
  [3, 7, 1e-6, 8.399962200075597e-17],
];

describe('F distribution', () => {
  test.each(exceeded)('P(F > %d) of %d and %d degrees of freedom, relative to 1e-10', (f, numerator, denominator, expected) => {
    expect(Math.abs(fExceeds(f, numerator, denominator) / expected - 1)).toBeLessThan(1e-10);
  });

  test('closed forms: two degrees in the numerator, and the ends', () => {
    // P(F > f) = (1 + 2 f / d)^(-d/2)
    for (const d of [1, 2, 5, 40]) expect(fExceeds(3, 2, d)).toBeCloseTo((1 + 6 / d) ** (-d / 2), 13);
    expect(fExceeds(0, 2, 5)).toBe(1);
    expect(fExceeds(-1, 2, 5)).toBe(1);
    expect(fExceeds(Infinity, 2, 5)).toBe(0);
  });

  test('f and 1/f with the degrees exchanged are complements', () => {
    const degrees = fc.integer({ min: 1, max: 200 });
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 100, noNaN: true }), degrees, degrees, (f, a, b) => {
        expect(fExceeds(f, a, b) + fExceeds(1 / f, b, a)).toBeCloseTo(1, 11);
      }),
    );
  });
});

describe('regularised incomplete beta function', () => {
  test.each(beta)('I(%d, %d; %d), relative to 1e-10', (a, b, x, expected) => {
    expect(Math.abs(incompleteBeta(a, b, x) / expected - 1)).toBeLessThan(1e-10);
  });

  test('small shapes go through the reflection of the gamma function: I_x(1/4, 1) = x^(1/4)', () => {
    expect(incompleteBeta(0.25, 1, 0.3)).toBeCloseTo(0.3 ** 0.25, 13);
    expect(incompleteBeta(2, 2, -1)).toBe(0);
    expect(incompleteBeta(2, 2, 2)).toBe(1);
  });
});
