import { fill, words } from './words.js';

/** What was typed: a number, nothing, or why it is none. */
export type Typed = { readonly ok: true; readonly value: number | undefined } | { readonly ok: false; readonly message: string };

const PLAIN = /^-?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i;
/** Groups of three digits behind one to three, with one sign between them, and decimals behind the other. */
const GROUPED = /^-?[1-9]\d{0,2}(?:([ ',.])\d{3}(?:\1\d{3})*)(?:(?!\1)[.,]\d+)?$/;
/** One sign with just three digits behind it: groups, or decimals. */
const TWO_WAYS = /^(-?[1-9]\d{0,2})([.,])(\d{3})$/;

/**
 * A number as people type it, with decimal point or comma and with groups of digits. What can be read two ways is refused; a `point` that is
 * `decimal`, as in a field that the page itself fills, never parts groups.
 */
export function typedNumber(text: string, point: 'decimal' | 'either' = 'either'): Typed {
  const typed = text
    .trim()
    .replace(/\u2212/g, '-')
    .replace(/[\s\u00a0\u2009\u202f]+/g, ' ')
    .replace(/\u2019/g, "'");
  if (typed === '') return { ok: true, value: undefined };
  const [, whole, sign, last] = TWO_WAYS.exec(typed) ?? [];
  if (whole !== undefined && !(sign === '.' && point === 'decimal'))
    return { ok: false, message: fill(words.numbers.twoWays, { text: typed, one: `${whole}.${last!}0`, other: `${whole}${last!}` }) };
  const plain = GROUPED.test(typed) && !TWO_WAYS.test(typed) ? withoutGroups(typed) : typed.replace(',', '.');
  const value = PLAIN.test(plain) ? Number(plain) : NaN;
  return Number.isFinite(value) ? { ok: true, value } : { ok: false, message: words.numbers.none };
}

/** Groups joined, and a decimal point. */
function withoutGroups(typed: string): string {
  const [, separator = ''] = GROUPED.exec(typed) ?? [];
  return typed.split(separator).join('').replace(',', '.');
}
