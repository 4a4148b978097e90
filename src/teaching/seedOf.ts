import { InputError, requireFinite } from '../base/index.js';

/** @internal A name as it counts: neither case nor spaces at its ends make another exercise. */
export function nameOf(from: string, seed: string | number): string {
  const name = typeof seed === 'string' ? seed : String(requireFinite(from, 'seed', seed));
  const plain = name.normalize('NFC').trim().toLowerCase();
  if (plain === '') throw new InputError(from, 'seed', 'empty', 'must be a name or a number', seed);
  return plain;
}

/** @internal A whole number of 32 bits from a name, by the hash of Fowler, Noll and Vo (FNV-1a). */
export function seedOf(name: string): number {
  let hash = 0x811c9dc5;
  for (const byte of new TextEncoder().encode(name)) hash = Math.imul(hash ^ byte, 0x01000193);
  return hash >>> 0;
}
