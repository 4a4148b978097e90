import { expect, test } from 'vitest';
import { required, toleranceLimit } from '../../src/index.js';
import { checkVectors } from '../support/vectors.js';

checkVectors('tolerance', 'toleranceFactor', 'toleranceLimit', 'leastPiecesForTolerance');

test('five tests of a class: a limit is never called a basis', () => {
  const values = [452.1, 449.8, 455.0, 451.2, 447.6];
  const b = required(toleranceLimit(values));
  expect(b.label).toContain('B-like');
  expect(b.label).not.toMatch(/basis/i);
});
