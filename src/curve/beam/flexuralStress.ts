import { requireFinite, requireOptions, type Section } from '../../base/index.js';
import { requireBeam, type BendingSetup } from './beamSetup.js';

/** A force on a beam. */
export interface LoadedBeam {
  /** Whole force F [N], of both noses together. */
  readonly force: number;
  /** Section of the beam. */
  readonly section: Section;
  /** How the beam lies and is loaded. */
  readonly setup: BendingSetup;
}

/**
 * Stress of the outer fibre of a bent beam, by the elastic formula.
 *
 * $$ \sigma_f = \frac{F a}{2 W}, \qquad a = \frac{L}{2} \text{ for three points}: \quad \sigma_f = \frac{F L}{4 W} = \frac{3 F L}{2 b h^2} = \frac{8 F L}{\pi d^3} $$
 *
 * @remarks
 * F is the whole force, not that of one nose. The formula is linear-elastic: once the outer fibre yields it overstates the stress, by up
 * to the factor of `plasticShapeFactor`. Of a rectangle the thickness is the height in the direction of the force. Small deflections.
 *
 * @param beam - `force` [N], `section` with second moment and section modulus, `setup` with `points`, `span` [mm] and, of four points, `arm` [mm].
 * @returns Stress of the outer fibre [MPa].
 * @throws {@link InputError} `missing`, `not-finite`, `not-positive`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * flexuralStress({ force: 1000, section: round({ diameter: 10 }), setup: { points: 3, span: 100 } }); // => 254.648
 * flexuralStress({ force: 1000, section: rectangular({ width: 10, thickness: 5 }), setup: { points: 4, span: 120, arm: 40 } }); // => 480
 * ```
 *
 * @see ISO 178, flexural stress; ASTM E855; elementary beam theory. Checked in `test/handbook/bending.test.ts`.
 */
export function flexuralStress(beam: LoadedBeam): number {
  const from = 'flexuralStress';
  requireOptions(from, beam, ['force', 'section', 'setup'], 'beam');
  const { moment, outerFibre, secondMoment } = requireBeam(from, beam.setup, beam.section);
  return (requireFinite(from, 'force', beam.force) * moment * outerFibre) / secondMoment;
}
