import { expect, test } from 'vitest';
import { typedNumber } from '../../playground/typedNumber.js';

test.each([
  ['', undefined],
  ['  ', undefined],
  ['8', 8],
  ['12,5', 12.5],
  ['0,125', 0.125],
  ['0.012', 0.012],
  ['205.000,5', 205_000.5],
  ['205,000.5', 205_000.5],
  ['205 000', 205_000],
  ['205\u202f000,5', 205_000.5],
  ['1 234,567', 1234.567],
  ["205'000", 205_000],
  ['205’000.5', 205_000.5],
  ['1,234,567', 1_234_567],
  ['1.234.567', 1_234_567],
  ['-3,5', -3.5],
  ['−3.5', -3.5],
  ['.5', 0.5],
  ['2.05e5', 205_000],
  ['205.0000', 205],
])('%j is read as %s', (text, value) => {
  for (const point of ['decimal', 'either'] as const) expect(typedNumber(text, point)).toEqual({ ok: true, value });
});

test('what can be read two ways is refused with both', () => {
  expect(typedNumber('205,000')).toEqual({ ok: false, message: '205,000 can be read two ways: type 205.0000 or 205000.' });
  expect(typedNumber('205.000')).toMatchObject({ ok: false });
  expect(typedNumber('-1,234', 'decimal')).toMatchObject({ ok: false });
  // a field that is filled with a decimal point keeps it
  expect(typedNumber('7.985', 'decimal')).toEqual({ ok: true, value: 7.985 });
});

test.each([
  'eight',
  '1,2,3',
  '1.2.3',
  '20,50.3',
  '1.234.56',
  '1 23',
  '12 34',
  '--3',
  '8mm',
  '1e999',
  'Infinity',
  'NaN',
  '0x10',
  '1,234.567.8',
  '.',
])('%s is no number', (text) => {
  expect(typedNumber(text)).toEqual({ ok: false, message: 'This is no number.' });
});
