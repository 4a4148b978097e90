import {
  InputError,
  requireBoolean,
  requireOneOf,
  requireOptions,
  requirePositive,
  requireWhole,
  type ColumnName,
} from '../../base/index.js';
import { dimensionOf, unitNames, type Unit } from '../../units/index.js';
import { dimensions, isCounts, type NamedColumn } from './columnNames.js';
import type { ReadOptions } from './reading.js';

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
const optionNames = [
  'separator',
  'decimal',
  'thousands',
  'encoding',
  'columns',
  'units',
  'fallbackUnits',
  'length',
  'motion',
  'leaveOutHoles',
];

/** @internal Checks the options before anything is read. */
export function requireReadOptions(from: string, options: ReadOptions): void {
  requireOptions(from, options, optionNames);
  if (options.separator !== undefined) requireOneOf(from, 'options.separator', options.separator, [';', ',', '\t', '|', ' ']);
  if (options.decimal !== undefined) requireOneOf(from, 'options.decimal', options.decimal, ['.', ',']);
  if (options.thousands !== undefined) requireOneOf(from, 'options.thousands', options.thousands, ['', ' ', "'", '.', ',']);
  if (options.decimal !== undefined && options.decimal === options.thousands)
    throw new InputError(from, 'options.thousands', 'out-of-range', 'must differ from the decimal sign', options.thousands);
  if (options.encoding !== undefined)
    requireOneOf(from, 'options.encoding', options.encoding, ['utf-8', 'utf-16le', 'utf-16be', 'windows-1252']);
  if (options.length !== undefined) requirePositive(from, 'options.length', options.length);
  if (options.motion !== undefined) requireBoolean(from, 'options.motion', options.motion);
  if (options.leaveOutHoles !== undefined) requireBoolean(from, 'options.leaveOutHoles', options.leaveOutHoles);
  requireOptions(from, options.columns ?? {}, quantities, 'options.columns');
  for (const [quantity, place] of Object.entries<unknown>(options.columns ?? {}))
    if (place !== undefined && typeof place !== 'string') requireWhole(from, `options.columns.${quantity}`, place, 0);
  for (const name of ['units', 'fallbackUnits'] as const) {
    requireOptions(from, options[name] ?? {}, quantities, `options.${name}`);
    for (const quantity of quantities) {
      const unit = options[name]?.[quantity];
      if (unit !== undefined && dimensionOf(unit) !== dimensions[quantity])
        throw new InputError(
          from,
          `options.${name}.${quantity}`,
          'unknown-unit',
          `must be a unit of ${dimensions[quantity]} (${unitNames(dimensions[quantity])})`,
          unit,
        );
    }
  }
}

/** @internal Checks the options of reading rows, before anything is read. */
export function requireRowsOptions(from: string, options: ReadOptions): void {
  requireReadOptions(from, options);
  for (const name of ['separator', 'encoding'] as const)
    if (options[name] !== undefined)
      throw new InputError(from, `options.${name}`, 'unknown-option', 'has no meaning for rows', options[name]);
}

/** @internal Unit of a used column, and where it is from; strain in a file with a units row may have none. */
export function unitOf(
  from: string,
  quantity: ColumnName,
  column: NamedColumn,
  options: ReadOptions,
  largest: { readonly value: number; readonly rows?: number } | undefined,
): { readonly unit: Unit; readonly unitFrom: 'file' | 'options' } {
  const given = options.units?.[quantity];
  if (column.kind === 'clock') return { unit: 's', unitFrom: 'file' };
  if (given !== undefined) return { unit: given, unitFrom: 'options' };
  const dimension = dimensions[quantity];
  if (column.unit !== undefined && column.dimension === dimension) return { unit: column.unit, unitFrom: 'file' };
  const fallback = options.fallbackUnits?.[quantity];
  if (column.unit === undefined && fallback !== undefined) return { unit: fallback, unitFrom: 'options' };
  if (column.unit === undefined && column.blankUnit && dimension === 'strain') return { unit: '1', unitFrom: 'file' };
  const own = ownUnits[quantity];
  const why = isCounts(column.heading)
    ? `the column '${column.heading}' holds raw readings, which need a calibration (read them as '${own}', then applyCalibration)`
    : column.unit !== undefined
      ? `the column '${column.heading}' has '${column.unit}'`
      : `the column '${column.heading}' has none that is known${largest === undefined ? '' : ` (its ${largest.rows === undefined ? 'numbers' : `first ${largest.rows} numbers`} go up to ${largest.value})`}`;
  throw new InputError(
    from,
    `options.units.${quantity}`,
    column.unit === undefined ? 'missing' : 'unknown-unit',
    `must name a unit of ${dimension} (${unitNames(dimension)}): ${why}`,
    column.heading,
  );
}
