import { notLoaded } from '../base/index.js';
import { readRows, requireRowsOptions, type Cell, type ReadOptions, type ReadResult } from '../record/index.js';
import { content, wholeFile } from './wholeFile.js';

/**
 * Reads an Arrow table (IPC file or stream) as {@link readRows} reads columns.
 *
 * @remarks
 * Needs the optional peer `apache-arrow`, which is loaded on the first call. Names of columns may hold their units (`Force [kN]`), or a
 * field has them as its metadata `unit`; else give them as options. Timestamps are clock times.
 *
 * @param bytes - The bytes of the table, at most 512 MB.
 * @param options - What decides where the names do not.
 * @returns Columns and what was understood: as {@link readRows}.
 * @throws {@link InputError} As {@link readRows}; `missing` where the peer is not installed; `wrong-type` for other files.
 *
 * @example
 * ```ts
 * await readArrow(Uint8Array.of(1, 2, 3)).catch((error: InputError) => error.code); // => 'wrong-type'
 * ```
 *
 * @see Apache Arrow (open specification). Checked in `test/files/files.test.ts`.
 */
export async function readArrow(bytes: Uint8Array | ArrayBuffer, options: ReadOptions = {}): Promise<ReadResult> {
  const from = 'readArrow';
  requireRowsOptions(from, options);
  const file = wholeFile(from, bytes);
  const { DataType, tableFromIPC } = await import('apache-arrow').catch(notLoaded(from, 'apache-arrow', 'read Arrow files'));
  const rows = await content(from, 'an Arrow table', () => {
    const table = tableFromIPC(new Uint8Array(file));
    if (table.schema.fields.length === 0) throw new Error('no columns');
    const columns = table.schema.fields.map((field, k) => {
      const unit = field.metadata.get('unit');
      const values = table.getChildAt(k);
      const isDate = DataType.isTimestamp(field.type) || DataType.isDate(field.type);
      return {
        name: unit === undefined ? field.name : `${field.name} [${unit}]`,
        at: (i: number): Cell => {
          const value: unknown = values?.get(i);
          return isDate && value !== null ? new Date(Number(value)) : (value as Cell);
        },
      };
    });
    return [columns.map(({ name }) => name), ...Array.from({ length: table.numRows }, (_, i) => columns.map(({ at }) => at(i)))];
  });
  return readRows(rows, options);
}
