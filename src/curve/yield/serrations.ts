import { requireBetween, requireFinite, requireOptions, type CurveColumns } from '../../base/index.js';
import { noiseLevel } from '../../numeric/index.js';
import { requireCurve } from '../requireCurve.js';

/** Options of {@link serrations}. */
export interface SerrationOptions {
  /** Strain where the search begins [mm/mm]; default the first sample. */
  readonly from?: number | undefined;
  /** Strain where it ends [mm/mm], usually that of the maximum; default the last sample. */
  readonly to?: number | undefined;
  /** Least fall, as a share of the stress; default 0.002, and never less than six standard deviations of the noise. */
  readonly minimumFall?: number | undefined;
}

/** One drop of a serrated curve. */
export interface Serration {
  /** Sample of the peak before it. */
  readonly peak: number;
  /** Sample of its lowest point. */
  readonly valley: number;
  /** Fall of stress [MPa]. */
  readonly fall: number;
}

/** Serrations of a curve. */
export interface Serrations {
  /** Drops in order. */
  readonly drops: readonly Serration[];
  /** Least and greatest fall [MPa]; absent without drops. */
  readonly band?: readonly [number, number] | undefined;
  /** First and last strain with drops [mm/mm]; absent without drops. */
  readonly range?: readonly [number, number] | undefined;
  /** Drops per unit of strain between the first and the last [1]; absent for fewer than two. */
  readonly density?: number | undefined;
}

/** A fall must stand out of noise by so many standard deviations. */
const OUT_OF_NOISE = 6;

/**
 * Serrations: sudden drops of stress while the piece yields on (the Portevin-Le Chatelier effect, or Lüders bands that stop and start).
 *
 * $$ \Delta R_k = R_{\text{peak},k} - R_{\text{valley},k} \ge \max(0.002\, R, 6 s) $$
 *
 * @remarks
 * A drop is counted from the highest stress since the last one to the lowest before the stress rises again by as much as a drop needs. A fall while
 * the crosshead stood still looks the same: take pauses out first. Exponents fitted over a serrated range follow its middle, not its upper edge.
 *
 * @param curve - Strain [mm/mm] and stress [MPa], at least 3 samples, finite.
 * @param options - Range of strain, `from` to `to` [mm/mm]; least fall as a share of the stress, 0 to 1 [1].
 * @returns The drops, with the band of their falls and the range of strain.
 * @throws {@link InputError} `not-finite`, `too-few`, `unequal-lengths`, `unknown-option`, `out-of-range`.
 *
 * @example
 * ```ts
 * const strain = Array.from({ length: 50 }, (_, i) => 0.01 + 0.001 * i);
 * const stress = strain.map((e, i) => 300 + 500 * e - (i % 10 === 9 ? 5 : 0));
 * serrations({ strain, stress }).drops.length; // => 4
 * ```
 *
 * @see Common practice. Checked in `test/curve/serrations.test.ts`.
 */
export function serrations(curve: CurveColumns, options: SerrationOptions = {}): Serrations {
  const name = 'serrations';
  const { strain, stress } = requireCurve(name, curve, 3);
  requireOptions(name, options, ['from', 'to', 'minimumFall']);
  const low = options.from === undefined ? -Infinity : requireFinite(name, 'options.from', options.from);
  const high = options.to === undefined ? Infinity : requireBetween(name, 'options.to', options.to, low, Infinity);
  const share = requireBetween(name, 'options.minimumFall', options.minimumFall ?? 0.002, 0, 1);
  const noise = OUT_OF_NOISE * noiseLevel(stress);
  const drops: Serration[] = [];
  let peak = -1;
  let valley = -1;
  for (let i = 0; i < stress.length; i += 1) {
    if (strain[i]! < low || strain[i]! > high) continue;
    if (peak < 0) peak = i;
    const least = Math.max(share * Math.abs(stress[peak]!), noise);
    if (valley < 0) {
      if (stress[i]! > stress[peak]!) peak = i;
      else if (least > 0 && stress[peak]! - stress[i]! >= least) valley = i;
    } else if (stress[i]! < stress[valley]!) valley = i;
    else if (stress[i]! - stress[valley]! >= least) {
      drops.push({ peak, valley, fall: stress[peak]! - stress[valley]! });
      peak = i;
      valley = -1;
    }
  }
  // a fall without a rise after it is the end of the curve, not a serration
  if (drops.length === 0) return { drops };
  const falls = drops.map(({ fall }) => fall);
  const range = [strain[drops[0]!.peak]!, strain[drops[drops.length - 1]!.peak]!] as const;
  return {
    drops,
    band: [Math.min(...falls), Math.max(...falls)],
    range,
    ...(range[1] > range[0] ? { density: (drops.length - 1) / (range[1] - range[0]) } : {}),
  };
}
