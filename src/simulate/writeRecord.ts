import {
  InputError,
  requireArray,
  requireColumn,
  requireObject,
  requireOneOf,
  requireOptions,
  requireWhole,
  type ColumnName,
  type PressureColumns,
  type TensionColumns,
} from '../base/index.js';
import { dimensionOf, unitFactor, type Unit } from '../units/index.js';

/** A column that is written. */
export interface WrittenColumn {
  /** Which quantity of the record. */
  readonly quantity: ColumnName;
  /** Its name in the file. */
  readonly name: string;
  /** Its unit in the file. */
  readonly unit: Unit;
  /** Number of decimals. */
  readonly decimals: number;
}

/** How a logger writes. */
export interface WriteOptions {
  /** Separator of cells; default `;`. */
  readonly separator?: ';' | ',' | '\t' | undefined;
  /** Decimal sign; default `,`. */
  readonly decimal?: '.' | ',' | undefined;
  /** Name and unit of each column that is written, in this order. */
  readonly columns: readonly WrittenColumn[];
  /** Lines above the columns. */
  readonly preamble?: readonly string[] | undefined;
}

const own: Readonly<Record<ColumnName, Unit>> = {
  force: 'N',
  pressure: 'MPa',
  extension: 'mm',
  travel: 'mm',
  strain: '1',
  transverseStrain: '1',
  time: 's',
};

/**
 * A record as the text that a logger would write: names, units, rows.
 *
 * @remarks
 * For demonstrations and tests of readers. Missing values (an extensometer taken off) are empty cells. Say in the preamble that the data
 * are invented.
 *
 * @param record - Columns in N or MPa, mm, s and ratios.
 * @param options - Separator, decimal sign, columns with names, units and decimals, lines above.
 * @returns Text with line feeds.
 * @throws {@link InputError} `missing` for a column that is not there; `unknown-unit`, `unknown-option`, `out-of-range`.
 *
 * @example
 * ```ts
 * writeRecord({ force: [1200], travel: [0.5] }, { columns: [{ quantity: 'force', name: 'Kraft', unit: 'kN', decimals: 2 }] }); // => 'Kraft\nkN\n1,20\n'
 * ```
 *
 * @see Common practice of data loggers. Checked in `test/simulate/simulateTension.test.ts`.
 */
export function writeRecord(record: TensionColumns | PressureColumns, options: WriteOptions): string {
  const from = 'writeRecord';
  requireObject(from, 'record', record);
  requireOptions(from, options, ['separator', 'decimal', 'columns', 'preamble']);
  const separator = requireOneOf(from, 'options.separator', options.separator ?? ';', [';', ',', '\t']);
  const decimal = requireOneOf(from, 'options.decimal', options.decimal ?? ',', ['.', ',']);
  if (separator === decimal)
    throw new InputError(from, 'options.separator', 'out-of-range', 'must differ from the decimal sign', separator);
  for (const name of Object.keys(own) as ColumnName[]) {
    const column = (record as Partial<Record<ColumnName, ArrayLike<number>>>)[name];
    if (column !== undefined) requireColumn(from, `record.${name}`, column, { least: 0, endsEarly: true });
  }
  const columns = requireArray(from, 'options.columns', options.columns).map((written, k) => {
    const { quantity, unit, decimals } = requireObject(from, `options.columns[${k}]`, written) as WrittenColumn;
    requireWhole(from, `options.columns[${k}].decimals`, decimals, 0, 20);
    const column = (record as Partial<Record<ColumnName, ArrayLike<number>>>)[quantity];
    if (!column) throw new InputError(from, `options.columns[${k}]`, 'missing', 'must name a column of the record', quantity);
    if (dimensionOf(unit) !== dimensionOf(own[quantity]))
      throw new InputError(from, `options.columns[${k}].unit`, 'unknown-unit', `must be a unit of ${quantity}`, unit);
    const factor = unitFactor(own[quantity], unit);
    return { column, cell: (value: number) => (Number.isNaN(value) ? '' : (value * factor).toFixed(decimals).replace('.', decimal)) };
  });
  const rows = Array.from({ length: columns[0]?.column.length ?? 0 }, (_, i) =>
    columns.map(({ column, cell }) => cell(column[i]!)).join(separator),
  );
  const names = options.columns.map(({ name }) => name).join(separator);
  const units = options.columns.map(({ unit }) => unit).join(separator);
  return `${[...requireArray(from, 'options.preamble', options.preamble ?? []), names, units, ...rows].join('\n')}\n`;
}
