import { expect, test } from 'vitest';
import { fuzz } from '../support/mutants.js';

test('500 spoiled files end as a result or an InputError, and some of them as each', () => {
  const { read, analysed, refused, wrong } = fuzz(500);
  expect(wrong).toEqual([]);
  expect(Math.min(read, analysed, refused)).toBeGreaterThan(50);
});

test('a motion that ends where it began has a range all the same', () => {
  // found among 100 000 files: the last lines stand in the file once more, so that the travel ends at its start
  for (const number of [18_945, 64_498]) expect(fuzz(1, number).wrong).toEqual([]);
});
