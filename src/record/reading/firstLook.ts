import { InputError } from '../../base/index.js';
import { decodeBytes, type TextEncoding } from './decodeText.js';
import { findTextLayout, isOpen, requireLayout, type TextLayout } from './findLayout.js';
import { afterLines } from './lineBuffer.js';
import type { ReadOptions } from './reading.js';
import { understand, type Understanding } from './understand.js';

/** Lines that are looked at for the layout. */
const LOOK_LINES = 400;
/** Most lines that are looked at, in steps of four times as many, where they leave the decimal sign open. */
const MOST_LOOK_LINES = 6400;

/** @internal What the first lines of a text show. */
export interface FirstLook {
  readonly layout: TextLayout;
  readonly understanding: Understanding;
  /** Their encoding, and whether no later letter may change it. */
  readonly encoding: TextEncoding;
  readonly certain: boolean;
  /** Where the first line of numbers begins, and the first line that was not looked at. */
  readonly bodyStart: number;
  readonly end: number;
}

/** @internal Looks at the bytes that have come, all of them where they are the `last`; undefined where more lines are needed. */
export type Look = (bytes: Uint8Array, known: TextEncoding | undefined, last: boolean) => FirstLook | undefined;

/** @internal A look at the first lines, each time at more of them. */
export function firstLook(from: string, options: ReadOptions): Look {
  let count = LOOK_LINES;
  return (bytes, known, last) => {
    for (;;) {
      const cut = afterLines(from, bytes, count);
      if (cut < 0 && !last) return undefined;
      const end = cut < 0 ? bytes.length : cut;
      const { text, encoding } = decodeBytes(bytes.subarray(0, end), known);
      const lines = text.replace(/\r\n?/g, '\n').replace(/\n$/, '');
      if (cut < 0 && lines.trim() === '') throw new InputError(from, 'file', 'empty', 'must not be empty', 'only white space');
      const found = findTextLayout(lines, options);
      if (isOpen(found, options) && count < MOST_LOOK_LINES && cut >= 0) {
        count *= 4;
        continue;
      }
      const all = lines.split('\n');
      const layout = requireLayout(from, found, options, { count: all.length, first: all.find((one) => one.trim() !== '')! });
      return {
        layout,
        understanding: understand(from, layout, options, cut < 0),
        encoding,
        certain: known !== undefined || /[^\0-\x7f]/.test(lines),
        bodyStart: afterLines(from, bytes, layout.bodyLine),
        end,
      };
    }
  };
}
