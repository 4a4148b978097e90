import { notLoaded } from '../base/index.js';
import { readRows, requireRowsOptions, type Cell, type ReadOptions, type ReadResult } from '../record/index.js';
import { content, wholeFile } from './wholeFile.js';

/**
 * Reads a Parquet file as {@link readRows} reads columns.
 *
 * @remarks
 * Needs the optional peer `hyparquet`, which is loaded on the first call; files without compression or with Snappy. Names of columns may
 * hold their units (`Force [kN]`), else give them as options.
 *
 * @param bytes - The bytes of the file, at most 512 MB.
 * @param options - What decides where the names do not.
 * @returns Columns and what was understood: as {@link readRows}.
 * @throws {@link InputError} As {@link readRows}; `missing` where the peer is not installed; `wrong-type` for other files.
 *
 * @example
 * ```ts
 * await readParquet(Uint8Array.of(1, 2, 3)).catch((error: InputError) => error.code); // => 'wrong-type'
 * ```
 *
 * @see Apache Parquet (open specification). Checked in `test/files/files.test.ts`.
 */
export async function readParquet(bytes: Uint8Array | ArrayBuffer, options: ReadOptions = {}): Promise<ReadResult> {
  const from = 'readParquet';
  requireRowsOptions(from, options);
  const file = wholeFile(from, bytes);
  const { parquetMetadata, parquetRead, parquetSchema } = await import('hyparquet').catch(
    notLoaded(from, 'hyparquet', 'read Parquet files'),
  );
  const rows = await content(from, 'a Parquet file', async () => {
    const metadata = parquetMetadata(file);
    let read: readonly (readonly Cell[])[] = [];
    await parquetRead({ file, metadata, onComplete: (found) => (read = found as Cell[][]) });
    return [parquetSchema(metadata).children.map(({ element }) => element.name), ...read];
  });
  return readRows(rows, options);
}
