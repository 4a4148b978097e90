import { requireOptions, requirePositive } from '../../base/index.js';
import { spreadLength, yieldingFrameFields, type YieldingFrame } from './crossheadSpeed.js';

/**
 * Strain rate of the piece at a speed of the crosshead, with the give of the frame.
 *
 * $$ \dot e = \frac{v}{L_c + m_t S_0 C_f} $$
 *
 * @remarks
 * The inverse of `crossheadSpeed`.
 *
 * @param input - `speed` [mm/s] above 0; `length` [mm] above 0; `area` [mm²], `slope` [MPa] and `compliance` [mm/N].
 * @returns Strain rate [1/s].
 * @throws {@link InputError} `missing`, `not-finite`, `not-positive`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * const { area } = round({ diameter: 8 });
 * strainRateOfSpeed({ speed: 0.012, length: 48, area, slope: 210000, compliance: 2e-5 }); // => 0.00004631
 * ```
 *
 * @see ISO 6892-1:2019, annex on the estimation of the crosshead separation rate. Checked in `test/handbook/rates.test.ts`.
 */
export function strainRateOfSpeed(input: YieldingFrame & { readonly speed: number }): number {
  const from = 'strainRateOfSpeed';
  requireOptions(from, input, ['speed', ...yieldingFrameFields], 'input');
  return requirePositive(from, 'speed', input.speed) / spreadLength(from, input);
}
