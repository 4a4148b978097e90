import { requireColumn, requirePositive } from './checks.js';
import { InputError } from './InputError.js';

/** @internal Plastic extension of Rp0.2 [mm/mm]. */
export const PROOF_OFFSET = 0.002;

/** Extensions this close are the same [mm/mm]: rounding is less, and no two that are asked for are as close. */
const SAME = 1e-9;

/** @internal True of two extensions that are one [mm/mm]. */
export const isSameExtension = (one: number, other: number): boolean => Math.abs(one - other) < SAME;

/** @internal Of strengths by their extension the one at an extension [mm/mm]. */
export const atExtension = <One extends { readonly extension: number }>(strengths: readonly One[], wanted: number): One | undefined =>
  strengths.find(({ extension }) => isSameExtension(extension, wanted));

/** Largest extension that a proof strength is defined by: 0.01 to 2 % are in use (common practice), and what is above 5 % was meant in per cent. */
const LARGEST_EXTENSION = 0.05;

function requireRatio(from: string, path: string, extension: number, most: number): number {
  if (extension > most) throw new InputError(from, path, 'out-of-range', `must be ${most} at most, a ratio (0.2 % is 0.002)`, extension);
  return extension;
}

/** @internal The plastic or total extension of a proof strength [mm/mm]. */
export const requireExtension = (from: string, path: string, value: unknown): number =>
  requireRatio(from, path, requirePositive(from, path, value), LARGEST_EXTENSION);

/** @internal A list of such extensions, or its default; of strains that may be larger, up to the one named. */
export function requireExtensions(
  from: string,
  path: string,
  given: ArrayLike<number> | undefined,
  otherwise: readonly number[],
  most = LARGEST_EXTENSION,
): number[] {
  if (given === undefined) return [...otherwise];
  return Array.from(requireColumn(from, path, given, { least: 0, positive: true }), (one, i) =>
    requireRatio(from, `${path}[${i}]`, one, most),
  );
}
