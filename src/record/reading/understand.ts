import { InputError, type ColumnName } from '../../base/index.js';
import { unitFactor } from '../../units/index.js';
import { assignColumns, type SpareColumn } from './assignColumns.js';
import { cellText, numberOf, type Layout } from './layout.js';
import { isDate, type Cell } from './cells.js';
import type { NamedColumn } from './columnNames.js';
import { namedColumns } from './namedColumns.js';
import type { ReadColumn, ReadOptions } from './reading.js';
import { ownUnits, unitOf } from './readOptions.js';
import { suggestColumns } from './suggestColumns.js';

/** @internal A column that is read, and what it is read for: a quantity, one of two rivals, the check of them, or the twin of one that serves. */
export interface WantedColumn extends ReadColumn {
  readonly role: 'serves' | 'rival' | 'check' | 'twin';
}

/** @internal What is to be read of a table. */
export interface Understanding {
  readonly layout: Layout;
  /** Columns to read, by place. */
  readonly wanted: readonly WantedColumn[];
  readonly ignored: readonly SpareColumn[];
}

/** A column whose cells are no numbers cannot serve, least of all where a spreadsheet made dates of them. */
function requireNumbers(from: string, layout: Layout, quantity: ColumnName, column: NamedColumn): void {
  if (column.kind === 'number' || (column.kind === 'clock' && quantity === 'time')) return;
  const at = layout.body.findIndex((row) => numberOf(row[column.index], layout.decimal, undefined) === undefined);
  const cell = at < 0 ? '' : cellText(layout.body[at]![column.index]);
  throw new InputError(
    from,
    `options.columns.${quantity}`,
    column.kind === 'empty' ? 'empty' : 'not-finite',
    `must name a column of numbers: '${column.heading}' ${column.kind === 'empty' ? 'is empty' : `holds ${isDate(cell) ? 'dates, as spreadsheets make of numbers' : 'other text'}`}`,
    cell,
  );
}

/** @internal Says which columns of a table serve for what, and with which units, or refuses with the option that decides; `whole` where the layout holds all rows. */
export function understand(from: string, layout: Layout, options: ReadOptions, whole: boolean): Understanding {
  const columns = namedColumns(layout);
  const numberIn = (row: readonly Cell[], { index }: NamedColumn): number | undefined => numberOf(row[index], layout.decimal, undefined);
  const alike = (a: NamedColumn, b: NamedColumn): boolean =>
    a.unit === b.unit && layout.body.every((row) => Object.is(numberIn(row, a), numberIn(row, b)));
  const { used, rivals, check, twins, ignored } = assignColumns(from, columns, options.columns ?? {}, options.length !== undefined, alike);
  const names = columns.filter(({ name }) => name !== '').map(({ name }) => `'${name}'`);
  const known = names.length > 0 ? names.join(', ') : `${columns.length} columns without names`;
  const spoiled = ignored.find(({ column }) => column.kind === 'text' && layout.body.some((row) => isDate(cellText(row[column.index]))));
  const missing = (quantity: ColumnName, what: string, taken: readonly NamedColumn[] = []): never => {
    const perhaps = suggestColumns(layout, columns, whole, taken);
    const places = perhaps === '' ? '' : `; by place: ${perhaps}`;
    const damage = spoiled ? `; '${spoiled.column.heading}' holds dates, as spreadsheets make of numbers` : '';
    const rule = `must name a column of ${what} (the file has ${known}${places}${damage})`;
    throw new InputError(from, `options.columns.${quantity}`, 'missing', rule, undefined, 'none');
  };
  if (!used.has('force') && !used.has('pressure')) missing('force', 'force or pressure');
  if (options.motion !== false && !used.has('extension') && !used.has('strain') && !used.has('travel') && rivals.length === 0)
    missing('travel', 'extension, strain or travel', [...used.values()]);
  const asWanted = (quantity: ColumnName, column: NamedColumn, role: WantedColumn['role']): WantedColumn => {
    requireNumbers(from, layout, quantity, column);
    const numbers = layout.body.map((row) => Math.abs(numberOf(row[column.index], layout.decimal, undefined) ?? 0) || 0);
    const largest = numbers.length === 0 ? undefined : numbers.reduce((a, b) => Math.max(a, b), 0);
    const { unit, unitFrom } = unitOf(
      from,
      quantity,
      column,
      options,
      largest === undefined ? undefined : { value: largest, ...(whole ? {} : { rows: numbers.length }) },
    );
    const { name, index, kind } = column;
    return {
      quantity,
      name,
      index,
      unit,
      unitFrom,
      factor: unitFactor(unit, ownUnits[quantity]),
      role,
      ...(kind === 'clock' ? { clock: true } : {}),
    };
  };
  const wanted = [
    ...[...used].map(([quantity, column]) => asWanted(quantity, column, 'serves')),
    ...rivals.map((column) => asWanted('extension', column, 'rival')),
    ...(check ? [asWanted('strain', check, 'check')] : []),
    ...twins.map(({ quantity, column }) => asWanted(quantity, column, 'twin')),
  ].sort((a, b) => a.index - b.index);
  return { layout, wanted, ignored };
}
