import { failure, requireColumn, requireObject, requireOptions, requireWhole, success, type Outcome } from '../base/index.js';
import { lineFit } from '../numeric/index.js';

/** Columns that Poisson's ratio follows from. */
export interface TransverseCurve {
  /** Strain along the piece [mm/mm]. */
  readonly strain: ArrayLike<number>;
  /** Strain across it [mm/mm], negative while it is pulled. */
  readonly transverseStrain: ArrayLike<number>;
  /** Stress [MPa]. */
  readonly stress: ArrayLike<number>;
}

/** Samples of the elastic part, for example the window of `fitModulus`. */
export interface ElasticSamples {
  /** First sample. */
  readonly first: number;
  /** Last sample, included. */
  readonly last: number;
}

/** Poisson's ratio. */
export interface PoissonRatio {
  /** ν [1]. */
  readonly ratio: number;
  /** Standard error by the scatter of both lines, taken as independent [1]. */
  readonly standardError: number;
  /** Number of samples. */
  readonly points: number;
}

/** Why there is no ratio. */
export type PoissonReason = 'no-slope' | 'no-contraction' | 'contracts-too-much';

/** Greatest ratio of an isotropic solid. */
const MOST = 0.5;
/** Standard errors that noise alone hardly ever passes, and the rounding of a line without noise. */
const ERRORS = 3;
const ROUNDING = 1e-9;

/**
 * Poisson's ratio from the strains along and across, each by its line over stress.
 *
 * $$ \nu = -\frac{\mathrm{d}\varepsilon_t / \mathrm{d}\sigma}{\mathrm{d}\varepsilon / \mathrm{d}\sigma} $$
 *
 * @remarks
 * Both lines are drawn over stress, so that noise of one strain does not bend the other's. The ratio of an isotropic metal lies from 0 to 0.5; one that lies outside
 * by more than three of its standard errors is a wrong sign, unit or channel, and fails. Elastic part only; beyond it the ratio goes to 0.5. A bent
 * piece needs the mean of gauges on opposite faces.
 *
 * @param curve - Strains [mm/mm] and stress [MPa], finite, of the same length.
 * @param window - `first` and `last` sample, at least three samples.
 * @returns ν with its standard error; or `no-slope` where stress or strain does not rise, `no-contraction` below 0, `contracts-too-much` above 0.5.
 * @throws {@link InputError} `missing`, `not-finite`, `unequal-lengths`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * const stress = Array.from({ length: 20 }, (_, i) => 10 * i);
 * const strain = stress.map((R) => R / 200000);
 * const transverseStrain = strain.map((e) => -0.29 * e);
 * required(poissonRatio({ strain, transverseStrain, stress }, { first: 2, last: 18 })).ratio; // => 0.29
 * ```
 *
 * @see ASTM E132. Checked in `test/curve/poissonRatio.test.ts`.
 */
export function poissonRatio(curve: TransverseCurve, window: ElasticSamples): Outcome<PoissonRatio, PoissonReason> {
  const from = 'poissonRatio';
  requireObject(from, 'curve', curve);
  const stress = requireColumn(from, 'curve.stress', curve.stress, { least: 3 });
  const length = stress.length;
  const strain = requireColumn(from, 'curve.strain', curve.strain, { length });
  const across = requireColumn(from, 'curve.transverseStrain', curve.transverseStrain, { length });
  requireOptions(from, window, ['first', 'last'], 'window');
  const last = requireWhole(from, 'window.last', window.last, 2, length - 1);
  const first = requireWhole(from, 'window.first', window.first, 0, last - 2);
  const along = lineFit(stress, strain, first, last);
  const transverse = lineFit(stress, across, first, last);
  if (!along || !transverse || !(along.slope > 0)) return failure('no-slope', 'the strain does not rise with stress in the window');
  const ratio = -transverse.slope / along.slope;
  const standardError = Math.hypot(transverse.standardError, ratio * along.standardError) / along.slope;
  const allowed = ERRORS * standardError + ROUNDING;
  if (ratio < -allowed)
    return failure('no-contraction', `the width grows with the length: the ratio would be ${Number(ratio.toPrecision(3))}`);
  if (ratio > MOST + allowed)
    return failure(
      'contracts-too-much',
      `the ratio would be ${Number(ratio.toPrecision(3))}, and that of an isotropic metal is ${MOST} at most`,
    );
  return success({ ratio, standardError, points: along.points });
}
