import {
  failure,
  requireColumn,
  requireObject,
  requireOptions,
  requirePositive,
  success,
  type CurveColumns,
  type Outcome,
} from '../base/index.js';
import { leastSquares, lineFit } from '../numeric/index.js';

/** Options of {@link fitRambergOsgood}. */
export interface RambergOsgoodOptions {
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
  /** True where the last steps no longer moved the parameters. */
  readonly converged: boolean;
  /** Steps taken. */
  readonly iterations: number;
}

/** Why there is no fit. */
export type RambergOsgoodReason = 'too-few-points' | 'no-plastic-part' | 'undetermined';

/** The elastic start: samples up to this share of the highest stress. */
const ELASTIC_SHARE = 0.3;

/** Modulus, proof stress and exponent to start from: a line through the low part, then one through logarithms of what is left. */
function start(
  strain: Float64Array,
  stress: Float64Array,
  top: number,
  known: number | undefined,
): readonly [number, number, number] | undefined {
  const highest = stress[top]!;
  let last = stress.findIndex((R) => R > ELASTIC_SHARE * highest) - 1;
  last = Math.max(last, 1);
  const modulus = known ?? lineFit(strain, stress, 0, last)?.slope;
  if (modulus === undefined || modulus <= 0) return undefined;
  const x: number[] = [];
  const y: number[] = [];
  for (let i = 0; i <= top; i += 1) {
    const plastic = strain[i]! - stress[i]! / modulus;
    // where the plastic part is a fair share of the strain its logarithm is sound
    if (stress[i]! > 0 && plastic > 0.05 * strain[i]!) {
      x.push(Math.log(stress[i]!));
      y.push(Math.log(plastic));
    }
  }
  const line = x.length < 3 ? undefined : lineFit(Float64Array.from(x), Float64Array.from(y), 0, x.length - 1);
  if (!line || line.slope <= 0) return undefined;
  return [modulus, Math.exp((Math.log(0.002) - line.intercept) / line.slope), line.slope];
}

/**
 * Fits a Ramberg-Osgood curve, by least squares in strain, up to the highest stress.
 *
 * $$ \varepsilon = \frac{\sigma}{E} + 0.002 \left( \frac{\sigma}{R_{p0.2}} \right)^n $$
 *
 * @remarks
 * Strains must count from the origin of the elastic line. Levenberg-Marquardt from the straight lines through the low part and through
 * the logarithms of the plastic part.
 *
 * @param curve - Strain [mm/mm] from the shifted origin and stress [MPa]; finite. Samples after the highest stress are not used.
 * @param options - `modulus` [MPa] where it is known.
 * @returns Modulus, proof stress, exponent, standard errors; or `too-few-points`, `no-plastic-part`, `undetermined`.
 * @throws {@link InputError} `not-finite`, `not-positive`, `unequal-lengths`, `unknown-option`.
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
  const strain = requireColumn(from, 'curve.strain', curve.strain);
  const stress = requireColumn(from, 'curve.stress', curve.stress, { length: strain.length });
  requireOptions(from, options, ['modulus']);
  const known = options.modulus === undefined ? undefined : requirePositive(from, 'options.modulus', options.modulus);
  let top = 0;
  for (let i = 1; i < stress.length; i += 1) if (stress[i]! > stress[top]!) top = i;
  if (top < 4) return failure('too-few-points', `${top + 1} samples lie up to the highest stress; 5 are needed`);
  const begin = start(strain, stress, top, known);
  if (!begin) return failure('no-plastic-part', 'the curve does not bend away from its elastic line');
  const used: number[] = [];
  for (let i = 0; i <= top; i += 1) if (stress[i]! > 0) used.push(i);
  const parts = (p: readonly number[]) => ({ modulus: known ?? p[2]!, proofStress: p[0]!, exponent: p[1]! });
  const end = leastSquares({
    y: Float64Array.from(used, (i) => strain[i]!),
    start: known === undefined ? [begin[1], begin[2], begin[0]] : [begin[1], begin[2]],
    value: (k, p) => {
      const { modulus, proofStress, exponent } = parts(p);
      const R = stress[used[k]!]!;
      return R / modulus + 0.002 * (R / proofStress) ** exponent;
    },
    jacobian: (k, p) => {
      const { modulus, proofStress, exponent } = parts(p);
      const R = stress[used[k]!]!;
      const plastic = 0.002 * (R / proofStress) ** exponent;
      const row = [(-exponent * plastic) / proofStress, plastic * Math.log(R / proofStress)];
      return known === undefined ? [...row, -R / modulus ** 2] : row;
    },
  });
  const { covariance } = end;
  if (!covariance) return failure('undetermined', 'the samples do not determine all parameters');
  const error = (k: number): number => Math.sqrt(covariance[k]![k]!);
  return success({
    ...parts(end.parameters),
    standardErrors: { ...(known === undefined ? { modulus: error(2) } : {}), proofStress: error(0), exponent: error(1) },
    residualSumOfSquares: end.residualSumOfSquares,
    points: used.length,
    converged: end.converged,
    iterations: end.iterations,
  });
}
