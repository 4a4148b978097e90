import { requireNonNegative, requireOptions, requirePositive } from '../base/index.js';
import { oilFields, oilGive, type OilVolume } from './oilEnergy.js';

/** A piston that moves while the pressure rises. */
export interface OilFlowInput extends OilVolume {
  /** Speed of the piston [mm/s]. */
  readonly speed: number;
  /** Area that the pressure acts on [mm²]. */
  readonly area: number;
  /** Rise of the pressure [MPa/s]. */
  readonly pressureRate: number;
}

/**
 * Flow of oil that moves a piston while the pressure rises.
 *
 * $$ Q = A\, v + \left( \frac{V}{K} + \frac{\mathrm{d}V_h}{\mathrm{d}p} \right) \frac{\mathrm{d}p}{\mathrm{d}t} $$
 *
 * @remarks
 * In the elastic part the oil itself may take more than the piston. Leakage is not counted.
 *
 * @param input - `speed` [mm/s] of 0 or more, `area` [mm²] above 0, `pressureRate` [MPa/s] of 0 or more, `volume` [mm³], `bulkModulus` [MPa],
 *   `hoseGrowth` [mm³/MPa].
 * @returns Flow [mm³/s].
 * @throws {@link InputError} `missing`, `not-finite`, `not-positive`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * oilFlow({ speed: 0.0647788, area: pistonArea({ bore: 40 }), pressureRate: 2.1, volume: 100e3 }); // => 231.4
 * ```
 *
 * @see Continuity, and the definition of the bulk modulus. Checked in `test/handbook/planning.test.ts`.
 */
export function oilFlow(input: OilFlowInput): number {
  const from = 'oilFlow';
  requireOptions(from, input, ['speed', 'area', 'pressureRate', ...oilFields], 'input');
  return (
    requireNonNegative(from, 'speed', input.speed) * requirePositive(from, 'area', input.area) +
    oilGive(from, input) * requireNonNegative(from, 'pressureRate', input.pressureRate)
  );
}
