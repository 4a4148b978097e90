import { InputError } from '../../base/index.js';
import { bodyReader, type BodyReader } from './bodyReader.js';
import { LOOK, requireSize, requireText } from './decodeText.js';
import { firstLook } from './firstLook.js';
import { nothing, wait, waitingBytes } from './lineBuffer.js';
import { oneByteText } from './oneByteText.js';
import type { ReadOptions, ReadResult } from './reading.js';
import { endsLine, NEWLINE, RETURN } from './signs.js';

/** @internal Reads a text piece by piece: the same pieces, however they are cut, give the same result to the last bit. */
export interface TextReader {
  readonly push: (piece: Uint8Array) => void;
  readonly finish: () => ReadResult;
}

/** Pieces without the mark that UTF-8 may begin with, and without a line feed that belongs to the carriage return at the end of the piece before. */
function plainPieces(from: string): (piece: Uint8Array) => Uint8Array {
  let started = false;
  let afterReturn = false;
  return (piece) => {
    if (piece.length === 0) return piece;
    let bytes = piece;
    if (!started) {
      started = true;
      if (bytes[0] === 0xef && bytes[1] === 0xbb && bytes[2] === 0xbf) bytes = bytes.subarray(3);
      requireText(from, bytes.subarray(0, LOOK));
    }
    if (afterReturn && bytes[0] === NEWLINE) bytes = bytes.subarray(1);
    afterReturn = bytes.at(-1) === RETURN;
    return bytes;
  };
}

/**
 * @internal A reader of one file. Its first lines wait until the layout is known; of what follows nothing is kept but numbers and the
 * beginning of a line. `text` where the pieces were text, `keep` where they may change after a push.
 */
export function textReader(from: string, options: ReadOptions, { text, keep }: { text: boolean; keep: boolean }): TextReader {
  const oneByte = oneByteText(from, text ? 'utf-8' : options.encoding, keep);
  const plain = plainPieces(from);
  const look = firstLook(from, options);
  const waiting = nothing();
  let size = 0;
  let body: BodyReader | undefined;
  /** The body, once the layout is known. */
  const begin = (last: boolean): BodyReader | undefined => {
    const bytes = waitingBytes(waiting);
    const seen = look(bytes, oneByte.encoding(), last);
    if (!seen) return undefined;
    Object.assign(waiting, nothing());
    const reader = bodyReader(from, seen, options);
    reader.push(bytes.subarray(seen.bodyStart, seen.end));
    reader.push(bytes.subarray(seen.end));
    return reader;
  };
  const take = (piece: Uint8Array): void => {
    if (body) {
      body.push(piece);
      return;
    }
    wait(waiting, piece, keep);
    body = begin(false);
  };
  return {
    push: (piece) => {
      size += piece.length;
      requireSize(from, size);
      take(plain(oneByte.push(piece)));
    },
    finish: () => {
      if (size === 0) throw new InputError(from, 'file', 'empty', 'must not be empty', size);
      take(plain(oneByte.finish()));
      const unended = body ? body.isOpen() : !endsLine(waiting.bytes[waiting.length - 1]);
      if (unended) take(Uint8Array.of(NEWLINE));
      body ??= begin(true)!;
      return body.finish(unended);
    },
  };
}
