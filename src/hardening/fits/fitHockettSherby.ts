import type { CurveColumns, Outcome } from '../../base/index.js';
import { fitShape, type FitOptions, type FitReason, type FitSummary } from './fitShape.js';
import type { HockettSherbyParameters } from '../laws/hockettSherby.js';
import { geometric, projectedLine, type LawShape } from './lawShape.js';

type Name = keyof HockettSherbyParameters;

/** Hockett and Sherby's law fitted to a flow curve. */
export interface HockettSherbyFit extends HockettSherbyParameters, FitSummary<Name> {}

/** @internal */
export const hockettSherbyShape: LawShape<Name> = {
  names: ['saturationStress', 'initialStress', 'rate', 'power'],
  lowest: [0, 0, 0, 0],
  evaluate: ({ logarithm: logarithms, first, end }, parameters, { stress, rows }) => {
    const top = parameters[0]!;
    const initial = parameters[1]!;
    const N = parameters[2]!;
    const p = parameters[3]!;
    const [d0, d1, d2, d3] = rows;
    for (let i = first, k = 0; i < end; i += 1, k += 1) {
      const logarithm = logarithms[i]!;
      const power = Math.exp(p * logarithm);
      const left = Math.exp(-N * power);
      const rise = top - initial;
      d0[k] = 1 - left;
      d1[k] = left;
      d2[k] = rise * power * left;
      d3[k] = rise * N * power * logarithm * left;
      stress[k] = top - rise * left;
    }
  },
  starts: (points, held) => {
    const span = points.strain.reduce((most, e) => Math.max(most, e), 0);
    const powers = held?.power === undefined ? [0.3, 0.45, 0.6, 0.8, 1, 1.4] : [held.power];
    return powers.flatMap((p) => {
      const rates = held?.rate === undefined ? geometric(0.05 / span ** p, 30 / span ** p, 10) : [held.rate];
      return rates.map((N) => {
        const [top, fall] = projectedLine(points, (e) => Math.exp(-N * e ** p));
        return [held?.saturationStress ?? top, held?.initialStress ?? top + fall, N, p];
      });
    });
  },
  flat: ([top, first, N]) => !(top! > first!) || !(N! > 1e-9),
};

/**
 * Fits Hockett and Sherby's law to a flow curve.
 *
 * $$ \sigma = \sigma_s - (\sigma_s - \sigma_0) \exp(-N \varepsilon_p^{\,p}), \qquad \sum w_i (\sigma_i - \sigma(\varepsilon_{p,i}))^2 \to \min $$
 *
 * @remarks
 * Least squares in stress; no start is needed: rate and power are scanned together, the best stresses are known for each pair. Four parameters are
 * many for a tension curve, and they trade off: see `tradeOffs` and the standard errors before quoting one.
 *
 * @param flow - True plastic strain [mm/mm] and true stress [MPa], each above 0, as `flowCurve` makes them.
 * @param options - Range of true plastic strain `from` below `to` [mm/mm]; weights above 0 [1]; parameters held or bounded, in their units; uniform strain [mm/mm].
 * @returns Parameters, standard errors, correlations, trade-offs, sums; or `too-few-points`, `not-increasing`, `beyond-maximum`,
 * `no-hardening`, `undetermined`.
 * @throws {@link InputError} `not-finite`, `not-positive`, `unequal-lengths`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * const strain = [0.002, 0.005, 0.02, 0.05, 0.1, 0.15, 0.2];
 * const stress = strain.map((e) => 450 - 250 * Math.exp(-7 * e ** 0.8));
 * required(fitHockettSherby({ strain, stress })).power; // => 0.800
 * ```
 *
 * @see Hockett and Sherby, J. Mech. Phys. Solids 23 (1975) 87. Checked in `test/hardening/fits.test.ts`.
 */
export function fitHockettSherby(flow: CurveColumns, options: FitOptions<Name> = {}): Outcome<HockettSherbyFit, FitReason> {
  return fitShape('fitHockettSherby', hockettSherbyShape, flow, options);
}
