import { describe, expect, test } from 'vitest';
import { leastPiecesForTolerance, required, toleranceFactor, toleranceLimit } from '../../src/index.js';
import { expectPrinted } from '../support/handbook.js';

// one-sided factors of MIL-HDBK-5 and MIL-HDBK-17, appendices on tables (kB and kA); four decimals by mpmath's quadrature of non-central t
describe('one-sided factors at 95 % confidence', () => {
  test.each([
    [2, '20.581', '37.094'],
    [3, '6.1553', '10.5527'],
    [5, '3.4066', '5.7411'],
    [6, '3.0063', '5.0620'],
    [10, '2.3546', '3.9811'],
    [15, '2.0684', '3.5201'],
    [30, '1.7773', '3.0639'],
    [100, '1.5267', '2.6840'],
    [200, '1.449551', '2.569737'],
  ])('%d pieces: 90 %% %s, 99 %% %s', (n, b, a) => {
    expectPrinted(toleranceFactor({ n }), b);
    expectPrinted(toleranceFactor({ n, content: 0.99 }), a);
  });
});

// tolerance.py beside this file: SciPy's adaptive quadrature of the same definition; 31.092, 36.519, 2.856, 3.393 as in ISO 16269-6 (from memory)
describe('two-sided factors at 95 % confidence, exact', () => {
  test.each([
    [2, 0.9, '31.09222560'],
    [2, 0.95, '36.51921461'],
    [2, 0.99, '46.94440320'],
    [3, 0.9, '8.30594456'],
    [3, 0.95, '9.78875240'],
    [3, 0.99, '12.64710624'],
    [5, 0.9, '4.29060407'],
    [5, 0.95, '5.07687453'],
    [5, 0.99, '6.59797674'],
    [10, 0.9, '2.85631085'],
    [10, 0.95, '3.39342948'],
    [10, 0.99, '4.43690873'],
    [30, 0.9, '2.14511109'],
    [30, 0.95, '2.55489281'],
    [30, 0.99, '3.35457584'],
    [100, 0.9, '1.87480754'],
    [100, 0.95, '2.23388202'],
    [100, 0.99, '2.93554924'],
  ])('%d pieces, %f: %s', (n, content, printed) => {
    expectPrinted(toleranceFactor({ n, content, sides: 2 }), printed);
  });
});

test('five tests of a class: 90/95 limit 441.79, 99/95 limit 435.38, never called a basis', () => {
  const values = [452.1, 449.8, 455.0, 451.2, 447.6];
  const b = required(toleranceLimit(values));
  expectPrinted(b.lower!, '441.79');
  expectPrinted(required(toleranceLimit(values, { content: 0.99 })).lower!, '435.38');
  expect(b.label).toContain('B-like');
  expect(b.label).not.toMatch(/basis/i);
});

// ISO 16269-6, distribution-free intervals; Wilks (1941): 29, 299, 59 and, with both ends, 46, 93 (from memory)
test.each([
  [0.9, 0.95, 1, 29],
  [0.99, 0.95, 1, 299],
  [0.95, 0.95, 1, 59],
  [0.9, 0.95, 2, 46],
  [0.95, 0.95, 2, 93],
] as const)('without a shape: %f at %f, %d limits: %d pieces', (content, confidence, sides, n) => {
  expect(leastPiecesForTolerance({ content, confidence, sides })).toBe(n);
});
