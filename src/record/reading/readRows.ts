import { InputError } from '../../base/index.js';
import { columnStore, endRow, leaveOdd } from './columnStore.js';
import { isDate, type Cell } from './cells.js';
import { findRowsLayout, requireLayout } from './findLayout.js';
import { finishReading } from './finishReading.js';
import { cellText, clockOf, numberOf } from './layout.js';
import type { ReadOptions, ReadResult } from './reading.js';
import { requireRowsOptions } from './readOptions.js';
import { understand } from './understand.js';

/** Rows looked at for the layout. */
const LOOK_ROWS = 1600;
/** Cells of a column store, by the name of the column. */
export type CellColumns = Readonly<Record<string, ArrayLike<Cell>>>;

const trimmed = (cell: Cell): Cell => (typeof cell === 'string' ? cell.trim() : cell);

/** A number that is known, written with either sign. */
const isNumber = (cell: Cell): boolean => (['.', ','] as const).some((sign) => Number.isFinite(numberOf(cell, sign, undefined)));

/** A row that is one. */
function requireRow(from: string, row: unknown, at: number): readonly Cell[] {
  if (!Array.isArray(row)) throw new InputError(from, `rows[${at}]`, 'wrong-type', 'must be an array of cells', row);
  row.forEach((cell: unknown, k) => {
    if (typeof cell === 'function' || typeof cell === 'symbol' || (typeof cell === 'object' && cell !== null && !(cell instanceof Date)))
      throw new InputError(from, `rows[${at}][${k}]`, 'wrong-type', 'must be a string, a number, a date, true, false or null', cell);
  });
  return row as Cell[];
}

/** Rows of a column store: its names, then its cells. */
function* rowsOf(from: string, columns: CellColumns): Generator<readonly Cell[]> {
  const given = Object.entries(columns);
  const lengths = given.map(([name, column]) => {
    if (typeof column !== 'object' || typeof (column as Partial<ArrayLike<Cell>> | null)?.length !== 'number')
      throw new InputError(from, `rows.${name}`, 'wrong-type', 'must be an array of cells', column);
    return column.length;
  });
  const other = lengths.findIndex((length) => length !== lengths[0]);
  if (other >= 0)
    throw new InputError(
      from,
      `rows.${given[other]![0]}`,
      'unequal-lengths',
      `must have ${lengths[0]!} cells like the other columns`,
      lengths[other],
    );
  yield given.map(([name]) => name);
  for (let i = 0; i < (lengths[0] ?? 0); i += 1) yield given.map(([, column]) => column[i]);
}

/**
 * Reads the rows of a spreadsheet, or the columns of a column store, as {@link readRecord} reads a file.
 *
 * @remarks
 * Names, units, rows above, which column is which, holes and rows left out: all as in a file, by the same code. Cells of text are
 * read as numbers by the signs found among them. Dates are clock times in a column of time, and a spreadsheet's damage elsewhere.
 * The lines that `reading.leftOut` names are rows, from 1. Formulas are never evaluated: give the values that the spreadsheet holds.
 *
 * @param rows - Rows of cells, from anything that can be iterated over; or columns of equal lengths by their names (with their units: `'Force [kN]'`).
 * @param options - What decides where the rows do not; `separator` and `encoding` have no meaning here.
 * @returns The columns in N (or MPa of pressure), mm, s and ratios; the rows above by name; what was understood.
 * @throws {@link InputError} `empty`, `no-numbers`, `too-few`, `too-large`, `missing`, `ambiguous`, `unknown-unit`, `unknown-option`,
 * `not-finite`, `out-of-range`, `wrong-type`, `unequal-lengths`.
 *
 * @example
 * ```ts
 * readRows([['Zeit [s]', 'Kraft [kN]', 'Weg [mm]'], [0, 0.5, '0,1'], [1, 1.5, '0,2']]).record.travel; // => [0.1, 0.2]
 * readRows({ 'Load [kN]': [0, 1.5, 3], 'Crosshead [mm]': [0, 0.1, 0.2] }).record.travel; // => [0, 0.1, 0.2]
 * ```
 *
 * @see Common practice. Checked in `test/record/readRows.test.ts`.
 */
export function readRows(rows: Iterable<readonly Cell[]> | CellColumns, options: ReadOptions = {}): ReadResult {
  const from = 'readRows';
  requireRowsOptions(from, options);
  const given: unknown = rows;
  if (typeof given !== 'object' || given === null)
    throw new InputError(from, 'rows', 'wrong-type', 'must be rows of cells, or columns by name', given);
  const source = (Symbol.iterator in given ? (given as Iterable<unknown>) : rowsOf(from, given as CellColumns))[Symbol.iterator]();
  const look: (readonly Cell[])[] = [];
  let count = 0;
  const next = (): readonly Cell[] | undefined => {
    const step = source.next();
    if (step.done === true) return undefined;
    count += 1;
    return requireRow(from, step.value, count - 1);
  };
  for (let row = next(); row !== undefined; row = look.length < LOOK_ROWS ? next() : undefined) look.push(row);
  const width = look.reduce((most, row) => Math.max(most, row.length), 0);
  const padded = look.map((row) => Array.from({ length: width }, (_, k) => trimmed(row[k])));
  if (padded.every((row) => row.every((cell) => cellText(cell) === '')))
    throw new InputError(from, 'rows', 'empty', 'must not be empty', look.length);
  const found = findRowsLayout(padded, options);
  // of a column store, the column that holds no number is named
  const textual = found || Symbol.iterator in given ? -1 : padded[0]!.findIndex((_, k) => !padded.some((row) => isNumber(row[k])));
  const path = textual < 0 ? 'rows' : `rows.${Object.keys(given)[textual]!}`;
  // what the message shows of it: the column's first text, or the first row
  const texts = textual < 0 ? padded.map((row) => row.map(cellText).join(' ')) : padded.map((row) => cellText(row[textual]));
  const layout = requireLayout(from, found, options, { count: look.length, first: texts.find((one) => one.trim() !== '') ?? '' }, path);
  const understanding = understand(from, layout, options, look.length < LOOK_ROWS);
  const { wanted } = understanding;
  const store = columnStore(from, wanted.length, layout.thousands, 'rows');
  const take = (row: readonly Cell[], line: number): void => {
    const cells = wanted.map(({ index }) => trimmed(row[index]));
    const values = cells.map((cell, k) =>
      wanted[k]!.clock !== true ? numberOf(cell, layout.decimal, options.thousands) : cellText(cell) === '' ? NaN : clockOf(cell),
    );
    const filled = values.some((value) => value !== undefined && !Number.isNaN(value));
    const odd = values.findIndex((value, k) => value === undefined && wanted[k]!.role !== 'check');
    if (odd >= 0) {
      const text = cellText(cells[odd]).slice(0, 40);
      const date = filled && (cells[odd] instanceof Date || isDate(text));
      leaveOdd(store, line, date ? `'${text}' is a date` : `'${text}' is no number`, text, date);
    } else if (filled) {
      values.forEach((value, k) => (store.columns[k]![store.at] = value ?? NaN));
      endRow(store, line);
    }
  };
  for (let at = layout.bodyRow; at < look.length; at += 1) take(look[at]!, at + 1);
  for (let row = next(); row !== undefined; row = next()) take(row, count);
  return finishReading(from, store, understanding, options, { decimal: layout.decimal });
}
