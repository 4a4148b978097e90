import { InputError, quoted } from './InputError.js';

/** Largest number that an argument may be, whatever its unit; its inverse is the smallest where an argument must be above 0. Beyond, squares and cubes would overflow. */
const LARGEST = 1e100;
const SMALLEST = 1e-100;

/** @internal A finite number, not beyond what anything measures. */
export function requireFinite(from: string, path: string, value: unknown): number {
  if (typeof value !== 'number')
    throw new InputError(from, path, value === undefined ? 'missing' : 'wrong-type', 'must be a number', value);
  if (!(Math.abs(value) <= LARGEST)) throw new InputError(from, path, 'not-finite', 'must be finite (< 1e100)', value);
  return value;
}

/** @internal A finite number above 0. */
export function requirePositive(from: string, path: string, value: unknown): number {
  const number = requireFinite(from, path, value);
  if (number < SMALLEST) throw new InputError(from, path, 'not-positive', `must be above ${number > 0 ? SMALLEST : 0}`, value);
  return number;
}

/** @internal A finite number of 0 or more. */
export function requireNonNegative(from: string, path: string, value: unknown): number {
  const number = requireFinite(from, path, value);
  if (number < 0) throw new InputError(from, path, 'out-of-range', 'must be 0 or more', value);
  return number;
}

/** @internal A finite number from `least` to `most`, both included. */
export function requireBetween(from: string, path: string, value: unknown, least: number, most: number): number {
  const number = requireFinite(from, path, value);
  if (number < least || number > most) throw new InputError(from, path, 'out-of-range', `must be from ${least} to ${most}`, value);
  return number;
}

/** @internal A whole number of `least` or more, up to `most` where there is such a limit; both included. */
export function requireWhole(from: string, path: string, value: unknown, least: number, most = Infinity): number {
  const number = requireFinite(from, path, value);
  if (!Number.isInteger(number) || number < least || number > most)
    throw new InputError(
      from,
      path,
      'out-of-range',
      most === Infinity ? `must be a whole number of ${least} or more` : `must be a whole number from ${least} to ${most}`,
      value,
    );
  return number;
}

/** @internal A probability above 0 and below 1. */
export function requireProbability(from: string, path: string, value: unknown): number {
  const number = requireFinite(from, path, value);
  if (number <= 0 || number >= 1) throw new InputError(from, path, 'out-of-range', 'must be above 0 and below 1', value);
  return number;
}

/** @internal A day of the calendar, written 2026-03-31. */
export function requireDay(from: string, path: string, value: unknown): string {
  // for a day that the calendar does not have, Date gives another day
  const exists = (day: string): boolean => {
    const time = Date.parse(`${day}T00:00:00Z`);
    return !Number.isNaN(time) && new Date(time).toISOString().startsWith(day);
  };
  if (typeof value !== 'string' || !/^\d{4}-\d\d-\d\d$/.test(value) || !exists(value))
    throw new InputError(from, path, value === undefined ? 'missing' : 'wrong-type', 'must be a day of the form 2026-03-31', value);
  return value;
}

/** @internal Text. */
export function requireText(from: string, path: string, value: unknown): string {
  if (typeof value !== 'string') throw new InputError(from, path, value === undefined ? 'missing' : 'wrong-type', 'must be text', value);
  return value;
}

/** @internal One of the listed words or numbers. */
export function requireOneOf<Word extends string | number>(from: string, path: string, value: unknown, words: readonly Word[]): Word {
  const word = words.find((one) => one === value);
  if (word === undefined) throw new InputError(from, path, 'out-of-range', `must be one of ${quoted(words)}`, value);
  return word;
}

/** @internal An object (not an array, not null). */
export function requireObject(from: string, path: string, value: unknown): object {
  if (Array.isArray(value)) throw new InputError(from, path, 'wrong-type', 'must be an object', value, 'a list');
  if (typeof value !== 'object' || value === null)
    throw new InputError(from, path, value === undefined ? 'missing' : 'wrong-type', 'must be an object', value);
  return value;
}

/** @internal A function, such as a model or what is called on the way. */
export function requireFunction(from: string, path: string, value: unknown): void {
  if (typeof value !== 'function')
    throw new InputError(from, path, value === undefined ? 'missing' : 'wrong-type', 'must be a function', value);
}

/** @internal True or false. */
export function requireBoolean(from: string, path: string, value: unknown): boolean {
  if (typeof value !== 'boolean')
    throw new InputError(from, path, value === undefined ? 'missing' : 'wrong-type', 'must be true or false', value);
  return value;
}

/** @internal A list of words, each one of those listed. */
export function requireWords<Word extends string>(
  from: string,
  path: string,
  value: readonly Word[],
  words: readonly Word[],
): readonly Word[] {
  return requireArray(from, path, value).map((one, k) => requireOneOf(from, `${path}[${k}]`, one, words));
}

/** @internal An array of anything, such as of names or of pairs. */
export function requireArray<T>(from: string, path: string, value: readonly T[]): readonly T[] {
  const given: unknown = value;
  if (!Array.isArray(given)) throw new InputError(from, path, given === undefined ? 'missing' : 'wrong-type', 'must be an array', given);
  return value;
}

/** @internal An options object without unknown names. */
export function requireOptions(from: string, options: object, known: readonly string[], path = 'options'): void {
  for (const name of Object.keys(requireObject(from, path, options)))
    if (!known.includes(name))
      throw new InputError(from, `${path}.${name}`, 'unknown-option', `is not an option (known: ${known.join(', ')})`, name);
}

/** @internal A list of anything, with at least so many entries. */
export function requireList<Entry>(from: string, path: string, value: readonly Entry[] | undefined, least = 1): readonly Entry[] {
  const given: unknown = value;
  if (value === undefined || !Array.isArray(given))
    throw new InputError(from, path, value === undefined ? 'missing' : 'wrong-type', 'must be an array', value);
  if (value.length < least)
    throw new InputError(from, path, value.length === 0 ? 'empty' : 'too-few', `must have at least ${least} entries`, value.length);
  return value;
}

/** @internal Column rules. */
export interface ColumnRule {
  /** Least number of samples; default 1. */
  readonly least?: number;
  /** Length that another column has. */
  readonly length?: number;
  /** Every sample above 0. */
  readonly positive?: boolean;
  /** NaN from some sample on is allowed (an extensometer taken off). */
  readonly endsEarly?: boolean;
  /** Largest magnitude; default that of any number. At least one sample must have a magnitude of 1/largest or more, unless all are 0. */
  readonly largest?: number;
}

/** @internal Number of samples before a column turns to NaN for good. */
export function soundLength(column: Float64Array): number {
  let end = column.length;
  while (end > 0 && Number.isNaN(column[end - 1])) end -= 1;
  return end;
}

/** @internal Largest number in a record or curve, so that what is derived from it stays within what other functions take. */
export const LARGEST_READING = 1e30;

/** @internal An area or a length that readings are divided by: at most the largest reading and at least its reciprocal, so that fourth powers of stress and strain do not overflow. */
export function requireDivisor(from: string, path: string, value: unknown): number {
  return requireBetween(from, path, requirePositive(from, path, value), 1 / LARGEST_READING, LARGEST_READING);
}

/** @internal True of what {@link requireDivisor} takes. */
export const isDivisor = (value: number): boolean => value >= 1 / LARGEST_READING && value <= LARGEST_READING;

/**
 * Fast check: true where the first samples are numbers of at most `largest`. x·(MAX/largest)·0 is NaN where x is NaN or larger than `largest`, and a sum
 * keeps the NaN. Four sums run in parallel.
 */
function allSound(column: Float64Array, count: number, largest: number): boolean {
  const factor = Number.MAX_VALUE / largest;
  let a = 0;
  let b = 0;
  let c = 0;
  let d = 0;
  let i = 0;
  for (; i + 3 < count; i += 4) {
    a += column[i]! * factor * 0;
    b += column[i + 1]! * factor * 0;
    c += column[i + 2]! * factor * 0;
    d += column[i + 3]! * factor * 0;
  }
  for (; i < count; i += 1) a += column[i]! * factor * 0;
  return a + b + c + d === 0;
}

/** Refuses a column whose samples are all nearly 0 but not all 0; the first samples of other columns show that they are not. A single sample is not checked: it has no range. */
function requireSize(from: string, path: string, column: Float64Array, count: number, least: number): void {
  let some = -1;
  for (let i = 0; i < count; i += 1) {
    const size = Math.abs(column[i]!);
    if (size >= least) return;
    if (size > 0) some = i;
  }
  if (some >= 0) throw new InputError(from, `${path}[${some}]`, 'out-of-range', `must be 0, or some sample reach ${least}`, column[some]);
}

/** A list as a column, what is no number as NaN; a loop, for `Float64Array.from` with a function makes a list of them first. */
function numbersOf(given: ArrayLike<unknown>): Float64Array {
  const column = new Float64Array(given.length);
  for (let i = 0; i < column.length; i += 1) {
    const one = given[i];
    column[i] = typeof one === 'number' ? one : NaN;
  }
  return column;
}

/** @internal A column of finite numbers, as a `Float64Array`: the caller's own where it is one (never changed, never kept), else a copy. */
export function requireColumn(from: string, path: string, value: unknown, rule: ColumnRule = {}): Float64Array {
  if (typeof value !== 'object' || value === null || !('length' in value) || typeof value.length !== 'number')
    throw new InputError(from, path, value === undefined ? 'missing' : 'wrong-type', 'must be an array of numbers', value);
  const { least = 1, length, positive = false, endsEarly = false, largest = LARGEST } = rule;
  const given = value as ArrayLike<unknown>;
  if (given.length < least)
    throw new InputError(from, path, given.length === 0 ? 'empty' : 'too-few', `must have at least ${least} samples`, given.length);
  if (length !== undefined && given.length !== length)
    throw new InputError(from, path, 'unequal-lengths', `must have ${length} samples like the other columns`, given.length);
  const column = given instanceof Float64Array ? given : numbersOf(given);
  const sound = endsEarly ? soundLength(column) : column.length;
  // a column that ends early ends in NaN, not in text
  for (let i = sound; i < column.length && column !== given; i += 1)
    if (typeof given[i] !== 'number') throw new InputError(from, `${path}[${i}]`, 'wrong-type', 'must be a number or NaN', given[i]);
  if (!allSound(column, sound, largest))
    for (let i = 0; i < sound; i += 1) {
      const raw = given[i];
      if (!Number.isFinite(column[i]))
        throw new InputError(from, `${path}[${i}]`, typeof raw === 'number' ? 'not-finite' : 'wrong-type', 'must be a finite number', raw);
      if (Math.abs(column[i]!) > largest) throw new InputError(from, `${path}[${i}]`, 'out-of-range', `must lie within ±${largest}`, raw);
    }
  if (sound > 1) requireSize(from, path, column, sound, 1 / largest);
  if (positive) for (let i = 0; i < sound; i += 1) if (!(column[i]! >= SMALLEST)) requirePositive(from, `${path}[${i}]`, column[i]);
  return column;
}

/** @internal Two finite numbers, such as first and last sample. */
export function requirePair(from: string, path: string, value: unknown): readonly [number, number] {
  const [first, second] = requireColumn(from, path, value, { length: 2 });
  return [first!, second!];
}
