import { readFile } from 'node:fs/promises';
import { cellValue, decodeBytes, findWidth, splitCells, type DecimalSign, type Separator, type ThousandsSign } from '../record/index.js';
import { usage } from './usage.js';

/** One row: the line where it stands, from 1, and its two numbers, or nothing where it holds anything else. */
interface Row {
  readonly line: number;
  readonly text: string;
  readonly pair: readonly [number, number] | undefined;
}

const separators: readonly Separator[] = [';', '\t', '|', ',', ' '];
/** Marks of a number: its decimal sign, and the sign between groups of three digits. A point is never taken for one of groups. */
const marks: readonly (readonly [DecimalSign, ThousandsSign])[] = [
  ['.', ''],
  [',', ''],
  ['.', ','],
];

/** The rows below the heading, which ends where the first number stands; empty lines, and empty cells at the end of a row, do not count. */
function rowsBy(text: string, separator: Separator, decimal: DecimalSign, thousands: ThousandsSign): Row[] {
  const { rows, lines } = splitCells(text, separator);
  const given = rows.flatMap((row, k) => {
    const cells = row.slice(0, Math.max(2, row.findLastIndex((cell) => cell !== '') + 1));
    const values = cells.map((cell) => (cell === '' ? NaN : cellValue(cell, decimal, thousands)) ?? NaN);
    return cells.every((cell) => cell === '') ? [] : [{ line: lines[k]! + 1, text: row.join(separator), values }];
  });
  const first = given.findIndex(({ values }) => values.some(Number.isFinite));
  return given.slice(first < 0 ? given.length : first).map(({ values, ...row }) => {
    const [x, y] = values;
    return { ...row, pair: values.length === 2 && values.every(Number.isFinite) ? [x!, y!] : undefined };
  });
}

const pairsOf = (rows: readonly Row[]): string => JSON.stringify(rows.map(({ pair }) => pair));
const countOf = (rows: readonly Row[]): number => rows.filter(({ pair }) => pair).length;

/**
 * Two columns of numbers from a file that a flag names, under a heading or none. Separator and decimal sign are those by which every row is two
 * numbers; where two ways make different numbers, or none makes all rows, the file is refused with its line.
 */
export async function twoColumns(flag: string, path: string): Promise<readonly [number[], number[]]> {
  const bytes = await readFile(path);
  const width = findWidth(`${flag} ${path}`, bytes);
  const text = (width === 'bytes' ? decodeBytes(bytes, undefined).text : new TextDecoder(width).decode(bytes)).replace(/\r\n?/g, '\n');
  const ways = separators.flatMap((separator) =>
    marks.filter(([decimal]) => decimal !== separator).map((mark) => rowsBy(text, separator, ...mark)),
  );
  const whole = ways.filter((rows) => rows.length > 0 && rows.every(({ pair }) => pair));
  if (new Set(whole.map(pairsOf)).size > 1)
    throw usage(`${flag} ${path}: the commas may be decimal signs or stand between digits in threes; write decimal points`);
  const rows = whole[0] ?? ways.reduce((best, one) => (countOf(one) > countOf(best) ? one : best));
  const wrong = rows.find(({ pair }) => !pair);
  if (wrong) throw usage(`${flag} ${path}: line ${wrong.line} must be two numbers, got ${JSON.stringify(wrong.text)}`);
  if (rows.length < 2) throw usage(`${flag} ${path} must have at least two rows of two numbers, got ${rows.length}`);
  return [rows.map(({ pair }) => pair![0]), rows.map(({ pair }) => pair![1])];
}
