import { describe, expect, test } from 'vitest';
import { bridgmanCorrection } from '../../src/index.js';
import { expectPrinted } from '../support/handbook.js';
import { thrown } from '../support/thrown.js';

describe("Bridgman's factor", () => {
  // computed from the formula; the book's table, from memory, beside it
  test.each([
    { ratio: 1 / 3, printed: '0.92674', book: 0.927 },
    { ratio: 1 / 2, printed: '0.89628', book: 0.897 },
    { ratio: 1, printed: '0.82210', book: 0.823 },
    { ratio: 2, printed: '0.72135', book: 0.722 },
    { ratio: 3, printed: '0.65481', book: 0.656 },
    { ratio: 4, printed: '0.60683', book: 0.606 },
  ])('a/R = $ratio: $printed (table $book)', ({ ratio, printed, book }) => {
    const factor = bridgmanCorrection({ neckRadius: ratio * 2.5, profileRadius: 2.5 });
    expectPrinted(factor, printed);
    expect(Math.abs(factor - book)).toBeLessThan(0.0015);
  });

  test.each([
    { strain: 0.44, printed: '0.90085', book: 0.9 },
    { strain: 1, printed: '0.825', book: 0.825 },
    { strain: 3, printed: '0.74511', book: 0.745 },
  ])('estimate for steels at $strain: $printed (Dowling, Mechanical Behavior of Materials: $book)', ({ strain, printed, book }) => {
    expectPrinted(bridgmanCorrection({ strain }), printed);
    expect(Math.abs(bridgmanCorrection({ strain }) - book)).toBeLessThan(0.001);
  });

  test('a straight piece needs no correction', () => {
    expect(bridgmanCorrection({ neckRadius: 1, profileRadius: 1e9 })).toBeCloseTo(1, 8);
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
