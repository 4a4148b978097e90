import {
  failure,
  InputError,
  requireColumn,
  requireObject,
  requireOptions,
  success,
  type CurveColumns,
  type Outcome,
} from '../../base/index.js';
import { crossingOf, type HardeningLaw } from '../laws/HardeningLaw.js';
import { neckingByCurve } from './neckingByCurve.js';
import type { NeckingOnset, NeckingReason } from './NeckingOnset.js';

/** Options of {@link considere}. */
export interface ConsidereOptions {
  /** A law whose own necking strain is asked for; the curve then serves for nothing else. */
  readonly law?: Pick<HardeningLaw, 'stress' | 'rate'> | undefined;
}

/** By a law: where hardening rate equals stress. */
function byLaw(law: Pick<HardeningLaw, 'stress' | 'rate'>): Outcome<NeckingOnset, NeckingReason> {
  const strain = crossingOf(law);
  if (!strain) return failure('no-crossing', 'hardening rate and stress of the law do not cross');
  return success({ strain, stress: law.stress(strain), standardUncertainty: 0, method: 'law' });
}

/**
 * Onset of necking by Considère's construction.
 *
 * $$ \frac{\mathrm{d}\sigma}{\mathrm{d}\varepsilon} = \sigma \quad\Longleftrightarrow\quad \frac{\mathrm{d}R}{\mathrm{d}e} = 0 $$
 *
 * @remarks
 * By the curve: the maximum of the engineering stress around its samples above 98 % of it, of two shapes. Smooth: a cubic through them, or through the
 * widest narrower region that agrees with all still narrower ones within their scatter, so that lack of fit does not shift it. With a corner, where
 * the curvature of the force jumps at the onset: a cubic before and a parabola after it, at the mean place by their likelihood. Each shape has the share of the
 * belief that the criterion of Bayes and Schwarz gives it, a polynomial of as many parameters standing beside the cubic for the smooth one; the strain is the mean
 * by these shares, its variance that within the shapes and that between them (Bayesian model averaging), and `shape` tells the likelier. The scatter counts as
 * independent from sample to sample, the shift of the last widening with it. The standard's Agt is the sample of the maximum; this one is for physics.
 * By a law: the strain at which its hardening rate equals its stress.
 *
 * @param curve - True total strain [mm/mm] and true stress [MPa], to beyond the maximum force.
 * @param options - A law instead of the curve.
 * @returns True strain, true stress, standard uncertainty, method; or `maximum-at-end`, `too-few-points`, `no-maximum`, `no-crossing`.
 * @throws {@link InputError} `missing`, `not-finite`, `out-of-range`, `unequal-lengths`, `unknown-option`, `wrong-type`.
 *
 * @example
 * ```ts
 * const strain = Array.from({ length: 400 }, (_, i) => 0.001 * (i + 1));
 * const curve = { strain, stress: strain.map((e) => 500 * e ** 0.2) };
 * required(considere(curve)).strain; // => 0.2000
 * required(considere(curve, { law: hollomon({ strengthCoefficient: 500, exponent: 0.2 }) })).strain; // => 0.2
 * ```
 *
 * @see Considère, Annales des Ponts et Chaussées 9 (1885) 574; textbooks. Averaging: Hoeting, Madigan, Raftery and Volinsky, Statistical Science 14
 * (1999) 382. Checked in `test/handbook/hardening.test.ts`.
 */
export function considere(curve: CurveColumns, options: ConsidereOptions = {}): Outcome<NeckingOnset, NeckingReason> {
  const from = 'considere';
  requireObject(from, 'curve', curve);
  const strain = requireColumn(from, 'curve.strain', curve.strain);
  const stress = requireColumn(from, 'curve.stress', curve.stress, { length: strain.length });
  requireOptions(from, options, ['law']);
  if (options.law !== undefined) {
    requireObject(from, 'options.law', options.law);
    if (typeof options.law.stress !== 'function' || typeof options.law.rate !== 'function')
      throw new InputError(from, 'options.law', 'wrong-type', 'must have stress and rate', options.law);
    return byLaw(options.law);
  }
  return neckingByCurve(
    strain,
    stress.map((one, i) => one * Math.exp(-strain[i]!)),
  );
}
