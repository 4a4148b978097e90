import { describe, expect, test } from 'vitest';
import { cellValue, isDate, splitCells, thousandsIn } from '../../src/record/reading/cells.js';
import { clockTime, secondsFromFirst } from '../../src/record/reading/clockTime.js';

describe('a cell as a number', () => {
  test.each([
    ['0', 0],
    ['12', 12],
    ['+12', 12],
    ['-12', -12],
    ['\u221212', -12],
    ['12.', 12],
    ['12.5', 12.5],
    ['.5', 0.5],
    ['-.25', -0.25],
    ['1e3', 1000],
    ['1E3', 1000],
    ['1e+3', 1000],
    ['1.5e-3', 0.0015],
    ['2e10', 2e10],
    ['1e-12', 1e-12],
  ])('%s with a point', (cell, value) => {
    expect(cellValue(cell, '.', undefined)).toBe(value);
    expect(cellValue(cell.replace('.', ','), ',', undefined)).toBe(value);
  });

  test.each(['abc', '1.2.3', '1e', 'e5', '.', '+', '1 2', '12a', 'a12', '1e5x', '--1', '1e999', '1.5 kN', '+-1', '1e1.5', '0x10'])(
    '%s is text',
    (cell) => {
      expect(cellValue(cell, '.', undefined)).toBeUndefined();
    },
  );

  test.each([
    '',
    'nan',
    'NaN',
    '-nan',
    '+NaN',
    'N/A',
    'null',
    'None',
    '-',
    '---',
    '#N/A',
    '#NV',
    '#DIV/0!',
    '#¡DIV/0!',
    '#¿NOMBRE?',
    '#',
    '####',
  ])('%j says that there is none', (cell) => {
    expect(cellValue(cell, '.', undefined)).toBeNaN();
  });

  test.each(['nano', 'ananas', 'not null', 'nullify', '#1 sample', 'no. #N/A', '-a', '#N/A x', 'a#', '1 ----'])('%j is text', (cell) => {
    expect(cellValue(cell, '.', undefined)).toBeUndefined();
  });

  test('a point where the comma is the decimal sign, and the other way', () => {
    expect(cellValue('1.5', ',', undefined)).toBeUndefined();
    expect(cellValue('1,5', '.', undefined)).toBeUndefined();
  });

  test.each([
    ['1 234', '.', 1234],
    ['12 345.5', '.', 12_345.5],
    ['123 456 789', '.', 123_456_789],
    ['-1,234.5', '.', -1234.5],
    ['+1,234.', '.', 1234],
    ['1.234,5', ',', 1234.5],
    ['1.234.567', ',', 1_234_567],
    ["1'234,25", ',', 1234.25],
    ['1\u2009234', '.', 1234],
    ['\u22121 234,5', ',', -1234.5],
  ] as const)('groups of three digits: %s', (cell, decimal, value) => {
    expect(cellValue(cell, decimal, undefined)).toBe(value);
  });

  test.each(['0 234', '1234 567', '1 23', '1 2345', '1 234,567', '1 234 56', "1'234 567", 'x1 234', '1 234x', '1_234', '1 234.5.6'])(
    '%s is no group of three',
    (cell) => {
      expect(cellValue(cell, '.', undefined)).toBeUndefined();
      expect(thousandsIn(cell, '.')).toBe('');
    },
  );

  test('only the sign that is given stands between groups', () => {
    expect(cellValue('1 234', '.', ' ')).toBe(1234);
    expect(cellValue("1'234", '.', ' ')).toBeUndefined();
    expect(cellValue('1 234', '.', '')).toBeUndefined();
    expect(cellValue('1234', '.', '')).toBe(1234);
  });

  test('the sign between groups; spaces of every width are one', () => {
    expect(['1 234', '1\u00a0234', '1\u2009234', '1\u202f234'].map((cell) => thousandsIn(cell, '.'))).toEqual([' ', ' ', ' ', ' ']);
    expect(["1'234", '1’234'].map((cell) => thousandsIn(cell, ','))).toEqual(["'", "'"]);
    expect([thousandsIn('1,234', '.'), thousandsIn('1.234', ','), thousandsIn('1.234', '.'), thousandsIn('1,234', ',')]).toEqual([
      ',',
      '.',
      '',
      '',
    ]);
    for (const decimal of ['.', ','] as const) {
      const cells = [`123 456${decimal}25`, `-12 345`, `+1 234${decimal}`];
      for (const cell of cells) expect(thousandsIn(cell, decimal)).toBe(' ');
      for (const cell of [`a1 234`, `1 234a`, `1 234${decimal}5a`, '0 123', '1 2345', '12345 678', '1a234', `1'234 567`])
        expect(thousandsIn(cell, decimal)).toBe('');
    }
  });
});

describe('dates that a spreadsheet makes of numbers', () => {
  test.each([
    '3-Feb',
    '03. Feb',
    '12 Mar',
    '2/Mai',
    '1.März',
    '1. Mrz.',
    '2-févr',
    '12-août',
    '3-ene',
    '4 dic 2024',
    '3-Feb-24',
    'Feb 3',
    'Okt 24',
    'dez. 1999',
    'sept-7',
    '03.02.2024',
    '3.2.24',
    '3/2/2024',
    '3-2-24',
    '12-12-12',
    '2024-02-03',
    '2024-02-03 00:00',
    '2024-02-03T00:00:00',
  ])('%s', (cell) => {
    expect(isDate(cell)).toBe(true);
  });

  test.each([
    '3.2',
    'Feb',
    'May be',
    '123-Feb',
    'x3-Feb',
    '3-Feb-24 x',
    '3 Feb 24567',
    '3 Feb 2',
    'aFeb 3',
    'Feb 34567',
    'Feb 3 mm',
    '3.2/24',
    '123.2.24',
    '3.123.24',
    '3.2.2',
    '3.2.123',
    '3.2.24567',
    'a3.2.24',
    '3.2.24a',
    '24-02-03T',
    '2024-02-03 12:30',
    '2024-02-03x',
    'x2024-02-03',
    '2024-2-3',
    '20240-02-03',
    '3 Xyz',
    '3 February and much more text',
  ])('%s is none', (cell) => {
    expect(isDate(cell)).toBe(false);
  });

  test('a month written out has 24 letters with its day and year at the most', () => {
    const longest = `3${'-'.repeat(19)}Febr`;
    expect(longest).toHaveLength(24);
    expect(isDate(longest)).toBe(true);
    expect(isDate(`3${'-'.repeat(20)}Febr`)).toBe(false);
  });
});

describe('text in cells', () => {
  test('without quotes a line is a row; cells are trimmed', () => {
    expect(splitCells('a ; b;c\n\n1;2', ';')).toEqual({ rows: [['a', 'b', 'c'], [''], ['1', '2']], lines: [0, 1, 2] });
  });

  test('a space stands for any run of spaces and tabs', () => {
    expect(splitCells('  a  b\tc \n 1 \t 2 3', ' ').rows).toEqual([
      ['a', 'b', 'c'],
      ['1', '2', '3'],
    ]);
    expect(splitCells('"a b" c', ' ').rows).toEqual([['"a', 'b"', 'c']]);
  });

  test('quotes hold separators and line ends; rows know the line on which they begin', () => {
    expect(splitCells('"a;b"; " c\nd";e\n1;2;3\n"x\ny\nz";4;5\n6;7;8', ';')).toEqual({
      rows: [
        ['a;b', '" c'],
        ['d"', 'e'],
        ['1', '2', '3'],
        ['x y z', '4', '5'],
        ['6', '7', '8'],
      ],
      lines: [0, 1, 2, 3, 6],
    });
  });

  test('a quote that is never closed is a sign like any other', () => {
    expect(splitCells('"a;b\n1;2', ';').rows).toEqual([
      ['"a', 'b'],
      ['1', '2'],
    ]);
  });
});

describe('clock times', () => {
  const H = 3600e6;
  test.each([
    ['00:00:00', 0],
    ['10:20:30', 10 * H + 20 * 60e6 + 30e6],
    ['1:02:03', H + 2 * 60e6 + 3e6],
    ['10:20:30.5', 10 * H + 1230.5e6],
    ['10:20:30,25', 10 * H + 1230.25e6],
    ['10:20:30:125', 10 * H + 1230.125e6],
    ['12:03.5', 723.5e6],
    ['24:00:00', 24 * H],
    ['00:59:60', H],
    ['12:00:00 am', 0],
    ['12:00:00 PM', 12 * H],
    ['1:00:00 p.m.', 13 * H],
    ['11:59:59am', 12 * H - 1e6],
    ['10:00:00Z', 10 * H],
    ['10:00:00+02:00', 8 * H],
    ['10:00:00-0130', 11.5 * H],
    ['1970-01-02 00:00:00', 24 * H],
    ['1970-01-02T01:00:00', 25 * H],
    ['1970-02-01, 00:00:00', 31 * 24 * H],
    ['03.01.1970 00:00:00', 48 * H],
    ['1.2.1971 00:00:00', (365 + 31) * 24 * H],
    ['3/1/1970 01:00:00', H],
    ['1970-01-0203 01:00:00', H],
    ['10:00:00+00:30', 9.5 * H],
    ['1970/01/03 01:00:00', H],
    ['12-31-99 01:00:00', H],
    ['100:00.5', 6000.5e6],
  ])('%s', (text, microseconds) => {
    expect(clockTime(text)).toBe(microseconds);
  });

  test.each([
    '12:03',
    '1970-01-02 12:03.5',
    '1970-01-02 12:03',
    'today 10:20:30',
    'x10:20:30',
    '10:20:30x',
    '10:20:61',
    '10:60:00',
    '25:00:00',
    '10:2:30',
    '1000:20:30',
    '10:20:30 xm',
    '10:20:30+2',
    '1970-1-2x 00:00:00',
    '3.1.70 00:00:00',
    'x3.1.1970 00:00:00',
    'x3/1/1970 00:00:00',
    '3/1/1970x 00:00:00',
    '3.1.1970x 00:00:00',
    '10.5',
    '',
    `10:20:30.${'1'.repeat(40)}`,
  ])('%s is none', (text) => {
    expect(clockTime(text)).toBeUndefined();
  });

  test('seconds to the microsecond, up to forty letters', () => {
    expect(clockTime('00:00:00.1234567')).toBe(123_457);
    expect(clockTime(`00:00:00.${'0'.repeat(31)}`)).toBe(0);
  });

  test('seconds from the first; a fall by more than half a day is midnight', () => {
    const day = 86_400e6;
    const column = Float64Array.of(NaN, day - 1e6, NaN, 0, 1e6, day - 2e6, 3e6);
    secondsFromFirst(column);
    expect([...column]).toEqual([NaN, 0, NaN, 1, 2, 86_399, 86_404]);
    const back = Float64Array.of(day, day / 2, 0);
    secondsFromFirst(back);
    expect([...back]).toEqual([0, -43_200, -86_400]);
    // a fall of more than a day is no midnight
    const days = Float64Array.of(2 * day, 0, 1e6);
    secondsFromFirst(days);
    expect([...days]).toEqual([0, -172_800, -172_799]);
    const once = Float64Array.of(day, 0);
    secondsFromFirst(once);
    expect([...once]).toEqual([0, 0]);
  });
});
