import { InputError, requireNonNegative } from '../base/index.js';

/** No instrument of so large a relative uncertainty is a reference: per cent were meant (common practice). */
const MOST = 0.1;

/** @internal The relative standard uncertainty of a reference instrument [1]. */
export function requireReference(from: string, path: string, value: unknown): number {
  const reference = requireNonNegative(from, path, value);
  if (reference >= MOST)
    throw new InputError(from, path, 'out-of-range', `is relative and must be below ${MOST} (0.002 is 0.2 %)`, reference);
  return reference;
}
