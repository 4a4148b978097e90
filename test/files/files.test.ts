import {
  Field,
  Float64,
  RecordBatch,
  Schema,
  Struct,
  tableFromArrays,
  tableToIPC,
  Table,
  Timestamp,
  TimeUnit,
  vectorFromArray,
} from 'apache-arrow';
import { parquetWriteBuffer } from 'hyparquet-writer';
import { describe, expect, test } from 'vitest';
import { isInputError, type ReadResult, type TensionRecord } from '../../src/index.js';
import { readArrow, readParquet, readSpreadsheet } from '../../src/files/index.js';
import { workbook } from '../support/zipped.js';

const N = 50;
const time = Float64Array.from({ length: N }, (_, i) => i / 7);
const force = Float64Array.from({ length: N }, (_, i) => i / 3);
const travel = Float64Array.from({ length: N }, (_, i) => i / 11);
const expected = { time, force: force.map((F) => F * 1000), travel };
const forceOf = ({ record }: ReadResult): number[] => [...(record as TensionRecord).force];
const refused = async (result: Promise<unknown>): Promise<string> => {
  const error: unknown = await result.then(
    () => undefined,
    (reason: unknown) => reason,
  );
  return isInputError(error) ? `${error.code} ${error.path}` : String(error);
};

describe('a spreadsheet', () => {
  const rows = [
    ['Piece', 'A7 & B<8>', null],
    [],
    ['Zeit', 'Kraft', 'Weg'],
    ['s', 'kN', 'mm'],
    ...Array.from({ length: N }, (_, i) => [time[i]!, force[i]!, travel[i]!]),
  ];

  test('numbers to the last bit, rows above, another sheet by name and place', async () => {
    const file = workbook({ Test: rows, More: rows.slice(2, 20) });
    const { record, metadata } = await readSpreadsheet(file);
    expect(record).toEqual(expected);
    expect(metadata).toEqual({ Piece: { value: 'A7 & B<8>' } });
    expect((await readSpreadsheet(file.buffer as ArrayBuffer, { sheet: 'More' })).reading.rows).toBe(16);
    expect((await readSpreadsheet(file, { sheet: 2 })).reading.rows).toBe(16);
    expect(await refused(readSpreadsheet(file, { sheet: 'None' }))).toBe('out-of-range options.sheet');
    await expect(readSpreadsheet(file, { sheet: 'None' })).rejects.toThrow(
      'readSpreadsheet: options.sheet must be the name or place of a sheet, of "Test", "More", got "None"',
    );
    expect(await refused(readSpreadsheet(file, { sheet: 3 }))).toBe('out-of-range options.sheet');
    // a first sheet without a record: the others are named, unless the sheet was chosen
    const cover = workbook({ Cover: [['Piece', 'A7']], Data: rows });
    await expect(readSpreadsheet(cover)).rejects.toThrow('must name the sheet that holds the record, of "Cover", "Data"');
    expect(await refused(readSpreadsheet(cover, { sheet: 1 }))).toBe('no-numbers rows');
  });

  test('a number that the sheet made a date, an error value, a formula: the row, or the value that is held', async () => {
    const spoiled = [
      ...rows,
      [9, { raw: 's="1"><v>46056</v>' }, 9],
      [10, { raw: 't="e"><v>#DIV/0!</v>' }, 10],
      [11, { raw: '><f>1+1</f><v>2</v>' }, 11],
    ];
    const file = workbook({ Test: spoiled });
    expect(await refused(readSpreadsheet(file))).toBe(`not-finite line ${rows.length + 1}`);
    const { record, reading } = await readSpreadsheet(file, { leaveOutHoles: true });
    expect(reading.leftOut.map(({ line }) => line)).toEqual([rows.length + 1, rows.length + 2]);
    expect((record as TensionRecord).force.at(-1)).toBe(2000);
  });

  test('what is none', async () => {
    expect(await refused(readSpreadsheet(new TextEncoder().encode('t;F')))).toBe('wrong-type bytes');
    expect(await refused(readSpreadsheet('text' as never))).toBe('wrong-type bytes');
    expect(await refused(readSpreadsheet(workbook({ Test: rows }), { decimals: ',' } as never))).toBe('unknown-option options.decimals');
  });
});

describe('a Parquet file', () => {
  test('numbers to the last bit, holes, text beside them', async () => {
    const file = parquetWriteBuffer({
      columnData: [
        { name: 'Time [s]', data: time, type: 'DOUBLE' },
        { name: 'Force [kN]', data: force, type: 'DOUBLE' },
        { name: 'Extension [mm]', data: Array.from(travel, (x, i) => (i < 40 ? x : null)), type: 'DOUBLE' },
        { name: 'note', data: Array.from(time, String), type: 'STRING' },
      ],
    });
    const { record } = await readParquet(new Uint8Array(file));
    expect((record as TensionRecord).force).toEqual(expected.force);
    expect([...record.extension!].map(Number.isNaN).indexOf(true)).toBe(40);
    expect(await refused(readParquet(file, { length: -1 }))).toBe('not-positive options.length');
    expect(await refused(readParquet(new Uint8Array(file).subarray(0, 300)))).toBe('wrong-type bytes');
  });
});

describe('an Arrow table', () => {
  test('numbers to the last bit, by names with units, as file and as stream', async () => {
    const table = tableFromArrays({ 'Time [s]': time, 'Load [kN]': force, 'Crosshead [mm]': travel });
    expect((await readArrow(tableToIPC(table, 'stream'))).record).toEqual(expected);
    expect((await readArrow(tableToIPC(table, 'file'))).record).toEqual(expected);
  });

  test('units as metadata of the fields, timestamps, nothing in a cell', async () => {
    const stamps = vectorFromArray(
      Array.from(time, (_, i) => new Date(Date.UTC(2026, 10, 26, 23, 59, 59) + 250 * i)),
      new Timestamp(TimeUnit.MILLISECOND),
    );
    const loads = vectorFromArray([...force.slice(0, -1), null], new Float64());
    const fields = [
      new Field('when', stamps.type),
      new Field('Load', loads.type, true, new Map([['unit', 'kN']])),
      new Field('Crosshead', new Float64(), true, new Map([['unit', 'mm']])),
    ];
    const plain = new Table({ when: stamps, Load: loads, Crosshead: vectorFromArray([...travel], new Float64()) });
    const schema = new Schema(fields);
    const table = new Table(
      schema,
      plain.batches.map(({ data }) => new RecordBatch(schema, data.clone(new Struct(fields)))),
    );
    const result = await readArrow(tableToIPC(table));
    expect(forceOf(result)).toEqual([...expected.force.slice(0, -1)]);
    expect([...result.record.time!].slice(0, 3)).toEqual([0, 0.25, 0.5]);
    expect(result.reading.leftOut).toEqual([{ line: N + 1, why: 'no number for force' }]);
  });
});
