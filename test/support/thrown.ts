import { expect } from 'vitest';
import { isInputError, type InputError } from '../../src/base/index.js';

/** The `InputError` that a call throws; anything else, or nothing, fails the test. */
export function thrown(call: () => unknown): InputError {
  let caught: unknown;
  try {
    call();
  } catch (error) {
    caught = error;
  }
  expect(isInputError(caught), String(caught)).toBe(true);
  return caught as InputError;
}

/** Code and path of the `InputError` that a call throws, as one text. */
export function refusal(call: () => unknown): string {
  const { code, path } = thrown(call);
  return `${code} ${path}`;
}
