import { InputError, requireFinite, requireOptions, requirePositive } from '../base/index.js';

/** A cylinder. */
export interface Cylinder {
  /** Bore D [mm]. */
  readonly bore: number;
  /** Rod diameter [mm], where the rod side pulls; default none: the full bore pushes. */
  readonly rod?: number | undefined;
}

/**
 * Area that the oil pressure acts on.
 *
 * $$ A = \frac{\pi D^2}{4} \quad\text{(full bore)}, \qquad A = \frac{\pi (D^2 - d_r^2)}{4} \quad\text{(annulus)} $$
 *
 * @remarks
 * A frame that pulls with the rod side has the annulus; one that pushes has the full bore.
 *
 * @param cylinder - `bore` [mm] above 0; `rod` [mm] above 0 and below the bore.
 * @returns Area [mm²].
 * @throws {@link InputError} `missing`, `not-finite`, `not-positive`, `unknown-option`; `out-of-range` where the rod is not below the bore.
 *
 * @example
 * ```ts
 * pistonArea({ bore: 40, rod: 20 }); // => 942.478
 * ```
 *
 * @see Elementary mechanics. Checked in `test/handbook/hydraulics.test.ts`.
 */
export function pistonArea(cylinder: Cylinder): number {
  requireOptions('pistonArea', cylinder, ['bore', 'rod'], 'cylinder');
  return pistonAreaOf('pistonArea', cylinder);
}

/** @internal Area of a cylinder that is part of other arguments, at a path with its point. */
export function pistonAreaOf(from: string, { bore, rod }: Cylinder, at = ''): number {
  const outer = requirePositive(from, `${at}bore`, bore);
  if (rod === undefined) return (Math.PI * outer ** 2) / 4;
  const inner = requirePositive(from, `${at}rod`, rod);
  if (inner >= outer) throw new InputError(from, `${at}rod`, 'out-of-range', `must be below bore (${outer})`, inner);
  return (Math.PI * (outer ** 2 - inner ** 2)) / 4;
}

/** @internal Efficiency of a cylinder, 1 where none is given. */
export function efficiencyOf(from: string, efficiency = 1, at = ''): number {
  const share = requireFinite(from, `${at}efficiency`, efficiency);
  if (share <= 0 || share > 1) throw new InputError(from, `${at}efficiency`, 'out-of-range', 'must be above 0 and at most 1', share);
  return share;
}
