import { describe, expect, it } from 'vitest';
import {
  aboveSince,
  blockExtremes,
  firstBelow,
  firstChange,
  firstFall,
  firstReaching,
  highestSample,
  maximumIndex,
  randomNumbers,
  stretchAbove,
} from '../../src/numeric/index.js';

/** Columns that rise in noise, stand, go back, or end early, of less than a block and of many. */
const columns = [1, 2, 127, 128, 129, 1000, 30_000].flatMap((n) => {
  const { normal, uniform } = randomNumbers(n);
  const of = (value: (i: number) => number): Float64Array => Float64Array.from({ length: n }, (_, i) => value(i));
  return [
    of((i) => i / n + 0.01 * normal()),
    of(() => 1),
    of((i) => Math.round(10 * Math.sin((6 * i) / n)) + 0),
    of((i) => (i < n / 2 ? i / n : 0.1 + i / n / 3)),
    of(() => uniform()),
  ];
});
const ranges = (n: number): (readonly [number, number])[] => [
  [0, n],
  [Math.floor(n / 3), n],
  [Math.floor(n / 5), Math.floor((2 * n) / 3)],
];
const shares = [0, 1e-4, 0.02, 0.1, 0.5, 1, 3, 30];

describe('blockExtremes', () => {
  it('holds every sample between the extremes of its block, and reaches them', () => {
    for (const column of columns) {
      const { size, lowest, highest, fall } = blockExtremes(column);
      expect(lowest).toHaveLength(Math.ceil(column.length / size));
      lowest.forEach((low, k) => {
        const block = Array.from(column.subarray(k * size, (k + 1) * size));
        expect([low, highest[k]]).toEqual([Math.min(...block), Math.max(...block)]);
        expect(fall[k]).toBe(Math.max(...block.map((value, i) => Math.max(...block.slice(0, i + 1)) - value)));
      });
    }
  });
  it('has about as many blocks of a very long column', () => {
    const { size, highest } = blockExtremes(Float64Array.from({ length: 1_000_000 }, (_, i) => i));
    expect(highest.length).toBeLessThan(4200);
    expect(highest[1]).toBe(2 * size - 1);
  });
  it('passes nothing over where a column has ended', () => {
    const column = Float64Array.from({ length: 512 }, (_, i) => (i < 140 ? i : NaN));
    const { lowest, highest } = blockExtremes(column);
    expect([lowest[1], highest[1], lowest[2], highest[3]]).toEqual([128, 139, NaN, NaN]);
  });
});

describe('highestSample', () => {
  it('is the sample that a walk over all finds', () => {
    for (const column of columns) expect(highestSample(column, blockExtremes(column))).toBe(maximumIndex(column));
  });
  it('is the one of a range too', () => {
    for (const column of columns)
      for (const [first, end] of [
        ...ranges(column.length),
        [0, 1],
        [Math.floor(column.length / 3), Math.floor(column.length / 3) + 1],
      ] as const)
        expect(highestSample(column, blockExtremes(column), first, end)).toBe(maximumIndex(column, first, end));
  });
});

describe('firstFall', () => {
  const walked = (column: Float64Array, least: number, first: number, end: number): number => {
    let top = first;
    for (let i = first; i < end; i += 1)
      if (column[i]! > column[top]!) top = i;
      else if (column[top]! - column[i]! > least) return i;
    return end;
  };
  it('is the sample that a walk over all finds, whatever blocks are passed over', () => {
    for (const column of columns)
      for (const [first, end] of ranges(column.length))
        for (const least of shares)
          expect(firstFall(column, least, first, end, blockExtremes(column))).toBe(walked(column, least, first, end));
  });
  it('is the end where none is more, a fall of just so much included, and where the range is empty', () => {
    const column = Float64Array.from([0, 3, 1, 4, 2]);
    const fall = (least: number, first = 0, end = 5) => firstFall(column, least, first, end, blockExtremes(column));
    expect([fall(1.9), fall(2), fall(0, 4), fall(0, 5)]).toEqual([2, 5, 5, 5]);
  });
});

describe('aboveSince', () => {
  it('is the sample that a walk back finds', () => {
    for (const column of columns)
      for (const end of [0, 1, column.length >> 1, column.length])
        for (const level of [-1, -0.01, 0, 0.1, 0.5, 1, 9, 10]) {
          let first = end;
          while (first > 0 && column[first - 1]! > level) first -= 1;
          expect(aboveSince(column, level, end, blockExtremes(column))).toBe(first);
          expect(aboveSince(column, level, end)).toBe(first);
        }
  });
});

describe('firstReaching by blocks', () => {
  it('is the sample that it is without them', () => {
    for (const column of columns)
      for (const [first, end] of ranges(column.length))
        for (const level of [-11, 0, 0.1, 0.5, 0.99, 1, 9, 10, 11])
          expect(firstReaching(column, level, first, end, blockExtremes(column))).toBe(firstReaching(column, level, first, end));
  });
});

describe('firstBelow', () => {
  it('is the sample that a walk finds, by blocks or without them', () => {
    for (const column of columns)
      for (const [first, end] of ranges(column.length))
        for (const level of [-11, 0, 0.1, 0.5, 0.99, 1, 9, 10, 11]) {
          let i = first;
          while (i < end && column[i]! >= level) i += 1;
          expect(firstBelow(column, level, first, end)).toBe(i);
          expect(firstBelow(column, level, first, end, blockExtremes(column))).toBe(i);
        }
  });
});

describe('stretchAbove', () => {
  it('is the stretch that walks to either side find', () => {
    for (const column of columns)
      for (const at of [0, column.length >> 1, column.length - 1])
        for (const level of [0, 0.1, 0.5, 1, 9]) {
          let [first, last] = [at, at];
          while (first > 0 && column[first - 1]! >= level) first -= 1;
          while (last < column.length - 1 && column[last + 1]! >= level) last += 1;
          expect(stretchAbove(column, level, at)).toEqual([first, last]);
        }
  });
});

describe('firstChange by blocks', () => {
  it('is the sample that it is without them', () => {
    for (const column of columns)
      for (const [first, end] of ranges(column.length))
        for (const least of shares) {
          const from = Math.min(Math.max(1, first), end);
          expect(firstChange(column, least, from, end, blockExtremes(column))).toBe(firstChange(column, least, from, end));
        }
  });
});
