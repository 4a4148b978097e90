import { failure, requireOptions, success, type CurveColumns, type Outcome } from '../../base/index.js';
import { fitSwift, type SwiftFit } from './fitSwift.js';
import { fitVoce, type VoceFit } from './fitVoce.js';
import type { FitOptions, FitReason } from './fitShape.js';
import { flowRange } from './flowRange.js';
import type { HardeningLaw } from '../laws/HardeningLaw.js';
import { mixedLaw } from '../laws/mixedLaw.js';
import { swift } from '../laws/swift.js';
import { voce } from '../laws/voce.js';

/** Options of {@link fitSwiftVoce}. */
export type MixtureOptions = Pick<FitOptions<never>, 'from' | 'to' | 'uniformStrain'>;

/** Swift's and Voce's laws fitted to a flow curve, and their mixture. */
export interface SwiftVoceFit {
  /** Weight of Swift's law, from 0 to 1 [1]. */
  readonly weight: number;
  /** Standard error of the weight by the scatter about the mixture, the laws taken as they are [1]. */
  readonly standardError: number;
  /** The mixture. */
  readonly law: HardeningLaw;
  /** Swift's part. */
  readonly swift: SwiftFit;
  /** Voce's part. */
  readonly voce: VoceFit;
  /** Sum of squared residuals about the mixture [MPa²]. */
  readonly residualSumOfSquares: number;
}

/** Where the two laws differ by less than this share of the stress everywhere, the weight cannot be found. */
const APART = 1e-9;

/**
 * Fits the weighted average of Swift's and Voce's laws to a flow curve.
 *
 * $$ \sigma = w\, K (\varepsilon_0 + \varepsilon_p)^n + (1 - w) \left[ \sigma_s - (\sigma_s - \sigma_0) \mathrm{e}^{-\theta \varepsilon_p} \right], \qquad \sum
 * (\sigma_i - \sigma(\varepsilon_{p,i}))^2 \to \min_w $$
 *
 * @remarks
 * Each law is fitted by itself, then the weight; all seven parameters at once would not be determined, since the weight and the stresses of the laws only
 * occur as products. Before the neck both laws fit nearly as well, so the weight rests on little: see its standard error, and choose it by a measured
 * point past the neck (`weightToPoint`) where there is one.
 *
 * @param flow - True plastic strain [mm/mm] and true stress [MPa], each above 0, as `flowCurve` makes them.
 * @param options - Range of true plastic strain `from` below `to` [mm/mm]; uniform strain [mm/mm].
 * @returns Weight with its standard error, the mixture and both laws; or the reason why one of them was not fitted, or `undetermined`.
 * @throws {@link InputError} `not-finite`, `not-positive`, `unequal-lengths`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * const strain = Array.from({ length: 80 }, (_, i) => 0.002 + 0.002 * i);
 * const stress = strain.map((e) => 0.4 * 640 * (0.004 + e) ** 0.21 + 0.6 * (520 - 280 * Math.exp(-14 * e)));
 * const fit = required(fitSwiftVoce({ strain, stress }));
 * fit.residualSumOfSquares < fit.swift.residualSumOfSquares; // => true
 * ```
 *
 * @see Common practice in sheet forming. Checked in `test/hardening/fits.test.ts`.
 */
export function fitSwiftVoce(flow: CurveColumns, options: MixtureOptions = {}): Outcome<SwiftVoceFit, FitReason> {
  const from = 'fitSwiftVoce';
  requireOptions(from, options, ['from', 'to', 'uniformStrain']);
  const { strain, stress } = flowRange(from, flow, options);
  const one = fitSwift(flow, options);
  if (!one.ok) return one;
  const other = fitVoce(flow, options);
  if (!other.ok) return other;
  const first = swift(one);
  const second = voce(other);
  let apart = 0;
  let along = 0;
  let size = 0;
  strain.forEach((e, i) => {
    const difference = first.stress(e) - second.stress(e);
    apart += difference * difference;
    along += difference * (stress[i]! - second.stress(e));
    size += stress[i]! * stress[i]!;
  });
  if (!(apart > APART ** 2 * size)) return failure('undetermined', 'both laws are the same on this curve: any weight would do');
  const weight = Math.min(1, Math.max(0, along / apart));
  const law = mixedLaw(first, second, weight);
  const rest = strain.reduce((sum, e, i) => sum + (stress[i]! - law.stress(e)) ** 2, 0);
  return success({
    weight,
    standardError: Math.sqrt(rest / Math.max(1, strain.length - 7) / apart),
    law,
    swift: one,
    voce: other,
    residualSumOfSquares: rest,
  });
}
