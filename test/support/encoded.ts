import type { TextEncoding } from '../../src/record/index.js';

/** Text as the bytes of an encoding; a byte order mark where asked for. */
export function encoded(text: string, encoding: TextEncoding, mark = false): Uint8Array {
  const marked = mark ? `\ufeff${text}` : text;
  if (encoding === 'utf-8') return new TextEncoder().encode(marked);
  if (encoding === 'windows-1252') return Uint8Array.from(text, (sign) => sign.charCodeAt(0));
  const bytes = new Uint8Array(2 * marked.length);
  const view = new DataView(bytes.buffer);
  for (let i = 0; i < marked.length; i += 1) view.setUint16(2 * i, marked.charCodeAt(i), encoding === 'utf-16le');
  return bytes;
}
