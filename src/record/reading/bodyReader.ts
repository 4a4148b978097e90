import { columnStore } from './columnStore.js';
import { cutLine, TAIL } from './cutLine.js';
import { decodeBytes } from './decodeText.js';
import { isOpen } from './findLayout.js';
import { finishReading } from './finishReading.js';
import type { FirstLook } from './firstLook.js';
import { afterLastLine, afterLines, nothing, requireLine, wait, waitingBytes } from './lineBuffer.js';
import type { ReadOptions, ReadResult } from './reading.js';
import { scanBody, type BodyFormat } from './scanBody.js';

/** @internal Reads the lines of numbers of a text: kept are numbers and the beginning of a line. */
export interface BodyReader {
  /** Whole lines go into the columns, the beginning of one waits. */
  readonly push: (piece: Uint8Array) => void;
  /** True where no line end closes the last line. */
  readonly isOpen: () => boolean;
  /** The result; `unended` where the last line end is not of the file. */
  readonly finish: (unended: boolean) => ReadResult;
}

/** @internal A reader of the lines below those of a first look. */
export function bodyReader(from: string, { layout, understanding, ...look }: FirstLook, options: ReadOptions): BodyReader {
  let { encoding, certain } = look;
  const { separator, decimal } = layout;
  const format: BodyFormat = {
    separator,
    decimal,
    thousands: options.thousands,
    unproven: isOpen(layout, options),
    wanted: understanding.wanted.map(({ index, clock, role }) => ({ index, clock: clock === true, strict: role !== 'check' })),
    decode: (cell) => {
      const decoded = decodeBytes(cell, certain ? encoding : undefined);
      if (!certain && decoded.encoding !== 'utf-8') {
        encoding = decoded.encoding;
        certain = true;
      }
      return decoded.text;
    },
  };
  const store = columnStore(from, format.wanted.length, layout.thousands);
  const waiting = nothing();
  let line = layout.bodyLine;
  /** The last bytes of the body. */
  let tail = new Uint8Array(0);
  const scan = (bytes: Uint8Array, end: number): void => {
    if (end > 0) line += scanBody(bytes, 0, end, line, format, store);
  };
  const push = (piece: Uint8Array): void => {
    if (piece.length === 0) return;
    const kept = piece.length >= TAIL ? tail.subarray(0, 0) : tail.subarray(-(TAIL - piece.length));
    tail = new Uint8Array([...kept, ...piece.subarray(-TAIL)]);
    let bytes = piece;
    if (waiting.length > 0) {
      const cut = afterLines(from, bytes, 1);
      wait(waiting, cut < 0 ? bytes : bytes.subarray(0, cut), true);
      requireLine(from, waiting.length);
      if (cut < 0) return;
      scan(waitingBytes(waiting), waiting.length);
      waiting.length = 0;
      bytes = bytes.subarray(cut);
    }
    const end = afterLastLine(bytes);
    scan(bytes, end);
    if (end < bytes.length) wait(waiting, bytes.subarray(end), true);
  };
  return {
    push,
    isOpen: () => waiting.length > 0,
    finish: (unended) => {
      // digits are the same in every encoding of one byte
      const cut = unended ? cutLine(new TextDecoder('latin1').decode(tail), format) : undefined;
      return finishReading(
        from,
        store,
        understanding,
        options,
        { encoding, separator, decimal },
        cut === undefined ? undefined : { line, text: cut },
      );
    },
  };
}
