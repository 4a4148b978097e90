import { describe, expect, test } from 'vitest';
import { bridgmanCorrection } from '../../src/index.js';
import { thrown } from '../support/thrown.js';
import { checkVectors } from '../support/vectors.js';

checkVectors('after-necking', 'bridgmanCorrection');

describe("Bridgman's factor", () => {
  // the book's table, from memory
  test.each([
    { ratio: 1 / 3, book: 0.927 },
    { ratio: 1 / 2, book: 0.897 },
    { ratio: 1, book: 0.823 },
    { ratio: 2, book: 0.722 },
    { ratio: 3, book: 0.656 },
    { ratio: 4, book: 0.606 },
  ])('a/R = $ratio: table $book', ({ ratio, book }) => {
    const factor = bridgmanCorrection({ neckRadius: ratio * 2.5, profileRadius: 2.5 });
    expect(Math.abs(factor - book)).toBeLessThan(0.0015);
  });

  test('a straight piece needs no correction', () => {
    expect(bridgmanCorrection({ neckRadius: 1, profileRadius: 1e9 })).toBeCloseTo(1, 8);
  });

  test('the range of the estimate for steels includes its ends', () => {
    for (const strain of [0.12, 3]) {
      const x = Math.log(strain) / Math.LN10;
      expect(bridgmanCorrection({ strain })).toBeCloseTo(0.0684 * x ** 3 + 0.0461 * x ** 2 - 0.205 * x + 0.825, 12);
    }
  });

  test.each([
    [{ strain: 0.1 }, 'neck.strain'],
    [{ strain: 3.1 }, 'neck.strain'],
    [{ strain: NaN }, 'neck.strain'],
    [{ neckRadius: 0, profileRadius: 1 }, 'neck.neckRadius'],
    [{ neckRadius: 1 }, 'neck.profileRadius'],
    [{ neckRadius: 1, profileRadius: 1, angle: 2 }, 'neck.angle'],
  ])('%j is refused at %s', (neck, path) => {
    expect(thrown(() => bridgmanCorrection(neck as never)).path).toBe(path);
  });
});
