import { InputError } from '../base/index.js';
import type { ThousandsSign } from './cells.js';

/** Rows of one block. */
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
}

/** @internal Columns while they are read, in blocks, so that they grow without copies. */
export interface ColumnStore {
  readonly from: string;
  readonly count: number;
  readonly full: (readonly Float64Array[])[];
  readonly fullLines: Int32Array[];
  /** The block that is written, and its next row. */
  columns: readonly Float64Array[];
  lines: Int32Array;
  at: number;
  readonly odd: OddRow[];
  /** The first sign between groups of digits that was met. */
  thousands: ThousandsSign;
}

const blocks = (count: number): Float64Array[] => Array.from({ length: count }, () => new Float64Array(BLOCK));

/** @internal An empty store of so many columns. */
export const columnStore = (from: string, count: number, thousands: ThousandsSign): ColumnStore => ({
  from,
  count,
  full: [],
  fullLines: [],
  columns: blocks(count),
  lines: new Int32Array(BLOCK),
  at: 0,
  odd: [],
  thousands,
});

/** @internal Puts a full block away; called where `at` has reached the end of the block. */
export function nextBlock(store: ColumnStore): void {
  store.full.push(store.columns);
  store.fullLines.push(store.lines);
  if (store.full.length * BLOCK >= MOST_ROWS)
    throw new InputError(store.from, 'file', 'too-large', `must have fewer than ${MOST_ROWS} rows`, store.full.length * BLOCK);
  store.columns = blocks(store.count);
  store.lines = new Int32Array(BLOCK);
  store.at = 0;
}

/** @internal Lists a row as left out; where most rows are, the file is no table of numbers. */
export function leaveOdd(store: ColumnStore, line: number, why: string, date = false): void {
  store.odd.push({ line, why, date });
  const rows = store.full.length * BLOCK + store.at;
  if (store.odd.length > FEW && store.odd.length > rows)
    throw new InputError(store.from, `line ${line}`, 'no-numbers', 'and most lines above must hold numbers in the columns that serve', why);
}

/** @internal The columns as one array each, and the lines of the rows. The store is empty afterwards. */
export function joinColumns(store: ColumnStore): { readonly columns: Float64Array[]; readonly lines: Int32Array } {
  const whole = store.full.length;
  const rows = whole * BLOCK + store.at;
  const parts = [...store.full.splice(0), store.columns];
  const sizeOf = (k: number): number => (k < whole ? BLOCK : store.at);
  const columns = Array.from({ length: store.count }, (_, c) => {
    const column = new Float64Array(rows);
    parts.forEach((part, k) => {
      column.set(part[c]!.subarray(0, sizeOf(k)), k * BLOCK);
      // a block is let go as soon as it is copied
      parts[k] = part.map((block, other) => (other === c ? new Float64Array(0) : block));
    });
    return column;
  });
  const lines = new Int32Array(rows);
  [...store.fullLines.splice(0), store.lines].forEach((part, k) => lines.set(part.subarray(0, sizeOf(k)), k * BLOCK));
  return { columns, lines };
}
