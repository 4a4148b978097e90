import { requireNonNegative, requireOptions, requirePositive } from '../base/index.js';

/** What the crosshead must move until a piece breaks. */
export interface TravelInput {
  /** Slack of grips and piece [mm]; default 0. */
  readonly slack?: number | undefined;
  /** Compliance of the frame [mm/N]; default 0. */
  readonly compliance?: number | undefined;
  /** Greatest force [N]. */
  readonly force: number;
  /** Parallel length Lc [mm]. */
  readonly parallelLength: number;
  /** Total extension at maximum force Agt to be expected [mm/mm]. */
  readonly uniformExtension: number;
  /** Area S0 [mm²]. */
  readonly area: number;
  /** Whether a neck forms, which takes about half a diameter more; default true. */
  readonly necks?: boolean | undefined;
}

/** Travel, and what it is made of. */
export interface TravelNeeded {
  /** The whole [mm]. */
  readonly travel: number;
  /** Slack [mm]. */
  readonly slack: number;
  /** Give of the frame at the greatest force [mm]. */
  readonly frame: number;
  /** Even stretching of the parallel length [mm]. */
  readonly uniform: number;
  /** The neck [mm]. */
  readonly neck: number;
}

/**
 * Travel of the crosshead that a tension test needs.
 *
 * $$ x = x_{slack} + C_f F_m + L_c A_{gt} + \sqrt{S_0 / \pi} $$
 *
 * @remarks
 * The neck takes about half a diameter (common practice); for other shapes half the diameter of a round of the same area.
 *
 * @param input - `force` [N], `parallelLength` [mm], `uniformExtension` [mm/mm], `area` [mm²]; `slack` [mm], `compliance` [mm/N], `necks`.
 * @returns Travel and its parts [mm].
 * @throws {@link InputError} `missing`, `not-finite`, `not-positive`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * const { area } = round({ diameter: 8 });
 * travelNeeded({ force: 20000, compliance: 2e-5, parallelLength: 48, uniformExtension: 0.2, area }).travel; // => 14.0
 * ```
 *
 * @see Common practice. Checked in `test/handbook/planning.test.ts`.
 */
export function travelNeeded(input: TravelInput): TravelNeeded {
  const from = 'travelNeeded';
  const known = ['slack', 'compliance', 'force', 'parallelLength', 'uniformExtension', 'area', 'necks'];
  requireOptions(from, input, known, 'input');
  const slack = requireNonNegative(from, 'slack', input.slack ?? 0);
  const frame = requireNonNegative(from, 'compliance', input.compliance ?? 0) * requireNonNegative(from, 'force', input.force);
  const uniform =
    requirePositive(from, 'parallelLength', input.parallelLength) * requireNonNegative(from, 'uniformExtension', input.uniformExtension);
  const half = Math.sqrt(requirePositive(from, 'area', input.area) / Math.PI);
  const neck = input.necks === false ? 0 : half;
  return { travel: slack + frame + uniform + neck, slack, frame, uniform, neck };
}
