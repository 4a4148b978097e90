import fc from 'fast-check';
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { fQuantile, noncentralTQuantile, normalCdf, normalQuantile, studentCdf, studentQuantile } from '../../src/numeric/index.js';
import { chiSquareExceeds } from '../../src/numeric/chiSquareExceeds.js';
import { fCdf, fExceeds } from '../../src/numeric/fDistribution.js';
import { findRoot } from '../../src/numeric/findRoot.js';
import { incompleteGamma } from '../../src/numeric/incompleteGamma.js';
import { noncentralTCdf } from '../../src/numeric/noncentralT.js';

/** Made by distributions.py beside it, in 330 digits. */
const oracle = JSON.parse(readFileSync('test/handbook/distributions.json', 'utf8')) as Record<string, number[][]>;
const rows = (name: string): number[][] => {
  expect(oracle[name]!.length).toBeGreaterThan(15);
  return oracle[name]!;
};

/** Every value is the wanted one, relative to it. */
function expectAlike(pairs: readonly { value: number; wanted: number; row: readonly number[] }[], within = 1e-10): void {
  for (const { value, wanted, row } of pairs)
    expect(Math.abs(value / wanted - 1), `${value} against ${wanted} of ${row.join(' ')}`).toBeLessThan(within);
}

describe('probabilities and quantiles to 1e-10 of the smaller tail', () => {
  test('normal', () => {
    expectAlike(rows('normal').map((row) => ({ value: normalCdf(row[0]!), wanted: row[1]!, row })));
    expectAlike(
      rows('normal')
        .filter(([z]) => z !== 0 && z! < 2)
        .map((row) => ({ value: normalQuantile(row[1]!), wanted: row[0]!, row })),
    );
    expect([normalQuantile(0), normalQuantile(0.5), normalQuantile(1)]).toEqual([-Infinity, 0, Infinity]);
    expect([normalCdf(-Infinity), normalCdf(Infinity)]).toEqual([0, 1]);
  });

  test('chi-square', () => {
    expectAlike(rows('chiSquare').map((row) => ({ value: incompleteGamma(row[1]! / 2, row[0]! / 2).lower, wanted: row[2]!, row })));
    expectAlike(rows('chiSquare').map((row) => ({ value: chiSquareExceeds(row[0]!, row[1]!), wanted: row[3]!, row })));
  });

  test('Student', () => {
    expectAlike(rows('student').map((row) => ({ value: studentCdf(row[0]!, row[1]!), wanted: row[2]!, row })));
    expectAlike(
      rows('student')
        .filter(([t]) => t! < -0.1)
        .map((row) => ({ value: studentQuantile(row[2]!, row[1]!), wanted: row[0]!, row })),
    );
    expect([studentQuantile(0, 3), studentQuantile(0.5, 3), studentQuantile(1, 3)]).toEqual([-Infinity, 0, Infinity]);
    expect(studentCdf(-1e200, 3)).toBe(0);
  });

  test('F', () => {
    expectAlike(rows('f').map((row) => ({ value: fCdf(row[0]!, row[1]!, row[2]!), wanted: row[3]!, row })));
    expectAlike(rows('f').map((row) => ({ value: fExceeds(row[0]!, row[1]!, row[2]!), wanted: row[4]!, row })));
    expectAlike(
      rows('f')
        .filter(([, , , below]) => below! < 0.999)
        .map((row) => ({ value: fQuantile(row[3]!, row[1]!, row[2]!), wanted: row[0]!, row })),
    );
    expect([fQuantile(0, 2, 3), fQuantile(1, 2, 3), fCdf(0, 2, 3), fExceeds(Infinity, 2, 3)]).toEqual([0, Infinity, 0, 0]);
  });

  test('non-central t', () => {
    expectAlike(rows('noncentralT').map((row) => ({ value: noncentralTCdf(row[0]!, row[1]!, row[2]!), wanted: row[3]!, row })));
    expectAlike(rows('noncentralT').map((row) => ({ value: noncentralTCdf(-row[0]!, row[1]!, -row[2]!), wanted: row[4]!, row })));
    expectAlike(
      rows('noncentralT')
        .filter(([t, , , below]) => t !== 0 && below! < 0.999)
        .map((row) => ({ value: noncentralTQuantile(row[3]!, row[1]!, row[2]!), wanted: row[0]!, row })),
    );
    expect([noncentralTQuantile(0, 3, 1), noncentralTQuantile(1, 3, 1)]).toEqual([-Infinity, Infinity]);
  });
});

describe('findRoot', () => {
  test('a root at either end, between, and of a function with a jump', () => {
    expect(findRoot((x) => x - 1, 1, 3)).toBe(1);
    expect(findRoot((x) => x - 3, 1, 3)).toBe(3);
    expect(findRoot((x) => x ** 3 - 2, 0, 5)).toBeCloseTo(Math.cbrt(2), 14);
    expect(findRoot((x) => (x < 2 ? -1 : 1), 0, 5)).toBeCloseTo(2, 14);
  });
});

describe('identities', () => {
  const freedom = fc.double({ min: 0.5, max: 1e4, noNaN: true });
  const share = fc.double({ min: 1e-12, max: 1 - 1e-12, noNaN: true });

  test('a quantile leads back to its probability', () => {
    fc.assert(
      fc.property(share, freedom, freedom, (p, a, b) => {
        const near = (value: number) => {
          expect(Math.abs(value / p - 1)).toBeLessThan(1e-10);
        };
        near(normalCdf(normalQuantile(p)));
        near(studentCdf(studentQuantile(p, a), a));
        near(fCdf(fQuantile(p, a, b), a, b));
      }),
    );
  });

  test('t² is F of 1 and ν; t of 1 is the tangent; non-central t of no shift is t; chi-square of 2 is exponential', () => {
    fc.assert(
      fc.property(share, freedom, (p, v) => {
        expect(studentQuantile(0.5 + p / 2, v) ** 2 / fQuantile(p, 1, v)).toBeCloseTo(1, p > 0.001 && p < 0.999 ? 9 : 2);
        expect(noncentralTCdf(studentQuantile(p, v), v, 0) / p).toBeCloseTo(1, 10);
        expect(chiSquareExceeds(-2 * Math.log(p), 2) / p).toBeCloseTo(1, 10);
      }),
    );
    expect(studentQuantile(0.8, 1)).toBeCloseTo(Math.tan(Math.PI * 0.3), 12);
  });

  test('non-central t below 0 is the normal tail alone, and its tails add up to 1', () => {
    for (const shift of [-3, 0, 1.5, 30]) expect(noncentralTCdf(0, 7, shift) / normalCdf(-shift)).toBeCloseTo(1, 11);
    for (const t of [-5, 0.1, 4, 50]) expect(noncentralTCdf(t, 5, 3) + noncentralTCdf(-t, 5, -3)).toBeCloseTo(1, 13);
  });
});
