import { findWidth, LOOK, type TextEncoding } from './decodeText.js';
import { nothing, wait, waitingBytes } from './lineBuffer.js';

/** @internal Turns the pieces of a file into text of one byte for each sign that counts: UTF-8 or Windows-1252 as it is, UTF-16 as UTF-8. */
export interface OneByteText {
  /** What is known of a piece and of those that waited; nothing as long as they are too few to know the encoding. */
  readonly push: (piece: Uint8Array) => Uint8Array;
  /** What still waits. */
  readonly finish: () => Uint8Array;
  /** The encoding, where it is known before the text is looked at. */
  readonly encoding: () => TextEncoding | undefined;
}

type Width = TextEncoding | 'bytes';

function decoderOf(width: Width): (bytes: Uint8Array, more: boolean) => Uint8Array {
  if (width !== 'utf-16le' && width !== 'utf-16be') return (bytes) => bytes;
  const decoder = new TextDecoder(width);
  const encoder = new TextEncoder();
  return (bytes, more) => encoder.encode(decoder.decode(bytes, { stream: more }));
}

/** @internal Such a text of pieces in an encoding, or in one that their first bytes show. */
export function oneByteText(from: string, given: TextEncoding | undefined, keep: boolean): OneByteText {
  const waiting = nothing();
  let encoding = given;
  let decode: ReturnType<typeof decoderOf> | undefined;
  const sniff = (): ReturnType<typeof decoderOf> => {
    const width = given ?? findWidth(from, waitingBytes(waiting).subarray(0, LOOK));
    if (width !== 'bytes') encoding = width;
    return decoderOf(width);
  };
  return {
    push: (piece) => {
      if (decode) return decode(piece, true);
      wait(waiting, piece, keep);
      if (waiting.length < LOOK) return new Uint8Array(0);
      decode = sniff();
      return decode(waitingBytes(waiting), true);
    },
    finish: () => (decode ? decode(new Uint8Array(0), false) : sniff()(waitingBytes(waiting), false)),
    encoding: () => encoding,
  };
}
