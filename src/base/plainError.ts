import { InputError, isInputError, type InputErrorCode } from './InputError.js';

/** An {@link InputError} as plain data, which JSON and the messages of workers keep whole. */
export interface PlainError {
  /** Always `InputError`. */
  readonly name: 'InputError';
  /** The sentence of the error. */
  readonly message: string;
  /** What is wrong, as a word that a program can test. */
  readonly code: InputErrorCode;
  /** Which argument or field, for example `diameter` or `force[17]`. */
  readonly path: string;
  /** The value that was received, where it is a finite number, a text, or true or false; anything else might not be copied, and the message tells it. */
  readonly received?: number | string | boolean | undefined;
}

/**
 * A wrong argument as plain data, to be sent from a worker or written as JSON.
 *
 * @remarks
 * Of an error itself, the copy that a worker posts keeps the message alone, and JSON all but the message.
 *
 * @param error - An {@link InputError}, of any copy of the package; tell it from other errors by {@link isInputError}, and throw those again.
 * @returns Name, message, code, path, and what was received where it is a finite number, a text, or true or false.
 * @throws {@link InputError} `wrong-type` for anything else.
 *
 * @example
 * ```ts
 * const error = new InputError('round', 'diameter', 'not-positive', 'must be above 0', -1);
 * JSON.stringify(plainError(error).path); // => '"diameter"'
 * ```
 *
 * @see Structured cloning (HTML Standard, WHATWG). Checked in `test/base/base.test.ts`.
 */
export function plainError(error: InputError): PlainError {
  if (!isInputError(error)) throw new InputError('plainError', 'error', 'wrong-type', 'must be an InputError', error);
  const { message, code, path, received } = error;
  const kept = Number.isFinite(received) || typeof received === 'string' || typeof received === 'boolean';
  return { name: 'InputError', message, code, path, ...(kept ? { received: received as number | string | boolean } : {}) };
}
