import { InputError } from '../../base/index.js';
import { cutLine, TAIL } from './cutLine.js';
import { columnStore, type ColumnStore } from './columnStore.js';
import { decodeBytes, findWidth, LOOK, requireSize, requireText, type TextEncoding } from './decodeText.js';
import { findTextLayout, isOpen, requireLayout, type TextLayout } from './findLayout.js';
import { finishReading } from './finishReading.js';
import { afterLastLine, afterLines, endsLine, nothing, requireLine, wait, waitingBytes } from './lineBuffer.js';
import type { ReadOptions, ReadResult } from './reading.js';
import { scanBody, type BodyFormat } from './scanBody.js';
import { understand, type Understanding } from './understand.js';

/** Lines looked at for the layout; four times as many and sixteen times where they leave the decimal sign open. */
const LOOK_LINES = 400;
const MOST_LOOK_LINES = 6400;

/** @internal Reads a text piece by piece: the same pieces, however they are cut, give the same result to the last bit. */
export interface TextReader {
  readonly push: (piece: Uint8Array) => void;
  readonly finish: () => ReadResult;
}

interface Body {
  readonly layout: TextLayout;
  readonly understanding: Understanding;
  readonly format: BodyFormat;
  readonly store: ColumnStore;
  line: number;
}

/** Bytes of one-byte characters (UTF-8, Windows-1252), from two-byte ones where the text has those. */
function oneByte(width: TextEncoding | 'bytes'): (bytes: Uint8Array, more: boolean) => Uint8Array {
  if (width !== 'utf-16le' && width !== 'utf-16be') return (bytes) => bytes;
  const decoder = new TextDecoder(width);
  const encoder = new TextEncoder();
  return (bytes, more) => encoder.encode(decoder.decode(bytes, { stream: more }));
}

/**
 * @internal A reader of one file. Its first lines are kept until they tell the layout; of what follows nothing is kept but numbers and the
 * beginning of a line. `text` where the pieces were text, `keep` where they may change after a push.
 */
export function textReader(from: string, options: ReadOptions, { text, keep }: { text: boolean; keep: boolean }): TextReader {
  let size = 0;
  let decode: ReturnType<typeof oneByte> | undefined;
  let encoding: TextEncoding | undefined = text ? 'utf-8' : options.encoding;
  let started = false;
  let afterReturn = false;
  let lookLines = LOOK_LINES;
  let body: Body | undefined;
  const raw = nothing();
  const waiting = nothing();
  /** The last bytes of the body, and whether a line end closes them. */
  let tail = new Uint8Array(0);
  let unended = false;

  /** Layout, columns and the numbers among the first lines. */
  const begin = (last: boolean): void => {
    while (!body) {
      const bytes = waitingBytes(waiting);
      const cut = afterLines(from, bytes, lookLines);
      if (cut < 0 && !last) return;
      const end = cut < 0 ? bytes.length : cut;
      const look = decodeBytes(bytes.subarray(0, end), encoding);
      const lines = look.text.replace(/\r\n?/g, '\n').replace(/\n$/, '');
      if (cut < 0 && lines.trim() === '') throw new InputError(from, 'file', 'empty', 'must not be empty', 'only white space');
      const found = findTextLayout(lines, options);
      if (isOpen(found, options) && lookLines < MOST_LOOK_LINES && cut >= 0) {
        lookLines *= 4;
        continue;
      }
      const all = lines.split('\n');
      const layout = requireLayout(from, found, options, { count: all.length, first: all.find((one) => one.trim() !== '')! });
      const understanding = understand(from, layout, options, cut < 0);
      let certain = encoding ?? (/[^\0-\x7f]/.test(lines) ? look.encoding : undefined);
      encoding = look.encoding;
      const format: BodyFormat = {
        separator: layout.separator,
        decimal: layout.decimal,
        thousands: options.thousands,
        unproven: isOpen(layout, options),
        wanted: understanding.wanted.map(({ index, clock, role }) => ({ index, clock: clock === true, strict: role !== 'check' })),
        decode: (cell) => {
          const { text: decoded, encoding: of } = decodeBytes(cell, certain);
          if (certain === undefined && of !== 'utf-8') certain = encoding = of;
          return decoded;
        },
      };
      body = { layout, understanding, format, store: columnStore(from, format.wanted.length, layout.thousands), line: layout.bodyLine };
      const rest = bytes.subarray(end);
      const start = afterLines(from, bytes, layout.bodyLine);
      Object.assign(waiting, nothing());
      scan(bytes.subarray(start, end));
      scan(rest);
    }
  };

  /** Whole lines go into the columns, the beginning of one waits. */
  const scan = (piece: Uint8Array): void => {
    if (!body || piece.length === 0) return;
    const kept = piece.length >= TAIL ? tail.subarray(0, 0) : tail.subarray(-(TAIL - piece.length));
    tail = new Uint8Array([...kept, ...piece.subarray(-TAIL)]);
    let bytes = piece;
    if (waiting.length > 0) {
      const cut = afterLines(from, bytes, 1);
      wait(waiting, cut < 0 ? bytes : bytes.subarray(0, cut), true);
      requireLine(from, waiting.length);
      if (cut < 0) return;
      const joined = waitingBytes(waiting);
      body.line += scanBody(joined, 0, joined.length, body.line, body.format, body.store);
      waiting.length = 0;
      bytes = bytes.subarray(cut);
    }
    const end = afterLastLine(bytes);
    if (end > 0) body.line += scanBody(bytes, 0, end, body.line, body.format, body.store);
    if (end < bytes.length) wait(waiting, bytes.subarray(end), true);
  };

  /** One-byte pieces; a line feed after a carriage return that was the last of its piece belongs to it. */
  const take = (piece: Uint8Array, last: boolean): void => {
    let bytes = piece;
    if (!started && bytes.length > 0) {
      started = true;
      if (bytes[0] === 0xef && bytes[1] === 0xbb && bytes[2] === 0xbf) bytes = bytes.subarray(3);
      requireText(from, bytes.subarray(0, LOOK));
    }
    if (afterReturn && bytes[0] === 10) bytes = bytes.subarray(1);
    if (piece.length > 0) afterReturn = bytes.at(-1) === 13;
    if (body) scan(bytes);
    else {
      wait(waiting, bytes, keep);
      begin(false);
    }
    if (!last) return;
    const end = body ? waiting.length > 0 : !endsLine(waiting.bytes[waiting.length - 1]);
    unended = end;
    if (end) {
      if (body) scan(Uint8Array.of(10));
      else wait(waiting, Uint8Array.of(10), true);
    }
    begin(true);
  };

  const sniff = (): void => {
    const bytes = waitingBytes(raw);
    const width = text ? 'bytes' : (options.encoding ?? findWidth(from, bytes.subarray(0, LOOK)));
    if (width === 'utf-16le' || width === 'utf-16be') encoding = width;
    decode = oneByte(width);
  };
  return {
    push: (piece) => {
      size += piece.length;
      requireSize(from, size);
      if (decode) {
        take(decode(piece, true), false);
        return;
      }
      wait(raw, piece, keep);
      if (raw.length < LOOK) return;
      sniff();
      take(decode!(waitingBytes(raw), true), false);
    },
    finish: () => {
      if (size === 0) throw new InputError(from, 'file', 'empty', 'must not be empty', size);
      const rest = decode ? new Uint8Array(0) : waitingBytes(raw);
      if (!decode) sniff();
      take(decode!(rest, false), true);
      const { layout, understanding, store, format, line } = body!;
      const { separator, decimal } = layout;
      // digits are the same in every encoding of one byte
      const cut = unended ? cutLine(new TextDecoder('latin1').decode(tail), format) : undefined;
      return finishReading(
        from,
        store,
        understanding,
        options,
        { encoding: encoding!, separator, decimal },
        cut === undefined ? undefined : { line, text: cut },
      );
    },
  };
}
