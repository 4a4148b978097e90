import { finding, InputError, shownList, type Finding } from '../../base/index.js';
import { secondsFromFirst } from './clockTime.js';
import { joinColumns, lineOf, type ColumnStore, type OddRow } from './columnStore.js';
import { metadataOf } from './metadata.js';
import { severalTests } from '../survey/segments.js';
import type { ReadColumn, Reading, ReadOptions, ReadResult } from './reading.js';
import { tellApart } from './tellApart.js';
import type { Understanding, WantedColumn } from './understand.js';
import { requireNoDates, usableRows } from './usableRows.js';

interface Filled extends WantedColumn {
  readonly column: Float64Array;
}

/** A column without its helping fields. */
const asRead = ({ quantity, name, index, unit, unitFrom, factor, clock }: WantedColumn): ReadColumn => ({
  quantity,
  name,
  index,
  unit,
  unitFrom,
  factor,
  ...(clock === true ? { clock } : {}),
});

/** Numbers in the units of the package, in place. */
function scale(from: string, { column, factor, name, clock }: Filled, line: (row: number) => number): void {
  if (clock === true) secondsFromFirst(column);
  else
    for (let i = 0; i < column.length; i += 1) {
      const value = column[i]! * factor;
      if (value === Infinity || value === -Infinity)
        throw new InputError(
          from,
          `line ${line(i)}`,
          'not-finite',
          `must hold a number for '${name}' that is finite in its own unit`,
          column[i],
        );
      column[i] = value;
    }
}

/** Of two displacements beside a strain, the extension by the length; the other is the travel. */
function assign(from: string, filled: readonly Filled[], options: ReadOptions): Filled[] {
  const serving = filled.filter(({ role }) => role === 'serves');
  const check = filled.find(({ role }) => role === 'check');
  if (!check || options.length === undefined) return serving;
  const rivals = filled.filter(({ role }) => role === 'rival');
  const possible = rivals.length > 0 ? rivals : serving.filter(({ quantity }) => quantity === 'extension');
  const extension = tellApart(from, possible, check, options.length);
  return [...serving, ...rivals.map((one): Filled => ({ ...one, quantity: one === extension ? 'extension' : 'travel' }))].sort(
    (a, b) => a.index - b.index,
  );
}

/** Columns that begin alike must be so to the end, or nobody knows which serves; returns those that are not needed. */
function requireTwins(from: string, filled: readonly Filled[], line: (row: number) => number): Reading['ignored'] {
  return filled
    .filter(({ role }) => role === 'twin')
    .map((twin) => {
      const first = filled.find(({ role, quantity }) => role === 'serves' && quantity === twin.quantity)!;
      const apart = twin.column.findIndex((value, i) => !Object.is(value, first.column[i]));
      if (apart >= 0)
        throw new InputError(
          from,
          `options.columns.${twin.quantity}`,
          'ambiguous',
          `must name one of the columns '${first.name}' (place ${first.index}), '${twin.name}' (place ${twin.index}), which differ on line ${line(apart)}`,
          [first.name, twin.name],
          shownList([first.name, twin.name]),
        );
      return { name: twin.name, index: twin.index, why: `it equals column ${first.index} in every row` };
    });
}

/** Rows before which the names of the columns, or their units, stand again. */
function headingsOf({ odd }: ColumnStore, { layout, wanted }: Understanding): number[] {
  const heads = [layout.namesRow, layout.unitsRow].flatMap((row) =>
    row === undefined ? [] : wanted.map(({ index }) => layout.head[row]![index] ?? ''),
  );
  const again = ({ text = '' }: OddRow): boolean => text !== '' && heads.some((head) => head === text || head.startsWith(`${text} `));
  return [...new Set(odd.filter(again).map(({ row }) => row))];
}

/** @internal The result of reading: units, holes, rows that are left out. */
export function finishReading(
  from: string,
  store: ColumnStore,
  understanding: Understanding,
  options: ReadOptions,
  text: Pick<Reading, 'encoding' | 'separator' | 'decimal'>,
  cut?: { readonly line: number; readonly text: string },
): ReadResult {
  const { layout, wanted, ignored } = understanding;
  requireNoDates(from, store.odd, options);
  const { odd, thousands } = store;
  const columns = joinColumns(store);
  const line = (row: number): number => lineOf(store, row);
  const filled = wanted.map((one, k): Filled => ({ ...one, column: columns[k]! }));
  for (const one of filled) scale(from, one, line);
  const used = assign(from, filled, options);
  const twins = requireTwins(from, filled, line);
  const { keep, rows, leftOut } = usableRows(from, used, columns[0]!.length, line, options, cut?.line);
  if (rows < 2) throw new InputError(from, store.path, 'too-few', 'must hold at least 2 rows of numbers', rows);
  const record: object = Object.fromEntries(
    used.map(({ quantity, column }) => [quantity, rows === keep.length ? column : column.filter((_, i) => keep[i] === 1)]),
  );
  const kept = record as ReadResult['record'];
  const load = 'pressure' in kept ? kept.pressure : kept.force;
  const headings = headingsOf(store, understanding).map((row) => keep.subarray(0, row).reduce((sum, one) => sum + one, 0));
  const findings: Finding[] = [
    ...(cut ? [finding('file-cut-off', { line: cut.line, text: cut.text.trim().slice(-40) })] : []),
    // what the record itself shows, its own checks find
    ...(headings.length > 0 && severalTests(load, kept.time).length === 0 ? severalTests(load, kept.time, headings) : []),
  ];
  return {
    record: kept,
    metadata: metadataOf(layout),
    reading: {
      ...text,
      thousands,
      columns: used.map(asRead),
      ignored: [...ignored.map(({ column: { name, index }, why }) => ({ name, index, why })), ...twins],
      rows,
      headings,
      leftOut: [...odd.map(({ line, why }) => ({ line, why })), ...leftOut].sort((a, b) => a.line - b.line),
    },
    findings,
  };
}
