import { InputError } from './InputError.js';

/** A step that gave a result: the fields of `T`, and `ok`. */
export type Success<T> = T & {
  /** True: the fields of the result are here. */
  readonly ok: true;
};

/** A step that the data could not support: why, for a program and for a person. */
export interface Failure<Reason extends string> {
  /** False: there is no result. */
  readonly ok: false;
  /** Why, as a word that a program can test; never renamed. */
  readonly reason: Reason;
  /** Why, as a sentence with the numbers. */
  readonly message: string;
}

/** What a fit, a search or a property step returns: a flat success or a failure. */
export type Outcome<T, Reason extends string> = Success<T> | Failure<Reason>;

/** @internal */
export function success<T extends object>(fields: T): Success<T> {
  return { ok: true, ...fields };
}

/** @internal */
export function failure<Reason extends string>(reason: Reason, message: string): Failure<Reason> {
  return { ok: false, reason, message };
}

/**
 * Unwraps an outcome, or throws where there is none.
 *
 * @param outcome - What a fit, a search or a property step returned.
 * @returns The successful outcome.
 * @throws {@link InputError} `withheld`, with the reason as `path` and the sentence in the message.
 *
 * @example
 * ```ts
 * required({ ok: true, stress: 250 }).stress; // => 250
 * ```
 */
export function required<T, Reason extends string>(outcome: Success<T> | Failure<Reason>): Success<T> {
  if (outcome.ok) return outcome;
  throw new InputError('required', outcome.reason, 'withheld', `(${outcome.message})`, 'no result');
}
