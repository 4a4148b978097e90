import { InputError, requireObject, requireOneOf, requireOptions } from '../../base/index.js';
import type { DecimalSign, Separator } from './cells.js';
import { ownUnits } from './readOptions.js';

/** A column that is written: numbers, or text. */
export type ExportColumn = ArrayLike<number> | readonly string[];

/** How {@link exportCsv} writes. */
export interface ExportOptions {
  /** Unit of each column, as the second row; default those of the package, and none for text and for names it does not know; where no column has one there is no such row. */
  readonly units?: Readonly<Record<string, string>> | undefined;
  /** Where the numbers are from, as lines above the columns: name and value. */
  readonly provenance?: Readonly<Record<string, string | number>> | undefined;
  /** Separator of cells; default `;`. */
  readonly separator?: Exclude<Separator, ' '> | undefined;
  /** Decimal sign; default `.`. */
  readonly decimal?: DecimalSign | undefined;
}

const defaultUnits: Readonly<Record<string, string>> = { ...ownUnits, strain: '1', stress: 'MPa', energy: 'N·mm' };

/** Spreadsheets take a text that begins so for a formula. */
const FORMULA = /^[=+\-@\t\r]/;

/** A text cell: never a formula, quoted where it must be. */
function textCell(text: string, separator: string): string {
  const safe = FORMULA.test(text) ? `'${text}` : text;
  return safe.includes(separator) || /["\n\r]/.test(safe) || safe !== safe.trim() ? `"${safe.replaceAll('"', '""')}"` : safe;
}

/**
 * Columns as delimited text: a record, a curve, or any columns of numbers and text.
 *
 * @remarks
 * Above the columns stand the lines of provenance, the names and, where a column has one, the units. Numbers are written with as many digits as give the same
 * number again, to the last bit; what is not known (NaN) is an empty cell. Text that a spreadsheet would take for a formula (it begins
 * with `=`, `+`, `-`, `@`, a tab or a carriage return) gets an apostrophe in front. {@link readRecord} reads the columns of a record
 * back as they were.
 *
 * @param columns - Columns of equal lengths by their names; columns that are undefined are left out, those named after quantities
 * (`force`, `time`, `stress`...) hold numbers.
 * @param options - Units, lines above, separator, decimal sign.
 * @returns Text with line feeds.
 * @throws {@link InputError} `missing`, `wrong-type`, `unequal-lengths`, `not-finite` for an infinite number, `unknown-option`, `out-of-range`.
 *
 * @example
 * ```ts
 * exportCsv({ force: [0, 1.5], travel: [0, 0.25] }); // => 'force;travel\nN;mm\n0;0\n1.5;0.25\n'
 * ```
 *
 * @see Common practice against formulas in delimited text. Checked in `test/record/exportCsv.test.ts`.
 */
export function exportCsv(columns: Readonly<Record<string, ExportColumn | undefined>> | object, options: ExportOptions = {}): string {
  const from = 'exportCsv';
  requireObject(from, 'columns', columns);
  requireOptions(from, options, ['units', 'provenance', 'separator', 'decimal']);
  const separator = requireOneOf(from, 'options.separator', options.separator ?? ';', [';', ',', '\t', '|']);
  const decimal = requireOneOf(from, 'options.decimal', options.decimal ?? '.', ['.', ',']);
  if (separator === decimal)
    throw new InputError(from, 'options.separator', 'out-of-range', 'must differ from the decimal sign', separator);
  const given = Object.entries(columns as Record<string, ExportColumn | undefined>).filter(([, column]) => column !== undefined) as [
    string,
    ExportColumn,
  ][];
  if (given.length === 0) throw new InputError(from, 'columns', 'missing', 'must hold at least one column', undefined);
  const names = given.map(([name]) => name);
  requireOptions(from, options.units ?? {}, names, 'options.units');
  requireObject(from, 'options.provenance', options.provenance ?? {});
  const cellOf = (name: string, column: ExportColumn, i: number): string => {
    const value = column[i];
    const isQuantity = Object.hasOwn(defaultUnits, name);
    if (typeof value === 'string' && !isQuantity) return textCell(value, separator);
    if (typeof value !== 'number')
      throw new InputError(
        from,
        `columns.${name}[${i}]`,
        'wrong-type',
        isQuantity ? 'must be a number' : 'must be a number or text',
        value,
      );
    if (Number.isNaN(value)) return '';
    if (!Number.isFinite(value)) throw new InputError(from, `columns.${name}[${i}]`, 'not-finite', 'must be finite', value);
    const text = Object.is(value, -0) ? '-0' : String(value);
    return decimal === '.' ? text : text.replace('.', ',');
  };
  for (const [name, column] of given) {
    if (typeof column !== 'object' || typeof (column as Partial<ExportColumn> | null)?.length !== 'number')
      throw new InputError(from, `columns.${name}`, 'wrong-type', 'must be an array of numbers or of text', column);
  }
  const length = given[0]![1].length;
  for (const [name, column] of given)
    if (column.length !== length)
      throw new InputError(from, `columns.${name}`, 'unequal-lengths', `must have ${length} samples like the other columns`, column.length);
  const units = names.map((name) => options.units?.[name] ?? (Object.hasOwn(defaultUnits, name) ? defaultUnits[name]! : ''));
  const rows = Array.from({ length }, (_, i) => given.map(([name, column]) => cellOf(name, column, i)).join(separator));
  const texts = (cells: readonly (string | number)[]): string => cells.map((cell) => textCell(String(cell), separator)).join(separator);
  const above = Object.entries(options.provenance ?? {}).map(([name, value]) => texts([name, value]));
  return `${[...above, texts(names), ...(units.some(Boolean) ? [texts(units)] : []), ...rows].join('\n')}\n`;
}
