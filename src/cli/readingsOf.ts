import { usage } from './usage.js';

/** Readings of one length agree within a few per cent; beyond a fifth of their mean they are not readings of one length (common practice). */
const FARTHEST = 0.2;

/** What a user may have meant by `5,02`: every comma stands between whole digits, so that each may be a decimal sign. */
const mayBeDecimal = (parts: readonly string[]): boolean =>
  parts.length % 2 === 0 && parts.every((part, k) => (k % 2 === 0 ? /^\s*\+?\d+$/ : /^\d+\s*$/).test(part));

/** Numbers with commas between them; where the commas may be decimal signs (`5,02`; two whole numbers are to be `5.0,5.0`), they are refused. */
export function numbersOf(flag: string, text: string, unit: string): number[] {
  const parts = text.split(',');
  const values = parts.map((one) => (one.trim() === '' ? NaN : Number(one)));
  if (!values.every(Number.isFinite)) throw usage(`${flag} must be numbers in ${unit}, readings separated by commas, got ${text}`);
  if (mayBeDecimal(parts)) {
    const pairs = Array.from({ length: parts.length / 2 }, (_, k) => `${parts[2 * k]!}.${parts[2 * k + 1]!}`);
    throw usage(
      `${flag} ${text} may be ${pairs.join(',')} with a decimal comma, or ${parts.length} readings: write decimal points (${pairs.join(',')}, or ${parts.map((one) => `${String(Number(one))}.0`).join(',')})`,
    );
  }
  return values;
}

/** Readings of one length, with commas between them. Those that are too far apart to be of one length are refused. */
export function readingsOf(flag: string, text: string): number[] {
  const values = numbersOf(flag, text, 'mm');
  const mean = values.reduce((sum, one) => sum + one, 0) / values.length;
  if (Math.max(...values) - Math.min(...values) > FARTHEST * Math.abs(mean))
    throw usage(
      `${flag} ${text} must be readings of one length: these differ by more than ${100 * FARTHEST} % of their mean (a number has a decimal point, a comma stands between two readings)`,
    );
  return values;
}
