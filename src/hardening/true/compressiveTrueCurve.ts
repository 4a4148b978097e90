import type { CurveColumns, StressStrainCurve } from '../../base/index.js';
import { trueColumns, type TrueCurveOptions } from './trueCurve.js';

/**
 * True strain and true stress of a compression curve, compression counting positive.
 *
 * $$ \varepsilon = -\ln(1 - e), \qquad \sigma = R\,(1 - e) $$
 *
 * @remarks
 * The same as `compressiveTrueStrain` and `compressiveTrueStress` with $h = h_0 (1 - e)$. No neck limits it, but friction, barrelling and
 * buckling do.
 *
 * @param curve - Compression e [mm/mm], from the shifted origin and below 1, and stress R [MPa] on the original area; finite.
 * @param options - First and last sample, both included, counted from 0.
 * @returns True strain [mm/mm] and true stress [MPa], one pair for each sample from `from` to `to`.
 * @throws {@link InputError} `not-finite`, `empty`, `unequal-lengths`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * compressiveTrueCurve({ strain: [0.1, 0.2], stress: [400, 509.296] }).stress; // => [360, 407.437]
 * ```
 *
 * @see ASTM E9; textbooks. Checked in `test/handbook/compression.test.ts`.
 */
export function compressiveTrueCurve(curve: CurveColumns, options: TrueCurveOptions = {}): StressStrainCurve {
  return trueColumns('compressiveTrueCurve', curve, options, -1);
}
