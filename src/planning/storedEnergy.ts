import { requireNonNegative, requireOptions, requirePositive } from '../base/index.js';

/** A piece in a frame, under force. */
export interface StoredEnergyInput {
  /** Force [N]. */
  readonly force: number;
  /** Compliance of the frame [mm/N]; default 0. */
  readonly compliance?: number | undefined;
  /** Length that stretches elastically [mm]. */
  readonly length: number;
  /** Area S0 [mm²]. */
  readonly area: number;
  /** Modulus of elasticity E [MPa]. */
  readonly modulus: number;
}

/**
 * Elastic energy stored in frame and piece, which fracture releases.
 *
 * $$ U = \frac{F^2}{2} \left( C_f + \frac{L}{E S_0} \right) $$
 *
 * @remarks
 * Oil and hoses store more (see `oilEnergy`), and parts of the frame that the compliance does not hold as well: it is a least value, never a
 * promise of safety.
 *
 * @param input - `force` [N] of 0 or more, `compliance` [mm/N], `length` [mm], `area` [mm²], `modulus` [MPa].
 * @returns Energy [N·mm]; 1000 N·mm are 1 J.
 * @throws {@link InputError} `missing`, `not-finite`, `not-positive`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * const { area } = round({ diameter: 8 });
 * storedEnergy({ force: 20000, compliance: 2e-5, length: 48, area, modulus: 210000 }) / 1000; // => 4.9095
 * ```
 *
 * @see Elementary mechanics, work of linear springs. Checked in `test/handbook/planning.test.ts`.
 */
export function storedEnergy(input: StoredEnergyInput): number {
  const from = 'storedEnergy';
  requireOptions(from, input, ['force', 'compliance', 'length', 'area', 'modulus'], 'input');
  const piece =
    requirePositive(from, 'length', input.length) /
    (requirePositive(from, 'modulus', input.modulus) * requirePositive(from, 'area', input.area));
  const compliance = requireNonNegative(from, 'compliance', input.compliance ?? 0);
  return (requireNonNegative(from, 'force', input.force) ** 2 * (compliance + piece)) / 2;
}
