import {
  failure,
  requireExtension,
  requireFinite,
  requireOptions,
  success,
  type CurveColumns,
  type Outcome,
  type StressStrainCurve,
} from '../../base/index.js';
import { firstReaching, parabolaNear } from '../../numeric/index.js';
import type { CurvePoint } from './proofStrength.js';
import { requireCurve } from '../requireCurve.js';

/** Where a total-extension strength is read. */
export interface TotalExtension {
  /** Total extension from the shifted origin [mm/mm], 0.05 at most; default 0.005. */
  readonly totalExtension?: number | undefined;
  /** Strain where the elastic line meets zero stress [mm/mm]; default 0. */
  readonly strainShift?: number | undefined;
}

/** @internal {@link totalExtensionStrength} on a checked curve. */
export function totalExtensionStrengthKernel(
  { strain, stress }: StressStrainCurve,
  total: number,
  shift: number,
  end: number,
): Outcome<CurvePoint, 'not-reached'> {
  const at = total + shift;
  const i = firstReaching(strain, at, 0, end);
  if (i === end || i === 0) return failure('not-reached', `the record does not pass a strain of ${total}`);
  const share = (at - strain[i - 1]!) / (strain[i]! - strain[i - 1]!);
  const chord = stress[i - 1]! + share * (stress[i]! - stress[i - 1]!);
  const near = parabolaNear(strain, stress, i, at, [total / 32, total / 16, total / 8]);
  return success({ stress: near?.value ?? chord, strain: total });
}

/**
 * Proof strength, total extension: the stress at a total extension counted from the shifted origin.
 *
 * $$ R_t = R(e_t) $$
 *
 * @remarks
 * Of little use on raw crosshead travel: the strain of the frame is in it.
 *
 * @param curve - Strain [mm/mm] and stress [MPa] as recorded, at least 2 samples, finite.
 * @param where - `totalExtension` [mm/mm] above 0 and 0.05 at most, default 0.005; `strainShift` [mm/mm], default 0.
 * @returns Stress [MPa] and strain from the shifted origin, or `not-reached`.
 * @throws {@link InputError} `not-finite`, `out-of-range`, `not-positive`, `unequal-lengths`, `unknown-option`.
 *
 * @example
 * ```ts
 * required(totalExtensionStrength({ strain: [0, 0.004, 0.006], stress: [0, 280, 290] })).stress; // => 285
 * ```
 *
 * @see ISO 6892-1:2019, proof strength, total extension. Checked in `test/handbook/tension.test.ts`.
 */
export function totalExtensionStrength(curve: CurveColumns, where: TotalExtension = {}): Outcome<CurvePoint, 'not-reached'> {
  const from = 'totalExtensionStrength';
  const checked = requireCurve(from, curve);
  requireOptions(from, where, ['totalExtension', 'strainShift'], 'where');
  const total = requireExtension(from, 'where.totalExtension', where.totalExtension ?? 0.005);
  const shift = requireFinite(from, 'where.strainShift', where.strainShift ?? 0);
  return totalExtensionStrengthKernel(checked, total, shift, checked.strain.length);
}
