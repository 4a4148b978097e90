import { requireNonNegative, requireOneOf } from '../../base/index.js';

/** Groups of materials that take the same force-diameter indices. */
export type BrinellMaterial = 'steel, nickel and titanium alloys' | 'cast iron' | 'copper alloys' | 'light metals' | 'lead and tin';

/** @internal Indices of a group from one hardness up to another. */
export interface IndexRange {
  readonly material: BrinellMaterial;
  readonly from: number;
  readonly to: number;
  readonly indices: readonly number[];
  /** Smallest ball [mm], where not every one serves. */
  readonly leastBall?: number;
}

/** Cast iron has coarse phases: a ball of 1 mm would test single ones. */
const CAST_IRON_BALL = 2.5;

/** @internal ISO 6506-1, selection of the force-diameter index (from memory). */
export const indexTable: readonly IndexRange[] = [
  { material: 'steel, nickel and titanium alloys', from: 0, to: Infinity, indices: [30] },
  { material: 'cast iron', from: 0, to: 140, indices: [10], leastBall: CAST_IRON_BALL },
  { material: 'cast iron', from: 140, to: Infinity, indices: [30], leastBall: CAST_IRON_BALL },
  { material: 'copper alloys', from: 0, to: 35, indices: [5] },
  { material: 'copper alloys', from: 35, to: 200, indices: [10] },
  { material: 'copper alloys', from: 200, to: Infinity, indices: [30] },
  { material: 'light metals', from: 0, to: 35, indices: [2.5] },
  { material: 'light metals', from: 35, to: 80, indices: [5, 10, 15] },
  { material: 'light metals', from: 80, to: Infinity, indices: [10, 15] },
  { material: 'lead and tin', from: 0, to: Infinity, indices: [1] },
];

/** @internal Names of the groups. */
export const brinellMaterials: readonly BrinellMaterial[] = [...new Set(indexTable.map(({ material }) => material))];

/**
 * Usual force-diameter indices 0.102 F/D² for a material of a hardness.
 *
 * @remarks
 * The table of the standard, from memory. Where two ranges meet, both serve.
 *
 * @param material - Group of the material.
 * @param hardness - Brinell hardness [1], 0 or more.
 * @returns The indices, lowest first.
 * @throws {@link InputError} `missing`, `not-finite`, `out-of-range`.
 *
 * @example
 * ```ts
 * brinellIndices('light metals', 60); // => [5, 10, 15]
 * ```
 *
 * @see ISO 6506-1:2014, force-diameter index for different materials (from memory). Checked in `test/methods/brinell.test.ts`.
 */
export function brinellIndices(material: BrinellMaterial, hardness: number): number[] {
  const from = 'brinellIndices';
  requireOneOf(from, 'material', material, brinellMaterials);
  requireNonNegative(from, 'hardness', hardness);
  const fitting = indexTable.filter((one) => one.material === material && hardness >= one.from && hardness <= one.to);
  return [...new Set(fitting.flatMap(({ indices }) => indices))].sort((a, b) => a - b);
}
