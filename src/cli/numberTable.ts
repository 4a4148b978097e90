import { cellValue, headingOf, splitCells, type DecimalSign, type Separator, type ThousandsSign } from '../record/index.js';
import { unitFactor, unitNames, type Dimension } from '../units/index.js';
import { textFile } from './textFile.js';
import { usage } from './usage.js';

/** One row: the line where it stands, from 1, its cells, and their numbers; NaN where a cell is none. */
export interface NumberRow {
  readonly line: number;
  readonly cells: readonly string[];
  readonly values: readonly number[];
}

/** Signs of a table, and its rows by them. */
interface Way {
  readonly separator: Separator;
  readonly decimal: DecimalSign;
  readonly thousands: ThousandsSign;
  readonly rows: readonly NumberRow[];
}

/** A table of numbers: its text, its signs, and its rows below the heading. */
export interface NumberTable extends Way {
  readonly place: string;
  readonly text: string;
}

const separators: readonly Separator[] = [';', '\t', '|', ',', ' '];
/** Marks of a number: its decimal sign, and the sign between groups of three digits. A point is never taken for one of groups. */
const marks: readonly (readonly [DecimalSign, ThousandsSign])[] = [
  ['.', ''],
  [',', ''],
  ['.', ','],
];

/** The rows below the heading, which ends where the first number stands; empty lines, and empty cells at the end of a row, do not count. */
function rowsBy(text: string, separator: Separator, decimal: DecimalSign, thousands: ThousandsSign): NumberRow[] {
  const { rows, lines } = splitCells(text, separator);
  const given = rows.flatMap((row, k): NumberRow[] => {
    const cells = row.slice(0, Math.max(2, row.findLastIndex((cell) => cell !== '') + 1));
    const values = cells.map((cell) => (cell === '' ? NaN : cellValue(cell, decimal, thousands)) ?? NaN);
    return cells.every((cell) => cell === '') ? [] : [{ line: lines[k]! + 1, cells, values }];
  });
  const first = given.findIndex(({ values }) => values.some(Number.isFinite));
  return given.slice(first < 0 ? given.length : first);
}

/**
 * Rows of numbers from a file that a flag names. Separator and decimal sign are those by which every row is `sound`; where two ways make different
 * rows, or none makes all of them sound, the file is refused with its line: a row must be what `rule` says.
 */
export async function numberTable(
  place: string,
  path: string,
  sound: (row: NumberRow, rows: readonly NumberRow[]) => boolean,
  rule: string,
): Promise<NumberTable> {
  const text = await textFile(place, path);
  const ways = separators.flatMap((separator) =>
    marks
      .filter(([decimal]) => decimal !== separator)
      .map(([decimal, thousands]): Way => ({ separator, decimal, thousands, rows: rowsBy(text, separator, decimal, thousands) })),
  );
  const soundOf = ({ rows }: Way): number => rows.filter((row) => sound(row, rows)).length;
  const whole = ways.filter((way) => way.rows.length > 0 && soundOf(way) === way.rows.length);
  if (new Set(whole.map(({ rows }) => JSON.stringify(rows.map(({ values }) => values)))).size > 1)
    throw usage(`${place}: the commas may be decimal signs or stand between digits in threes; write decimal points`);
  const way = whole[0] ?? ways.reduce((best, one) => (soundOf(one) > soundOf(best) ? one : best));
  const wrong = way.rows.find((row) => !sound(row, way.rows));
  if (wrong) throw usage(`${place}: line ${wrong.line} must be ${rule}, got ${JSON.stringify(text.split('\n')[wrong.line - 1])}`);
  if (way.rows.length < 2) throw usage(`${place} must have at least two rows of two numbers, got ${way.rows.length}`);
  return { place, text, ...way };
}

/** What a column may hold; without a heading it is in the unit of the package. */
export type Measured = 'force' | 'stress' | 'length';
const own = { force: 'N', stress: 'MPa', length: 'mm' } as const;
const inWords = { force: 'force', stress: 'pressure', length: 'length' } as const;

/** A column by its heading: its name, the factor of its unit, and what the unit says that it is. */
export interface Headed {
  readonly name: string;
  readonly factor: number;
  readonly of: Measured | undefined;
}

/** The first columns by their heading, which is refused without the units that are wanted, the likeliest first. */
export function headedColumns(table: NumberTable, wanted: readonly (readonly Measured[])[]): Headed[] {
  const { place, text, separator, decimal, thousands } = table;
  const heading = headingOf(text, { separator, decimal, thousands });
  const isOf = (dimension: Dimension | undefined, among: readonly Measured[]): boolean =>
    (among as readonly (Dimension | undefined)[]).includes(dimension);
  return wanted.map((among, k) => {
    if (heading === undefined) return { name: '', factor: 1, of: undefined };
    const { heading: name = '', unit, dimension } = heading[k] ?? {};
    if (unit !== undefined && isOf(dimension, among)) {
      const of = dimension as Measured;
      return { name, factor: unitFactor(unit, own[of]), of };
    }
    const swapped = wanted.length === 2 && isOf(heading[0]?.dimension, wanted[1]!) && isOf(heading[1]?.dimension, wanted[0]!);
    const units = among.map((one) => `${inWords[one]} (${unitNames(one)})`).join(' or ');
    const bare = wanted.map((one) => one.map((each) => own[each]).join(' or ')).join(' and ');
    throw usage(
      `${place}: the heading of column ${k + 1} must name a unit of ${units}, got ${JSON.stringify(name || text.trim().split('\n')[0])}${swapped ? ': the columns are swapped' : `; a table without a heading is taken as ${bare}`}`,
    );
  });
}
