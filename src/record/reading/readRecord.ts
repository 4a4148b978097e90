import { InputError } from '../../base/index.js';
import type { ReadOptions, ReadResult } from './reading.js';
import { requireReadOptions } from './readOptions.js';
import { textReader } from './textReader.js';

/** Characters of a text that are turned into bytes at once. */
const PIECE = 1 << 20;

/**
 * Reads a delimited text file as loggers write them.
 *
 * @remarks
 * Found from the text: encoding, separator, decimal sign and the sign between groups of digits, the lines above, the row of names and the
 * row of units (or units in the names), and which column is which, by English, German, French, Spanish, Italian, Portuguese, Chinese and
 * Japanese names. A qualified name (machine, crosshead, extensometer) decides; of two plain displacements beside a strain, the option
 * `length` tells the extension. Clock times and dates with times become seconds from the first row, over midnight too. What cannot
 * be decided is an error that lists the candidates and names the option; nothing is guessed. `reading` tells what was understood, and
 * {@link readingOptions} turns it into options for the next file. No cell is ever evaluated.
 *
 * Where extension or strain ends before the file does, the extensometer was taken off: the rest of that column is NaN. Rows without a
 * load, and lines that are no numbers (footers, names again), are left out and listed. A date among numbers is a spreadsheet's damage
 * and an error with its lines. The file is scanned as it is, in one pass: numbers are correctly rounded.
 *
 * @param file - Text, or the bytes of a file (UTF-8, UTF-16 or Windows-1252, which holds Latin-1, at most 512 MB, 500 columns, 50 million rows and 1 MiB a line).
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
 * @see Common practice of data loggers. Checked in `test/record/record.test.ts`, `test/record/readRealities.test.ts`, `test/record/fileVariants.test.ts`.
 */
export function readRecord(file: string | Uint8Array | ArrayBuffer, options: ReadOptions = {}): ReadResult {
  const from = 'readRecord';
  requireReadOptions(from, options);
  if (typeof file !== 'string' && !(file instanceof Uint8Array) && !(file instanceof ArrayBuffer))
    throw new InputError(from, 'file', 'wrong-type', 'must be text or bytes', file);
  const reader = textReader(from, options, { text: typeof file === 'string', keep: false });
  if (typeof file !== 'string') reader.push(file instanceof Uint8Array ? file : new Uint8Array(file));
  else {
    const encoder = new TextEncoder();
    for (let start = 0; start < file.length;) {
      let end = Math.min(start + PIECE, file.length);
      // a character of two code units stays whole
      if (end < file.length && /[\ud800-\udbff]/.test(file[end - 1]!)) end -= 1;
      reader.push(encoder.encode(file.slice(start, end)));
      start = end;
    }
  }
  return reader.finish();
}
