import { requireNonNegative, requireOptions, requirePositive } from '../../base/index.js';

/** A piece in a frame that gives way. */
export interface YieldingFrame {
  /** Parallel length Lc, or the length that stretches [mm]. */
  readonly length: number;
  /** Area S0 [mm²]; needed with a compliance. */
  readonly area?: number | undefined;
  /** Local slope m_t of the material's curve [MPa]: E in the elastic part, 0 past yield; default 0. */
  readonly slope?: number | undefined;
  /** Compliance of the frame [mm/N]; default 0. */
  readonly compliance?: number | undefined;
}

/** @internal */
export const yieldingFrameFields = ['length', 'area', 'slope', 'compliance'] as const;

/** @internal Length over which the crosshead's motion is spread: that of the piece, and what the frame adds. */
export function spreadLength(from: string, { length, area, slope = 0, compliance = 0 }: YieldingFrame): number {
  const own = requirePositive(from, 'length', length);
  const give = requireNonNegative(from, 'slope', slope) * requireNonNegative(from, 'compliance', compliance);
  return give > 0 ? own + give * requirePositive(from, 'area', area) : own;
}

/**
 * Speed of the crosshead for a strain rate of the piece, with the give of the frame.
 *
 * $$ v = \dot e \,(L_c + m_t S_0 C_f) $$
 *
 * @remarks
 * In the elastic part ($m_t = E$) most of the crosshead's motion may go into the frame; past yield ($m_t \approx 0$) all of it reaches
 * the piece, so that one speed gives two strain rates: see `strainRateOfSpeed`.
 *
 * @param input - `strainRate` [1/s] above 0; `length` [mm] above 0; `area` [mm²], `slope` [MPa] and `compliance` [mm/N].
 * @returns Speed of the crosshead [mm/s].
 * @throws {@link InputError} `missing`, `not-finite`, `not-positive`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * const { area } = round({ diameter: 8 });
 * crossheadSpeed({ strainRate: 0.00025, length: 48, area, slope: 210000, compliance: 2e-5 }); // => 0.0647788
 * crossheadSpeed({ strainRate: 0.00025, length: 48 }); // => 0.012
 * ```
 *
 * @see ISO 6892-1:2019, annex on the estimation of the crosshead separation rate. Checked in `test/handbook/rates.test.ts`.
 */
export function crossheadSpeed(input: YieldingFrame & { readonly strainRate: number }): number {
  const from = 'crossheadSpeed';
  requireOptions(from, input, ['strainRate', ...yieldingFrameFields], 'input');
  return requirePositive(from, 'strainRate', input.strainRate) * spreadLength(from, input);
}
