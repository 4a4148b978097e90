import { requireObject, type ColumnName } from '../../base/index.js';
import type { ReadColumn, Reading, ReadOptions } from './reading.js';

/**
 * Turns what was understood of one file into the options that read the next one the same way.
 *
 * @remarks
 * Separator, decimal sign and the sign between groups of digits, where one was seen; columns by their names, so that another order
 * does not matter, and by their places where they have no name or share it. Units that were given go on being given; units that the file named are
 * kept as `fallbackUnits`: a file of the same logger that names another unit is read by its own. The encoding is found anew, because
 * a file of plain letters does not tell it. Length, `motion` and `leaveOutHoles` are about a test and not about a layout: give them again.
 *
 * @param reading - `reading` of a result of {@link readRecord}, {@link readChunks} or {@link readRows}.
 * @returns Options for the next file.
 * @throws {@link InputError} `missing`, `wrong-type` where `reading` is no object.
 *
 * @example
 * ```ts
 * const first = readRecord('Zeit;Weg;Kraft\ns;mm;kN\n0;0,00;0,5\n1;0,05;1,1\n');
 * const next = readRecord('Kraft;Zeit;Weg\n0,5;0;0,00\n1,1;1;0,05\n', readingOptions(first.reading));
 * next.record.travel; // => [0, 0.05]
 * ```
 *
 * @see Checked in `test/record/readingOptions.test.ts`.
 */
export function readingOptions(reading: Reading): ReadOptions {
  requireObject('readingOptions', 'reading', reading);
  const names = [...reading.columns, ...reading.ignored].map(({ name }) => name);
  const placeOf = ({ name, index }: ReadColumn): string | number =>
    name === '' || names.indexOf(name) !== names.lastIndexOf(name) ? index : name;
  const units = (from: ReadColumn['unitFrom']): Partial<Record<ColumnName, ReadColumn['unit']>> =>
    Object.fromEntries(reading.columns.filter(({ unitFrom }) => unitFrom === from).map(({ quantity, unit }) => [quantity, unit]));
  return {
    ...(reading.separator === undefined ? {} : { separator: reading.separator }),
    decimal: reading.decimal,
    ...(reading.thousands === '' ? {} : { thousands: reading.thousands }),
    columns: Object.fromEntries(reading.columns.map((column) => [column.quantity, placeOf(column)])),
    units: units('options'),
    fallbackUnits: units('file'),
  };
}
