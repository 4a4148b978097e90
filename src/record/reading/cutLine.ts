import { cellValue, splitCells, type DecimalSign } from './cells.js';
import type { BodyFormat } from './scanBody.js';

/** @internal Bytes at the end of a text that are kept to look at its last line. */
export const TAIL = 4096;
/** Most rows that the last one is compared with. */
const MOST = 50;
/** Fewest rows that it is compared with. */
const LEAST = 20;
/** Multiple of the largest step above it by which a reading goes on at the most (common practice). */
const STEPS = 3;
/** Digits that may have been lost. */
const LOST = 15;

/** Digits of a number before and behind its decimal sign and in its exponent. */
interface Shape {
  readonly whole: number;
  readonly fraction: number;
  readonly exponent: number;
}

const digitsIn = (text: string): number => text.replace(/\D/g, '').length;

function shapeOf(cell: string, decimal: DecimalSign): Shape {
  const [mantissa = '', exponent = ''] = cell.split(/e/i);
  const at = mantissa.lastIndexOf(decimal);
  return {
    whole: digitsIn(at < 0 ? mantissa : mantissa.slice(0, at)),
    fraction: at < 0 ? 0 : digitsIn(mantissa.slice(at)),
    exponent: digitsIn(exponent),
  };
}

/** Whether a number of whole digits, written on, could be the reading that follows those above: `149` below `14921` could be `14936`. */
function goesOn(last: number, above: readonly number[]): boolean {
  if (last === 0) return false;
  const before = above.at(-1)!;
  if (Math.abs(before) < Math.abs(last) || Math.sign(before) !== Math.sign(last)) return false;
  const step = above.reduce((most, one, k) => (k === 0 ? most : Math.max(most, Math.abs(one - above[k - 1]!))), 0);
  return Array.from({ length: LOST }, (_, k) => 10 ** (k + 1)).some(
    (scale) => Math.abs(before) >= Math.abs(last) * scale - STEPS * step && Math.abs(before) < (Math.abs(last) + 1) * scale + STEPS * step,
  );
}

/**
 * @internal The last line of a text that no line end closes, where it was cut: it has fewer cells than every line above, or its last number has fewer
 * digits behind the decimal sign or in the exponent, or could be the beginning of a longer one. Of a whole line without its end undefined.
 */
export function cutLine(tail: string, { separator, decimal, thousands, wanted }: BodyFormat): string | undefined {
  const lines = tail
    .split(/\r\n?|\n/)
    .slice(1) // the first may be the end of one
    .filter((line) => line.trim() !== '');
  const line = lines.at(-1) ?? '';
  // only numbers can be cut unseen; a quote or a blank closes one
  if (!/^[-+\d.,;:|'"eE \t]*[-+\d.,;:|\teE]$/.test(line)) return undefined;
  const value = (cell: string | undefined): number => cellValue(cell ?? '', decimal, thousands) ?? NaN;
  const { rows } = splitCells(lines.slice(-MOST - 1).join('\n'), separator);
  const last = rows.pop()!;
  const place = last.length - 1;
  const clock = wanted.find(({ index }) => index === place)?.clock;
  const above = rows.filter((row) => row.length > place && (clock === true || Number.isFinite(value(row[place]))));
  if (above.length < LEAST) return undefined;
  if (above.every((row) => row.length > last.length)) return line;
  if (clock === undefined) return undefined;
  const cell = last[place]!;
  if (clock) return above.every((row) => row[place]!.length > cell.length) ? line : undefined;
  const { whole, fraction, exponent } = shapeOf(cell, decimal);
  const shapes = above.map((row) => shapeOf(row[place]!, decimal));
  const isWhole = whole > 0 && fraction === 0 && exponent === 0;
  const readings = above.map((row) => value(row[place]));
  const fewer =
    shapes.every((one) => one.fraction > fraction) ||
    shapes.every((one) => one.exponent > exponent) ||
    (isWhole && goesOn(value(cell), readings));
  return fewer ? line : undefined;
}
