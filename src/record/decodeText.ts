import { InputError } from '../base/index.js';

/** Text encodings that loggers use. */
export type TextEncoding = 'utf-8' | 'utf-16le' | 'utf-16be' | 'windows-1252';

/** @internal Text of a file, without byte order mark, with line feeds only. */
export interface DecodedText {
  readonly text: string;
  readonly encoding: TextEncoding;
}

/** Files larger than this are refused [bytes or characters]. */
const MOST = 512 * 1024 * 1024;
/** Bytes looked at for zeros. */
const LOOK = 4096;

/** Zero bytes at even and odd places: text of two-byte characters without a mark has them on one side only. */
function byZeros(bytes: Uint8Array): TextEncoding | 'binary' | undefined {
  const look = bytes.subarray(0, LOOK);
  let even = 0;
  let odd = 0;
  look.forEach((byte, i) => {
    if (byte !== 0) return;
    if (i % 2 === 0) even += 1;
    else odd += 1;
  });
  if (even + odd === 0) return undefined;
  const half = look.length / 2;
  if (odd > 0.6 * half && even < 0.05 * half) return 'utf-16le';
  if (even > 0.6 * half && odd < 0.05 * half) return 'utf-16be';
  return 'binary';
}

/** Which encoding the bytes are in. */
function encodingOf(bytes: Uint8Array): TextEncoding | 'binary' {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return 'utf-16le';
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return 'utf-16be';
  const zeros = byZeros(bytes);
  if (zeros) return zeros;
  try {
    new TextDecoder('utf-8', { fatal: true }).decode(bytes);
    return 'utf-8';
  } catch {
    return 'windows-1252'; // every byte is a character there
  }
}

/** Control characters do not occur in text: a share of them means a binary file. */
function looksBinary(text: string): boolean {
  const look = text.slice(0, LOOK);
  let control = 0;
  for (let i = 0; i < look.length; i += 1) {
    const code = look.charCodeAt(i);
    if (code < 32 && code !== 9 && code !== 10 && code !== 13 && code !== 12) control += 1;
  }
  return control > 0.01 * look.length;
}

/** @internal Decodes bytes, or takes text as it is. */
export function decodeText(given: string | Uint8Array | ArrayBuffer, encoding?: TextEncoding): DecodedText {
  const from = 'readRecord';
  const size = typeof given === 'string' ? given.length : given.byteLength;
  if (size === 0) throw new InputError(from, 'file', 'empty', 'must not be empty', size);
  if (size > MOST) throw new InputError(from, 'file', 'too-large', `must be at most ${MOST} bytes`, size);
  let text: string;
  let found: TextEncoding | 'binary' = 'utf-8';
  if (typeof given === 'string') text = given;
  else {
    const bytes = given instanceof Uint8Array ? given : new Uint8Array(given);
    found = encoding ?? encodingOf(bytes);
    if (found === 'binary') throw new InputError(from, 'file', 'not-text', 'must be text, and holds zero bytes', 'binary data');
    text = new TextDecoder(found).decode(bytes);
  }
  if (looksBinary(text)) throw new InputError(from, 'file', 'not-text', 'must be text, and holds control characters', 'binary data');
  if (text.charCodeAt(0) === 0xfeff) text = text.slice(1);
  if (text.includes('\r')) text = text.replace(/\r\n?/g, '\n');
  if (text.trim() === '') throw new InputError(from, 'file', 'empty', 'must not be empty', 'only white space');
  return { text, encoding: found };
}
