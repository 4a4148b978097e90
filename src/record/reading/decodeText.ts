import { InputError } from '../../base/index.js';

/** Text encodings that loggers use. */
export type TextEncoding = 'utf-8' | 'utf-16le' | 'utf-16be' | 'windows-1252';

/** @internal Bytes looked at for zeros and control characters. */
export const LOOK = 4096;
/** Files larger than this are refused [bytes]. */
const MOST = 512 * 1024 * 1024;

/** @internal Refuses more bytes than can be read. */
export function requireSize(from: string, size: number): void {
  if (size > MOST) throw new InputError(from, 'file', 'too-large', `must be at most ${MOST} bytes`, size);
}

/** Zero bytes at even and odd places: text of two-byte characters without a mark has them on one side only. */
function byZeros(look: Uint8Array): TextEncoding | 'binary' | undefined {
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

/** @internal Bytes a character of the text by its first bytes: two-byte characters by name, else one byte for each sign that counts. */
export function findWidth(from: string, look: Uint8Array): 'utf-16le' | 'utf-16be' | 'bytes' {
  if (look[0] === 0xff && look[1] === 0xfe) return 'utf-16le';
  if (look[0] === 0xfe && look[1] === 0xff) return 'utf-16be';
  const found = byZeros(look);
  if (found === 'binary') throw new InputError(from, 'file', 'not-text', 'must be text, and holds zero bytes', 'binary data');
  return found === 'utf-16le' || found === 'utf-16be' ? found : 'bytes';
}

/** @internal Control characters do not occur in text: a share of them means a binary file. */
export function requireText(from: string, look: Uint8Array): void {
  let control = 0;
  for (const byte of look) if (byte < 32 && byte !== 9 && byte !== 10 && byte !== 13 && byte !== 12) control += 1;
  if (control > 0.01 * look.length)
    throw new InputError(from, 'file', 'not-text', 'must be text, and holds control characters', 'binary data');
}

/** @internal Text of bytes as UTF-8, or where they are none as Windows-1252, where every byte is a character. */
export function decodeBytes(
  bytes: Uint8Array,
  encoding: TextEncoding | undefined,
): { readonly text: string; readonly encoding: TextEncoding } {
  if (encoding === 'windows-1252') return { text: new TextDecoder(encoding).decode(bytes), encoding };
  if (encoding !== undefined) return { text: new TextDecoder('utf-8').decode(bytes), encoding };
  try {
    return { text: new TextDecoder('utf-8', { fatal: true }).decode(bytes), encoding: 'utf-8' };
  } catch {
    return { text: new TextDecoder('windows-1252').decode(bytes), encoding: 'windows-1252' };
  }
}
