import { InputError } from '../../base/index.js';
import type { ReadOptions, ReadResult } from './reading.js';
import { requireReadOptions } from './readOptions.js';
import { textReader, type TextReader } from './textReader.js';

/** Pieces of a file: bytes or text, one after the other, at once or as they come. */
export type Chunks = AsyncIterable<Uint8Array | string> | Iterable<Uint8Array | string>;

/**
 * Reads a delimited text file that comes in pieces, as streams give them.
 *
 * @remarks
 * The result is that of {@link readRecord} on the whole, to the last bit, wherever the pieces are cut: within a character, a number or
 * a line end. Held in memory are the numbers and one piece with the beginning of a line, not the file. Streams of Node and of
 * browsers are such pieces (`createReadStream(path)`, `file.stream()`, `response.body`).
 *
 * @param chunks - Pieces of bytes, or pieces of text, not both; a piece may be changed as soon as the next is asked for.
 * @param options - What decides where the file does not.
 * @returns The columns in N (or MPa of pressure), mm, s and ratios; the lines above by name; what was understood.
 * @throws {@link InputError} As {@link readRecord}; `wrong-type` for pieces of another kind.
 *
 * @example
 * ```ts
 * const pieces = ['Zeit;Weg;Kra', 'ft\ns;mm;kN\n0;0,00;0', ',0\n1;0,05;1,1\n2;0,10;2,3\n'];
 * const { record } = await readChunks(pieces);
 * record.travel; // => [0, 0.05, 0.1]
 * ```
 *
 * @see Common practice of data loggers. Checked in `test/record/readChunks.test.ts`.
 */
export async function readChunks(chunks: Chunks, options: ReadOptions = {}): Promise<ReadResult> {
  const from = 'readChunks';
  requireReadOptions(from, options);
  const given: unknown = chunks;
  if (
    typeof given !== 'object' ||
    given === null ||
    given instanceof Uint8Array ||
    !(Symbol.asyncIterator in given || Symbol.iterator in given)
  )
    throw new InputError(from, 'chunks', 'wrong-type', 'must be pieces of bytes or text that can be iterated over', given);
  const encoder = new TextEncoder();
  let reader: TextReader | undefined;
  let text: boolean | undefined;
  let half = ''; // of a character of two code units
  let count = 0;
  for await (const chunk of chunks as AsyncIterable<unknown>) {
    const isText = typeof chunk === 'string';
    if ((!isText && !(chunk instanceof Uint8Array)) || isText !== (text ?? isText))
      throw new InputError(
        from,
        `chunks[${count}]`,
        'wrong-type',
        `must be ${text === undefined ? 'bytes or text' : text ? 'text' : 'bytes'}`,
        chunk,
      );
    text = isText;
    count += 1;
    reader ??= textReader(from, options, { text, keep: true });
    if (!isText) reader.push(chunk);
    else {
      const whole = half + chunk;
      half = /[\ud800-\udbff]$/.exec(whole)?.[0] ?? '';
      reader.push(encoder.encode(whole.slice(0, whole.length - half.length)));
    }
  }
  if (half !== '') reader?.push(encoder.encode(half));
  return (reader ?? textReader(from, options, { text: true, keep: true })).finish();
}
