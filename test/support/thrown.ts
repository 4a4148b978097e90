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
