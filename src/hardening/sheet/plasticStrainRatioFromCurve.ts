import {
  failure,
  requireBetween,
  requireColumn,
  requireObject,
  requireOptions,
  requirePositive,
  success,
  type Outcome,
} from '../../base/index.js';
import { maximumIndex } from '../../numeric/index.js';

/** Columns of a sheet test with the strain across the width. */
export interface SheetCurve {
  /** Engineering strain along the piece [mm/mm], from the shifted origin. */
  readonly strain: ArrayLike<number>;
  /** Engineering strain across the width [mm/mm], negative. */
  readonly transverseStrain: ArrayLike<number>;
  /** Engineering stress [MPa]. */
  readonly stress: ArrayLike<number>;
}

/** Options of {@link plasticStrainRatioFromCurve}. */
export interface RatioOptions {
  /** Lower limit of engineering strain [mm/mm]. */
  readonly from: number;
  /** Upper limit of engineering strain [mm/mm], not beyond the maximum force. */
  readonly to: number;
  /** Slope of the elastic line [MPa]. */
  readonly modulus: number;
  /** Poisson's ratio of the elastic part that is taken off the width strain [1]; default 0.3. */
  readonly poissonRatio?: number | undefined;
}

/** A plastic strain ratio with its range. */
export interface StrainRatio {
  /** r [1]. */
  readonly ratio: number;
  /** Standard error by the scatter about the line [1]. */
  readonly standardError: number;
  /** Number of samples. */
  readonly points: number;
  /** Limits of engineering strain [mm/mm]. */
  readonly range: readonly [number, number];
}

const LEAST = 5;

/**
 * Plastic strain ratio r over a range of strain, from a curve with the strain across the width.
 *
 * $$ r = \frac{-m}{1 + m}, \qquad \varepsilon_{w,p} = m\, \varepsilon_{l,p}, \qquad \varepsilon_{l,p} = \ln(1 + e) - \frac{\sigma}{E}, \; \varepsilon_{w,p} = \ln(1 + e_t)
 * + \nu \frac{\sigma}{E} $$
 *
 * @remarks
 * The line of plastic width strain over plastic length strain through the origin; at a single strain, take a narrow range about it. The range belongs to
 * the value: $r_{8-12}$; its limits count all strain, the elastic part too. ISO 10113 takes the elastic part off as engineering strain (from memory), which gives 1.2 % less at r = 1.6;
 * here it is taken off the true strains, where strains add.
 *
 * @param curve - Strains [mm/mm] and stress [MPa], finite, of the same length.
 * @param options - `from`, `to` [mm/mm], `modulus` [MPa], `poissonRatio`.
 * @returns r, its standard error and range; or `too-few-points`, `beyond-maximum`, `no-plastic-strain`.
 * @throws {@link InputError} `missing`, `not-finite`, `not-positive`, `unequal-lengths`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * const strain = [0.02, 0.05, 0.08, 0.1, 0.12, 0.15];
 * const stress = [300, 340, 360, 370, 376, 382];
 * const transverseStrain = strain.map((e, i) => {
 *   const sigma = (stress[i] ?? 0) * (1 + e);
 *   return Math.exp(-0.6 * (Math.log1p(e) - sigma / 200000) - (0.3 * sigma) / 200000) - 1;
 * });
 * required(plasticStrainRatioFromCurve({ strain, transverseStrain, stress }, { from: 0.02, to: 0.15, modulus: 200000 })).ratio; // => 1.5
 * ```
 *
 * @see ISO 10113, automatic determination; ASTM E517. Checked in `test/hardening/sheet.test.ts`.
 */
export function plasticStrainRatioFromCurve(
  curve: SheetCurve,
  options: RatioOptions,
): Outcome<StrainRatio, 'too-few-points' | 'beyond-maximum' | 'no-plastic-strain'> {
  const from = 'plasticStrainRatioFromCurve';
  requireObject(from, 'curve', curve);
  const strain = requireColumn(from, 'curve.strain', curve.strain);
  const length = strain.length;
  const across = requireColumn(from, 'curve.transverseStrain', curve.transverseStrain, { length });
  const stress = requireColumn(from, 'curve.stress', curve.stress, { length });
  requireOptions(from, options, ['from', 'to', 'modulus', 'poissonRatio']);
  const low = requirePositive(from, 'options.from', options.from);
  const high = requireBetween(from, 'options.to', options.to, low, Infinity);
  const modulus = requirePositive(from, 'options.modulus', options.modulus);
  const { poissonRatio = 0.3 } = options;
  const nu = requireBetween(from, 'options.poissonRatio', poissonRatio, 0, 0.5);
  const top = maximumIndex(stress);
  if (high > strain[top]! * (1 + 1e-9))
    return failure('beyond-maximum', `the range ends at ${high}, the maximum force is at ${strain[top]!}`);
  const along: number[] = [];
  const width: number[] = [];
  for (let i = 0; i <= top; i += 1) {
    const e = strain[i]!;
    if (e < low || e > high || across[i]! <= -1) continue;
    const elastic = (stress[i]! * (1 + e)) / modulus;
    const plastic = Math.log1p(e) - elastic;
    // a plastic strain of a range that lies beyond yield is above 0: else the modulus is not that of this curve, as in GPa
    if (!(plastic > 0)) return failure('no-plastic-strain', `at a strain of ${e} nothing is left after the elastic part by ${modulus} MPa`);
    along.push(plastic);
    width.push(Math.log1p(across[i]!) + nu * elastic);
  }
  const points = along.length;
  if (points < LEAST) return failure('too-few-points', `${points} samples lie in the range; ${LEAST} are needed`);
  const ll = along.reduce((sum, one) => sum + one * one, 0);
  const m = along.reduce((sum, one, i) => sum + one * width[i]!, 0) / ll;
  if (!(m > -1 && m < 0)) return failure('no-plastic-strain', 'the width does not shrink, or shrinks by more than the length grows');
  const rest = width.reduce((sum, one, i) => sum + (one - m * along[i]!) ** 2, 0);
  return success({
    ratio: -m / (1 + m),
    standardError: Math.sqrt(rest / (points - 1) / ll) / (1 + m) ** 2,
    points,
    range: [low, high],
  });
}
