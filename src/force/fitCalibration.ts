import { failure, InputError, requireColumn, requireObject, requireOptions, success, type Finding, type Outcome } from '../base/index.js';
import { horner, type PolynomialFit } from '../numeric/index.js';
import { calibrationFit, mostDegree, SIGNIFICANCE } from './calibrationFit.js';
import { pairFindings } from './pairFindings.js';

/** Readings of the channel beside those of a reference instrument. */
export interface CalibrationPairs {
  /** What the channel indicated, in its own unit (MPa, V, N). */
  readonly indicated: ArrayLike<number>;
  /** Force of the reference [N]. */
  readonly reference: ArrayLike<number>;
}

/** Options of {@link fitCalibration}. */
export interface CalibrationOptions {
  /** Degree 1 to 3; default chosen by F-test. */
  readonly degree?: 1 | 2 | 3 | undefined;
  /** Weights of the squared residuals: all equal, by 1/F² for relative errors, or given; default `equal`. */
  readonly weights?: 'equal' | 'relative' | ArrayLike<number> | undefined;
}

/** A calibration of a force channel: plain data. */
export interface Calibration {
  /** Degree of the polynomial. */
  readonly degree: number;
  /** How the degree was chosen: given, or by F-tests. */
  readonly degreeBy: 'given' | 'F-test';
  /** Chance that those tests raise a degree that is enough [1], absent where the degree was given. */
  readonly significance?: number | undefined;
  /** Coefficients of ascending powers of the indicated value, to force [N]. */
  readonly coefficients: readonly number[];
  /** Covariance of the coefficients. */
  readonly covariance: readonly (readonly number[])[];
  /** Middle and half-width of the indicated values: u = (x − centre) / scale. */
  readonly centre: number;
  /** See `centre`. */
  readonly scale: number;
  /** Coefficients of ascending powers of u, which evaluate without loss of digits. */
  readonly scaled: readonly number[];
  /** Covariance of the scaled coefficients. */
  readonly scaledCovariance: readonly (readonly number[])[];
  /** Least and greatest indicated value: outside it the calibration says nothing. */
  readonly span: readonly [number, number];
  /** Reference less calibration, pair by pair [N]. */
  readonly residuals: Float64Array;
  /** Standard deviation of the (weighted) residuals [N; with weights 'relative' 1]. */
  readonly residualStandardDeviation: number;
  /** Its degrees of freedom, which are those of an uncertainty by this calibration: pairs less coefficients. */
  readonly degreesOfFreedom: number;
  /** How the squared residuals were weighted. */
  readonly weights: 'equal' | 'relative' | 'given';
  /** Coefficient of determination [1]. */
  readonly rSquared: number;
  /** Number of pairs. */
  readonly points: number;
  /** Doubts about the pairs, for `options.test.findings` of an analysis: outliers are named, never taken out. */
  readonly findings: readonly Finding[];
}

/** Why there is no calibration. */
export type CalibrationReason = 'too-few-points' | 'not-monotonic';

const FROM = 'fitCalibration';

/** Slopes below this share of the largest coefficient are rounding. */
const ROUNDING = 1e-12;

/** True where the polynomial rises or falls all the way through its span: its slope, a parabola in u at most, keeps its sign within ±1. */
function isMonotonic({ scaled }: PolynomialFit): boolean {
  const [, c1 = 0, c2 = 0, c3 = 0] = scaled;
  const vertex = c3 === 0 ? 0 : -c2 / (3 * c3);
  const places = [-1, 1, Math.abs(vertex) < 1 ? vertex : 0];
  const slopes = places.map((u) => horner([c1, 2 * c2, 3 * c3], u));
  const least = Math.min(...slopes);
  const most = Math.max(...slopes);
  const nothing = ROUNDING * Math.max(...scaled.map(Math.abs));
  return least >= -nothing ? most > nothing : most <= nothing;
}

/**
 * Calibration line or polynomial of a force channel, against a reference instrument.
 *
 * $$ F = \sum_{k=0}^{d} c_k x^k, \qquad \sum w_i (F_i - \hat F_i)^2 \to \min, \qquad
 * \mathcal F = \frac{RSS_{d} - RSS_{d+1}}{RSS_{d+1} / \nu_{d+1}} $$
 *
 * @remarks
 * The degree is raised from 1 while an F-test says that the next term is there (also where the one after it is); the two tests share a level of 5 %, so that a straight
 * channel is taken for a curved one in a twentieth of the cases at most. The line is not forced through zero. Each end, and the pairs farthest off, are held against the calibration of all
 * others: one that they would seldom show (5 % over all pairs and degrees, Bonferroni) is an outlier, which is named and never taken out. So are a degree that rests on one pair, a
 * way down that differs from the way up (1 %), scatter beyond class 1, and too few pairs. A polynomial that turns within its span is refused. No class of verification follows from a fit alone.
 *
 * @param pairs - `indicated` in the channel's unit and `reference` [N], at least three pairs, finite.
 * @param options - Degree and weights.
 * @returns The calibration, for `applyCalibration`; or `too-few-points`, `not-monotonic`.
 * @throws {@link InputError} `missing`, `not-finite`, `too-few`, `unequal-lengths`, `out-of-range`, `not-positive`, `unknown-option`.
 *
 * @example
 * ```ts
 * const indicated = [0, 5, 10, 15, 20];
 * const reference = [12, 6011, 12013, 18010, 24012];
 * required(fitCalibration({ indicated, reference })).coefficients[1]; // => 1200.0
 * ```
 *
 * @see ASTM E74, calibration of force-measuring instruments (fitted polynomials). Checked in `test/handbook/nist.test.ts` (Norris).
 */
export function fitCalibration(pairs: CalibrationPairs, options: CalibrationOptions = {}): Outcome<Calibration, CalibrationReason> {
  requireObject(FROM, 'pairs', pairs);
  const indicated = requireColumn(FROM, 'pairs.indicated', pairs.indicated, { least: 3 });
  const points = indicated.length;
  const reference = requireColumn(FROM, 'pairs.reference', pairs.reference, { length: points });
  requireOptions(FROM, options, ['degree', 'weights']);
  const { degree: wanted, weights = 'equal' } = options;
  if (wanted !== undefined && !([1, 2, 3] as unknown[]).includes(wanted))
    throw new InputError(FROM, 'options.degree', 'out-of-range', 'must be 1, 2 or 3', wanted);
  const pairsOf = { indicated, reference, weights: weightsOf(options.weights, reference) };
  if ((wanted ?? 1) > mostDegree(pairsOf))
    return failure(
      'too-few-points',
      `${points} pairs at ${new Set(indicated).size} different readings do not determine degree ${wanted ?? 1}`,
    );
  const { degree, fit } = calibrationFit(pairsOf, wanted);
  if (!isMonotonic(fit)) return failure('not-monotonic', `a polynomial of degree ${degree} turns within the span of the readings`);
  return success({
    degree,
    ...(wanted === undefined ? ({ degreeBy: 'F-test', significance: SIGNIFICANCE } as const) : ({ degreeBy: 'given' } as const)),
    coefficients: fit.coefficients,
    covariance: fit.covariance,
    centre: fit.centre,
    scale: fit.scale,
    scaled: fit.scaled,
    scaledCovariance: fit.scaledCovariance,
    span: [Math.min(...indicated), Math.max(...indicated)],
    residuals: fit.residuals,
    residualStandardDeviation: Math.sqrt(fit.residualSumOfSquares / fit.degreesOfFreedom),
    degreesOfFreedom: fit.degreesOfFreedom,
    weights: typeof weights === 'string' ? weights : 'given',
    rSquared: fit.rSquared,
    points,
    findings: pairFindings(pairsOf, degree, wanted, fit),
  });
}

function weightsOf(weights: CalibrationOptions['weights'], reference: Float64Array): Float64Array | undefined {
  if (weights === undefined || weights === 'equal') return undefined;
  if (weights === 'relative') {
    const zero = reference.findIndex((F) => F === 0);
    if (zero >= 0) throw new InputError(FROM, `pairs.reference[${zero}]`, 'out-of-range', 'must not be 0 with relative weights', 0);
    return reference.map((F) => 1 / F ** 2);
  }
  if (typeof weights === 'string')
    throw new InputError(FROM, 'options.weights', 'out-of-range', "must be 'equal', 'relative' or an array", weights);
  return requireColumn(FROM, 'options.weights', weights, { length: reference.length, positive: true });
}
