/** What a wrong argument was wrong about; a code is never renamed. */
export type InputErrorCode =
  | 'ambiguous'
  | 'empty'
  | 'missing'
  | 'no-numbers'
  | 'not-finite'
  | 'not-increasing'
  | 'not-negative'
  | 'not-positive'
  | 'not-text'
  | 'out-of-range'
  | 'too-few'
  | 'too-large'
  | 'unequal-lengths'
  | 'unknown-option'
  | 'unknown-unit'
  | 'wrong-type'
  | 'withheld';

/** Characters of what was received that a message shows. */
const SHOWN = 60;

/** `received` as a message shows it: short, and never more than a line. */
const shown = (received: unknown): string =>
  typeof received === 'string' ? JSON.stringify(received.slice(0, SHOWN)) : Object(received) === received ? 'an object' : String(received);

/** @internal Short lists as a message shows them, with their entries; longer ones by their length. */
export function shownList(entries: readonly (string | number)[]): string {
  const list = `[${entries.map((one) => (typeof one === 'string' ? JSON.stringify(one) : String(one))).join(', ')}]`;
  return list.length > SHOWN ? `a list of ${entries.length}` : list;
}

/** @internal Words as a message lists them, each in quotes, for a word may hold commas of its own; numbers as they are. */
export const quoted = (words: readonly (string | number)[]): string => words.map((word) => JSON.stringify(word)).join(', ');

/**
 * A wrong argument, thrown before anything is computed.
 *
 * @remarks
 * The message has one form: "function: argument rule, got value". Findings about a *test* are never thrown; they are part of the
 * result.
 *
 * @example
 * ```ts
 * new InputError('round', 'diameter', 'not-positive', 'must be above 0', -1).path; // => 'diameter'
 * ```
 */
export class InputError extends RangeError {
  /** Always `InputError`, also after minification. */
  override readonly name = 'InputError';
  /** What is wrong, as a word that a program can test. */
  declare readonly code: InputErrorCode;
  /** Which argument or field, for example `diameter` or `force[17]`. */
  declare readonly path: string;
  /** The value that was received. */
  declare readonly received: unknown;

  /**
   * @param from - The function that was called.
   * @param path - The argument or field that is wrong.
   * @param code - What is wrong with it.
   * @param rule - What is allowed, as the end of a sentence that starts with the path.
   * @param received - The value that was received.
   * @param told - How the message tells it; default: numbers and text as they are, objects as such.
   */
  constructor(from: string, path: string, code: InputErrorCode, rule: string, received: unknown, told = shown(received)) {
    super(`${from}: ${path} ${rule}, got ${told}`);
    this.code = code;
    this.path = path;
    this.received = received;
  }
}

/**
 * Tells whether an error is this library's {@link InputError}, also where two copies of the package are loaded.
 *
 * @param error - Anything that was caught.
 * @returns True for an `InputError` of any copy of the package.
 *
 * @example
 * ```ts
 * isInputError(new TypeError('no')); // => false
 * ```
 */
export function isInputError(error: unknown): error is InputError {
  return error instanceof Error && error.name === 'InputError' && 'code' in error && 'path' in error;
}
