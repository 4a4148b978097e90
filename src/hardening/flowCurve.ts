import { requireColumn, requireObject, requireOptions, requirePositive, type CurveColumns, type StressStrainCurve } from '../base/index.js';

/** What the elastic part is taken off with. */
export interface FlowOptions {
  /** Slope of the curve's elastic line [MPa]. */
  readonly modulus: number;
}

/** A flow curve: true plastic strain and true stress. */
export interface FlowCurve extends StressStrainCurve {
  /** Samples left out because their plastic strain or stress was not above 0. */
  readonly leftOut: number;
}

/**
 * Flow curve: true stress against true plastic strain.
 *
 * $$ \varepsilon_p = \varepsilon - \frac{\sigma}{E} $$
 *
 * @remarks
 * The slope must be that of the same curve. Samples whose plastic strain or stress is not above 0 carry no flow and are left out;
 * `leftOut` counts them.
 *
 * @param curve - True total strain [mm/mm] and true stress [MPa], as `trueCurve` makes them.
 * @param options - `modulus` [MPa] above 0.
 * @returns True plastic strain [mm/mm] and true stress [MPa], in the order of the samples.
 * @throws {@link InputError} `missing`, `not-finite`, `not-positive`, `unequal-lengths`, `unknown-option`.
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
  requireOptions(from, options, ['modulus']);
  const modulus = requirePositive(from, 'options.modulus', options.modulus);
  const plastic = new Float64Array(strain.length);
  const flow = new Float64Array(strain.length);
  let n = 0;
  for (let i = 0; i < strain.length; i += 1) {
    const p = strain[i]! - stress[i]! / modulus;
    // at the elastic line itself only rounding is left of the difference
    if (p <= 1e-12 || stress[i]! <= 0) continue;
    plastic[n] = p;
    flow[n] = stress[i]!;
    n += 1;
  }
  return { strain: plastic.slice(0, n), stress: flow.slice(0, n), leftOut: strain.length - n };
}
