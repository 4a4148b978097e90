import {
  InputError,
  requireOneOf,
  requireOptions,
  requirePositive,
  type ColumnName,
  type PressureRecord,
  type TensionRecord,
} from '../base/index.js';
import { dimensionOf, parseUnit, unitFactor, type Unit } from '../units/index.js';
import type { DecimalSign, Separator } from './cells.js';
import { assignColumns, dimensions, SERVES, splitName, type NamedColumn } from './columnNames.js';
import { decodeText, type TextEncoding } from './decodeText.js';
import { findLayout, type Layout } from './layout.js';
import { scanBody, type BodyFormat, type ScannedBody } from './scanBody.js';

/** Options of {@link readRecord}: what decides where the file does not. */
export interface ReadOptions {
  /** Separator of cells. */
  readonly separator?: Separator | undefined;
  /** Decimal sign. */
  readonly decimal?: DecimalSign | undefined;
  /** Encoding of bytes. */
  readonly encoding?: TextEncoding | undefined;
  /** Which column serves for a quantity: its name in the file, or its place from 0. */
  readonly columns?: Partial<Record<ColumnName, string | number>> | undefined;
  /** Unit of a quantity, where the file names none or a wrong one. */
  readonly units?: Partial<Record<ColumnName, Unit>> | undefined;
  /** Length that strain is counted over [mm]; where extension and strain are both there, they are checked against each other. */
  readonly length?: number | undefined;
  /** Leave out rows with a hole in extension or strain; default they are an error. */
  readonly leaveOutHoles?: boolean | undefined;
}

/** How one column was read. */
export interface ReadColumn {
  /** What it serves for. */
  readonly quantity: ColumnName;
  /** Its name in the file. */
  readonly name: string;
  /** Its place in the file, from 0. */
  readonly index: number;
  /** Its unit in the file. */
  readonly unit: Unit;
  /** What its numbers were multiplied by. */
  readonly factor: number;
}

/** A column not in use. */
export interface IgnoredColumn {
  /** Its name in the file. */
  readonly name: string;
  /** Its place in the file, from 0. */
  readonly index: number;
  /** Why it is not in use. */
  readonly why: string;
}

/** A row left out. */
export interface LeftOutRow {
  /** Line of the file, from 1. */
  readonly line: number;
  /** Why it was left out. */
  readonly why: string;
}

/** What was understood of a file. */
export interface Reading {
  /** Encoding of the text. */
  readonly encoding: TextEncoding;
  /** Separator of cells. */
  readonly separator: Separator;
  /** Decimal sign. */
  readonly decimal: DecimalSign;
  /** Sign between groups of three digits; empty for none. */
  readonly thousands: string;
  /** Columns in use. */
  readonly columns: readonly ReadColumn[];
  /** Columns not in use, and why. */
  readonly ignored: readonly IgnoredColumn[];
  /** Rows of numbers that were read. */
  readonly rows: number;
  /** Rows left out: line of the file, from 1, and why. */
  readonly leftOut: readonly LeftOutRow[];
}

/** One line of the text above the columns. */
export interface MetadataEntry {
  /** What stands with the name. */
  readonly value: string;
  /** Its unit, where there is one. */
  readonly unit?: string | undefined;
}

/** A file as read. */
export interface ReadResult {
  /** The columns, in N, mm, s and ratios; with `pressure` [MPa] where the file holds no force. */
  readonly record: TensionRecord | PressureRecord;
  /** What stands above the columns, by name. */
  readonly metadata: Readonly<Record<string, MetadataEntry>>;
  /** What was understood. */
  readonly reading: Reading;
}

const FROM = 'readRecord';
/** Unit that each quantity is turned into. */
const own: Readonly<Record<ColumnName, Unit>> = {
  force: 'N',
  pressure: 'MPa',
  extension: 'mm',
  travel: 'mm',
  strain: '1',
  transverseStrain: '1',
  time: 's',
};
const quantities = Object.keys(own) as ColumnName[];
/** How well strain times length must agree with the extension, as a share of it. */
const LENGTH_AGREEMENT = 0.05;
const optionNames = ['separator', 'decimal', 'encoding', 'columns', 'units', 'length', 'leaveOutHoles'];

function requireReadOptions(options: ReadOptions): void {
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

/** Unit of a used column; strain in a file with a units row may have none. */
function unitOf(quantity: ColumnName, column: NamedColumn, options: ReadOptions): Unit {
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

/** Strain times the length must be the extension, where the file has both: else the length or a column is wrong. */
function confirmLength(
  text: string,
  format: Omit<BodyFormat, 'wanted'>,
  used: ReadonlyMap<ColumnName, NamedColumn>,
  strain: NamedColumn,
  options: ReadOptions,
): void {
  const extension = used.get('extension');
  if (!extension || options.length === undefined) return;
  const pair = [extension, strain].sort((a, b) => a.index - b.index);
  const { columns } = scanBody(text, { ...format, wanted: pair.map(({ index }) => index) });
  const own = (column: NamedColumn, quantity: 'extension' | 'strain') =>
    columns[pair.indexOf(column)]!.map(
      (value) => value * unitFactor(unitOf(quantity, column, options), quantity === 'strain' ? '1' : 'mm'),
    );
  const x = own(extension, 'extension');
  const e = own(strain, 'strain');
  let largest = 0;
  let deviation = 0;
  for (let i = 0; i < x.length; i += 1) {
    largest = Math.max(largest, Math.abs(x[i]! - x[0]!) || 0);
    deviation = Math.max(deviation, Math.abs((e[i]! - e[0]!) * options.length - (x[i]! - x[0]!)) || 0);
  }
  if (deviation > LENGTH_AGREEMENT * largest)
    throw new InputError(
      FROM,
      'options.length',
      'ambiguous',
      `does not lead from '${strain.name}' to '${extension.name}': name the column with options.columns`,
      options.length,
    );
}

/** The text above the columns: name and value at a colon, an equals sign or the first cells. */
function metadataOf(layout: Layout): Record<string, MetadataEntry> {
  const end = layout.namesRow ?? layout.bodyRow;
  const entries: [string, MetadataEntry][] = [];
  layout.head.slice(0, end).forEach((row, k) => {
    const cells = row.filter((cell) => cell !== '');
    if (cells.length === 0) return;
    const [first = '', ...rest] = cells;
    const [, name, value] = rest.length > 0 ? [undefined, first.replace(/[:=]$/, ''), rest[0]] : (/^([^:=]+)[:=](.*)$/.exec(first) ?? []);
    if (name === undefined || value === undefined) entries.push([`line ${k + 1}`, { value: cells.join(' ') }]);
    else entries.push([name.trim(), { value: value.trim(), ...(rest.length > 1 ? { unit: rest.slice(1).join(' ') } : {}) }]);
  });
  return Object.fromEntries(entries);
}

/** Rows that can be used: the load is a number; holes elsewhere are an error, or left out on request; extension may end early. */
function usableRows(
  body: ScannedBody,
  used: readonly ColumnName[],
  options: ReadOptions,
): { readonly keep: Uint8Array; readonly leftOut: { line: number; why: string }[] } {
  const n = body.lines.length;
  const keep = new Uint8Array(n).fill(1);
  const leftOut: { line: number; why: string }[] = [];
  const leave = (i: number, why: string): void => {
    if (keep[i] === 1) leftOut.push({ line: body.lines[i]!, why });
    keep[i] = 0;
  };
  used.forEach((quantity, k) => {
    const column = body.columns[k]!;
    let end = n;
    if (quantity === 'extension' || quantity === 'strain' || quantity === 'transverseStrain')
      while (end > 0 && Number.isNaN(column[end - 1])) end -= 1;
    for (let i = 0; i < end; i += 1) {
      if (!Number.isNaN(column[i]!)) continue;
      if (quantity === 'force' || quantity === 'pressure' || options.leaveOutHoles === true) leave(i, `no number for ${quantity}`);
      else
        throw new InputError(
          FROM,
          `line ${body.lines[i]!}`,
          'not-finite',
          `must hold a number for ${quantity} (or set options.leaveOutHoles)`,
          'an empty cell',
        );
    }
  });
  return { keep, leftOut };
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
 * @see Common practice of data loggers. Checked in `test/record/readRecord.test.ts`.
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
    return { quantity, name: column.name, index: column.index, unit, factor: unitFactor(unit, own[quantity]) };
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
  const record = Object.fromEntries(
    read.map(({ quantity, factor }, k) => {
      const column = body.columns[k]!;
      const kept = whole ? column : column.filter((_, i) => keep[i] === 1);
      for (let i = 0; i < rows; i += 1) kept[i]! *= factor;
      return [quantity, kept];
    }),
  ) as unknown as ReadResult['record'];
  return {
    record,
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
