import { cellValue, thousandsIn, type Cell, type CellKind, type DecimalSign, type Separator, type ThousandsSign } from './cells.js';
import { clockTime } from './clockTime.js';
import { isUnitsRow, joinedNames } from './headRows.js';

/** @internal How a table is laid out. */
export interface Layout {
  readonly decimal: DecimalSign;
  /** Sign between groups of three digits; empty for none seen. */
  readonly thousands: ThousandsSign;
  /** Whether a cell proves the decimal sign (`proven`), every mark could be of thousands (`open`), or there is no mark at all (`none`). */
  readonly evidence: 'proven' | 'open' | 'none';
  /** Rows above the numbers. */
  readonly head: readonly (readonly string[])[];
  /** Row of names among them, row of units where there is one. */
  readonly namesRow: number | undefined;
  readonly unitsRow: number | undefined;
  /** First row of numbers, from 0, and rows of numbers as far as was looked. */
  readonly bodyRow: number;
  readonly body: readonly (readonly Cell[])[];
  readonly columns: number;
  readonly kinds: readonly CellKind[];
  /** Cells that are numbers less those that are text. */
  readonly score: number;
}

/** @internal What may be fixed from outside. */
export interface LayoutHints {
  readonly separator?: Separator | undefined;
  readonly decimal?: DecimalSign | undefined;
  readonly thousands?: ThousandsSign | undefined;
}

/** Numeric rows in a run that make a body. */
const RUN = 5;

/** @internal A cell as text: dates as a clock that is read again, nothing as empty. */
export const cellText = (cell: Cell): string =>
  cell === null || cell === undefined
    ? ''
    : cell instanceof Date
      ? Number.isNaN(cell.getTime())
        ? ''
        : cell.toISOString()
      : String(cell).trim();

/** @internal The value of a cell: a number as it is, text by its signs, no number where there is none; undefined for other text and dates. */
export function numberOf(cell: Cell, decimal: DecimalSign, thousands: ThousandsSign | undefined): number | undefined {
  if (typeof cell === 'number') return Number.isFinite(cell) ? cell : NaN;
  if (typeof cell === 'bigint') return Number(cell);
  if (cell === null || cell === undefined) return NaN;
  return typeof cell === 'string' ? cellValue(cell, decimal, thousands) : undefined;
}

/** @internal Clock time of a cell [µs]. */
export const clockOf = (cell: Cell): number | undefined =>
  cell instanceof Date
    ? Number.isNaN(cell.getTime())
      ? undefined
      : cell.getTime() * 1000
    : typeof cell === 'string'
      ? clockTime(cell)
      : undefined;

function kindOf(cell: Cell, decimal: DecimalSign, thousands: ThousandsSign | undefined): CellKind {
  const value = numberOf(cell, decimal, thousands);
  if (value !== undefined) return Number.isNaN(value) ? 'empty' : 'number';
  return clockOf(cell) === undefined ? 'text' : 'clock';
}

interface Run {
  readonly first: number;
  readonly end: number;
  readonly width: number;
}

/** The first run of numeric rows of equal width; text may stand in columns where it stands in the first of them. */
function findRun(kinds: readonly (readonly CellKind[])[]): Run | undefined {
  let best: Run | undefined;
  for (let first = 0; first < kinds.length;) {
    const top = kinds[first]!;
    const numeric = (row: readonly CellKind[]): boolean =>
      row.length === top.length &&
      row.filter((kind) => kind === 'number' || kind === 'clock').length >= 2 &&
      row.every((kind, k) => kind !== 'text' || top[k] === 'text');
    let end = first;
    while (end < kinds.length && numeric(kinds[end]!)) end += 1;
    if (end > first && (!best || end - first > best.end - best.first)) best = { first, end, width: top.length };
    if (end - first >= RUN) return best;
    first = Math.max(end, first + 1);
  }
  return best;
}

/** What the marks in the cells say about the decimal sign. */
function evidenceOf(rows: readonly (readonly Cell[])[], decimal: DecimalSign, quotedComma: boolean): Layout['evidence'] {
  const marked: boolean[] = [];
  const bare: boolean[] = [];
  let open: '.' | ',' | undefined;
  for (const row of rows)
    for (const [k, cell] of row.entries()) {
      if (typeof cell !== 'string' || cellValue(cell, decimal, undefined) === undefined) continue;
      const marks = cell.replace(/[^.,]/g, '');
      if (marks === '' && /\d/.test(cell)) bare[k] = true;
      if (marks === '') continue;
      if (marks.length > 1 || !/^[-+]?[1-9]\d{0,2}[.,]\d{3}$/.test(cell)) return 'proven';
      open = marks as '.' | ',';
      marked[k] = true;
    }
  if (open === undefined) return 'none';
  // a point is the decimal sign where the cells are commas' own, or where every cell of a column has it; beside bare numbers it may be either
  return open === '.' && (quotedComma || !marked.some((one, k) => one && bare[k] === true)) ? 'proven' : 'open';
}

/** @internal Lays out rows of cells read with one decimal sign; undefined where they hold no two numbers in a row. */
export function layoutOf(
  rows: readonly (readonly Cell[])[],
  separator: Separator | undefined,
  decimal: DecimalSign,
  thousands: ThousandsSign | undefined,
): Layout | undefined {
  const kinds = rows.map((row) => row.map((cell) => kindOf(cell, decimal, thousands)));
  const run = findRun(kinds);
  if (!run) return undefined;
  const { end, width } = run;
  const columnKinds = Array.from({ length: width }, (_, k): CellKind => {
    const among = (kind: CellKind): number => kinds.slice(run.first, end).filter((row) => row[k] === kind).length;
    const [numbers, clocks, texts] = [among('number'), among('clock'), among('text')];
    if (numbers + clocks + texts === 0) return 'empty';
    return numbers >= clocks + texts ? 'number' : clocks >= numbers + texts ? 'clock' : 'text';
  });
  // rows above that are spoiled in some cells belong to the body, which lists them
  const isUnits = (row: number): boolean => isUnitsRow(rows[row]!.map(cellText));
  let first = run.first;
  while (first < end - 1 && isUnits(first)) first += 1;
  const numbers = columnKinds.filter((kind) => kind === 'number').length;
  const spoiled = (row: readonly CellKind[]): boolean =>
    row.length === width && 2 * row.filter((kind, k) => kind === 'number' && columnKinds[k] === 'number').length >= Math.max(numbers, 2);
  while (first > 0 && spoiled(kinds[first - 1]!) && !isUnits(first - 1)) first -= 1;
  const head = rows.slice(0, first).map((row) => row.map(cellText));
  const above = (row: number): number => {
    let at = row - 1;
    while (at >= 0 && head[at]!.every((cell) => cell === '')) at -= 1;
    return at;
  };
  const namesIn = (row: number): readonly string[] => {
    const cells = head[row] ?? [];
    if (separator === ' ') return joinedNames(cells, width);
    return cells.length >= width - 1 && cells.length >= Math.min(width, 2) && cells.some((cell) => cell !== '') ? cells : [];
  };
  let namesRow: number | undefined = above(first);
  let unitsRow: number | undefined;
  if (isUnitsRow(namesIn(namesRow)) && namesIn(above(namesRow)).length > 0) {
    unitsRow = namesRow;
    namesRow = above(namesRow);
  }
  if (namesIn(namesRow).length === 0) namesRow = undefined;
  for (const row of [namesRow, unitsRow]) if (row !== undefined) head[row] = [...namesIn(row)];
  const body = rows.slice(first).filter((row) => row.length === width);
  let score = 0;
  let seen: ThousandsSign = '';
  for (const [i, row] of kinds.entries())
    if (i >= first && row.length === width)
      row.forEach((kind, k) => {
        score += kind === 'number' || kind === 'clock' ? 1 : kind === 'text' ? -1 : 0;
        const cell = rows[i]![k];
        if (seen === '' && thousands !== '' && kind === 'number' && typeof cell === 'string') seen = thousandsIn(cell, decimal);
      });
  return {
    decimal,
    thousands: seen,
    evidence: evidenceOf(body, decimal, separator === ','),
    head,
    namesRow,
    unitsRow,
    bodyRow: first,
    body,
    columns: width,
    kinds: columnKinds,
    score,
  };
}
