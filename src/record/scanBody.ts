import { cellValue, splitCells, type DecimalSign, type Separator } from './cells.js';

/** @internal Numbers of the wanted columns, row by row; NaN where a cell holds none. */
export interface ScannedBody {
  readonly columns: readonly Float64Array[];
  /** Line of the file of each row, from 1. */
  readonly lines: Int32Array;
  /** Rows left out because a wanted cell holds other text or is missing: line and why. */
  readonly odd: readonly { readonly line: number; readonly why: string }[];
}

/** @internal How the body is written. */
export interface BodyFormat {
  readonly separator: Separator;
  readonly decimal: DecimalSign;
  readonly thousands: string;
  /** First line of the body, from 0. */
  readonly firstLine: number;
  /** Wanted columns of the file, ascending. */
  readonly wanted: readonly number[];
}

/** Powers of ten that are exact: with at most 15 digits one division then rounds correctly. */
const POWERS = Float64Array.from({ length: 23 }, (_, k) => Number(`1e${k}`));
const MOST_DIGITS = 15;
const SPACE = 32;
const NEWLINE = 10;
const MINUS = 45;
const PLUS = 43;
const ZERO = 48;
const NINE = 57;

/**
 * @internal Scans the body of a file into columns, character by character: no cell becomes a string unless it is out of the ordinary
 * (exponents, more than 15 digits, thousands, text).
 */
export function scanBody(text: string, format: BodyFormat): ScannedBody {
  const { separator, decimal, thousands, wanted } = format;
  if (text.includes('"')) return scanQuoted(text, format);
  const mark = separator.charCodeAt(0);
  const point = decimal.charCodeAt(0);
  const spaced = separator === ' ';
  const count = wanted.length;
  const last = wanted[count - 1]!;
  const slot = new Int32Array(last + 1).fill(-1);
  wanted.forEach((column, k) => (slot[column] = k));
  let capacity = 1024;
  let columns = Array.from({ length: count }, () => new Float64Array(capacity));
  let lines = new Int32Array(capacity);
  const odd: { line: number; why: string }[] = [];
  const row = new Float64Array(count);
  const n = text.length;
  let at = 0;
  for (let skipped = 0; skipped < format.firstLine; skipped += 1) at = text.indexOf('\n', at) + 1;
  let rows = 0;
  for (let line = format.firstLine + 1; at < n; line += 1) {
    row.fill(NaN);
    let cell = 0;
    let filled = false;
    let wrong: string | undefined;
    let end = false;
    while (!end) {
      while (at < n && text.charCodeAt(at) === SPACE) at += 1;
      const start = at;
      const wantedHere = cell <= last && slot[cell]! >= 0;
      let plain = wantedHere;
      if (wantedHere) {
        let code = at < n ? text.charCodeAt(at) : NEWLINE;
        const negative = code === MINUS;
        if (negative || code === PLUS) code = ++at < n ? text.charCodeAt(at) : NEWLINE;
        let digits = 0;
        let decimals = 0;
        let value = 0;
        let fraction = false;
        for (;;) {
          if (code >= ZERO && code <= NINE) {
            value = value * 10 + (code - ZERO);
            if (value !== 0) digits += 1;
            if (fraction) decimals += 1;
            else decimals = 0;
          } else if (code === point && !fraction) fraction = true;
          else break;
          code = ++at < n ? text.charCodeAt(at) : NEWLINE;
        }
        const body = at - start - (negative ? 1 : 0) - (fraction ? 1 : 0);
        while (!spaced && at < n && text.charCodeAt(at) === SPACE) at += 1;
        const stop = at >= n || text.charCodeAt(at) === mark || text.charCodeAt(at) === NEWLINE;
        plain = stop && body > 0 && digits <= MOST_DIGITS && decimals < POWERS.length;
        if (plain) {
          const size = value / POWERS[decimals]!;
          row[slot[cell]!] = negative ? -size : size;
          filled = true;
        }
      }
      if (!plain) {
        while (at < n) {
          const code = text.charCodeAt(at);
          if (code === mark || code === NEWLINE) break;
          at += 1;
        }
        if (wantedHere) {
          const value = cellValue(text.slice(start, at).trim(), decimal, thousands);
          if (value === undefined) wrong ??= text.slice(start, Math.min(at, start + 40)).trim();
          else {
            row[slot[cell]!] = value;
            filled ||= !Number.isNaN(value);
          }
        }
      }
      if (spaced) while (at < n && text.charCodeAt(at) === SPACE) at += 1;
      end = at >= n || text.charCodeAt(at) === NEWLINE;
      if (!(spaced && !end)) at += 1;
      cell += 1;
    }
    if (wrong !== undefined || (filled && cell <= last)) {
      odd.push({ line, why: wrong === undefined ? `${cell} cells only` : `'${wrong}' is no number` });
      continue;
    }
    if (!filled) continue; // an empty row
    if (rows === capacity) {
      capacity *= 2;
      columns = columns.map((column) => {
        const grown = new Float64Array(capacity);
        grown.set(column);
        return grown;
      });
      const grown = new Int32Array(capacity);
      grown.set(lines);
      lines = grown;
    }
    for (let k = 0; k < count; k += 1) columns[k]![rows] = row[k]!;
    lines[rows] = line;
    rows += 1;
  }
  return { columns: columns.map((column) => column.slice(0, rows)), lines: lines.slice(0, rows), odd };
}

/** The same for files with quotes, by way of a general reader. */
function scanQuoted(text: string, { separator, decimal, thousands, firstLine, wanted }: BodyFormat): ScannedBody {
  const columns: number[][] = wanted.map(() => []);
  const lines: number[] = [];
  const odd: { line: number; why: string }[] = [];
  splitCells(text, separator).forEach((cells, index) => {
    if (index < firstLine || cells.every((cell) => cell === '')) return;
    const values = wanted.map((column) => cellValue(cells[column] ?? '', decimal, thousands));
    const wrong = values.findIndex((value) => value === undefined);
    if (wrong >= 0 || cells.length <= wanted[wanted.length - 1]!) {
      odd.push({
        line: index + 1,
        why: wrong < 0 ? `${cells.length} cells only` : `'${cells[wanted[wrong]!]!.slice(0, 40)}' is no number`,
      });
      return;
    }
    values.forEach((value, k) => columns[k]!.push(value ?? NaN));
    lines.push(index + 1);
  });
  return { columns: columns.map((column) => Float64Array.from(column)), lines: Int32Array.from(lines), odd };
}
