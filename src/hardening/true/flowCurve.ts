import {
  requireColumn,
  requireObject,
  requireOptions,
  requirePositive,
  type CurveColumns,
  type StressStrainCurve,
} from '../../base/index.js';
import { sampleRange } from './sampleRange.js';

/** What the elastic part is taken off with, and where. */
export interface FlowOptions {
  /** Slope of the curve's elastic line [MPa]. */
  readonly modulus: number;
  /** First sample to take; default 0. */
  readonly from?: number | undefined;
  /** Last sample to take, included: usually that of the maximum force; default the last. */
  readonly to?: number | undefined;
}

/** A flow curve: true plastic strain and true stress. */
export interface FlowCurve extends StressStrainCurve {
  /** Samples of the range left out because their plastic strain or stress was not above 0. */
  readonly leftOut: number;
  /** Index in the given curve of the first sample that stayed; absent where none did. */
  readonly first?: number | undefined;
}

/**
 * Flow curve: true stress against true plastic strain.
 *
 * $$ \varepsilon_p = \varepsilon - \frac{\sigma}{E} $$
 *
 * @remarks
 * The slope must be that of the same curve. Samples whose plastic strain or stress is not above 0 carry no flow and are left out;
 * `leftOut` counts them. Plastic strain need not rise from sample to sample: noise and pauses stay as they are.
 *
 * @param curve - True total strain [mm/mm] and true stress [MPa], as `trueCurve` makes them.
 * @param options - `modulus` [MPa] above 0; first and last sample, both included, counted from 0.
 * @returns True plastic strain [mm/mm] and true stress [MPa], in the order of the samples.
 * @throws {@link InputError} `missing`, `not-finite`, `not-positive`, `unequal-lengths`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * flowCurve({ strain: [0.001, 0.052], stress: [200, 400] }, { modulus: 200000 }).strain; // => [0.050]
 * ```
 *
 * @see ISO 10275. Checked in `test/handbook/hardening.test.ts`.
 */
export function flowCurve(curve: CurveColumns, options: FlowOptions): FlowCurve {
  const from = 'flowCurve';
  requireObject(from, 'curve', curve);
  const strain = requireColumn(from, 'curve.strain', curve.strain);
  const stress = requireColumn(from, 'curve.stress', curve.stress, { length: strain.length });
  requireOptions(from, options, ['modulus', 'from', 'to']);
  const modulus = requirePositive(from, 'options.modulus', options.modulus);
  const [begin, last] = sampleRange(from, options, strain.length);
  return flowKernel({ strain, stress }, modulus, begin, last);
}

/** @internal {@link flowCurve} of a checked curve, from one sample to another (included). */
export function flowKernel({ strain, stress }: StressStrainCurve, modulus: number, begin: number, last: number): FlowCurve {
  const given = last - begin + 1;
  const plastic = new Float64Array(given);
  const flow = new Float64Array(given);
  let n = 0;
  let first: number | undefined;
  for (let i = begin; i <= last; i += 1) {
    const p = strain[i]! - stress[i]! / modulus;
    // at the elastic line itself only rounding is left of the difference
    if (p <= 1e-12 || stress[i]! <= 0) continue;
    first ??= i;
    plastic[n] = p;
    flow[n] = stress[i]!;
    n += 1;
  }
  const kept = (column: Float64Array): Float64Array => (n === given ? column : column.slice(0, n));
  return { strain: kept(plastic), stress: kept(flow), leftOut: given - n, ...(first === undefined ? {} : { first }) };
}
