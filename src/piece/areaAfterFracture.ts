import { InputError, requireColumn, requireOptions, requirePositive } from '../base/index.js';
import { mean } from '../numeric/index.js';
import { effectiveThickness } from './effectiveThickness.js';

/** What was measured across a neck. */
export interface NeckReadings {
  /** Diameters of a round neck [mm], two at right angles or more. */
  readonly diameters?: ArrayLike<number> | undefined;
  /** Width of a flat neck [mm]. */
  readonly width?: number | undefined;
  /** Thickness of a flat neck [mm]: one reading, or edge, middle, edge. */
  readonly thickness?: number | ArrayLike<number> | undefined;
}

/** The thickness that counts: the one reading, or the effective one of three. */
function throughNeck(from: string, path: string, thickness: number | ArrayLike<number>): number {
  if (typeof thickness === 'number') return requirePositive(from, path, thickness);
  const read = requireColumn(from, path, thickness, { positive: true });
  if (read.length !== 1 && read.length !== 3)
    throw new InputError(from, path, 'too-few', 'must be one reading, or three: edge, middle, edge', read.length);
  const [edge, middle = edge!, otherEdge = edge!] = read;
  return effectiveThickness({ edge: edge!, middle, otherEdge });
}

/** @internal {@link areaAfterFracture} for a caller that names where the readings stand. */
export function neckArea(from: string, path: string, neck: NeckReadings): number {
  const { diameters, width, thickness } = neck;
  const across = width === undefined ? undefined : requirePositive(from, `${path}width`, width);
  const through = thickness === undefined ? undefined : throughNeck(from, `${path}thickness`, thickness);
  if (diameters === undefined) return requirePositive(from, `${path}width`, across) * requirePositive(from, `${path}thickness`, through);
  const read = requireColumn(from, `${path}diameters`, diameters, { positive: true });
  if (across !== undefined || through !== undefined)
    throw new InputError(from, `${path}width`, 'ambiguous', 'and thickness must not stand beside diameters', width ?? thickness);
  return (Math.PI / 4) * mean(read) ** 2;
}

/**
 * Least cross-sectional area after fracture, from readings across the neck.
 *
 * $$ S_u = \frac{\pi}{4} \left( \frac{d_1 + d_2}{2} \right)^2 \text{ (round)}, \qquad S_u = b_u\, t_u \text{ (flat)} $$
 *
 * @remarks
 * With three readings of the thickness (edge, middle, edge) the effective one counts, for corners that stand higher than a middle that is pulled in.
 *
 * @param neck - `diameters` [mm], at least one; or `width` and `thickness` [mm]; above 0.
 * @returns Su [mm²].
 * @throws {@link InputError} `missing`, `empty`, `not-finite`, `not-positive`, `wrong-type`, `unknown-option`; `ambiguous` with both; `too-few` with two or more than three readings of thickness.
 *
 * @example
 * ```ts
 * areaAfterFracture({ diameters: [4.7, 4.9] }); // => 18.096
 * areaAfterFracture({ width: 10, thickness: [2.6, 2.3, 2.6] }); // => 24
 * ```
 *
 * @see ISO 6892-1:2019, percentage reduction of area; ASTM E8/E8M, reduction of area. Checked in `test/handbook/after-fracture.test.ts`.
 */
export function areaAfterFracture(neck: NeckReadings): number {
  requireOptions('areaAfterFracture', neck, ['diameters', 'width', 'thickness'], 'neck');
  return neckArea('areaAfterFracture', '', neck);
}
