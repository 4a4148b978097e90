/** A metal of each family for the simulation, invented within the usual ranges. */
import type { MaterialFamily, MaterialFamilyKey } from '../../src/index.js';
import type { SimulatedMaterial } from '../../src/simulate/index.js';

const swift = (
  modulus: number,
  yieldStress: number,
  prestrain: number,
  exponent: number,
  extension: number,
  reductionOfArea: number,
  yieldPoint?: SimulatedMaterial['yieldPoint'],
): SimulatedMaterial => ({
  modulus,
  yieldStress,
  hardening: { law: 'swift', prestrain, exponent },
  fracture: { extension, share: 0.75 },
  reductionOfArea,
  yieldPoint,
});
const smooth = (
  modulus: number,
  proof: number,
  exponent: number,
  extension: number,
  reductionOfArea: number,
  share = 0.75,
): SimulatedMaterial => ({
  modulus,
  hardening: { law: 'hollomon', strengthCoefficient: proof / 0.002 ** exponent, exponent },
  fracture: { extension, share },
  reductionOfArea,
});

export const metals: Readonly<Record<MaterialFamilyKey, SimulatedMaterial>> = {
  'low-carbon-steel-annealed': swift(207_000, 240, 0.02, 0.25, 0.3, 0.65, { upper: 262, plateau: 0.015 }),
  'structural-steel': swift(208_000, 340, 0.02, 0.2, 0.25, 0.6, { upper: 365, plateau: 0.012 }),
  'low-carbon-steel-cold-drawn': smooth(204_000, 480, 0.08, 0.12, 0.5),
  'quenched-and-tempered-steel': smooth(206_000, 760, 0.08, 0.13, 0.5),
  'austenitic-steel-annealed': swift(195_000, 250, 0.03, 0.4, 0.5, 0.7),
  'aluminium-soft': swift(69_500, 60, 0.01, 0.25, 0.3, 0.7),
  'aluminium-age-hardened': smooth(70_500, 280, 0.08, 0.11, 0.3),
  'copper-annealed': swift(118_000, 65, 0.01, 0.45, 0.57, 0.75),
  'copper-hard': smooth(120_000, 290, 0.04, 0.09, 0.6),
  brass: swift(103_000, 180, 0.03, 0.3, 0.35, 0.5),
  titanium: smooth(108_000, 400, 0.09, 0.18, 0.4),
  'magnesium-alloy': smooth(44_500, 170, 0.12, 0.14, 0.2, 0.95),
  'grey-iron': { modulus: 110_000, yieldStress: 240, hardening: { law: 'none' }, reductionOfArea: 0.005 },
  'ductile-iron': smooth(168_000, 330, 0.13, 0.15, 0.16, 0.95),
  zinc: smooth(95_000, 130, 0.1, 0.3, 0.3),
  lead: swift(16_000, 8, 0.02, 0.2, 0.4, 0.9),
};

const range = (pair: readonly [number, number] | undefined, scale = 1): string =>
  pair ? pair.map((one) => String(Number((one * scale).toPrecision(4)))).join('-') : 'none';

/** A family as a row of the table in the guide: GPa, MPa, MPa, 1, %, 1, g/cm³. */
export const familyRow = (family: MaterialFamily): string =>
  `| ${[
    `\`${family.key}\``,
    range(family.modulus, 1e-3),
    range(family.yieldStrength),
    range(family.tensileStrength),
    range(family.yieldRatio),
    range(family.elongation, 100),
    range(family.exponent),
    String(family.density),
    family.yieldPoint,
  ].join(' | ')} |`;
