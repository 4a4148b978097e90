import { requireOptions, requirePositive, type Section } from '../../base/index.js';
import { requireBeam, type BendingSetup } from './beamSetup.js';

/** Stiffness of a beam. */
export interface BeamStiffness {
  /** Slope of force against deflection k [N/mm], frame and indentation taken off. */
  readonly stiffness: number;
  /** Section of the beam. */
  readonly section: Section;
  /** How the beam lies and is loaded, and where the deflection is measured. */
  readonly setup: BendingSetup;
}

/**
 * Modulus of elasticity in bending from the stiffness of a beam.
 *
 * $$ E_b = \frac{k L^3}{48 I} \text{ (3 points)}, \qquad E_b = \frac{k\, a (3 L^2 - 4 a^2)}{48 I} \text{ (4 points, mid-span)}, \qquad E_b = \frac{k\, a^2 (3 L - 4 a)}{12 I} \text{ (4 points, at the noses)} $$
 *
 * @remarks
 * Three points are the case $a = L/2$ of either. The thickness enters with its third power: 1 % of it is 3 % of the modulus. Frame,
 * supports and indentation in the deflection, and shear of a short span, all lower the result. The modulus $E_f$ of ISO 178 is that of a chord (see `chordModulus`).
 *
 * @param beam - `stiffness` [N/mm] above 0, `section`, `setup` with `measuredAt` (default `nose`).
 * @returns Modulus [MPa].
 * @throws {@link InputError} `missing`, `not-finite`, `not-positive`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * flexuralModulus({ stiffness: 100, section: rectangular({ width: 10, thickness: 4 }), setup: { points: 3, span: 64 } }); // => 10240
 * ```
 *
 * @see ISO 178, flexural modulus; ASTM D6272 (four points); elementary beam theory. Checked in `test/handbook/bending.test.ts`.
 */
export function flexuralModulus(beam: BeamStiffness): number {
  const from = 'flexuralModulus';
  requireOptions(from, beam, ['stiffness', 'section', 'setup'], 'beam');
  const { reach, secondMoment } = requireBeam(from, beam.setup, beam.section);
  return (requirePositive(from, 'stiffness', beam.stiffness) * reach) / secondMoment;
}
