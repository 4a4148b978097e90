import { expect, it } from 'vitest';
import { median, medianChange } from '../../src/numeric/index.js';

it('the median of what a column changes by, at every so many samples of a range', () => {
  const column = Float64Array.from([0, 1, 3, 2, 6, 6, -4, 3]);
  expect(medianChange(column, 1, 8, 1)).toBe(median([1, 2, 1, 4, 0, 10, 7]));
  expect(medianChange(column, 2, 6, 3)).toBe(median([2, 0]));
  expect(medianChange(column, 7, 8, 3)).toBe(7);
  expect(medianChange(column, 8, 8, 1)).toBe(0);
  expect(medianChange(column, 9, 8, 1)).toBe(0);
});
