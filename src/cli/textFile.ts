import { readFile } from 'node:fs/promises';
import { decodeBytes, findWidth } from '../record/index.js';

/** Text of a file in whichever encoding it was saved, with line feeds; `place` names it in what is said of bytes that are no text. */
export async function textFile(place: string, path: string): Promise<string> {
  const bytes = await readFile(path);
  const width = findWidth(place, bytes);
  const text = width === 'bytes' ? decodeBytes(bytes, undefined).text : new TextDecoder(width).decode(bytes);
  return text.replace(/^\ufeff/, '').replace(/\r\n?/g, '\n');
}
