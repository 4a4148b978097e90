import { InputError, isInputError, notLoaded, quoted, requireObject, requireWhole } from '../base/index.js';
import { readRows, requireRowsOptions, type Cell, type ReadOptions, type ReadResult } from '../record/index.js';
import { content, wholeFile } from './wholeFile.js';

/** Options of {@link readSpreadsheet}: those of reading rows, and which sheet. */
export interface SpreadsheetOptions extends ReadOptions {
  /** Name or place (from 1) of the sheet; default the first. */
  readonly sheet?: string | number | undefined;
}

/**
 * Reads a sheet of a spreadsheet file (.xlsx) as {@link readRows} reads rows.
 *
 * @remarks
 * Needs the optional peer `read-excel-file`, which is loaded on the first call. Works in Node and in browsers. Values are those that the
 * file holds; formulas are not evaluated. Rows are counted as the sheet counts them.
 *
 * @param bytes - The bytes of the file, at most 512 MB.
 * @param options - Which sheet, and what decides where its rows do not.
 * @returns Columns, rows above, what was understood: as {@link readRows}.
 * @throws {@link InputError} As {@link readRows}; `missing` where the peer is not installed; those about rows as `options.sheet` where none was named and the file has several; `wrong-type` for other files, `out-of-range` for a
 * sheet that is not there.
 *
 * @example
 * ```ts
 * await readSpreadsheet(new Uint8Array(0)).catch((error: InputError) => error.code); // => 'empty'
 * ```
 *
 * @see Office Open XML (ECMA-376). Checked in `test/files/files.test.ts`.
 */
export async function readSpreadsheet(bytes: Uint8Array | ArrayBuffer, options: SpreadsheetOptions = {}): Promise<ReadResult> {
  const from = 'readSpreadsheet';
  const { sheet = 1, ...others } = requireObject(from, 'options', options) as SpreadsheetOptions;
  if (typeof sheet !== 'string') requireWhole(from, 'options.sheet', sheet, 1);
  requireRowsOptions(from, others);
  const file = wholeFile(from, bytes);
  const {
    default: readSheets,
    readSheet,
    SheetNotFoundError,
  } = await import('read-excel-file/universal').catch(notLoaded(from, 'read-excel-file', 'read spreadsheets'));
  const rows = await content(from, 'a sheet of a spreadsheet', () =>
    readSheet(file, sheet).catch(async (reason: unknown) => {
      if (!(reason instanceof SheetNotFoundError)) throw reason;
      const names = (await readSheets(file)).map((one) => one.sheet);
      throw new InputError(from, 'options.sheet', 'out-of-range', `must be the name or place of a sheet, of ${quoted(names)}`, sheet);
    }),
  );
  try {
    return readRows(rows as unknown as readonly (readonly Cell[])[], others);
  } catch (reason) {
    if (options.sheet !== undefined || !isInputError(reason) || reason.path !== 'rows') throw reason;
    const names = (await readSheets(file)).map((one) => one.sheet);
    if (names.length < 2) throw reason;
    throw new InputError(
      from,
      'options.sheet',
      reason.code,
      `must name the sheet that holds the record, of ${quoted(names)}: the first holds none`,
      1,
    );
  }
}
