import type { CurveColumns, Outcome } from '../../base/index.js';
import { fitShape, type FitOptions, type FitReason, type FitSummary } from './fitShape.js';
import { geometric, projected, projectedLine, type LawShape } from './lawShape.js';
import type { LudwikParameters } from '../laws/ludwik.js';

type Name = keyof LudwikParameters;

/** Ludwik's law fitted to a flow curve. */
export interface LudwikFit extends LudwikParameters, FitSummary<Name> {}

/** @internal */
export const ludwikShape: LawShape<Name> = {
  names: ['yieldStress', 'strengthCoefficient', 'exponent'],
  lowest: [0, 0, 0],
  evaluate: ({ logarithm: logarithms, first, end }, parameters, { stress, rows }) => {
    const s0 = parameters[0]!;
    const K = parameters[1]!;
    const n = parameters[2]!;
    const [d0, d1, d2] = rows;
    for (let i = first, k = 0; i < end; i += 1, k += 1) {
      const logarithm = logarithms[i]!;
      const power = Math.exp(n * logarithm);
      d0[k] = 1;
      d1[k] = power;
      d2[k] = K * power * logarithm;
      stress[k] = s0 + K * power;
    }
  },
  starts: (points, held) => {
    const exponents = held?.exponent === undefined ? geometric(0.02, 4, 20) : [held.exponent];
    return exponents.map((n) => {
      const basis = (e: number): number => e ** n;
      const first = held?.yieldStress;
      if (first === undefined) {
        const [s0, K] = projectedLine(points, basis);
        // a law through the origin where the line would begin below it
        return s0 < 0 ? [0, projected(points, basis), n] : [s0, held?.strengthCoefficient ?? K, n];
      }
      return [first, held?.strengthCoefficient ?? projected({ ...points, stress: points.stress.map((y) => y - first) }, basis), n];
    });
  },
  flat: ([, K, n]) => !(K! > 0) || !(n! > 1e-9),
};

/**
 * Fits Ludwik's law to a flow curve.
 *
 * $$ \sigma = \sigma_0 + K \varepsilon_p^{\,n}, \qquad \sum w_i (\sigma_i - \sigma(\varepsilon_{p,i}))^2 \to \min $$
 *
 * @remarks
 * Least squares in stress; no start is needed: the exponent is scanned, the best yield stress and coefficient are known for each (variable
 * projection), and Gauss-Newton steps on all samples end the search (more than 5000 are stood for by weighted points that keep
 * their sum of squares). The three trade off where the range begins late: see `tradeOffs`.
 *
 * @param flow - True plastic strain [mm/mm] and true stress [MPa], each above 0, as `flowCurve` makes them.
 * @param options - Range of true plastic strain `from` below `to` [mm/mm]; weights above 0 [1]; parameters held or bounded, in their units; uniform strain [mm/mm].
 * @returns Parameters, standard errors, correlations, trade-offs, sums; or `too-few-points`, `not-increasing`, `beyond-maximum`,
 * `no-hardening`, `undetermined`.
 * @throws {@link InputError} `not-finite`, `not-positive`, `unequal-lengths`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * const strain = [0.005, 0.02, 0.05, 0.1, 0.15];
 * const stress = strain.map((e) => 200 + 400 * e ** 0.5);
 * required(fitLudwik({ strain, stress })).yieldStress; // => 200.0
 * ```
 *
 * @see Ludwik, Elemente der technologischen Mechanik (1909). Checked in `test/hardening/fits.test.ts`.
 */
export function fitLudwik(flow: CurveColumns, options: FitOptions<Name> = {}): Outcome<LudwikFit, FitReason> {
  return fitShape('fitLudwik', ludwikShape, flow, options);
}
