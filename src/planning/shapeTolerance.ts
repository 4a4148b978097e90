import { InputError, requireOneOf, requireOptions, requirePositive } from '../base/index.js';

/** A machined dimension of a test piece. */
export interface MachinedDimension {
  /** Nominal diameter, width or thickness [mm]. */
  readonly size: number;
  /** Which sides are machined: all (rounds too), or two opposite ones; default `all`. */
  readonly machined?: 'all' | 'two-sides' | undefined;
}

/** Tolerances of a machined dimension. */
export interface ShapeTolerance {
  /** How far the dimension may be off its nominal value, either way [mm]: within it the nominal area may be used. */
  readonly size: number;
  /** How far the largest and the smallest reading along the parallel length may differ [mm]. */
  readonly shape: number;
}

/** Up to which size [mm], then tolerance of size, and of shape of pieces machined all round and on two sides (from memory). */
const table = [
  [6, 0.02, 0.03, 0.03],
  [10, 0.03, 0.04, 0.04],
  [18, 0.05, 0.04, 0.06],
  [30, 0.1, 0.05, 0.12],
  [50, 0.15, undefined, 0.15],
] as const;
const LEAST = 3;

/** @internal The tolerances, or undefined where the table has none. */
export function toleranceOf(size: number, machined: 'all' | 'two-sides'): ShapeTolerance | undefined {
  if (size < LEAST) return undefined;
  const row = table.find(([upTo]) => size <= upTo);
  const shape = machined === 'all' ? row?.[2] : row?.[3];
  return row === undefined || shape === undefined ? undefined : { size: row[1], shape };
}

/**
 * Tolerances of a machined dimension of a test piece.
 *
 * $$ |d - d_{nom}| \le t_{size}, \qquad d_{max} - d_{min} \le t_{shape} $$
 *
 * @remarks
 * Steps of the table at 6, 10, 18, 30 and 50 mm, the limit included, from memory. Within the tolerance of size the area may be computed from the
 * nominal dimension; outside it must be measured.
 *
 * @param dimension - `size` [mm] from 3 to 30, or to 50 where two sides are machined; `machined`.
 * @returns Tolerance of size (plus or minus) and of shape [mm].
 * @throws {@link InputError} `missing`, `not-finite`, `not-positive`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * shapeTolerance({ size: 8 }); // => { size: 0.03, shape: 0.04 }
 * ```
 *
 * @see ISO 6892-1:2019, Annex D, tolerances on the transverse dimensions (from memory). Checked in `test/planning/checkPiece.test.ts`.
 */
export function shapeTolerance(dimension: MachinedDimension): ShapeTolerance {
  const from = 'shapeTolerance';
  requireOptions(from, dimension, ['size', 'machined'], 'dimension');
  const size = requirePositive(from, 'size', dimension.size);
  const machined = requireOneOf(from, 'machined', dimension.machined ?? 'all', ['all', 'two-sides'] as const);
  const tolerance = toleranceOf(size, machined);
  if (tolerance === undefined)
    throw new InputError(from, 'size', 'out-of-range', `must be from 3 to ${machined === 'all' ? 30 : 50} mm`, size);
  return tolerance;
}
