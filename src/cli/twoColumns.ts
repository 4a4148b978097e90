import { readFile } from 'node:fs/promises';
import {
  cellValue,
  decodeBytes,
  findWidth,
  headingOf,
  splitCells,
  type DecimalSign,
  type Separator,
  type ThousandsSign,
} from '../record/index.js';
import { unitFactor, unitNames, type Dimension } from '../units/index.js';
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

/** Signs of a table, and its rows by them. */
interface Way {
  readonly separator: Separator;
  readonly decimal: DecimalSign;
  readonly thousands: ThousandsSign;
  readonly rows: readonly Row[];
}

const pairsOf = ({ rows }: Way): string => JSON.stringify(rows.map(({ pair }) => pair));
const countOf = ({ rows }: Way): number => rows.filter(({ pair }) => pair).length;

/** What a column may hold, the likeliest first; without a heading it is in the unit of the package. */
export type Measured = 'force' | 'stress' | 'length';
const own = { force: 'N', stress: 'MPa', length: 'mm' } as const;
const inWords = { force: 'force', stress: 'pressure', length: 'length' } as const;

/** Two columns in N, MPa or mm, each with what its heading says that it is. */
export interface TwoColumns {
  readonly columns: readonly [number[], number[]];
  readonly measured: readonly [Measured | undefined, Measured | undefined];
}

/** Refuses a heading without the units that are wanted. */
function measuredBy(place: string, text: string, signs: Omit<Way, 'rows'>, wanted: readonly (readonly Measured[])[]) {
  const heading = headingOf(text, signs);
  const isOf = (dimension: Dimension | undefined, among: readonly Measured[]): boolean =>
    (among as readonly (Dimension | undefined)[]).includes(dimension);
  return wanted.map((among, k) => {
    if (heading === undefined) return { factor: 1, of: undefined };
    const { heading: named, unit, dimension } = heading[k] ?? {};
    if (unit !== undefined && isOf(dimension, among)) {
      const of = dimension as Measured;
      return { factor: unitFactor(unit, own[of]), of };
    }
    const swapped = isOf(heading[0]?.dimension, wanted[1]!) && isOf(heading[1]?.dimension, wanted[0]!);
    const units = among.map((one) => `${inWords[one]} (${unitNames(one)})`).join(' or ');
    const bare = wanted.map((one) => one.map((each) => own[each]).join(' or ')).join(' and ');
    throw usage(
      `${place}: the heading of column ${k + 1} must name a unit of ${units}, got ${JSON.stringify(named || text.trim().split('\n')[0])}${swapped ? ': the columns are swapped' : `; a table without a heading is taken as ${bare}`}`,
    );
  });
}

/**
 * Two columns of numbers from a file that a flag names, by the units of their heading; without one in N, MPa or mm. Separator and decimal sign are
 * those by which every row is two numbers; where two ways make different numbers, or none makes all rows, the file is refused with its line.
 */
export async function twoColumns(
  flag: string,
  path: string,
  wanted: readonly [first: readonly Measured[], second: readonly Measured[]],
): Promise<TwoColumns> {
  const place = `${flag} ${path}`;
  const bytes = await readFile(path);
  const width = findWidth(place, bytes);
  const text = (width === 'bytes' ? decodeBytes(bytes, undefined).text : new TextDecoder(width).decode(bytes)).replace(/\r\n?/g, '\n');
  const ways = separators.flatMap((separator) =>
    marks
      .filter(([decimal]) => decimal !== separator)
      .map(([decimal, thousands]): Way => ({ separator, decimal, thousands, rows: rowsBy(text, separator, decimal, thousands) })),
  );
  const whole = ways.filter(({ rows }) => rows.length > 0 && rows.every(({ pair }) => pair));
  if (new Set(whole.map(pairsOf)).size > 1)
    throw usage(`${place}: the commas may be decimal signs or stand between digits in threes; write decimal points`);
  const { rows, ...signs } = whole[0] ?? ways.reduce((best, one) => (countOf(one) > countOf(best) ? one : best));
  const wrong = rows.find(({ pair }) => !pair);
  if (wrong) throw usage(`${place}: line ${wrong.line} must be two numbers, got ${JSON.stringify(wrong.text)}`);
  if (rows.length < 2) throw usage(`${place} must have at least two rows of two numbers, got ${rows.length}`);
  const [first, second] = measuredBy(place, text, signs, wanted);
  return {
    columns: [rows.map(({ pair }) => pair![0] * first!.factor), rows.map(({ pair }) => pair![1] * second!.factor)],
    measured: [first!.of, second!.of],
  };
}
