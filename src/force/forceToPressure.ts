import { requireFinite, requireOptions } from '../base/index.js';
import { pistonAreaOf, efficiencyOf, type Cylinder } from './pistonArea.js';

/** A cylinder with its losses. */
export interface PressureForForce extends Cylinder {
  /** Efficiency η, above 0, at most 1; default 1. */
  readonly efficiency?: number | undefined;
  /** Force that must be overcome besides [N]; default 0. */
  readonly tareForce?: number | undefined;
}

/**
 * Oil pressure that a force needs.
 *
 * $$ p = \frac{F + F_{tare}}{\eta A} $$
 *
 * @remarks
 * Compare with the range of the transmitter and the setting of the relief valve before the test.
 *
 * @param force - Force on the piece [N].
 * @param chain - `bore`, `rod` [mm], `efficiency`, `tareForce` [N].
 * @returns Pressure [MPa].
 * @throws {@link InputError} `missing`, `not-finite`, `not-positive`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * forceToPressure(25000, { bore: 40 }); // => 19.8944
 * ```
 *
 * @see Pascal's law. Checked in `test/handbook/hydraulics.test.ts`.
 */
export function forceToPressure(force: number, chain: PressureForForce): number {
  const from = 'forceToPressure';
  requireOptions(from, chain, ['bore', 'rod', 'efficiency', 'tareForce'], 'chain');
  const tare = requireFinite(from, 'tareForce', chain.tareForce ?? 0);
  return (requireFinite(from, 'force', force) + tare) / (efficiencyOf(from, chain.efficiency) * pistonAreaOf(from, chain));
}
