import { InputError } from '../../base/index.js';
import type { ThousandsSign } from './cells.js';

/** Rows of the first block. */
const FIRST = 512;
/** Rows of the largest block. */
const BLOCK = 1 << 16;
/** More rows than this are refused. */
const MOST_ROWS = 50_000_000;
/** Rows that may be left out whatever the number of rows read. */
const FEW = 1000;

/** @internal A row left out because a wanted cell holds other text or is missing. */
export interface OddRow {
  readonly line: number;
  readonly why: string;
  /** True where a spreadsheet made a date of a number. */
  readonly date: boolean;
  /** What stands there instead of a number; undefined where cells are missing. */
  readonly text: string | undefined;
  /** The row of numbers that follows. */
  readonly row: number;
}

/** @internal Columns while they are read, in blocks, so that they grow without copies. */
export interface ColumnStore {
  readonly from: string;
  /** Argument that is read. */
  readonly path: string;
  readonly count: number;
  readonly full: (readonly Float64Array[])[];
  /** Rows in them. */
  done: number;
  /** The block that is written, and its next row. */
  columns: readonly Float64Array[];
  at: number;
  /** Rows that do not stand on the line after the row before, and by how much line and row differ from there on. */
  readonly breaks: { readonly row: number; readonly ahead: number }[];
  readonly odd: OddRow[];
  /** The last row with a cell in quotes that its line does not close. */
  open: { readonly line: number; readonly text: string } | undefined;
  /** The first sign between groups of digits that was met. */
  thousands: ThousandsSign;
}

const blocks = (count: number, rows: number): Float64Array[] => Array.from({ length: count }, () => new Float64Array(rows));

/** @internal An empty store of some columns. */
export const columnStore = (from: string, count: number, thousands: ThousandsSign, path = 'file'): ColumnStore => ({
  from,
  path,
  count,
  full: [],
  done: 0,
  columns: blocks(count, FIRST),
  at: 0,
  breaks: [],
  odd: [],
  open: undefined,
  thousands,
});

/** Puts a full block away. */
function nextBlock(store: ColumnStore): void {
  store.full.push(store.columns);
  store.done += store.at;
  if (store.done >= MOST_ROWS)
    throw new InputError(store.from, store.path, 'too-large', `must have fewer than ${MOST_ROWS} rows`, store.done);
  store.columns = blocks(store.count, Math.min(store.done, BLOCK));
  store.at = 0;
}

/** @internal Lists a row as left out; where most rows are, the file is no table of numbers. */
export function leaveOdd(store: ColumnStore, line: number, why: string, text: string | undefined, date = false): void {
  const rows = store.done + store.at;
  store.odd.push({ line, why, date, text, row: rows });
  if (store.odd.length > FEW && store.odd.length > rows)
    throw new InputError(store.from, `line ${line}`, 'no-numbers', 'and most lines above must hold numbers in the columns that serve', why);
}

/** @internal Ends a row that stands on a line: it is counted, and the next one begins. */
export function endRow(store: ColumnStore, line: number): void {
  const row = store.done + store.at;
  if (line - row !== store.breaks.at(-1)?.ahead) store.breaks.push({ row, ahead: line - row });
  store.at += 1;
  if (store.at === store.columns[0]!.length) nextBlock(store);
}

/** @internal The line that a row stands on. */
export function lineOf({ breaks }: ColumnStore, row: number): number {
  let low = 0;
  let high = breaks.length - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (breaks[middle]!.row <= row) low = middle;
    else high = middle - 1;
  }
  return row + breaks[low]!.ahead;
}

/** @internal The columns as one array each. The store keeps its lines only. */
export function joinColumns(store: ColumnStore): Float64Array[] {
  const whole = store.full.length;
  const parts = [...store.full.splice(0), store.columns];
  return Array.from({ length: store.count }, (_, c) => {
    const column = new Float64Array(store.done + store.at);
    let at = 0;
    parts.forEach((part, k) => {
      column.set(k < whole ? part[c]! : part[c]!.subarray(0, store.at), at);
      at += part[c]!.length;
      // a block is let go as soon as it is copied
      parts[k] = part.map((block, other) => (other === c ? new Float64Array(0) : block));
    });
    return column;
  });
}
