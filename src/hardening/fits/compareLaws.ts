import { InputError, requireColumn, requireOptions, requireWords, success, type CurveColumns, type Outcome } from '../../base/index.js';
import { mean } from '../../numeric/index.js';
import { fitHockettSherby } from './fitHockettSherby.js';
import { fitHollomon } from './fitHollomon.js';
import { fitLudwik } from './fitLudwik.js';
import type { FitOptions, FitReason, FitSummary } from './fitShape.js';
import { fitSwift } from './fitSwift.js';
import { fitVoce } from './fitVoce.js';
import type { HardeningLaw } from '../laws/HardeningLaw.js';
import { hockettSherby } from '../laws/hockettSherby.js';
import { hollomon } from '../laws/hollomon.js';
import { ludwik } from '../laws/ludwik.js';
import { swift } from '../laws/swift.js';
import { voce } from '../laws/voce.js';

/** A law with its fit. */
export interface FittedLaw {
  /** The law with its fitted parameters. */
  readonly law: HardeningLaw;
  /** The parameters by name. */
  readonly parameters: Readonly<Record<string, number>>;
  /** Errors, correlations, sums. */
  readonly fit: FitSummary<string>;
}

const one =
  <Parameters extends object>(
    names: readonly (keyof Parameters & string)[],
    fit: (flow: CurveColumns, options: FitOptions<never>) => Outcome<Parameters & FitSummary<string>, FitReason>,
    law: (parameters: Parameters) => HardeningLaw,
  ) =>
  (flow: CurveColumns, options: FitOptions<never>): Outcome<FittedLaw, FitReason> => {
    const found = fit(flow, options);
    if (!found.ok) return found;
    const parameters = Object.fromEntries(names.map((name) => [name, found[name]])) as Parameters & Record<string, number>;
    const { standardErrors, correlations, tradeOffs, residualSumOfSquares, rSquared, aicc, points, range, converged, iterations } = found;
    const summary = { standardErrors, correlations, tradeOffs, residualSumOfSquares, rSquared, aicc, points, range, converged, iterations };
    return success({ law: law(found), parameters, fit: summary });
  };

/** The laws that are compared; a new one needs its name in {@link LawName} and a line here. */
const laws: Readonly<Record<LawName, (flow: CurveColumns, options: FitOptions<never>) => Outcome<FittedLaw, FitReason>>> = {
  Hollomon: one(['strengthCoefficient', 'exponent'], fitHollomon, hollomon),
  Ludwik: one(['yieldStress', 'strengthCoefficient', 'exponent'], fitLudwik, ludwik),
  Swift: one(['strengthCoefficient', 'prestrain', 'exponent'], fitSwift, swift),
  Voce: one(['saturationStress', 'initialStress', 'rate'], fitVoce, voce),
  'Hockett-Sherby': one(['saturationStress', 'initialStress', 'rate', 'power'], fitHockettSherby, hockettSherby),
};

/** Names of the laws that {@link compareLaws} knows. */
export type LawName = 'Hollomon' | 'Ludwik' | 'Swift' | 'Voce' | 'Hockett-Sherby';

/** Options of {@link compareLaws}. */
export interface CompareOptions extends Pick<FitOptions<never>, 'from' | 'to' | 'weights' | 'uniformStrain'> {
  /** Which laws; default all. */
  readonly laws?: readonly LawName[] | undefined;
  /** True plastic strains that the laws are extrapolated to [mm/mm]; default 0.1, 0.2, 0.5 and 1. */
  readonly strains?: ArrayLike<number> | undefined;
}

/** One law of a comparison. */
export interface ComparedLaw extends FittedLaw {
  /** Its name. */
  readonly name: LawName;
  /** AICc above the lowest of all [1]; beyond 10 the data hardly support the law. */
  readonly difference: number;
  /** Akaike weight: the probability of the law among those compared, 0 to 1 [1]. */
  readonly weight: number;
  /** Stress at each of the strains [MPa]. */
  readonly extrapolated: Float64Array;
}

/** A law that could not be fitted. */
export interface FailedLaw {
  /** Its name. */
  readonly name: LawName;
  /** Why, as a word. */
  readonly reason: FitReason;
  /** Why, in a sentence. */
  readonly message: string;
}

/** Laws compared on one flow curve. */
export interface LawComparison {
  /** Best first. */
  readonly ranked: readonly ComparedLaw[];
  /** Laws that could not be fitted, and why. */
  readonly failed: readonly FailedLaw[];
  /** True plastic strains of the extrapolation [mm/mm]. */
  readonly strains: Float64Array;
  /** Highest less lowest stress of the laws at each strain, as a share of their mean [1]. */
  readonly spread: Float64Array;
}

const STRAINS = [0.1, 0.2, 0.5, 1];

/**
 * Fits several laws to one flow curve, ranks them, and shows how far apart they run beyond it.
 *
 * $$ \mathrm{AIC_c} = N \ln \frac{\sum r^2}{N} + 2k + \frac{2k(k+1)}{N-k-1}, \qquad w_i \propto \mathrm{e}^{-\Delta_i / 2} $$
 *
 * @remarks
 * k counts the parameters and the scatter. The rank tells which law follows the measured part with the fewest parameters; it tells nothing of the
 * extrapolation, whose doubt is the spread between the laws. Correlated noise makes the weights too sure of themselves.
 *
 * @param flow - True plastic strain [mm/mm] and true stress [MPa], each above 0, as `flowCurve` makes them.
 * @param options - Which laws; range of true plastic strain `from` below `to` [mm/mm]; weights above 0 [1]; strains of the extrapolation [mm/mm].
 * @returns Laws in order, those that failed with their reason, strains, spread.
 * @throws {@link InputError} `not-finite`, `not-positive`, `unequal-lengths`, `out-of-range`, `unknown-option`, `empty`.
 *
 * @example
 * ```ts
 * const strain = Array.from({ length: 60 }, (_, i) => 0.002 + 0.003 * i);
 * const stress = strain.map((e, i) => 400 - 250 * Math.exp(-10 * e) + (i % 2 === 0 ? 0.1 : -0.1));
 * compareLaws({ strain, stress }).ranked[0]?.name; // => 'Voce'
 * ```
 *
 * @see Burnham and Anderson, Model Selection and Multimodel Inference (2002). Checked in `test/hardening/fits.test.ts`.
 */
export function compareLaws(flow: CurveColumns, options: CompareOptions = {}): LawComparison {
  const from = 'compareLaws';
  requireOptions(from, options, ['from', 'to', 'weights', 'uniformStrain', 'laws', 'strains']);
  const { laws: wanted = Object.keys(laws) as LawName[], strains: given = STRAINS, ...rest } = options;
  requireWords(from, 'options.laws', wanted, Object.keys(laws) as LawName[]).forEach((name, k) => {
    // twice the same law would have twice the weight
    if (wanted.indexOf(name) < k) throw new InputError(from, `options.laws[${k}]`, 'out-of-range', 'must not be named twice', name);
  });
  if (wanted.length === 0) throw new InputError(from, 'options.laws', 'empty', 'must name a law', 0);
  const strains = requireColumn(from, 'options.strains', given, { positive: true }).slice();
  const tried = wanted.map((name) => ({ name, found: laws[name](flow, rest) }));
  const fitted = tried.flatMap(({ name, found }) => (found.ok ? [{ name, ...found }] : []));
  const lowest = Math.min(...fitted.map(({ fit }) => fit.aicc));
  const belief = (aicc: number): number => Math.exp(-(aicc - lowest) / 2);
  const sum = fitted.reduce((total, { fit }) => total + belief(fit.aicc), 0);
  const ranked = fitted
    .map(({ name, law, parameters, fit }) => ({
      name,
      law,
      parameters,
      fit,
      difference: fit.aicc - lowest,
      weight: belief(fit.aicc) / sum,
      extrapolated: strains.map(law.stress),
    }))
    .sort((a, b) => a.fit.aicc - b.fit.aicc);
  return {
    ranked,
    failed: tried.flatMap(({ name, found }) => (found.ok ? [] : [{ name, reason: found.reason, message: found.message }])),
    strains,
    spread: strains.map((_, k) => {
      const values = ranked.map(({ extrapolated }) => extrapolated[k]!);
      return values.length > 1 ? (Math.max(...values) - Math.min(...values)) / mean(values) : 0;
    }),
  };
}
