import { InputError, requireFinite } from '../base/index.js';

/** @internal A whole number as seed; of larger ones the generator would see only zeros. */
export function requireSeed(from: string, seed: number | undefined): number {
  const given = requireFinite(from, 'seed', seed ?? 1);
  if (!Number.isSafeInteger(given))
    throw new InputError(from, 'seed', 'out-of-range', `must be a whole number within ±${Number.MAX_SAFE_INTEGER}`, given);
  return given;
}
