import { InputError, requireColumn, requireObject, requireOptions, type CurveColumns, type StressStrainCurve } from '../../base/index.js';
import { sampleRange } from './sampleRange.js';

/** Options of {@link trueCurve}. */
export interface TrueCurveOptions {
  /** First sample to convert; default 0. */
  readonly from?: number | undefined;
  /** Last sample to convert, included: usually that of the maximum force; default the last. */
  readonly to?: number | undefined;
}

/** @internal True strain and stress of columns in which tension (sign 1) or compression (sign -1) counts as positive. */
export function trueColumns(from: string, curve: CurveColumns, options: TrueCurveOptions, sign: 1 | -1): StressStrainCurve {
  requireObject(from, 'curve', curve);
  const strain = requireColumn(from, 'curve.strain', curve.strain);
  const stress = requireColumn(from, 'curve.stress', curve.stress, { length: strain.length });
  requireOptions(from, options, ['from', 'to']);
  const [first, last] = sampleRange(from, options, strain.length);
  for (let i = first; i <= last; i += 1)
    // nothing is left of a length that shrank by itself
    if (sign * strain[i]! <= -1)
      throw new InputError(from, `curve.strain[${i}]`, 'out-of-range', sign === 1 ? 'must be above -1' : 'must be below 1', strain[i]!);
  return trueKernel({ strain: strain.subarray(first, last + 1), stress: stress.subarray(first, last + 1) }, sign);
}

/** @internal {@link trueColumns} of checked columns. */
export function trueKernel({ strain, stress }: StressStrainCurve, sign: 1 | -1): StressStrainCurve {
  const n = strain.length;
  const result = { strain: new Float64Array(n), stress: new Float64Array(n) };
  for (let i = 0; i < n; i += 1) {
    const e = sign * strain[i]!;
    result.strain[i] = sign * Math.log1p(e);
    result.stress[i] = stress[i]! * (1 + e);
  }
  return result;
}

/** @internal Whether something is left of the length at every sample, the last included: swapped columns and wild readings have no true curve. */
export function hasTrueCurve(strain: Float64Array, first = 0, last = strain.length - 1): boolean {
  for (let i = first; i <= last; i += 1) if (!(strain[i]! > -1)) return false;
  return true;
}

/**
 * True strain and true stress of a stress-strain curve.
 *
 * $$ \varepsilon = \ln(1 + e), \qquad \sigma = R\,(1 + e) $$
 *
 * @remarks
 * Valid up to the maximum force; give its sample as `to`.
 *
 * @param curve - Engineering strain [mm/mm], from the shifted origin and above -1, and stress [MPa]; finite.
 * @param options - First and last sample, both included, counted from 0.
 * @returns True total strain [mm/mm] and true stress [MPa], one pair for each sample from `from` to `to`.
 * @throws {@link InputError} `not-finite`, `empty`, `unequal-lengths`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * trueCurve({ strain: [0.1, 0.2], stress: [380, 400] }).stress; // => [418, 480]
 * ```
 *
 * @see ASTM E646; textbooks. Checked in `test/handbook/hardening.test.ts`.
 */
export function trueCurve(curve: CurveColumns, options: TrueCurveOptions = {}): StressStrainCurve {
  return trueColumns('trueCurve', curve, options, 1);
}
