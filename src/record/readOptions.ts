import { InputError, requireOneOf, requireOptions, requirePositive, type ColumnName } from '../base/index.js';
import { dimensionOf, type Unit } from '../units/index.js';
import { dimensions, type NamedColumn } from './columnNames.js';
import type { ReadOptions } from './reading.js';

const FROM = 'readRecord';
/** @internal Unit that each quantity is turned into. */
export const ownUnits: Readonly<Record<ColumnName, Unit>> = {
  force: 'N',
  pressure: 'MPa',
  extension: 'mm',
  travel: 'mm',
  strain: '1',
  transverseStrain: '1',
  time: 's',
};
const quantities = Object.keys(ownUnits) as ColumnName[];
const optionNames = ['separator', 'decimal', 'encoding', 'columns', 'units', 'length', 'leaveOutHoles'];

/** @internal Checks the options before anything is read. */
export function requireReadOptions(options: ReadOptions): void {
  requireOptions(FROM, options, optionNames);
  if (options.separator !== undefined) requireOneOf(FROM, 'options.separator', options.separator, [';', ',', '\t', '|', ' ']);
  if (options.decimal !== undefined) requireOneOf(FROM, 'options.decimal', options.decimal, ['.', ',']);
  if (options.encoding !== undefined)
    requireOneOf(FROM, 'options.encoding', options.encoding, ['utf-8', 'utf-16le', 'utf-16be', 'windows-1252']);
  if (options.length !== undefined) requirePositive(FROM, 'options.length', options.length);
  requireOptions(FROM, options.columns ?? {}, quantities, 'options.columns');
  requireOptions(FROM, options.units ?? {}, quantities, 'options.units');
  for (const quantity of quantities) {
    const unit = options.units?.[quantity];
    if (unit !== undefined && dimensionOf(unit) !== dimensions[quantity])
      throw new InputError(FROM, `options.units.${quantity}`, 'unknown-unit', `must be a unit of ${dimensions[quantity]}`, unit);
  }
}

/** @internal Unit of a used column; strain in a file with a units row may have none. */
export function unitOf(quantity: ColumnName, column: NamedColumn, options: ReadOptions): Unit {
  const given = options.units?.[quantity];
  if (given !== undefined) return given;
  if (column.unit !== undefined && column.dimension === dimensions[quantity]) return column.unit;
  if (column.unit === undefined && column.blankUnit && dimensions[quantity] === 'strain') return '1';
  throw new InputError(
    FROM,
    `options.units.${quantity}`,
    column.unit === undefined ? 'missing' : 'unknown-unit',
    `must name a unit of ${dimensions[quantity]}: the column '${column.name}' ${column.unit === undefined ? 'has none that is known' : `has '${column.unit}'`}`,
    given,
  );
}
