import { expect, test } from 'vitest';
import { fuzz } from '../support/mutants.js';

test('500 spoiled files end as a result or an InputError, and some of them as each', () => {
  const { read, analysed, refused, wrong } = fuzz(500);
  expect(wrong).toEqual([]);
  expect(Math.min(read, analysed, refused)).toBeGreaterThan(50);
});
