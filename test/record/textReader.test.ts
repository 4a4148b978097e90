import { expect, test } from 'vitest';
import type { ReadOptions } from '../../src/index.js';
import { textReader } from '../../src/record/reading/textReader.js';
import { encoded } from '../support/encoded.js';
import { thrown } from '../support/thrown.js';

/** Reads a file in pieces of so many bytes; each is written over after it was taken. */
function read(file: Uint8Array, size = file.length, options: ReadOptions = {}, { text = false, keep = true } = {}) {
  const reader = textReader('read', options, { text, keep });
  for (let at = 0; at < file.length; at += size) {
    const piece = file.slice(at, at + size);
    reader.push(piece);
    if (keep) piece.fill(0x78);
  }
  return reader.finish();
}
const table = (rows: number, end = '\n', last = end): string =>
  `Zeit s;Kraft N;Länge mm;x mm${end}${Array.from({ length: rows }, (_, i) => `${i};${i}.5;0;${i}.25`).join(end)}${last}`;
const bytes = (text: string) => new TextEncoder().encode(text);
const summary = ({ record, reading }: ReturnType<typeof read>) => ({
  force: 'force' in record ? [...record.force] : [],
  time: [...record.time!],
  encoding: reading.encoding,
  rows: reading.rows,
  leftOut: reading.leftOut,
});
const truth = (rows: number, encoding = 'utf-8') => ({
  force: Array.from({ length: rows }, (_, i) => i + 0.5),
  time: Array.from({ length: rows }, (_, i) => i),
  encoding,
  rows,
  leftOut: [],
});

test.each(['\n', '\r\n', '\r'])('whatever the size of the pieces, with lines that end in %j', (end) => {
  // 5 rows are short, 399, 400 and 401 lines lie around what is looked at first, 900 rows are more than 4096 bytes
  for (const rows of [5, 398, 399, 400, 900])
    for (const size of [1, 7, 1000, 4096, 1e6]) {
      if (size === 1 && rows === 900) continue;
      expect(summary(read(bytes(table(rows, end)), size))).toEqual(truth(rows));
      expect(summary(read(bytes(table(rows, end, '')), size))).toEqual(truth(rows));
    }
});

test.each(['utf-16le', 'utf-16be'] as const)('%s, with its mark and as told', (encoding) => {
  for (const size of [3, 4095, 1e6]) {
    expect(summary(read(encoded(`\ufeff${table(900)}`, encoding), size))).toEqual(truth(900, encoding));
    expect(summary(read(encoded(table(900), encoding), size))).toEqual(truth(900, encoding));
    expect(summary(read(encoded(table(9), encoding), size, { encoding }))).toEqual(truth(9, encoding));
  }
});

test('a mark of UTF-8, one byte a letter, and an encoding that is told', () => {
  expect(summary(read(bytes(`\ufeff${table(9)}`)))).toEqual(truth(9));
  expect(summary(read(bytes(`\ufeff${table(9)}`), 1))).toEqual(truth(9));
  expect(summary(read(encoded(table(9), 'windows-1252')))).toEqual(truth(9, 'windows-1252'));
  expect(summary(read(encoded(table(9), 'windows-1252'), 9, { encoding: 'windows-1252' }))).toEqual(truth(9, 'windows-1252'));
  expect(summary(read(bytes(table(9)), 9, {}, { text: true }))).toEqual(truth(9));
  expect(summary(read(bytes(table(900)), 5000, {}, { text: false, keep: false }))).toEqual(truth(900));
  // a letter of one byte that comes late decides, where the head has plain ones
  const late = `t s;F N;x mm\n${Array.from({ length: 500 }, (_, i) => `${i};${i === 480 ? 'ä' : i};1`).join('\n')}\n`;
  const found = read(encoded(late, 'windows-1252'), 1000);
  expect(found.reading).toMatchObject({ encoding: 'windows-1252', rows: 499, leftOut: [{ line: 482, why: "'ä' is no number" }] });
  expect(read(bytes(late), 1000).reading).toMatchObject({ encoding: 'utf-8', leftOut: [{ line: 482, why: "'ä' is no number" }] });
});

test('lines are counted over pieces', () => {
  const text = `words\n\nt s;F N;x mm\n${Array.from({ length: 900 }, (_, i) => (i === 700 ? 'end' : `${i};${i};1`)).join('\r\n')}`;
  const spoiled = text.replace('10;10;1', '10;a;1').replace('800;800;1', '800;b;1');
  for (const size of [11, 4096, 1e6])
    expect(read(bytes(spoiled), size).reading.leftOut).toEqual([
      { line: 14, why: "'a' is no number" },
      { line: 704, why: "'end' is no number" },
      { line: 804, why: "'b' is no number" },
    ]);
});

test('where the first lines leave the decimal sign open, more are looked at', () => {
  const open = (rows: number, mark: number) =>
    `t s;F N;x mm\n${Array.from({ length: rows }, (_, i) => `${i};${i >= mark ? '2,5' : '0'};1`).join('\n')}\n`;
  for (const mark of [300, 398, 399, 1598, 1700])
    expect(read(bytes(open(2000, mark)), 1000).record).toMatchObject({ force: expect.objectContaining({ 1999: 2.5 }) as Float64Array });
  expect(thrown(() => read(bytes(open(7000, 6500)))).message).toBe(
    "read: options.decimal must be '.' or ',': the first mark in a number is on line 6502, got \"2,5\"",
  );
  expect(read(bytes(open(7000, 6500)), 1e6, { decimal: ',' }).reading.rows).toBe(7000);
});

test('what is no text, is empty, or has no end of a line', () => {
  const message = (file: Uint8Array) => thrown(() => read(file)).message;
  expect(message(new Uint8Array(0))).toBe('read: file must not be empty, got 0');
  expect(message(bytes(' \r\n '))).toBe('read: file must not be empty, got "only white space"');
  expect(message(bytes('\u0001\u0002;1\n1;2\n'))).toContain('holds control characters');
  expect(message(Uint8Array.of(65, 0, 0, 65))).toContain('holds zero bytes');
  expect(message(bytes(`${table(500)}${'1'.repeat(2 ** 20 + 1)}`))).toContain('must have lines of at most 1048576 bytes');
});
