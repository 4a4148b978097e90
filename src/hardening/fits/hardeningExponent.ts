import {
  failure,
  InputError,
  requireBetween,
  requireColumn,
  requireObject,
  requireOneOf,
  requireOptions,
  requirePositive,
  success,
  type CurveColumns,
  type Outcome,
} from '../../base/index.js';
import { lineFit, maximumIndex } from '../../numeric/index.js';
import { NO_EXPONENT } from '../laws/hollomon.js';

/** How the strain of the regression is counted. */
export type ExponentStrain = 'total' | 'plastic' | 'plastic-engineering';

/** Options of {@link hardeningExponent}. */
export interface ExponentOptions {
  /** Lower limit of engineering strain [mm/mm]. */
  readonly from: number;
  /** Upper limit of engineering strain [mm/mm], not beyond the maximum force. */
  readonly to: number;
  /** `total`: ln(1 + e), as ASTM E646; `plastic`: ln(1 + e) − σ/E; `plastic-engineering`: ln(1 + e − R/mE), as ISO 10275; default `total`. */
  readonly strainMeasure?: ExponentStrain | undefined;
  /** Slope of the elastic line [MPa]; needed for plastic strain. */
  readonly modulus?: number | undefined;
}

/** A hardening exponent by regression through logarithms. */
export interface HardeningExponent {
  /** Exponent n [1]. */
  readonly exponent: number;
  /** Strength coefficient K [MPa]. */
  readonly strengthCoefficient: number;
  /** Standard error of n [1]. */
  readonly standardError: number;
  /** Coefficient of determination in the logarithms [1]. */
  readonly rSquared: number;
  /** Number of samples. */
  readonly points: number;
  /** Limits of engineering strain that were asked for [mm/mm]. */
  readonly range: readonly [number, number];
  /** How strain was counted. */
  readonly strainMeasure: ExponentStrain;
}

/** Why there is no exponent. */
export type ExponentReason = 'too-few-points' | 'beyond-maximum' | 'no-plastic-strain' | 'no-hardening';

const LEAST = 5;

/**
 * Strain hardening exponent over a range of engineering strain, by the straight line through the logarithms.
 *
 * $$ \ln \sigma = \ln K + n \ln \varepsilon $$
 *
 * @remarks
 * At least five samples. Which strain is meant belongs to the value: total strain gives about 1 % more than plastic on steel, and a
 * frame left in the strain shifts it further. ISO 10275 writes the range as index, for example $n_{10-20}$.
 *
 * @param curve - Engineering strain [mm/mm] from the shifted origin and stress [MPa], finite.
 * @param options - `from`, `to` [mm/mm], above 0 and ascending; `strainMeasure`; `modulus` [MPa] where the strain is plastic.
 * @returns n, K [MPa], standard error, R², range, strain measure; or `too-few-points`, `beyond-maximum`, `no-plastic-strain`,
 * `no-hardening`.
 * @throws {@link InputError} `missing`, `not-finite`, `unequal-lengths`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * const strain = [0.02, 0.04, 0.06, 0.08, 0.1, 0.12];
 * const stress = strain.map((e) => (500 * Math.log1p(e) ** 0.2) / (1 + e));
 * required(hardeningExponent({ strain, stress }, { from: 0.02, to: 0.12 })).exponent; // => 0.2
 * ```
 *
 * @see ASTM E646, tensile strain-hardening exponents; ISO 10275, tensile strain hardening exponent. Checked in `test/handbook/hardening.test.ts`.
 */
export function hardeningExponent(curve: CurveColumns, options: ExponentOptions): Outcome<HardeningExponent, ExponentReason> {
  const from = 'hardeningExponent';
  requireObject(from, 'curve', curve);
  const strain = requireColumn(from, 'curve.strain', curve.strain);
  const stress = requireColumn(from, 'curve.stress', curve.stress, { length: strain.length });
  requireOptions(from, options, ['from', 'to', 'strainMeasure', 'modulus']);
  const low = requirePositive(from, 'options.from', options.from);
  const high = requireBetween(from, 'options.to', options.to, low, Infinity);
  const kind = requireOneOf(from, 'options.strainMeasure', options.strainMeasure ?? 'total', ['total', 'plastic', 'plastic-engineering']);
  if (kind !== 'total' && options.modulus === undefined)
    throw new InputError(from, 'options.modulus', 'missing', 'must be given for plastic strain', undefined);
  const given = options.modulus === undefined ? Infinity : requirePositive(from, 'options.modulus', options.modulus);
  const modulus = kind === 'total' ? Infinity : given;
  const top = maximumIndex(stress);
  if (high > strain[top]! * (1 + 1e-9))
    return failure('beyond-maximum', `the range ends at ${high}, the maximum force is at ${strain[top]!}`);
  const x: number[] = [];
  const y: number[] = [];
  for (let i = 0; i <= top; i += 1) {
    const e = strain[i]!;
    if (e < low || e > high) continue;
    const sigma = stress[i]! * (1 + e);
    const counted = kind === 'plastic-engineering' ? Math.log1p(e - stress[i]! / modulus) : Math.log1p(e) - sigma / modulus;
    if (!(counted > 0) || !(sigma > 0)) return failure('no-plastic-strain', `at a strain of ${e} nothing is left after the elastic part`);
    x.push(Math.log(counted));
    y.push(Math.log(sigma));
  }
  if (x.length < LEAST) return failure('too-few-points', `${x.length} samples lie in the range; ${LEAST} are needed`);
  const line = lineFit(Float64Array.from(x), Float64Array.from(y), 0, x.length - 1);
  if (!line) return failure('too-few-points', 'all samples of the range have the same strain');
  if (!(line.slope > NO_EXPONENT)) return failure('no-hardening', `the true stress does not rise in the range: the slope is ${line.slope}`);
  return success({
    exponent: line.slope,
    strengthCoefficient: Math.exp(line.intercept),
    standardError: line.standardError,
    rSquared: line.rSquared,
    points: x.length,
    range: [low, high],
    strainMeasure: kind,
  });
}
