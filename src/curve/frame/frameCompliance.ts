import { InputError, requireOptions, requirePositive } from '../../base/index.js';

/** What a frame compliance is found from. */
export interface KnownModulusTest {
  /** Slope of force against travel in the elastic part [N/mm]. */
  readonly stiffness: number;
  /** Known modulus of the piece [MPa]. */
  readonly modulus: number;
  /** Length that stretches elastically [mm], fillets included. */
  readonly effectiveLength: number;
  /** Area of the section [mm²]. */
  readonly area: number;
}

/**
 * Compliance of a frame from a test on a piece of known modulus.
 *
 * $$ C_f = \frac{1}{k_{app}} - \frac{L_{eff}}{E S_0} $$
 *
 * @remarks
 * Frame and piece are springs in series. Frames are usually softer at low force, while grips bed in; one number holds for the range
 * that it was measured in, with the same grips and direction.
 *
 * @param test - `stiffness` [N/mm], `modulus` [MPa], `effectiveLength` [mm], `area` [mm²], each above 0.
 * @returns Compliance of the frame [mm/N].
 * @throws {@link InputError} `missing`, `not-finite`, `not-positive`; `out-of-range` where the piece alone would be softer than measured.
 *
 * @example
 * ```ts
 * frameCompliance({ stiffness: 40737.704, modulus: 210000, effectiveLength: 48, area: 50.26548 }) * 1e6; // => 20.000
 * ```
 *
 * @see Springs in series. Checked in `test/handbook/frame.test.ts`.
 */
export function frameCompliance(test: KnownModulusTest): number {
  const from = 'frameCompliance';
  requireOptions(from, test, ['stiffness', 'modulus', 'effectiveLength', 'area'], 'test');
  const piece =
    requirePositive(from, 'test.effectiveLength', test.effectiveLength) /
    (requirePositive(from, 'test.modulus', test.modulus) * requirePositive(from, 'test.area', test.area));
  const compliance = 1 / requirePositive(from, 'test.stiffness', test.stiffness) - piece;
  if (compliance <= 0)
    throw new InputError(
      from,
      'test.stiffness',
      'out-of-range',
      `must be below that of the piece alone (${Number((1 / piece).toPrecision(6))} N/mm)`,
      test.stiffness,
    );
  return compliance;
}
