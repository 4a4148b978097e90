import { requireFinite, requireOptions, type Section } from '../../base/index.js';
import { requireBeam, type BendingSetup } from './beamSetup.js';

/** A deflected beam. */
export interface DeflectedBeam {
  /** Deflection s [mm], frame and indentation taken off. */
  readonly deflection: number;
  /** Section of the beam. */
  readonly section: Section;
  /** How the beam lies and is loaded, and where the deflection is measured. */
  readonly setup: BendingSetup;
}

/**
 * Strain of the outer fibre of a bent beam from its deflection.
 *
 * $$ \varepsilon_f = \frac{12\, h\, s}{3 L^2 - 4 a^2} \text{ (mid-span)}, \qquad \varepsilon_f = \frac{3\, h\, s}{a (3 L - 4 a)} \text{ (at the noses)}, \qquad a = \frac{L}{2}: \quad \varepsilon_f = \frac{6\, h\, s}{L^2} $$
 *
 * @remarks
 * h is twice the distance of the outer fibre from the neutral axis. The crosshead measures at the noses; of four points the beam
 * sinks further between them. The curvature is taken as elastic: beyond yielding strains gather under a single nose and the formula gives
 * less than the true strain there. Shear is left out: see `shearDeflectionShare`.
 *
 * @param beam - `deflection` [mm], `section`, `setup` with `measuredAt` (default `nose`).
 * @returns Strain of the outer fibre [mm/mm].
 * @throws {@link InputError} `missing`, `not-finite`, `not-positive`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * flexuralStrain({ deflection: 0.426667, section: rectangular({ width: 10, thickness: 4 }), setup: { points: 3, span: 64 } }); // => 0.0025000
 * ```
 *
 * @see ISO 178, flexural strain; elementary beam theory. Checked in `test/handbook/bending.test.ts`.
 */
export function flexuralStrain(beam: DeflectedBeam): number {
  const from = 'flexuralStrain';
  requireOptions(from, beam, ['deflection', 'section', 'setup'], 'beam');
  const { moment, outerFibre, reach } = requireBeam(from, beam.setup, beam.section);
  return (requireFinite(from, 'deflection', beam.deflection) * moment * outerFibre) / reach;
}
