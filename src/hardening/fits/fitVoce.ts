import { requireOptions, type CurveColumns, type Outcome } from '../../base/index.js';
import { fitShape, withFixed, type FitOptions, type FitReason, type FitSummary } from './fitShape.js';
import { geometric, projected, projectedLine, type LawShape } from './lawShape.js';
import type { VoceParameters } from '../laws/voce.js';

type Name = keyof VoceParameters;

/** Options of {@link fitVoce}. */
export interface VoceOptions extends FitOptions<Name> {
  /** Initial stress [MPa], where it is known; the same as `fixed: { initialStress }`. */
  readonly initialStress?: number | undefined;
}

/** Voce's law fitted to a flow curve. */
export interface VoceFit extends VoceParameters, FitSummary<Name> {}

/** @internal */
export const voceShape: LawShape<Name> = {
  names: ['saturationStress', 'initialStress', 'rate'],
  lowest: [0, 0, 0],
  evaluate: ({ strain, first, end }, parameters, { stress, rows }) => {
    const top = parameters[0]!;
    const initial = parameters[1]!;
    const theta = parameters[2]!;
    const [d0, d1, d2] = rows;
    for (let i = first, k = 0; i < end; i += 1, k += 1) {
      const e = strain[i]!;
      const left = Math.exp(-theta * e);
      d0[k] = 1 - left;
      d1[k] = left;
      d2[k] = (top - initial) * e * left;
      stress[k] = top - (top - initial) * left;
    }
  },
  starts: (points, held) => {
    const span = points.strain.reduce((most, e) => Math.max(most, e), 0);
    const rates = held?.rate === undefined ? geometric(0.01 / span, 60 / span, 20) : [held.rate];
    return rates.map((theta) => {
      const first = held?.initialStress;
      if (first === undefined) {
        const [top, fall] = projectedLine(points, (e) => Math.exp(-theta * e));
        return [held?.saturationStress ?? top, top + fall, theta];
      }
      const above = { ...points, stress: points.stress.map((y) => y - first) };
      return [held?.saturationStress ?? first + projected(above, (e) => 1 - Math.exp(-theta * e)), first, theta];
    });
  },
  flat: ([top, first, theta]) => !(top! > first!) || !(theta! > 1e-9),
};

/**
 * Fits Voce's law to a flow curve.
 *
 * $$ \sigma = \sigma_s - (\sigma_s - \sigma_0) \mathrm{e}^{-\theta \varepsilon_p}, \qquad \sum w_i (\sigma_i - \sigma(\varepsilon_{p,i}))^2 \to
 * \min $$
 *
 * @remarks
 * Least squares in stress; no start is needed: the rate is scanned, the best stresses are known for each (variable projection), and Gauss-Newton
 * steps on all samples end the search (more than 5000 are stood for by weighted points that keep their sum of squares).
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
 * const stress = strain.map((e) => 400 - 250 * Math.exp(-10 * e));
 * required(fitVoce({ strain, stress })).saturationStress; // => 400.0
 * ```
 *
 * @see Voce, J. Inst. Metals 74 (1948) 537. Checked in `test/handbook/nist.test.ts` (Misra1a, BoxBOD) and `test/hardening/fits.test.ts`.
 */
export function fitVoce(flow: CurveColumns, options: VoceOptions = {}): Outcome<VoceFit, FitReason> {
  const from = 'fitVoce';
  requireOptions(from, options, ['from', 'to', 'weights', 'fixed', 'bounds', 'uniformStrain', 'initialStress']);
  const { initialStress, ...rest } = options;
  return fitShape(from, voceShape, flow, withFixed<Name>(from, rest, 'initialStress', initialStress));
}
