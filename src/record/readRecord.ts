import { InputError, type ColumnName } from '../base/index.js';
import { parseUnit, unitFactor } from '../units/index.js';
import { assignColumns, SERVES, splitName, type NamedColumn } from './columnNames.js';
import { decodeText } from './decodeText.js';
import { findLayout, type Layout } from './layout.js';
import { metadataOf } from './metadata.js';
import type { ReadColumn, ReadOptions, ReadResult } from './reading.js';
import { ownUnits, requireReadOptions, unitOf } from './readOptions.js';
import { scanBody } from './scanBody.js';
import { confirmLength, usableRows } from './usableRows.js';

const FROM = 'readRecord';
/** Columns of the file with their names and units. */
function namedColumns(layout: Layout): NamedColumn[] {
  const names = layout.namesRow === undefined ? [] : layout.head[layout.namesRow]!;
  const units = layout.unitsRow === undefined ? undefined : layout.head[layout.unitsRow]!;
  return Array.from({ length: layout.columns }, (_, index) => {
    const cell = (names[index] ?? '').trim();
    const below = units?.[index]?.replace(/^[[({]|[\])}]$/g, '').trim();
    const split = below ? { name: cell, unit: below } : splitName(cell);
    const parsed = split.unit === undefined ? undefined : parseUnit(split.unit);
    return { index, name: split.name, unit: parsed?.unit, dimension: parsed?.dimension, blankUnit: units !== undefined && below === '' };
  });
}

/** The columns that the options name. */
function chosenColumns(columns: readonly NamedColumn[], options: ReadOptions): Map<ColumnName, NamedColumn> {
  const chosen = new Map<ColumnName, NamedColumn>();
  for (const [quantity, wanted] of Object.entries(options.columns ?? {}) as [ColumnName, string | number | undefined][]) {
    if (wanted === undefined) continue;
    const column = columns.find(({ name, index }) => (typeof wanted === 'number' ? index === wanted : name === wanted));
    if (!column)
      throw new InputError(
        FROM,
        `options.columns.${quantity}`,
        'out-of-range',
        `must name a column (${columns.map(({ name }) => `'${name}'`).join(', ')})`,
        wanted,
      );
    chosen.set(quantity, column);
  }
  return chosen;
}

/**
 * Reads a delimited text file as loggers write them.
 *
 * @remarks
 * Found from the text: encoding, separator, decimal sign, the lines above, the row of names and the row of units (or units in the
 * names), and which column is which, by English, German, French and Spanish names. A qualified name (machine, crosshead, extensometer)
 * decides. What cannot be decided is an error that lists the candidates and names the option; nothing is guessed. `reading` tells what was
 * understood. No cell is ever evaluated.
 *
 * Where extension or strain ends before the file does, the extensometer was taken off: the rest of that column is NaN. Rows without a
 * load are left out and listed.
 *
 * @param file - Text, or the bytes of a file (UTF-8, UTF-16 or Latin-1, at most 512 MB).
 * @param options - What decides where the file does not.
 * @returns The columns in N (or MPa of pressure), mm, s and ratios; the lines above by name; what was understood.
 * @throws {@link InputError} `empty`, `not-text`, `no-numbers`, `too-few`, `missing`, `ambiguous`, `unknown-unit`, `unknown-option`,
 * `not-finite`, `out-of-range`, `too-large`.
 *
 * @example
 * ```ts
 * const file = 'Zeit;Weg;Kraft\ns;mm;kN\n0;0,00;0,0\n1;0,05;1,1\n2;0,10;2,3\n3;0,15;3,4\n4;0,20;4,6\n';
 * readRecord(file).record.travel; // => [0, 0.05, 0.1, 0.15, 0.2]
 * readRecord(file).reading.decimal; // => ','
 * ```
 *
 * @see Common practice of data loggers. Checked in `test/record/record.test.ts`.
 */
export function readRecord(file: string | Uint8Array | ArrayBuffer, options: ReadOptions = {}): ReadResult {
  requireReadOptions(options);
  if (typeof file !== 'string' && !(file instanceof Uint8Array) && !(file instanceof ArrayBuffer))
    throw new InputError(FROM, 'file', 'wrong-type', 'must be text or bytes', file);
  const { text, encoding } = decodeText(file, options.encoding);
  const layout = findLayout(text, options);
  const columns = namedColumns(layout);
  const { used, ignored } = assignColumns(columns, chosenColumns(columns, options));
  const load: ColumnName = used.has('force') ? 'force' : 'pressure';
  const known = `the file has ${columns.map(({ name }) => `'${name}'`).join(', ')}`;
  if (!used.has(load))
    throw new InputError(FROM, 'options.columns.force', 'missing', `must name a column of force or pressure (${known})`, undefined);
  if (!used.has('extension') && !used.has('strain') && !used.has('travel'))
    throw new InputError(
      FROM,
      'options.columns.travel',
      'missing',
      `must name a column of extension, strain or travel (${known})`,
      undefined,
    );
  const inOrder = [...used].sort(([, a], [, b]) => a.index - b.index);
  const read = inOrder.map(([quantity, column]): ReadColumn => {
    const unit = unitOf(quantity, column, options);
    return { quantity, name: column.name, index: column.index, unit, factor: unitFactor(unit, ownUnits[quantity]) };
  });
  const { separator, decimal, thousands } = layout;
  const format = { separator, decimal, thousands, firstLine: layout.bodyRow };
  const body = scanBody(text, { ...format, wanted: read.map(({ index }) => index) });
  const spare = ignored.find(({ column, why }) => why === SERVES && column.dimension !== 'length');
  if (spare && options.length !== undefined) confirmLength(text, format, used, spare.column, options);
  const { keep, leftOut } = usableRows(
    body,
    read.map(({ quantity }) => quantity),
    options,
  );
  const rows = keep.reduce((sum, one) => sum + one, 0);
  if (rows < 2) throw new InputError(FROM, 'file', 'too-few', 'must hold at least 2 rows of numbers', rows);
  const whole = rows === keep.length;
  const columnsRead: object = Object.fromEntries(
    read.map(({ quantity, factor }, k) => {
      const column = body.columns[k]!;
      const kept = whole ? column : column.filter((_, i) => keep[i] === 1);
      for (let i = 0; i < rows; i += 1) kept[i]! *= factor;
      return [quantity, kept];
    }),
  );
  return {
    record: columnsRead as ReadResult['record'],
    metadata: metadataOf(layout),
    reading: {
      encoding,
      separator,
      decimal,
      thousands,
      columns: read,
      ignored: ignored.map(({ column, why }) => ({ name: column.name, index: column.index, why })),
      rows,
      leftOut: [...body.odd, ...leftOut].sort((a, b) => a.line - b.line),
    },
  };
}
