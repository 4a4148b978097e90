import { InputError, type ColumnName } from '../../base/index.js';
import type { OddRow } from './columnStore.js';
import type { LeftOutRow, ReadOptions } from './reading.js';

/** Lines that a message names. */
const NAMED = 5;

/** @internal Rows that can be used, and those that cannot, with the reason. */
export interface UsableRows {
  readonly keep: Uint8Array;
  readonly rows: number;
  readonly leftOut: readonly LeftOutRow[];
}

/** Rows at the end that may be a logger's summary (largest, mean, least, deviation...), at most: more of them are a record that lost its clock. */
const SUMMARY = 10;

/** Where a summary without a time begins: its numbers are of no moment of the test. */
function summaryStart(time: Float64Array | undefined, rows: number): number {
  if (!time) return rows;
  let start = rows;
  while (start > 0 && Number.isNaN(time[start - 1])) start -= 1;
  return rows - start > SUMMARY ? rows : start;
}

/** Columns that may end before the file does: the sensor was taken off. */
const mayEnd = (quantity: ColumnName): boolean => quantity === 'extension' || quantity === 'strain' || quantity === 'transverseStrain';

/** @internal Dates where numbers should be are a spreadsheet's damage: an error with the lines, unless rows may be left out. */
export function requireNoDates(from: string, odd: readonly OddRow[], options: ReadOptions): void {
  const dates = odd.filter(({ date }) => date);
  if (dates.length === 0 || options.leaveOutHoles === true) return;
  const lines = dates.slice(0, NAMED).map(({ line }) => line);
  const more = dates.length > NAMED ? ` and ${dates.length - NAMED} more` : '';
  throw new InputError(
    from,
    `line ${lines[0]!}`,
    'not-finite',
    `must hold numbers, and a spreadsheet made dates of them on lines ${lines.join(', ')}${more} (restore them, or set options.leaveOutHoles)`,
    dates[0]!.why,
  );
}

/** @internal Rows that can be used: the load is a number; holes elsewhere are an error, or left out on request; extension may end early, and a
 * summary below the last time is left out, and so is the line within which the file was cut. */
export function usableRows(
  from: string,
  columns: readonly { readonly quantity: ColumnName; readonly column: Float64Array }[],
  rows: number,
  lineOf: (row: number) => number,
  options: ReadOptions,
  cutLine?: number,
): UsableRows {
  const keep = new Uint8Array(rows).fill(1);
  const leftOut: LeftOutRow[] = [];
  for (let i = summaryStart(columns.find(({ quantity }) => quantity === 'time')?.column, rows); i < rows; i += 1) {
    leftOut.push({ line: lineOf(i), why: 'after the last row with a time: a summary' });
    keep[i] = 0;
  }
  if (rows > 0 && lineOf(rows - 1) === cutLine && keep[rows - 1] === 1) {
    leftOut.push({ line: cutLine, why: 'the file was cut within it' });
    keep[rows - 1] = 0;
  }
  for (const { quantity, column } of columns) {
    const load = quantity === 'force' || quantity === 'pressure';
    let end = rows;
    if (mayEnd(quantity)) while (end > 0 && (Number.isNaN(column[end - 1]) || keep[end - 1] === 0)) end -= 1;
    for (let i = 0; i < end; i += 1) {
      if (!Number.isNaN(column[i]) || keep[i] === 0) continue;
      if (!load && options.leaveOutHoles !== true)
        throw new InputError(
          from,
          `line ${lineOf(i)}`,
          'not-finite',
          `must hold a number for ${quantity} (or set options.leaveOutHoles)`,
          'an empty cell',
        );
      leftOut.push({ line: lineOf(i), why: `no number for ${quantity}` });
      keep[i] = 0;
    }
  }
  return { keep, rows: rows - leftOut.length, leftOut };
}
