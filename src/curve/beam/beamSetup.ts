import { InputError, requireOneOf, requireOptions, requirePositive, requireSection, type Section } from '../../base/index.js';

/** How a beam lies on its supports and is loaded. */
export interface BendingSetup {
  /** 3: one nose at mid-span; 4: two noses at equal distances from the supports. */
  readonly points: 3 | 4;
  /** Distance of the supports L [mm]. */
  readonly span: number;
  /** Of four points: distance from a support to the next nose a [mm], below half of the span. */
  readonly arm?: number | undefined;
  /** Where the motion of the beam is measured; default at the noses, as the crosshead does. */
  readonly measuredAt?: 'nose' | 'mid-span' | undefined;
  /** How a hexagon lies: with flats above and below (default), or with corners. */
  readonly hexagonOn?: 'flats' | 'corners' | undefined;
}

/** @internal A beam as its formulas need it: M = F m, σ = M c/I, s = F κ/(E I). */
export interface Beam {
  readonly span: number;
  /** From a support to the next nose; of three points half of the span. */
  readonly arm: number;
  /** Largest bending moment over force m = a/2 [mm]. */
  readonly moment: number;
  /** Deflection at the place of measurement times E I over force κ [mm³]. */
  readonly reach: number;
  readonly secondMoment: number;
  /** Distance of the outer fibre from the neutral axis c [mm]. */
  readonly outerFibre: number;
}

const fields = ['points', 'span', 'arm', 'measuredAt', 'hexagonOn'];

/** Distance of the outer fibre from the neutral axis. */
function outerFibreOf(from: string, at: string, section: Section, on: 'flats' | 'corners'): { secondMoment: number; outerFibre: number } {
  const path = `${at}section`;
  requireSection(from, path, section);
  const secondMoment = requirePositive(from, `${path}.secondMoment`, section.secondMoment);
  if (on === 'flats')
    return { secondMoment, outerFibre: secondMoment / requirePositive(from, `${path}.sectionModulus`, section.sectionModulus) };
  const corner = section.sectionModulusCorner;
  if (corner === undefined)
    throw new InputError(from, `${at}setup.hexagonOn`, 'out-of-range', 'must be left out: the section has no corners to lie on', on);
  return { secondMoment, outerFibre: secondMoment / corner };
}

/** @internal Checks a set-up and a section. Three points are four points whose noses have met at mid-span; `at` stands before the paths. */
export function requireBeam(from: string, setup: BendingSetup, section: Section, at = ''): Beam {
  const path = `${at}setup`;
  requireOptions(from, setup, fields, path);
  const points: unknown = setup.points;
  if (points !== 3 && points !== 4) throw new InputError(from, `${path}.points`, 'out-of-range', 'must be 3 or 4', points);
  const span = requirePositive(from, `${path}.span`, setup.span);
  if (points === 3 && setup.arm !== undefined)
    throw new InputError(from, `${path}.arm`, 'out-of-range', 'belongs to four points only', setup.arm);
  const arm = points === 3 ? span / 2 : requirePositive(from, `${path}.arm`, setup.arm);
  if (points === 4 && arm >= span / 2)
    throw new InputError(from, `${path}.arm`, 'out-of-range', `must be below half of the span (${span / 2})`, arm);
  const place = requireOneOf(from, `${path}.measuredAt`, setup.measuredAt ?? 'nose', ['nose', 'mid-span']);
  const on = requireOneOf(from, `${path}.hexagonOn`, setup.hexagonOn ?? 'flats', ['flats', 'corners']);
  return {
    span,
    arm,
    moment: arm / 2,
    reach: place === 'nose' ? (arm ** 2 * (3 * span - 4 * arm)) / 12 : (arm * (3 * span ** 2 - 4 * arm ** 2)) / 48,
    ...outerFibreOf(from, at, section, on),
  };
}
