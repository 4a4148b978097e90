import { InputError, requireOptions, requirePositive } from '../base/index.js';

/** A length of a broken bar away from its neck. */
export interface MarkedBar {
  /** Length between two marks before the test [mm]. */
  readonly originalLength: number;
  /** Length between them after fracture [mm]. */
  readonly finalLength: number;
  /** Tensile strength Rm [MPa]. */
  readonly tensileStrength: number;
}

/** Modulus of steel that the rule counts with [MPa]. */
const STEEL = 200_000;

/**
 * Total extension at maximum force of a steel bar, from marks away from the neck.
 *
 * $$ A_{gt} = \frac{L_u' - L_0'}{L_0'} + \frac{R_m}{200\,000\ \text{MPa}} $$
 *
 * @remarks
 * The marks stand on the longer piece, 100 mm apart, at least 50 mm or two diameters from the fracture and 20 mm or a diameter from the grip (from memory): what
 * is left there is the plastic extension at maximum force, and the second term is the elastic part that went back. Bars, wire and rods of other metals are
 * measured likewise ({@link elongationWithoutNecking}).
 *
 * @param bar - Lengths [mm] and tensile strength [MPa], above 0.
 * @returns Agt [mm/mm].
 * @throws {@link InputError} `missing`, `not-finite`, `not-positive`, `unknown-option`; `out-of-range` where the length would have shrunk.
 *
 * @example
 * ```ts
 * totalExtensionFromMarks({ originalLength: 100, finalLength: 108, tensileStrength: 600 }); // => 0.083
 * ```
 *
 * @see ISO 15630-1, total elongation at maximum force, manual method (from memory). Checked in `test/handbook/after-fracture.test.ts`.
 */
export function totalExtensionFromMarks(bar: MarkedBar): number {
  const from = 'totalExtensionFromMarks';
  requireOptions(from, bar, ['originalLength', 'finalLength', 'tensileStrength'], 'bar');
  const original = requirePositive(from, 'originalLength', bar.originalLength);
  const final = requirePositive(from, 'finalLength', bar.finalLength);
  if (final < original) throw new InputError(from, 'finalLength', 'out-of-range', `must not be below originalLength (${original})`, final);
  return (final - original) / original + requirePositive(from, 'tensileStrength', bar.tensileStrength) / STEEL;
}
