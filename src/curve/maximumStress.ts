import { requireBetween, requireNonNegative, requireOptions, type CurveColumns, type StressStrainCurve } from '../base/index.js';
import { firstBelow, maximumIndex, noiseLevel, noiseReach, resolution as stepOf, stretchAbove } from '../numeric/index.js';
import { requireCurve } from './requireCurve.js';

/** Options of {@link maximumStress}. */
export interface MaximumOptions {
  /** First sample that may be the maximum, for example where hardening begins after a yield point; default 0. */
  readonly from?: number | undefined;
  /** One step of the stress reading [MPa]: samples that read as the maximum does, to half of it, bound its plateau; default 0. */
  readonly resolution?: number | undefined;
}

/** The maximum of a curve. */
export interface Maximum {
  /** Highest stress [MPa]. */
  readonly stress: number;
  /** Strain there; on a plateau its middle [mm/mm]. */
  readonly strain: number;
  /** Sample of the maximum (the first, where several are equal). */
  readonly index: number;
  /** First and last strain of the plateau [mm/mm]. */
  readonly plateau: readonly [number, number];
}

/** What lies one step below a maximum belongs to its plateau, also where a last digit was lost on the way from the force. */
const ONE_STEP = 1 + 1e-6;
/** Samples read the same that are less than half a step apart, where a last digit was lost on the way from the force. */
const SAME = 0.5;
/** A plateau goes on over samples that lie so many steps lower, and as noise throws them: a step of rounding, and one that noise hidden in them makes. */
const GAP = 2;
/** That noise is read where the stress is above this share of its maximum. */
const NEAR = 0.9;

/** @internal One past the last sample of the plateau of a maximum; by default that of the whole curve, with the step that its stress was read in. */
export const endOfPlateau = (
  stress: Float64Array,
  index = maximumIndex(stress),
  resolution = stepOf(stress),
  end = stress.length,
): number => firstBelow(stress, stress[index]! - ONE_STEP * resolution, index + 1, end);

/** @internal {@link maximumStress} on a checked curve, with the sample of the maximum known. */
export function plateauOf({ strain, stress }: StressStrainCurve, index: number, resolution: number, end = stress.length): Maximum {
  const top = stress[index]!;
  const level = top - SAME * resolution;
  let [first, last] = stretchAbove(stress, level, index, end);
  if (resolution > 0) {
    const [from, to] = stretchAbove(stress, NEAR * top, index, end);
    const gap = GAP * resolution + noiseReach(to - from + 1) * noiseLevel(stress, from, to + 1);
    [first, last] = stretchAbove(stress, top - gap, index, end);
    while (stress[first]! < level) first += 1;
    while (stress[last]! < level) last -= 1;
  }
  return { stress: top, strain: (strain[first]! + strain[last]!) / 2, index, plateau: [strain[first]!, strain[last]!] };
}

/**
 * The highest stress of a curve and the strain there.
 *
 * $$ R_m = \frac{F_m}{S_0}, \qquad A_{gt} = e(F_m) $$
 *
 * @remarks
 * A plateau reaches from the first to the last sample that reads as the maximum does; its middle counts. Where the reading is stepped it goes on over
 * lower samples between, as far as two steps and the noise explain them. A single highest sample counts by itself: the standard takes the middle of a flat
 * plateau alone (from memory) and knows no noise, so noise does not widen it. Noise lifts a single highest sample: at 0.1 % noise by about 0.3 %.
 *
 * @param curve - Strain [mm/mm] and stress [MPa], at least 1 sample, finite.
 * @param options - Where the maximum may lie, and one step of the reading.
 * @returns Stress [MPa], strain [mm/mm], sample, plateau.
 * @throws {@link InputError} `not-finite`, `empty`, `unequal-lengths`, `unknown-option`, `out-of-range`.
 *
 * @example
 * ```ts
 * maximumStress({ strain: [0, 0.1, 0.2, 0.3], stress: [0, 400, 430, 410] }).strain; // => 0.2
 * ```
 *
 * @see ISO 6892-1:2019, tensile strength; percentage total extension at maximum force. Checked in `test/handbook/tension.test.ts`.
 */
export function maximumStress(curve: CurveColumns, options: MaximumOptions = {}): Maximum {
  const checked = requireCurve('maximumStress', curve, 1);
  requireOptions('maximumStress', options, ['from', 'resolution']);
  const { from = 0, resolution = 0 } = options;
  requireBetween('maximumStress', 'options.from', from, 0, checked.stress.length - 1);
  requireNonNegative('maximumStress', 'options.resolution', resolution);
  return plateauOf(checked, maximumIndex(checked.stress, Math.ceil(from), checked.stress.length), resolution);
}
