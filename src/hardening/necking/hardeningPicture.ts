import { requireColumn, requireObject, requireOptions, requireWhole, type CurveColumns } from '../../base/index.js';
import { slidingSlope } from '../../numeric/index.js';

/** Options of {@link hardeningPicture}. */
export interface PictureOptions {
  /** Samples on either side of each that its parabola rests on, a whole number from 2; default a fortieth of the curve. */
  readonly halfWidth?: number | undefined;
}

/** Hardening along a true curve; as long as the part of the curve that has its samples on either side. */
export interface HardeningPicture {
  /** True strain [mm/mm], smoothed over the same samples. */
  readonly strain: Float64Array;
  /** True stress [MPa], smoothed likewise. */
  readonly stress: Float64Array;
  /** Hardening rate dσ/dε [MPa]; against stress it is the Kocks-Mecking curve. */
  readonly rate: Float64Array;
  /** Instantaneous exponent d ln σ/d ln ε [1]; a neck begins where it falls to the strain. */
  readonly exponent: Float64Array;
  /** Sample of the curve that the first value belongs to. */
  readonly first: number;
}

/**
 * Hardening rate and instantaneous exponent along a true curve, by parabolas that slide over it.
 *
 * $$ \theta = \frac{\mathrm{d}\sigma}{\mathrm{d}\varepsilon}, \qquad n_i = \frac{\mathrm{d} \ln \sigma}{\mathrm{d} \ln \varepsilon} = \frac{\varepsilon}{\sigma}\,
 * \theta $$
 *
 * @remarks
 * Stress and strain are each smoothed by parabolas over the sample number, and the rate is the ratio of their slopes; so uneven steps of strain do no
 * harm. Places where the strain stands still are left out. The wider the parabola, the calmer and the flatter: compare two widths.
 *
 * @param curve - True strain [mm/mm] and true stress [MPa], from yielding to the maximum force.
 * @param options - Width of the parabolas, in samples on either side, 2 or more.
 * @returns Strain, stress, rate, exponent; empty columns where the strain never moves.
 * @throws {@link InputError} `not-finite`, `too-few`, `unequal-lengths`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * const strain = Array.from({ length: 400 }, (_, i) => 0.02 + 0.0005 * i);
 * const picture = hardeningPicture({ strain, stress: strain.map((e) => 500 * e ** 0.2) }, { halfWidth: 5 });
 * picture.exponent[100]; // => 0.2000
 * ```
 *
 * @see Kocks and Mecking, Prog. Mater. Sci. 48 (2003) 171; Considère's construction (textbooks). Checked in `test/hardening/picture.test.ts`.
 */
export function hardeningPicture(curve: CurveColumns, options: PictureOptions = {}): HardeningPicture {
  const from = 'hardeningPicture';
  requireObject(from, 'curve', curve);
  const strain = requireColumn(from, 'curve.strain', curve.strain, { least: 5 });
  const n = strain.length;
  const stress = requireColumn(from, 'curve.stress', curve.stress, { length: n });
  requireOptions(from, options, ['halfWidth']);
  const half = requireWhole(from, 'options.halfWidth', options.halfWidth ?? Math.max(2, Math.floor(n / 40)), 2, Math.floor((n - 1) / 2));
  const e = slidingSlope(strain, half);
  const s = slidingSlope(stress, half);
  const places: number[] = [];
  // without samples on either side there is no slope
  for (let i = 0; i < n; i += 1) if (e.slope[i]! > 0) places.push(i);
  const taken = (of: (i: number) => number): Float64Array => Float64Array.from(places, of);
  const rate = (i: number): number => s.slope[i]! / e.slope[i]!;
  return {
    strain: taken((i) => e.value[i]!),
    stress: taken((i) => s.value[i]!),
    rate: taken(rate),
    exponent: taken((i) => (s.value[i] === 0 ? 0 : (rate(i) * e.value[i]!) / s.value[i]!)),
    first: places[0] ?? half,
  };
}
