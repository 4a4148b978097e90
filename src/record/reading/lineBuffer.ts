import { InputError } from '../../base/index.js';
import { endsLine, NEWLINE, RETURN } from './signs.js';

/** Lines longer than this are refused [bytes]. */
const MOST_LINE = 1 << 20;

/** @internal Refuses a line that is too long to be one of numbers. */
export function requireLine(from: string, size: number): void {
  if (size > MOST_LINE) throw new InputError(from, 'file', 'too-large', `must have lines of at most ${MOST_LINE} bytes`, size);
}

/** @internal Where the line after a number of further lines begins, or -1 where there are fewer. */
export function afterLines(from: string, bytes: Uint8Array, count: number): number {
  let start = 0;
  for (let line = 0; line < count; line += 1) {
    let at = start;
    while (at < bytes.length && !endsLine(bytes[at])) at += 1;
    requireLine(from, at - start);
    if (at >= bytes.length) return -1;
    start = at + (bytes[at] === RETURN && bytes[at + 1] === NEWLINE ? 2 : 1);
  }
  return start;
}

/** @internal Where the last line that is not complete begins. */
export function afterLastLine(bytes: Uint8Array): number {
  let at = bytes.length;
  while (at > 0 && !endsLine(bytes[at - 1])) at -= 1;
  return at;
}

/** @internal Bytes that wait for more: kept as they are where there is one piece, copied into one that grows where there are many. */
export interface Waiting {
  bytes: Uint8Array;
  length: number;
  own: boolean;
}

/** @internal Nothing that waits. */
export const nothing = (): Waiting => ({ bytes: new Uint8Array(0), length: 0, own: false });

/** @internal What waits, as one piece. */
export const waitingBytes = ({ bytes, length }: Waiting): Uint8Array => bytes.subarray(0, length);

/** @internal Adds a piece; `keep` where the piece is the caller's and may change, so that it must be copied. */
export function wait(waiting: Waiting, piece: Uint8Array, keep: boolean): void {
  if (waiting.length === 0 && !keep) {
    Object.assign(waiting, { bytes: piece, length: piece.length, own: false });
    return;
  }
  const length = waiting.length + piece.length;
  if (!waiting.own || waiting.bytes.length < length) {
    const grown = new Uint8Array(Math.max(2 * length, 1024));
    grown.set(waitingBytes(waiting));
    waiting.bytes = grown;
    waiting.own = true;
  }
  waiting.bytes.set(piece, waiting.length);
  waiting.length = length;
}
