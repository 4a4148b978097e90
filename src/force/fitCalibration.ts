import { failure, InputError, requireColumn, requireObject, requireOptions, success, type Outcome } from '../base/index.js';
import { fExceeds, horner, polynomialFit, type PolynomialFit } from '../numeric/index.js';

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
  /** How the degree was chosen: given, or by F-test at the 5 % level. */
  readonly degreeBy: 'given' | 'F-test';
  /** Level of that F-test [1], absent where the degree was given. */
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
  /** Standard deviation of the (weighted) residuals. */
  readonly residualStandardDeviation: number;
  /** Coefficient of determination [1]. */
  readonly rSquared: number;
  /** Number of pairs. */
  readonly points: number;
}

/** Why there is no calibration. */
export type CalibrationReason = 'too-few-points' | 'not-monotonic';

/** Chance of taking a higher degree that is not there. */
const SIGNIFICANCE = 0.05;
const HIGHEST = 3;
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
 * The degree is raised from 1 while the F-test at the 5 % level says that the next term is there (also where the one after it is). The line is not forced
 * through zero. A polynomial that turns within its span is refused. No class of verification follows from a fit alone.
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
  const { degree: wanted } = options;
  if (wanted !== undefined && !([1, 2, 3] as unknown[]).includes(wanted))
    throw new InputError(FROM, 'options.degree', 'out-of-range', 'must be 1, 2 or 3', wanted);
  const weights = weightsOf(options.weights, reference);
  const different = new Set(indicated).size;
  const most = Math.min(HIGHEST, different - 1, points - 2);
  if ((wanted ?? 1) > most)
    return failure('too-few-points', `${points} pairs at ${different} different readings do not determine degree ${wanted ?? 1}`);

  const fits = new Map<number, PolynomialFit>();
  const fitOf = (degree: number): PolynomialFit => {
    const known = fits.get(degree) ?? polynomialFit(indicated, reference, degree, weights);
    fits.set(degree, known);
    return known;
  };
  /** True where a higher degree lowers the sum by more than chance would. */
  const better = (low: number, high: number): boolean => {
    const a = fitOf(low);
    const b = fitOf(high);
    const gain = (a.residualSumOfSquares - b.residualSumOfSquares) / (high - low);
    // what is left of data without scatter is rounding
    const scatter = Math.max(b.residualSumOfSquares, 1e-24 * reference.reduce((sum, F) => sum + F * F, 0)) / b.degreesOfFreedom;
    return fExceeds(gain / scatter, high - low, b.degreesOfFreedom) < SIGNIFICANCE;
  };
  let degree: number = wanted ?? 1;
  if (wanted === undefined) for (let next = 2; next <= most; next += 1) if (better(degree, next)) degree = next;
  const fit = fitOf(degree);
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
    rSquared: fit.rSquared,
    points,
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
