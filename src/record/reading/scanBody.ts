import { InputError } from '../../base/index.js';
import { cellValue, isDate, thousandsIn, type DecimalSign, type Separator, type ThousandsSign } from './cells.js';
import { clockTime } from './clockTime.js';
import { endRow, leaveOdd, type ColumnStore } from './columnStore.js';
import { plainCells, type CellSigns, type Line } from './plainCells.js';
import { endsLine, NEWLINE, QUOTE, RETURN, SPACE, TAB } from './signs.js';

/** @internal How the body of a text is written, and what is wanted of it. */
export interface BodyFormat {
  readonly separator: Separator;
  readonly decimal: DecimalSign;
  /** The only sign between groups of digits, or any. */
  readonly thousands: ThousandsSign | undefined;
  /** True where no cell above has proved the decimal sign. */
  readonly unproven: boolean;
  /** Wanted columns, ascending: place, whether its cells are clock times, whether other text in it spoils a row. */
  readonly wanted: readonly { readonly index: number; readonly clock: boolean; readonly strict: boolean }[];
  /** Text of bytes, for cells that are out of the ordinary. */
  readonly decode: (bytes: Uint8Array) => string;
}

/** A line of which nothing is read yet; one object for all lines, for there are many. */
function clear(line: Line): void {
  line.cells = 0;
  line.done = false;
  line.filled = false;
  line.wrong = undefined;
  line.open = -1;
}

/** The text of a cell without blanks and quotes. */
function textOf(bytes: Uint8Array, start: number, end: number, decode: BodyFormat['decode']): string {
  let ascii = end - start <= 64;
  for (let i = start; ascii && i < end; i += 1) ascii = bytes[i]! < 128;
  let text = '';
  if (ascii) for (let i = start; i < end; i += 1) text += String.fromCharCode(bytes[i]!);
  else text = decode(bytes.subarray(start, Math.min(end, start + 400)));
  text = text.trim();
  return text.startsWith('"') ? text.replace(/^"|"$/g, '').replaceAll('""', '"').trim() : text;
}

/** Where a cell that begins with a quote at `at` is closed, or the line end that comes before. */
function closingQuote(bytes: Uint8Array, at: number): number {
  for (let to = at + 1; ; to += 1) {
    if (bytes[to] === NEWLINE || bytes[to] === RETURN) return to;
    if (bytes[to] !== QUOTE) continue;
    if (bytes[to + 1] !== QUOTE) return to;
    to += 1;
  }
}

/** Among the cells from a separator to the line end, the beginning of one in quotes that the line does not close; or -1. */
function openCell(bytes: Uint8Array, separatorAt: number, lineEnd: number, mark: number): number {
  let at = separatorAt;
  while (at < lineEnd) {
    at += 1;
    while (bytes[at] === SPACE) at += 1;
    const from = at;
    if (bytes[at] === QUOTE) at = closingQuote(bytes, at);
    if (at === lineEnd && at > from) return from;
    while (at < lineEnd && bytes[at] !== mark) at += 1;
  }
  return -1;
}

/** The first byte from `at` on that is no blank; tabs are blanks only where blanks stand between cells. */
function afterBlanks(bytes: Uint8Array, at: number, spaced: boolean): number {
  let to = at;
  while (bytes[to] === SPACE || (spaced && bytes[to] === TAB)) to += 1;
  return to;
}

/** Where the cell that begins at `from` ends, over separators within quotes. */
function cellEnd(bytes: Uint8Array, from: number, { mark, spaced }: CellSigns): number {
  let at = bytes[from] === QUOTE && !spaced ? closingQuote(bytes, from) : from;
  while (bytes[at] !== mark && !endsLine(bytes[at]) && !(spaced && bytes[at] === TAB)) at += 1;
  return at;
}

/** Puts a text that is no plain number (more digits than a number holds, thousands, a clock time, other text) into the row of a column. */
function putText(text: string, column: number, { decimal, thousands, wanted }: BodyFormat, store: ColumnStore, line: Line): void {
  const { clock, strict } = wanted[column]!;
  const value = clock ? (text === '' ? NaN : clockTime(text)) : cellValue(text, decimal, thousands);
  store.columns[column]![store.at] = value ?? NaN;
  if (value === undefined && strict) line.wrong ??= text;
  if (value === undefined || Number.isNaN(value)) return;
  line.filled = true;
  if (store.thousands === '') store.thousands = thousandsIn(text, decimal);
}

/** Reads the cell that begins at `from`, whatever it holds, and returns where the next one begins, or the line is done. */
function anyCell(
  bytes: Uint8Array,
  from: number,
  signs: CellSigns,
  slots: Int32Array,
  format: BodyFormat,
  store: ColumnStore,
  line: Line,
): number {
  const at = cellEnd(bytes, from, signs);
  if (bytes[from] === QUOTE && !signs.spaced && endsLine(bytes[at]) && closingQuote(bytes, from) === at) line.open = from;
  const column = slots[line.cells]!;
  if (column >= 0) putText(textOf(bytes, from, at, format.decode), column, format, store, line);
  line.cells += 1;
  const to = signs.spaced ? afterBlanks(bytes, at, true) : at;
  line.done = line.cells === slots.length || endsLine(bytes[to]);
  return line.done || signs.spaced ? to : afterBlanks(bytes, to + 1, false);
}

/** Where a line ends, from the separator behind the last cell that is wanted. */
function lineEnd(bytes: Uint8Array, from: number, { mark, spaced }: CellSigns, line: Line): number {
  let at = from;
  let quotes = false;
  for (; !endsLine(bytes[at]); at += 1) if (bytes[at] === QUOTE) quotes = true;
  if (quotes && !spaced) line.open = openCell(bytes, from, at, mark);
  return at;
}

/** Ends a row of numbers; leaves out a line with other text or too few cells. */
function endLine(number: number, { cells, filled, wrong }: Line, last: number, format: BodyFormat, store: ColumnStore): void {
  if (wrong === undefined && (!filled || cells > last)) {
    if (filled) endRow(store, number);
    return;
  }
  if (format.unproven && wrong !== undefined && filled) requireSigns(store.from, number, wrong, format);
  const date = wrong !== undefined && filled && isDate(wrong);
  const why =
    wrong === undefined
      ? `${cells} ${cells === 1 ? 'cell' : 'cells'} only`
      : date
        ? `'${wrong}' is a date`
        : `'${wrong.slice(0, 40)}' is no number`;
  leaveOdd(store, number, why, wrong, date);
}

/**
 * @internal Scans whole lines of bytes into columns and returns the number of lines: no cell becomes a string unless it is out of the ordinary
 * (more digits than a number holds, thousands, clock times, text). The bytes from `start` to `end` must end with a line end.
 */
export function scanBody(bytes: Uint8Array, start: number, end: number, firstLine: number, format: BodyFormat, store: ColumnStore): number {
  const { separator, decimal, wanted } = format;
  const mark = separator.charCodeAt(0);
  const quotedPoint = decimal.charCodeAt(0);
  // a comma for both is a decimal sign within quotes only
  const signs: CellSigns = { mark, spaced: separator === ' ', point: quotedPoint === mark ? -1 : quotedPoint, quotedPoint };
  const last = wanted.at(-1)!.index;
  /** By place the wanted column, and the one that holds plain numbers; -1 for none. */
  const slots = new Int32Array(last + 1).fill(-1);
  const numbers = slots.slice();
  wanted.forEach(({ index, clock }, k) => {
    slots[index] = k;
    if (!clock) numbers[index] = k;
  });
  const line: Line = { cells: 0, done: false, filled: false, wrong: undefined, open: -1 };
  let number = firstLine;
  let at = start;
  while (at < end) {
    number += 1;
    clear(line);
    at = afterBlanks(bytes, at, signs.spaced);
    for (;;) {
      at = plainCells(bytes, at, signs, numbers, store.columns, store.at, line);
      if (line.done) break;
      at = anyCell(bytes, at, signs, slots, format, store, line);
    }
    at = lineEnd(bytes, at, signs, line);
    if (line.filled) {
      if (store.open !== undefined) requireClosed(store.from, store.open);
      if (line.open >= 0) store.open = { line: number, text: textOf(bytes, line.open, at, format.decode) };
    }
    at += bytes[at] === RETURN && bytes[at + 1] === NEWLINE && at + 1 < end ? 2 : 1;
    endLine(number, line, last, format, store);
  }
  return number - firstLine;
}

/** Numbers below a cell in quotes that its line does not close: the cell may go on among them, so they may be no readings. */
function requireClosed(from: string, { line, text }: NonNullable<ColumnStore['open']>): void {
  throw new InputError(
    from,
    `line ${line}`,
    'ambiguous',
    'must close every cell in quotes that it opens: the numbers below may be part of it',
    text,
  );
}

/** Where the lines looked at had no mark in their numbers, a number by the other decimal sign leaves the file open. */
function requireSigns(from: string, line: number, text: string, { decimal, thousands }: BodyFormat): void {
  const other = decimal === '.' ? ',' : '.';
  if (cellValue(text, other, thousands) !== undefined)
    throw new InputError(from, 'options.decimal', 'ambiguous', `must be '.' or ',': the first mark in a number is on line ${line}`, text);
}
