import type { MaterialFamilyKey } from '../materials/index.js';
import type { SimulatedMaterial } from './SimulatedMaterial.js';

/** A usual kind of metal, invented. */
export interface UsualMaterial {
  /** What kind it is. */
  readonly name: string;
  /** Family of metals whose usual ranges it lies in. */
  readonly family: MaterialFamilyKey;
  /** A material of the kind: `a` and `b` from 0 to 1 say where in its range it lies. */
  readonly make: (a: number, b: number) => SimulatedMaterial;
}

function swift(modulus: number, yieldStress: number, prestrain: number, exponent: number, extension: number): SimulatedMaterial {
  const uniform = Math.expm1(Math.max(0.01, exponent - prestrain));
  return {
    modulus,
    yieldStress,
    hardening: { law: 'swift', prestrain, exponent },
    fracture: { extension: Math.max(extension, 1.25 * uniform), share: 0.78 },
  };
}
function voce(modulus: number, yieldStress: number, ratio: number, rate: number, extension: number): SimulatedMaterial {
  const saturationStress = ratio * yieldStress;
  const uniform = Math.log(((saturationStress - yieldStress) * (1 + rate)) / saturationStress) / rate;
  return {
    modulus,
    yieldStress,
    hardening: { law: 'voce', saturationStress, rate },
    fracture: { extension: Math.max(extension, 1.3 * Math.expm1(uniform)), share: 0.8 },
  };
}
function withYieldPoint(modulus: number, lower: number, plateau: number, exponent: number, extension: number): SimulatedMaterial {
  return { ...swift(modulus, lower, 0.025, exponent, extension), yieldPoint: { upper: 1.06 * lower, plateau } };
}

/**
 * Invented materials of usual kinds, to simulate tests with.
 *
 * @remarks
 * Each lies in the usual ranges of its family (see `materialFamilies`), and is no grade of any standard.
 */
export const usualMaterials: readonly UsualMaterial[] = [
  {
    name: 'low-carbon steel',
    family: 'low-carbon-steel-annealed',
    make: (a, b) => withYieldPoint(205_000 + 4000 * a, 230 + 90 * b, 0.012 + 0.01 * a, 0.2, 0.3),
  },
  {
    name: 'structural steel',
    family: 'structural-steel',
    make: (a, b) => withYieldPoint(207_000, 340 + 60 * a, 0.01 + 0.006 * b, 0.16, 0.22),
  },
  {
    name: 'cold-drawn steel',
    family: 'low-carbon-steel-cold-drawn',
    make: (a, b) => swift(203_000, 480 + 120 * a, 0.02, 0.07 + 0.02 * b, 0.1),
  },
  {
    name: 'quenched and tempered steel',
    family: 'quenched-and-tempered-steel',
    make: (a, b) => swift(206_000, 800 + 200 * a, 0.015, 0.07 + 0.03 * b, 0.12),
  },
  {
    name: 'austenitic stainless steel',
    family: 'austenitic-steel-annealed',
    make: (a, b) => swift(195_000, 230 + 60 * a, 0.04, 0.4 + 0.05 * b, 0.55),
  },
  { name: 'soft aluminium', family: 'aluminium-soft', make: (a, b) => swift(69_000, 60 + 50 * a, 0.02, 0.2 + 0.05 * b, 0.3) },
  { name: 'age-hardened aluminium', family: 'aluminium-age-hardened', make: (a, b) => voce(71_000, 280 + 100 * a, 1.25, 12 + 4 * b, 0.14) },
  { name: 'hard copper', family: 'copper-hard', make: (a, b) => voce(118_000, 230 + 60 * a, 1.15, 20 + 5 * b, 0.12) },
  { name: 'brass', family: 'brass', make: (a, b) => swift(103_000, 160 + 80 * a, 0.03, 0.3 + 0.05 * b, 0.42) },
  { name: 'titanium', family: 'titanium', make: (a, b) => swift(108_000, 420 + 200 * a, 0.02, 0.1 + 0.04 * b, 0.2) },
  { name: 'magnesium', family: 'magnesium-alloy', make: (a, b) => voce(44_500, 150 + 40 * a, 1.6, 14 + 4 * b, 0.13) },
  { name: 'ductile iron', family: 'ductile-iron', make: (a, b) => swift(170_000, 300 + 60 * a, 0.02, 0.16 + 0.03 * b, 0.13) },
];
