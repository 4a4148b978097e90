import { NEWLINE, QUOTE, RETURN, SPACE, TAB } from './signs.js';

/** @internal Bytes that stand between cells and within numbers. */
export interface CellSigns {
  /** Between cells. */
  readonly mark: number;
  /** True where runs of blanks stand between cells. */
  readonly spaced: boolean;
  /** The decimal sign; -1 where it is the mark as well. */
  readonly point: number;
  /** The decimal sign within quotes. */
  readonly quotedPoint: number;
}

/** @internal What a line was found to hold up to here. */
export interface Line {
  /** Cells that were read. */
  cells: number;
  /** True once no cell that is wanted follows. */
  done: boolean;
  /** True where a wanted one holds a number. */
  filled: boolean;
  /** The first text in a column that must hold numbers. */
  wrong: string | undefined;
  /** Where a cell in quotes begins that the line does not close, or -1. */
  open: number;
}

/** Powers of ten that are exact: one product or quotient with them rounds correctly. */
const POWERS = Float64Array.from({ length: 23 }, (_, k) => Number(`1e${k}`));
/** Whole numbers below this are exact. */
const EXACT = 2 ** 53;
const MINUS = 45;
const PLUS = 43;
const ZERO = 48;
const NINE = 57;
const SMALL_E = 101;
const LARGE_E = 69;

/**
 * @internal Reads cells into their row as long as they are plain numbers (sign, digits, decimal sign, digits, exponent; in quotes or not) or empty:
 * numbers[k] is the column that cell k goes into, below 0 where it is not wanted as a number. Returns where the first other cell begins, or the line is done.
 */
export function plainCells(
  bytes: Uint8Array,
  start: number,
  signs: CellSigns,
  numbers: Int32Array,
  columns: readonly Float64Array[],
  row: number,
  line: Line,
): number {
  if (line.done) return start;
  const { mark, spaced, point, quotedPoint } = signs;
  const last = numbers.length - 1;
  let { cells, filled } = line;
  let from = start;
  let done = false;
  for (;;) {
    const number = numbers[cells]!;
    if (number < 0) break;
    let at = from;
    let code = bytes[at]!;
    const quoted = code === QUOTE;
    if (quoted) code = bytes[++at]!;
    const negative = code === MINUS;
    if (negative || code === PLUS) code = bytes[++at]!;
    const first = at;
    let value = 0;
    while (code >= ZERO && code <= NINE) {
      value = value * 10 + (code - ZERO);
      code = bytes[++at]!;
    }
    let digits = at - first;
    let power = 0;
    if (code === (quoted ? quotedPoint : point)) {
      code = bytes[++at]!;
      const fraction = at;
      while (code >= ZERO && code <= NINE) {
        value = value * 10 + (code - ZERO);
        code = bytes[++at]!;
      }
      power = fraction - at;
      digits -= power;
    }
    if ((code === SMALL_E || code === LARGE_E) && digits > 0) {
      code = bytes[++at]!;
      const down = code === MINUS;
      if (down || code === PLUS) code = bytes[++at]!;
      const behind = at;
      let exponent = 0;
      while (code >= ZERO && code <= NINE) {
        exponent = exponent * 10 + (code - ZERO);
        code = bytes[++at]!;
      }
      if (at === behind) break;
      power += down ? -exponent : exponent;
    }
    if (quoted) {
      if (code !== QUOTE) break;
      code = bytes[++at]!;
    }
    if (!spaced) while (code === SPACE) code = bytes[++at]!;
    if (code !== mark && code !== NEWLINE && code !== RETURN && !(spaced && code === TAB)) break;
    if (digits > 0) {
      if (!(value < EXACT && power > -23 && power < 23)) break;
      const size = power <= 0 ? value / POWERS[-power]! : value * POWERS[power]!;
      columns[number]![row] = negative ? -size : size;
      filled = true;
    } else if (at === from) columns[number]![row] = NaN;
    else break;
    // to the next cell, as `anyCell` goes
    cells += 1;
    if (spaced) while (code === SPACE || code === TAB) code = bytes[++at]!;
    if (code === NEWLINE || code === RETURN || cells > last) {
      from = at;
      done = true;
      break;
    }
    if (!spaced)
      do code = bytes[++at]!;
      while (code === SPACE);
    from = at;
  }
  line.cells = cells;
  line.filled = filled;
  line.done = done;
  return from;
}
