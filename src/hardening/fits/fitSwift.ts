import type { CurveColumns, Outcome } from '../../base/index.js';
import { fitShape, type FitOptions, type FitReason, type FitSummary } from './fitShape.js';
import { geometric, projected, type LawPoints, type LawShape } from './lawShape.js';
import type { SwiftParameters } from '../laws/swift.js';

type Name = keyof SwiftParameters;

/** Swift's law fitted to a flow curve. */
export interface SwiftFit extends SwiftParameters, FitSummary<Name> {}

/** Slope of the line through the logarithms of stress and of strain beyond a prestrain. */
function exponentFor({ strain, stress }: LawPoints, prestrain: number): number {
  let [n, sx, sy, sxx, sxy] = [0, 0, 0, 0, 0];
  for (let i = 0; i < strain.length; i += 1) {
    const x = Math.log(prestrain + strain[i]!);
    const y = Math.log(stress[i]!);
    n += 1;
    sx += x;
    sy += y;
    sxx += x * x;
    sxy += x * y;
  }
  return (sxy - (sx * sy) / n) / (sxx - (sx * sx) / n);
}

/** @internal */
export const swiftShape: LawShape<Name> = {
  names: ['strengthCoefficient', 'prestrain', 'exponent'],
  lowest: [0, 0, 0],
  evaluate: ({ strain, first, end }, parameters, { stress, rows }) => {
    const K = parameters[0]!;
    const e0 = parameters[1]!;
    const n = parameters[2]!;
    const [d0, d1, d2] = rows;
    for (let i = first, k = 0; i < end; i += 1, k += 1) {
      const e = strain[i]!;
      const sum = e0 + e;
      const logarithm = Math.log(sum);
      const power = Math.exp(n * logarithm);
      d0[k] = power;
      d1[k] = (n * K * power) / sum;
      d2[k] = K * power * logarithm;
      stress[k] = K * power;
    }
  },
  starts: (points, held) => {
    const span = points.strain.reduce((most, e) => Math.max(most, e), 0);
    const prestrains = held?.prestrain === undefined ? [0, ...geometric(1e-4 * span, 3 * span, 16)] : [held.prestrain];
    return prestrains.map((e0) => {
      const n = held?.exponent ?? Math.max(1e-3, exponentFor(points, e0));
      return [held?.strengthCoefficient ?? projected(points, (e) => (e0 + e) ** n), e0, n];
    });
  },
  flat: ([K, , n]) => !(K! > 0) || !(n! > 1e-9),
};

/**
 * Fits Swift's law to a flow curve.
 *
 * $$ \sigma = K (\varepsilon_0 + \varepsilon_p)^n, \qquad \sum w_i (\sigma_i - \sigma(\varepsilon_{p,i}))^2 \to \min $$
 *
 * @remarks
 * Least squares in stress; no start is needed: the prestrain is scanned, exponent and coefficient follow for each, and Gauss-Newton steps on all
 * samples end the search (more than 5000 are stood for by weighted points that keep their sum of squares). A prestrain that ends at 0 means that
 * Hollomon's law does as well.
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
 * const stress = strain.map((e) => 500 * (0.01 + e) ** 0.2);
 * required(fitSwift({ strain, stress })).prestrain; // => 0.0100
 * ```
 *
 * @see Swift, J. Mech. Phys. Solids 1 (1952) 1. Checked in `test/hardening/fits.test.ts`.
 */
export function fitSwift(flow: CurveColumns, options: FitOptions<Name> = {}): Outcome<SwiftFit, FitReason> {
  return fitShape('fitSwift', swiftShape, flow, options);
}
