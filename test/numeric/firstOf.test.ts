import { describe, expect, it } from 'vitest';
import { firstChange, firstReaching } from '../../src/numeric/index.js';

const column = Float64Array.from([0, 1, 2, 3, 4, 9, 10, 11, 12, 13, 5, 6, 7]);

describe('firstReaching', () => {
  it('is the first sample at or above a level, wherever it lies among the four', () => {
    for (let i = 0; i <= 5; i += 1) expect(firstReaching(column, column[i]!, 0, column.length)).toBe(i);
    expect(firstReaching(column, 5, 10, column.length)).toBe(10);
  });
  it('is the end where none is, and where the range is empty', () => {
    expect(firstReaching(column, 9, 0, 5)).toBe(5);
    expect(firstReaching(column, 14, 0, column.length)).toBe(column.length);
    expect(firstReaching(column, 0, 7, 7)).toBe(7);
  });
});

describe('firstChange', () => {
  it('is the first sample after a change of more than so much, up or down', () => {
    for (let first = 1; first <= 5; first += 1) expect(firstChange(column, 1, first, column.length)).toBe(5);
    for (let first = 6; first <= 10; first += 1) expect(firstChange(column, 1, first, column.length)).toBe(10);
    expect(firstChange(column, 7.5, 1, column.length)).toBe(10);
  });
  it('is the end where none is more, a change of just so much included', () => {
    expect(firstChange(column, 8, 1, column.length)).toBe(column.length);
    expect(firstChange(column, 1, 1, 5)).toBe(5);
  });
});
