import {
  PROOF_OFFSET,
  failure,
  requireColumn,
  requireObject,
  requireOptions,
  requirePositive,
  success,
  type CurveColumns,
  type Outcome,
} from '../../base/index.js';
import { leastSquares, lineFit, maximumIndex } from '../../numeric/index.js';
import { strainLimits, type FitRange } from './flowRange.js';

/** Options of {@link fitRambergOsgood}. */
export interface RambergOsgoodOptions extends FitRange {
  /** Modulus [MPa], where it is known; default it is fitted too. */
  readonly modulus?: number | undefined;
}

/** A Ramberg-Osgood curve fitted to a stress-strain curve. */
export interface RambergOsgoodFit {
  /** Modulus E [MPa]. */
  readonly modulus: number;
  /** Proof stress at 0.2 % [MPa]. */
  readonly proofStress: number;
  /** Exponent n [1]. */
  readonly exponent: number;
  /** Standard errors of what was fitted. */
  readonly standardErrors: {
    /** Of E [MPa]; absent where it was given. */
    readonly modulus?: number | undefined;
    /** Of the proof stress [MPa]. */
    readonly proofStress: number;
    /** Of the exponent [1]. */
    readonly exponent: number;
  };
  /** Sum of squared residuals in strain. */
  readonly residualSumOfSquares: number;
  /** Number of samples. */
  readonly points: number;
  /** True where no small step lowers the sum. */
  readonly converged: boolean;
  /** Steps taken. */
  readonly iterations: number;
}

/** Why there is no fit. */
export type RambergOsgoodReason = 'too-few-points' | 'no-plastic-part' | 'undetermined';

/** The elastic start: samples up to this share of the highest stress. */
const ELASTIC_SHARE = 0.3;
const LEAST = 5;

/** Modulus to start from: the line through the low part, or the steepest secant where the range has no low part. */
function firstModulus(strain: Float64Array, stress: Float64Array): number {
  const highest = stress.reduce((most, R) => Math.max(most, R), 0);
  const last = stress.findIndex((R) => R > ELASTIC_SHARE * highest) - 1;
  if (last >= 2) return lineFit(strain, stress, 0, last)?.slope ?? 0;
  return stress.reduce((most, R, i) => (strain[i]! > 0 ? Math.max(most, R / strain[i]!) : most), 0);
}

/** Proof stress, exponent and modulus to start from: the last two by a line through logarithms of the plastic part. */
function start(strain: Float64Array, stress: Float64Array, known: number | undefined): readonly [number, number, number] | undefined {
  const modulus = known ?? firstModulus(strain, stress);
  if (modulus <= 0) return undefined;
  const plastic = strain.map((e, i) => e - stress[i]! / modulus);
  const most = plastic.reduce((high, one) => Math.max(high, one), 0);
  // the logarithm is usable where the plastic part is a fair share of the strain and of the largest plastic part; noise of the elastic part is not
  const sound = (one: number, i: number): boolean => one > 0.05 * strain[i]! && one > 0.1 * most;
  const x = stress.filter((_, i) => sound(plastic[i]!, i)).map(Math.log);
  const line = x.length < 3 ? undefined : lineFit(x, plastic.filter(sound).map(Math.log), 0, x.length - 1);
  if (!line || line.slope <= 0) return undefined;
  return [Math.exp((Math.log(PROOF_OFFSET) - line.intercept) / line.slope), line.slope, modulus];
}

/**
 * Fits a Ramberg-Osgood curve, by least squares in strain, up to the highest stress.
 *
 * $$ \varepsilon = \frac{\sigma}{E} + 0.002 \left( \frac{\sigma}{R_{p0.2}} \right)^n $$
 *
 * @remarks
 * Strains must count from the origin of the elastic line. Levenberg-Marquardt and Gauss-Newton steps from the straight lines through the low part and
 * through the logarithms of the plastic part.
 *
 * @param curve - Strain [mm/mm] from the shifted origin and stress [MPa]; finite. Samples after the highest stress and
 * those whose stress is not above 0 are not used.
 * @param options - `modulus` [MPa] above 0, where it is known; range of strain `from` below `to` [mm/mm].
 * @returns Modulus [MPa], proof stress [MPa], exponent [1], their standard errors in the same units; or `too-few-points`, `no-plastic-part`, `undetermined`.
 * @throws {@link InputError} `not-finite`, `not-positive`, `unequal-lengths`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * const stress = Array.from({ length: 200 }, (_, i) => 1.6 * (i + 1));
 * const strain = stress.map((R) => R / 70000 + 0.002 * (R / 300) ** 10);
 * required(fitRambergOsgood({ strain, stress })).proofStress; // => 300.000
 * ```
 *
 * @see Ramberg and Osgood, NACA TN 902 (1943). Checked in `test/handbook/ramberg-osgood.test.ts`.
 */
export function fitRambergOsgood(curve: CurveColumns, options: RambergOsgoodOptions = {}): Outcome<RambergOsgoodFit, RambergOsgoodReason> {
  const from = 'fitRambergOsgood';
  requireObject(from, 'curve', curve);
  const e0 = requireColumn(from, 'curve.strain', curve.strain);
  const R0 = requireColumn(from, 'curve.stress', curve.stress, { length: e0.length });
  requireOptions(from, options, ['modulus', 'from', 'to']);
  const known = options.modulus === undefined ? undefined : requirePositive(from, 'options.modulus', options.modulus);
  const [low, high] = strainLimits(from, options, 'options');
  const top = maximumIndex(R0);
  const inside = (_: number, i: number): boolean => i <= top && R0[i]! > 0 && e0[i]! >= low && e0[i]! <= high;
  const strain = e0.filter(inside);
  const stress = R0.filter(inside);
  const points = strain.length;
  if (points < LEAST) return failure('too-few-points', `${points} samples lie in the range up to the highest stress; ${LEAST} are needed`);
  const begin = start(strain, stress, known);
  if (!begin) return failure('no-plastic-part', 'the curve does not bend away from its elastic line');
  const parts = (p: readonly number[]) => ({ modulus: known ?? p[2]!, proofStress: p[0]!, exponent: p[1]! });
  const end = leastSquares({
    y: strain,
    start: begin.slice(0, known === undefined ? 3 : 2),
    model: (p) => {
      const { modulus, proofStress, exponent } = parts(p);
      return (k) => {
        const R = stress[k]!;
        return R / modulus + PROOF_OFFSET * (R / proofStress) ** exponent;
      };
    },
    jacobian: (p) => {
      const { modulus, proofStress, exponent } = parts(p);
      return (k) => {
        const R = stress[k]!;
        const plastic = PROOF_OFFSET * (R / proofStress) ** exponent;
        const row = [(-exponent * plastic) / proofStress, plastic * Math.log(R / proofStress)];
        return known === undefined ? [...row, -R / modulus ** 2] : row;
      };
    },
  });
  const { covariance } = end;
  if (!covariance) return failure('undetermined', 'the samples do not determine all parameters');
  const error = (k: number): number => Math.sqrt(covariance[k]![k]!);
  // without an elastic part any modulus that is large enough fits
  if (!end.converged && !end.parameters.every((one, k) => error(k) < one))
    return failure('undetermined', 'the samples do not determine all parameters');
  return success({
    ...parts(end.parameters),
    standardErrors: { ...(known === undefined ? { modulus: error(2) } : {}), proofStress: error(0), exponent: error(1) },
    residualSumOfSquares: end.residualSumOfSquares,
    points,
    converged: end.converged,
    iterations: end.iterations,
  });
}
