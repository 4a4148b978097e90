import { describe, expect, test } from 'vitest';
import { readRecord, readRows, type Cell, type TensionRecord } from '../../src/index.js';
import { refusal } from '../support/thrown.js';

const numbers = (n: number): Cell[][] => Array.from({ length: n }, (_, i) => [i / 10, 1.5 * i, 0.125 * i]);
const force = (rows: Parameters<typeof readRows>[0], options?: Parameters<typeof readRows>[1]): number[] => [
  ...(readRows(rows, options).record as TensionRecord).force,
];

describe('rows of a spreadsheet', () => {
  test('numbers, names, units below, what stands above, what comes after', () => {
    const rows: Cell[][] = [
      ['Test piece', 'A7', null],
      ['Gauge length', 25, 'mm'],
      [],
      ['Zeit', 'Kraft', 'Weg'],
      ['s', 'kN', 'µm'],
      ...numbers(8),
      [null, null, null],
      ['Maximum', 10.5, null],
    ];
    const { record, metadata, reading } = readRows(rows);
    expect([...(record as TensionRecord).force]).toEqual([0, 1500, 3000, 4500, 6000, 7500, 9000, 10_500]);
    expect(record.travel![1]).toBeCloseTo(0.000125, 15);
    expect(metadata).toEqual({ 'Test piece': { value: 'A7' }, 'Gauge length': { value: '25', unit: 'mm' } });
    expect(reading).toEqual({
      decimal: '.',
      thousands: '',
      headings: [],
      columns: [
        { quantity: 'time', name: 'Zeit', index: 0, unit: 's', unitFrom: 'file', factor: 1 },
        { quantity: 'force', name: 'Kraft', index: 1, unit: 'kN', unitFrom: 'file', factor: 1000 },
        { quantity: 'travel', name: 'Weg', index: 2, unit: 'µm', unitFrom: 'file', factor: 0.001 },
      ],
      ignored: [],
      rows: 8,
      leftOut: [{ line: 15, why: "'Maximum' is no number" }],
    });
  });

  test('the same as the text of the same cells', () => {
    const rows = [['t [s]', 'F [kN]', 'x [mm]'], ...numbers(20)];
    expect(readRows(rows).record).toEqual(readRecord(rows.map((row) => row.join(';')).join('\n')).record);
  });

  test('numbers that are text, by their decimal sign; big whole numbers; truth values are text', () => {
    const rows: Cell[][] = [
      ['t s', 'F N', 'x mm', 'on'],
      ...Array.from({ length: 6 }, (_, i): Cell[] => [BigInt(i), `1.234,${i}`, ` ${i},5 `, i > 2]),
    ];
    expect(force(rows)).toEqual([1234, 1234.1, 1234.2, 1234.3, 1234.4, 1234.5]);
    expect(readRows(rows).reading).toMatchObject({ decimal: ',', thousands: '.' });
    expect(
      refusal(() =>
        readRows([
          ['F N', 'x mm'],
          ['1,234', '5,678'],
          ['2,345', '6,789'],
        ]),
      ),
    ).toBe('ambiguous options.decimal');
  });

  test('dates are a clock in the time and damage elsewhere', () => {
    const at = (seconds: number): Date => new Date(Date.UTC(2026, 10, 26, 23, 59, 58) + 1000 * seconds);
    const rows: Cell[][] = [['Uhrzeit', 'F N', 'x mm'], ...Array.from({ length: 6 }, (_, i): Cell[] => [at(i / 2), i, i])];
    expect([...readRows(rows).record.time!]).toEqual([0, 0.5, 1, 1.5, 2, 2.5]);
    const spoiled = [...rows, [at(3), at(0), 6]];
    expect(refusal(() => readRows(spoiled))).toBe('not-finite line 8');
    expect(readRows(spoiled, { leaveOutHoles: true }).reading.leftOut).toEqual([{ line: 8, why: "'2026-11-26T23:59:58.000Z' is a date" }]);
    expect(readRows([...rows, [at(3), '03.Feb', 6]], { leaveOutHoles: true }).reading.leftOut).toHaveLength(1);
  });

  test('short rows end in empty cells: an extensometer that was taken off', () => {
    const rows: Cell[][] = [
      ['F N', 'x mm', 'Extension mm'],
      ...Array.from({ length: 9 }, (_, i): Cell[] => (i < 6 ? [i, i, i / 10] : [i, i])),
    ];
    expect([...readRows(rows).record.extension!].slice(5)).toEqual([0.5, NaN, NaN, NaN]);
  });

  test('anything that can be iterated over, once', () => {
    function* rows(): Generator<Cell[]> {
      yield ['F N', 'x mm'];
      for (let i = 0; i < 5000; i += 1) yield [i, i / 2];
    }
    expect(force(rows())).toHaveLength(5000);
  });
});

test('columns by name', () => {
  const columns = { 'Load [kN]': Float32Array.of(0.5, 1.5, 2.5), 'Travel [mm]': [0, '0.1', 0.2], note: ['a', null, 'b'] };
  expect(force(columns)).toEqual([500, 1500, 2500]);
  expect(refusal(() => readRows({ 'F N': [1, 2], 'x mm': [1] }))).toBe('unequal-lengths rows.x mm');
  expect(refusal(() => readRows({ 'F N': 3 } as never))).toBe('wrong-type rows.F N');
});

test('what are no rows', () => {
  expect(refusal(() => readRows(undefined as never))).toBe('wrong-type rows');
  expect(refusal(() => readRows('text' as never))).toBe('wrong-type rows');
  expect(refusal(() => readRows([]))).toBe('empty rows');
  expect(refusal(() => readRows([[null, ' ']]))).toBe('empty rows');
  expect(refusal(() => readRows({}))).toBe('empty rows');
  expect(refusal(() => readRows([['a', 'b'], 'c'] as never))).toBe('wrong-type rows[1]');
  expect(refusal(() => readRows([['a', {}]] as never))).toBe('wrong-type rows[0][1]');
  expect(refusal(() => readRows([['a', 'b']]))).toBe('no-numbers rows');
  expect(refusal(() => readRows([], { separator: ';' }))).toBe('unknown-option options.separator');
  expect(refusal(() => readRows([], { encoding: 'utf-8' }))).toBe('unknown-option options.encoding');
  expect(
    refusal(() =>
      readRows([
        ['F N', 'x mm'],
        [1, 2],
        [NaN, 2],
        [Infinity, 3],
      ]),
    ),
  ).toBe('too-few rows');
});
