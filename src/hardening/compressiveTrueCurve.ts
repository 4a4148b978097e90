import { InputError, requireColumn, requireObject, requireOptions, type CurveColumns, type StressStrainCurve } from '../base/index.js';
import { sampleRange } from './sampleRange.js';
import type { TrueCurveOptions } from './trueCurve.js';

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
 * @param options - First and last sample.
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
  const from = 'compressiveTrueCurve';
  requireObject(from, 'curve', curve);
  const strain = requireColumn(from, 'curve.strain', curve.strain);
  const stress = requireColumn(from, 'curve.stress', curve.stress, { length: strain.length });
  requireOptions(from, options, ['from', 'to']);
  const [first, last] = sampleRange(from, options, strain.length);
  const n = last - first + 1;
  const result = { strain: new Float64Array(n), stress: new Float64Array(n) };
  for (let i = 0; i < n; i += 1) {
    const e = strain[first + i]!;
    if (e >= 1) throw new InputError(from, `curve.strain[${first + i}]`, 'out-of-range', 'must be below 1', e);
    result.strain[i] = -Math.log1p(-e);
    result.stress[i] = stress[first + i]! * (1 - e);
  }
  return result;
}
