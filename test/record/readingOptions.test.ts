import { expect, test } from 'vitest';
import { readingOptions, readRecord, readRows, type TensionRecord } from '../../src/index.js';
import { refusal } from '../support/thrown.js';

const rows = (cells: (i: number) => readonly string[], n = 6): string => Array.from({ length: n }, (_, i) => cells(i).join(';')).join('\n');
const forceOf = (result: { record: object }): number[] => [...(result.record as TensionRecord).force];

test('the next file of the logger, in another order and without units', () => {
  const first = readRecord(`Zeit;Weg;Kraft\ns;µm;kN\n${rows((i) => [String(i), `1.00${i},5`, `${i},25`])}`);
  const options = readingOptions(first.reading);
  expect(options).toEqual({
    separator: ';',
    decimal: ',',
    thousands: '.',
    columns: { time: 'Zeit', travel: 'Weg', force: 'Kraft' },
    units: {},
    fallbackUnits: { time: 's', travel: 'µm', force: 'kN' },
  });
  const next = readRecord(`Kraft;Zeit;Weg\n${rows((i) => ['1,234', String(i), `1.00${i}`])}`, options);
  expect(forceOf(next)).toEqual(Array(6).fill(1234));
  expect(next.record.travel![1]).toBeCloseTo(1.001, 12);
  expect(readingOptions(next.reading)).toMatchObject({ columns: options.columns, units: { force: 'kN' } });
});

test('a unit in the next file goes before one that the first file named, not before one that was given', () => {
  const first = readRecord(`t s;Load kN;x\n${rows((i) => [String(i), String(i), String(i)])}`, {
    units: { travel: 'in' },
    columns: { travel: 'x' },
  });
  const next = readRecord(`t s;Load N;x [mm]\n${rows((i) => [String(i), String(i), String(i)])}`, readingOptions(first.reading));
  expect(forceOf(next)[1]).toBe(1);
  expect(next.record.travel![1]).toBe(25.4);
});

test('columns without a name, or with a name twice, go by place', () => {
  const options = { columns: { force: 1, travel: 2 }, units: { force: 'N', travel: 'mm' } } as const;
  const first = readRecord(
    rows((i) => [`${i}.5`, String(i), String(2 * i)]),
    options,
  );
  expect(readingOptions(first.reading)).toMatchObject(options);
  expect(
    forceOf(
      readRecord(
        rows((i) => ['7', String(i), '9']),
        readingOptions(first.reading),
      ),
    )[5],
  ).toBe(5);
  const twice = readRecord(`t s;F N;Weg mm;Weg mm\n${rows((i) => [String(i), String(i), String(i), String(i)])}`, {
    columns: { travel: 3 },
  });
  expect(readingOptions(twice.reading).columns).toEqual({ time: 't', force: 'F', travel: 3 });
});

test('clock times and rows', () => {
  const first = readRecord(`Uhrzeit;F N;x mm\n${rows((i) => [`12:00:0${i}`, `${i},5`, String(i)])}`);
  const next = readRecord(`x;F;Uhrzeit\n${rows((i) => [String(i), `${i},5`, `12:00:0${i}`])}`, readingOptions(first.reading));
  expect([...next.record.time!]).toEqual([0, 1, 2, 3, 4, 5]);
  const table = readRows({ 'Load [kN]': [1, 2, 3], 'Travel [mm]': [1, 2, 3] });
  expect(forceOf(readRows({ Travel: [1, 2, 3], Load: [4, 5, 6] }, readingOptions(table.reading)))).toEqual([4000, 5000, 6000]);
});

test('what is no reading', () => {
  expect(refusal(() => readingOptions(undefined as never))).toBe('missing reading');
  expect(refusal(() => readingOptions(3 as never))).toBe('wrong-type reading');
});
