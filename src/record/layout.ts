import { InputError } from '../base/index.js';
import { parseUnit } from '../units/index.js';
import { cellValue, splitCells, type DecimalSign, type Separator } from './cells.js';

/** @internal How a file is laid out. */
export interface Layout {
  readonly separator: Separator;
  readonly decimal: DecimalSign;
  /** Sign between groups of three digits; empty for none. */
  readonly thousands: string;
  /** Rows above the numbers, as cells. */
  readonly head: readonly (readonly string[])[];
  /** Row of names among them, row of units where there is one. */
  readonly namesRow: number | undefined;
  readonly unitsRow: number | undefined;
  /** First row of numbers, from 0. */
  readonly bodyRow: number;
  readonly columns: number;
}

/** Rows looked at for the layout, and how many numeric rows in a run make a body. */
const LOOK_ROWS = 400;
const RUN = 5;
/** More cells in a row than this are no logger file. */
const MOST_COLUMNS = 500;

const separators: readonly Separator[] = [';', '\t', '|', ',', ' '];
const signs = [
  { decimal: '.', thousands: '' },
  { decimal: ',', thousands: '' },
  { decimal: '.', thousands: ',' },
  { decimal: ',', thousands: '.' },
  { decimal: '.', thousands: ' ' },
  { decimal: ',', thousands: ' ' },
] as const;

interface Candidate {
  readonly separator: Separator;
  readonly decimal: DecimalSign;
  readonly thousands: string;
  readonly rows: string[][];
  readonly first: number;
  readonly run: number;
  readonly columns: number;
}

/** A row counts as numeric where every cell is a number or empty, and two at least are numbers. */
function numericCells(row: readonly string[], decimal: DecimalSign, thousands: string): number {
  let numbers = 0;
  for (const cell of row) {
    const value = cellValue(cell, decimal, thousands);
    if (value === undefined) return 0;
    if (!Number.isNaN(value)) numbers += 1;
  }
  return numbers;
}

/** The first run of numeric rows of equal width. */
function runOf(rows: string[][], separator: Separator, { decimal, thousands }: (typeof signs)[number]): Candidate | undefined {
  let best: Candidate | undefined;
  for (let first = 0; first < rows.length;) {
    const columns = rows[first]!.length;
    let end = first;
    while (end < rows.length && rows[end]!.length === columns && numericCells(rows[end]!, decimal, thousands) >= 2) end += 1;
    const run = end - first;
    if (run > 0 && (!best || (best.run < RUN && run > best.run))) best = { separator, decimal, thousands, rows, first, run, columns };
    if (best && best.run >= RUN) break;
    first = Math.max(end, first + 1);
  }
  return best;
}

/** True where a comma or a point could be either sign: always before exactly three digits, never twice, never after a lone 0. */
function undecided({ rows, first, run, decimal, thousands }: Candidate): boolean {
  const mark = thousands === '' ? decimal : thousands;
  if (mark === ' ') return false;
  const other = mark === ',' ? '.' : ',';
  let seen = 0;
  for (const row of rows.slice(first, first + run))
    for (const cell of row) {
      if (cell.includes(other)) return false;
      if (!cell.includes(mark)) continue;
      seen += 1;
      if (!new RegExp(`^[-+]?[1-9]\\d{0,2}\\${mark}\\d{3}$`).test(cell)) return false;
    }
  return seen > 0 && mark === ',';
}

/** True where all filled cells of a row are units. */
function isUnitsRow(row: readonly string[]): boolean {
  const filled = row.filter((cell) => cell !== '');
  return filled.length > 0 && filled.every((cell) => parseUnit(cell.replace(/^[[(]|[\])]$/g, '')) !== undefined);
}

/** @internal What may be fixed from outside. */
export interface LayoutHints {
  readonly separator?: Separator | undefined;
  readonly decimal?: DecimalSign | undefined;
}

/** @internal Finds separator, decimal sign, names and units of a text. */
export function findLayout(text: string, hints: LayoutHints): Layout {
  const from = 'readRecord';
  let cut = -1;
  for (let row = 0; row < LOOK_ROWS; row += 1) {
    const next = text.indexOf('\n', cut + 1);
    if (next < 0) {
      cut = text.length;
      break;
    }
    cut = next;
  }
  const look = text.slice(0, cut);
  const candidates = separators
    .filter((separator) => hints.separator === undefined || separator === hints.separator)
    .flatMap((separator) => {
      const rows = splitCells(look, separator);
      return signs
        .filter(
          ({ decimal, thousands }) =>
            (hints.decimal === undefined || decimal === hints.decimal) && separator !== decimal && separator !== thousands,
        )
        .flatMap((sign) => runOf(rows, separator, sign) ?? []);
    });
  // more numbers first; the simpler reading (earlier in the lists) where they are equal
  const best = candidates.reduce<Candidate | undefined>((a, b) => (a && a.run * a.columns >= b.run * b.columns ? a : b), undefined);
  if (!best) {
    const rows = look.split('\n').length;
    throw new InputError(from, 'file', 'no-numbers', 'must hold rows of at least two numbers', `${rows} rows of text`);
  }
  if (best.columns > MOST_COLUMNS)
    throw new InputError(from, 'file', 'too-large', `must have at most ${MOST_COLUMNS} columns`, best.columns);
  if (hints.decimal === undefined && undecided(best))
    throw new InputError(
      from,
      'options.decimal',
      'ambiguous',
      "must be '.' or ',': every comma stands before three digits, so it may be a decimal sign or one of thousands",
      best.rows[best.first]!.join(best.separator),
    );
  const { rows, first } = best;
  const above = (row: number): number => {
    let at = row - 1;
    while (at >= 0 && rows[at]!.every((cell) => cell === '')) at -= 1;
    return at;
  };
  const width = best.columns;
  const fits = (row: number): boolean => row >= 0 && rows[row]!.length >= Math.min(width, 2) && rows[row]!.some((cell) => cell !== '');
  let namesRow: number | undefined = above(first);
  let unitsRow: number | undefined;
  if (fits(namesRow) && isUnitsRow(rows[namesRow]!) && fits(above(namesRow)) && rows[above(namesRow)]!.length >= width - 1) {
    unitsRow = namesRow;
    namesRow = above(namesRow);
  }
  if (!fits(namesRow) || rows[namesRow]!.length < width - 1) namesRow = undefined;
  const { separator, decimal, thousands, columns } = best;
  return { separator, decimal, thousands, head: rows.slice(0, first), namesRow, unitsRow, bodyRow: first, columns };
}
