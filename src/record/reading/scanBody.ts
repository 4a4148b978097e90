import { InputError } from '../../base/index.js';
import { cellValue, isDate, thousandsIn, type DecimalSign, type Separator, type ThousandsSign } from './cells.js';
import { clockTime } from './clockTime.js';
import { endRow, leaveOdd, type ColumnStore } from './columnStore.js';

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

/** Powers of ten that are exact: one product or quotient with them rounds correctly. */
const POWERS = Float64Array.from({ length: 23 }, (_, k) => Number(`1e${k}`));
/** Whole numbers below this are exact. */
const EXACT = 2 ** 53;
const SPACE = 32;
const TAB = 9;
const NEWLINE = 10;
const RETURN = 13;
const QUOTE = 34;
const MINUS = 45;
const PLUS = 43;
const ZERO = 48;
const NINE = 57;
const SMALL_E = 101;
const LARGE_E = 69;

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

/**
 * @internal Scans whole lines of bytes into columns and returns the number of lines: no cell becomes a string unless it is out of the ordinary
 * (more digits than a number holds, thousands, clock times, text). The bytes from `start` to `end` must end with a line end.
 */
export function scanBody(bytes: Uint8Array, start: number, end: number, firstLine: number, format: BodyFormat, store: ColumnStore): number {
  const { separator, decimal, wanted } = format;
  const mark = separator.charCodeAt(0);
  const point = decimal.charCodeAt(0);
  const barePoint = point === mark ? -1 : point; // a comma for both is a decimal sign within quotes only
  const spaced = separator === ' ';
  const last = wanted.at(-1)!.index;
  const slots = new Int32Array(last + 1).fill(-1);
  wanted.forEach(({ index }, k) => (slots[index] = k));
  const clocks = Uint8Array.from(wanted, ({ clock }) => Number(clock));
  const blank = spaced ? TAB : SPACE;
  let { columns, at: row } = store;
  let line = firstLine;
  let at = start;
  while (at < end) {
    line += 1;
    let cell = 0;
    let filled = false;
    let wrong: string | undefined;
    let open = -1; // a cell in quotes that the line does not close begins here
    for (;;) {
      let code = bytes[at]!;
      while (code === SPACE || code === blank) code = bytes[++at]!;
      const from = at;
      const slot = slots[cell]!;
      let plain = false;
      if (slot >= 0 && clocks[slot] === 0) {
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
        if (code === (quoted ? point : barePoint)) {
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
          const exponentAt = at;
          let exponent = 0;
          while (code >= ZERO && code <= NINE) {
            exponent = exponent * 10 + (code - ZERO);
            code = bytes[++at]!;
          }
          power += down ? -exponent : exponent;
          if (at === exponentAt) digits = 0;
        }
        if (quoted) {
          if (code === QUOTE) code = bytes[++at]!;
          else digits = 0;
        }
        if (!spaced) while (code === SPACE) code = bytes[++at]!;
        const stop = code === mark || code === NEWLINE || code === RETURN || (spaced && code === TAB);
        if (stop && digits > 0 && value < EXACT && power > -23 && power < 23) {
          const size = power <= 0 ? value / POWERS[-power]! : value * POWERS[power]!;
          columns[slot]![row] = negative ? -size : size;
          filled = true;
          plain = true;
        } else if (stop && at === from) {
          columns[slot]![row] = NaN;
          plain = true;
        }
      }
      if (!plain) {
        // any other cell: to its end, over separators within quotes
        at = from;
        code = bytes[at]!;
        if (code === QUOTE && !spaced) {
          at = closingQuote(bytes, at);
          code = bytes[at]!;
          if (code !== QUOTE) open = from;
        }
        while (code !== mark && code !== NEWLINE && code !== RETURN && !(spaced && code === TAB)) code = bytes[++at]!;
        if (slot >= 0) {
          const text = textOf(bytes, from, at, format.decode);
          const value = clocks[slot] === 1 ? (text === '' ? NaN : clockTime(text)) : cellValue(text, decimal, format.thousands);
          columns[slot]![row] = value ?? NaN;
          if (value === undefined && wanted[slot]!.strict) wrong ??= text;
          if (value !== undefined && !Number.isNaN(value)) {
            filled = true;
            if (store.thousands === '') store.thousands = thousandsIn(text, decimal);
          }
        }
      }
      cell += 1;
      if (spaced) while (code === SPACE || code === TAB) code = bytes[++at]!;
      if (code === NEWLINE || code === RETURN) break;
      if (cell > last) {
        const rest = at;
        let quotes = false;
        while (code !== NEWLINE && code !== RETURN) {
          if (code === QUOTE) quotes = true;
          code = bytes[++at]!;
        }
        if (quotes && !spaced) open = openCell(bytes, rest, at, mark);
        break;
      }
      if (!spaced) at += 1;
    }
    if (filled) {
      if (store.open !== undefined) requireClosed(store.from, store.open);
      if (open >= 0) store.open = { line, text: textOf(bytes, open, at, format.decode) };
    }
    at += bytes[at] === RETURN && bytes[at + 1] === NEWLINE && at + 1 < end ? 2 : 1;
    if (wrong !== undefined || (filled && cell <= last)) {
      if (format.unproven && wrong !== undefined && filled) requireSigns(store.from, line, wrong, format);
      const date = wrong !== undefined && filled && isDate(wrong);
      const why =
        wrong === undefined
          ? `${cell} ${cell === 1 ? 'cell' : 'cells'} only`
          : date
            ? `'${wrong}' is a date`
            : `'${wrong.slice(0, 40)}' is no number`;
      leaveOdd(store, line, why, wrong, date);
    } else if (filled) {
      endRow(store, line);
      ({ columns, at: row } = store);
    }
  }
  return line - firstLine;
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
