import {
  failure,
  InputError,
  requireColumn,
  requireObject,
  requireOptions,
  success,
  type CurveColumns,
  type Outcome,
} from '../base/index.js';
import { horner, noiseLevel, polynomialFit } from '../numeric/index.js';
import type { HardeningLaw } from './hollomon.js';

/** Options of {@link considere}. */
export interface ConsidereOptions {
  /** A law whose own necking strain is asked for; the curve then serves for nothing else. */
  readonly law?: Pick<HardeningLaw, 'stress' | 'rate'> | undefined;
}

/** Onset of necking. */
export interface NeckingOnset {
  /** True total strain [mm/mm]; by a law, strain as the law counts it. */
  readonly strain: number;
  /** True stress [MPa]. */
  readonly stress: number;
  /** Standard uncertainty of the strain by the scatter of the curve [mm/mm]; 0 by a law. */
  readonly standardUncertainty: number;
  /** By the curve or by a law. */
  readonly method: 'curve' | 'law';
}

/** Why there is no onset of necking. */
export type NeckingReason = 'maximum-at-end' | 'too-few-points' | 'no-maximum' | 'no-crossing';

/** Shares of the maximum above which the curve is fitted, narrower while the cubic's lack of fit shows above noise. */
const SHARES = [0.98, 0.99, 0.995, 0.998, 0.9995];
const LEAST = 8;
/** So many means stand for the samples: the place of the maximum is the same, at a fraction of the work. */
const CELLS = 256;
/** A law is searched up to this true strain. */
const FARTHEST = 3;

/** Means of x and y over cells of equal numbers of samples. */
function cellMeans(x: Float64Array, y: Float64Array, first: number, last: number): { x: Float64Array; y: Float64Array } {
  const n = last - first + 1;
  const size = Math.max(1, Math.ceil(n / CELLS));
  const cells = Math.floor(n / size);
  const means = { x: new Float64Array(cells), y: new Float64Array(cells) };
  for (let k = 0; k < cells; k += 1)
    for (let i = first + k * size; i < first + (k + 1) * size; i += 1) {
      means.x[k]! += x[i]! / size;
      means.y[k]! += y[i]! / size;
    }
  return means;
}

/** Root of a cubic's derivative nearest to u, where the cubic has a maximum. */
function maximumNear(c: readonly number[], u: number): number | undefined {
  const [, b = 0, two = 0, three = 0] = c;
  const under = two * two - 3 * three * b;
  if (under < 0) return undefined;
  // of both roots, the one where the second derivative is negative
  const root = Math.abs(three) < 1e-12 * Math.abs(two) ? -b / (2 * two) : -(two + Math.sqrt(under)) / (3 * three);
  return 2 * two + 6 * three * root < 0 && Math.abs(root - u) < 2 ? root : undefined;
}

/** By a law: where hardening rate equals stress. */
function byLaw({ stress, rate }: Pick<HardeningLaw, 'stress' | 'rate'>): Outcome<NeckingOnset, NeckingReason> {
  let low = 1e-9;
  let high = FARTHEST;
  const excess = (strain: number): number => rate(strain) - stress(strain);
  if (!(excess(low) > 0) || !(excess(high) < 0))
    return failure('no-crossing', `rate and stress do not cross up to a strain of ${FARTHEST}`);
  for (let step = 0; step < 200 && high - low > 1e-15; step += 1) {
    const middle = (low + high) / 2;
    if (excess(middle) > 0) low = middle;
    else high = middle;
  }
  const strain = (low + high) / 2;
  return success({ strain, stress: stress(strain), standardUncertainty: 0, method: 'law' });
}

/**
 * Onset of necking by Considère's construction.
 *
 * $$ \frac{\mathrm{d}\sigma}{\mathrm{d}\varepsilon} = \sigma \quad\Longleftrightarrow\quad \frac{\mathrm{d}R}{\mathrm{d}e} = 0 $$
 *
 * @remarks
 * By the curve: the maximum of the engineering stress, from a cubic through the samples above 98 % of it, over a narrower region while
 * the cubic visibly does not fit. The standard's Agt is the sample of the maximum; this one is for physics. By a law: the strain at
 * which its hardening rate equals its stress.
 *
 * @param curve - True total strain [mm/mm], above -1, and true stress [MPa], to beyond the maximum force.
 * @param options - A law instead of the curve.
 * @returns True strain, true stress, standard uncertainty, method; or `maximum-at-end`, `too-few-points`, `no-maximum`, `no-crossing`.
 * @throws {@link InputError} `missing`, `not-finite`, `unequal-lengths`, `unknown-option`, `wrong-type`.
 *
 * @example
 * ```ts
 * const strain = Array.from({ length: 400 }, (_, i) => 0.001 * (i + 1));
 * const curve = { strain, stress: strain.map((e) => 500 * e ** 0.2) };
 * required(considere(curve)).strain; // => 0.2000
 * required(considere(curve, { law: hollomon({ strengthCoefficient: 500, exponent: 0.2 }) })).strain; // => 0.2
 * ```
 *
 * @see Considère, Annales des Ponts et Chaussées 9 (1885) 574; textbooks. Checked in `test/handbook/hardening.test.ts`.
 */
export function considere(curve: CurveColumns, options: ConsidereOptions = {}): Outcome<NeckingOnset, NeckingReason> {
  const from = 'considere';
  requireObject(from, 'curve', curve);
  const strain = requireColumn(from, 'curve.strain', curve.strain);
  const stress = requireColumn(from, 'curve.stress', curve.stress, { length: strain.length });
  requireOptions(from, options, ['law']);
  if (options.law) {
    if (typeof options.law.stress !== 'function' || typeof options.law.rate !== 'function')
      throw new InputError(from, 'options.law', 'wrong-type', 'must have stress and rate', options.law);
    return byLaw(options.law);
  }
  // the force that goes with true values, up to a factor
  const force = stress.map((sigma, i) => sigma * Math.exp(-strain[i]!));
  let top = 0;
  for (let i = 1; i < force.length; i += 1) if (force[i]! > force[top]!) top = i;
  if (top >= force.length - 2) return failure('maximum-at-end', 'the force does not fall after its highest sample');
  let found: NeckingOnset | undefined;
  let reason: NeckingReason = 'too-few-points';
  for (const share of SHARES) {
    let first = top;
    let last = top;
    while (first > 0 && force[first - 1]! >= share * force[top]!) first -= 1;
    while (last < force.length - 1 && force[last + 1]! >= share * force[top]!) last += 1;
    if (last - first + 1 < LEAST) break;
    const cells = cellMeans(strain, force, first, last);
    const fit = polynomialFit(cells.x, cells.y, 3);
    const u = maximumNear(fit.scaled, (strain[top]! - fit.centre) / fit.scale);
    if (u === undefined) {
      reason = 'no-maximum';
      continue;
    }
    const gradient = [0, 1, 2 * u, 3 * u * u];
    const curvature = 2 * fit.scaled[2]! + 6 * fit.scaled[3]! * u;
    const variance = fit.scaledCovariance.reduce(
      (sum, row, j) => sum + row.reduce((inner, one, k) => inner + gradient[j]! * one * gradient[k]!, 0),
      0,
    );
    const at = fit.centre + fit.scale * u;
    found = {
      strain: at,
      stress: horner(fit.scaled, u) * Math.exp(at),
      standardUncertainty: (fit.scale * Math.sqrt(Math.max(0, variance))) / Math.abs(curvature),
      method: 'curve',
    };
    const scatter = Math.sqrt(fit.residualSumOfSquares / Math.max(fit.degreesOfFreedom, 1));
    if (scatter <= 1.25 * noiseLevel(cells.y)) break;
  }
  return found ? success(found) : failure(reason, 'the samples around the maximum do not make one');
}
