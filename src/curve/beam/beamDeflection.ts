import { requireFinite, requireOptions, requirePositive } from '../../base/index.js';
import { requireBeam } from './beamSetup.js';
import type { LoadedBeam } from './flexuralStress.js';

/** A force on a beam of known modulus. */
export interface ElasticBeam extends LoadedBeam {
  /** Modulus of elasticity E [MPa]. */
  readonly modulus: number;
}

/**
 * Elastic deflection of a beam under a force.
 *
 * $$ s = \frac{F L^3}{48 E I} \text{ (3 points)}, \qquad s = \frac{F a (3 L^2 - 4 a^2)}{48 E I} \text{ (4 points, mid-span)}, \qquad s = \frac{F a^2 (3 L - 4 a)}{12 E I} \text{ (4 points, at the noses)} $$
 *
 * @remarks
 * Bending only, without shear, indentation and frame; small deflections. Before a test it tells what the sensor must resolve.
 *
 * @param beam - `force` [N], `modulus` [MPa] above 0, `section`, `setup` with `measuredAt` (default `nose`).
 * @returns Deflection [mm].
 * @throws {@link InputError} `missing`, `not-finite`, `not-positive`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * const section = rectangular({ width: 20, thickness: 5 });
 * beamDeflection({ force: 500, modulus: 210000, section, setup: { points: 3, span: 100 } }); // => 0.238095
 * ```
 *
 * @see Elementary beam theory (Timoshenko, Strength of Materials). Checked in `test/handbook/bending.test.ts`.
 */
export function beamDeflection(beam: ElasticBeam): number {
  const from = 'beamDeflection';
  requireOptions(from, beam, ['force', 'modulus', 'section', 'setup'], 'beam');
  const { reach, secondMoment } = requireBeam(from, beam.setup, beam.section);
  return (requireFinite(from, 'force', beam.force) * reach) / (requirePositive(from, 'modulus', beam.modulus) * secondMoment);
}
