import { InputError, requireBetween, requireOptions, type Section, type SectionShape, quoted } from '../../base/index.js';
import { requireBeam, type BendingSetup } from './beamSetup.js';

/** A beam whose shear is asked for. */
export interface ShearedBeam {
  /** Section of the beam. */
  readonly section: Section;
  /** How the beam lies and is loaded, and where the deflection is measured. */
  readonly setup: BendingSetup;
  /** Poisson's ratio ν of the isotropic material; default 0.3. */
  readonly poissonRatio?: number | undefined;
}

/** Form factors of shear by energy; a hexagon is taken as round, a tube as thin-walled (the most it can be). */
const formFactors: Partial<Record<SectionShape, number>> = { rectangular: 6 / 5, square: 6 / 5, round: 10 / 9, hexagon: 10 / 9, tube: 2 };

/**
 * What shear adds to the deflection of a beam, as a share of the deflection by bending.
 *
 * $$ \frac{s_{shear}}{s_{bending}} = \frac{f\, a / (2 G S_0)}{\kappa / (E I)}, \qquad \frac{E}{G} = 2 (1 + \nu), \qquad \text{3 points, rectangle}: \; 2.4\, (1 + \nu) \left( \frac{h}{L} \right)^2 $$
 *
 * @remarks
 * κ is the deflection by bending times $E I / F$. f is the form factor by energy: 6/5 of a rectangle, 10/9 of a circle, 2 of a thin tube.
 * A modulus from the deflection is too low by this share. The exact solution of a wide span under a concentrated force lies a tenth lower (2.85 instead of 3.12 for
 * a rectangle and ν = 0.3, without its small cubic term): the share is an estimate. Fibre composites shear far more than isotropic metals.
 *
 * @param beam - `section` of shape round, rectangular, square, hexagon or tube; `setup`; `poissonRatio` from 0 to 0.5, default 0.3.
 * @returns Share of the deflection by bending [1].
 * @throws {@link InputError} `missing`, `not-finite`, `not-positive`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * shearDeflectionShare({ section: rectangular({ width: 10, thickness: 4 }), setup: { points: 3, span: 64 } }); // => 0.0121875
 * ```
 *
 * @see Timoshenko and Goodier, Theory of Elasticity, bending by a concentrated load; Young and Budynas, Roark's Formulas, deflection due to shear. Checked in `test/handbook/bending.test.ts`.
 */
export function shearDeflectionShare(beam: ShearedBeam): number {
  const from = 'shearDeflectionShare';
  requireOptions(from, beam, ['section', 'setup', 'poissonRatio'], 'beam');
  const { arm, reach, secondMoment } = requireBeam(from, beam.setup, beam.section);
  const ratio = requireBetween(from, 'poissonRatio', beam.poissonRatio ?? 0.3, 0, 0.5);
  const { shape, area } = beam.section;
  const factor = formFactors[shape];
  if (factor === undefined)
    throw new InputError(from, 'section.shape', 'out-of-range', `must be one of ${quoted(Object.keys(formFactors))}`, shape);
  return (factor * arm * (1 + ratio) * secondMoment) / (area * reach);
}
