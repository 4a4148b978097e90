import { InputError, type Section, quoted } from '../base/index.js';

/**
 * Moment over that of first yield, of a section whose material yields without hardening, by the height of the elastic core over that of the section.
 *
 * Rectangle: $\frac{3}{2} - \frac{t^2}{2}$. Circle: $\frac{2}{3\pi} (5 - 2 t^2) \sqrt{1 - t^2} + \frac{2}{\pi t} \arcsin t$.
 */
const cores: Readonly<Partial<Record<Section['shape'], (t: number) => number>>> = {
  rectangular: (t) => 1.5 - t ** 2 / 2,
  square: (t) => 1.5 - t ** 2 / 2,
  round: (t) => (2 / (3 * Math.PI)) * (5 - 2 * t ** 2) * Math.sqrt(1 - t ** 2) + ((2 / Math.PI) * Math.asin(t)) / t,
};

/** @internal A material with one elastic and one plastic slope. */
export interface BilinearMaterial {
  readonly modulus: number;
  /** Infinite: it never yields. */
  readonly yieldStress: number;
  readonly tangentModulus: number;
}

/**
 * @internal Stress of the outer fibre by the elastic formula, M c/I, at a strain of the outer fibre κ c. Exact: the material is the sum of one that
 * stays elastic with the plastic slope, and one that yields without hardening with the rest.
 */
export function momentCurvature(
  from: string,
  section: Section,
  { modulus, yieldStress, tangentModulus }: BilinearMaterial,
): (strain: number) => number {
  const core = cores[section.shape];
  if (!core)
    throw new InputError(from, 'piece.section.shape', 'out-of-range', `must be one of ${quoted(Object.keys(cores))}`, section.shape);
  const yieldStrain = yieldStress / modulus;
  return (strain) =>
    strain <= yieldStrain
      ? modulus * strain
      : tangentModulus * strain + (modulus - tangentModulus) * yieldStrain * core(yieldStrain / strain);
}
