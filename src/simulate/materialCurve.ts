import { InputError, requireBetween, requireOptions, requirePositive } from '../base/index.js';
import { requireFlow } from './requireFlow.js';
import type { SimulatedMaterial } from './SimulatedMaterial.js';

/** @internal Engineering stress by engineering plastic extension, with its landmarks. */
export interface MaterialCurve {
  readonly modulus: number;
  /** Stress where plastic extension begins [MPa]; 0 for a curve that is smooth from the start. */
  readonly start: number;
  /** Stress [MPa] at a plastic extension p over the parallel length, up to fracture. */
  readonly stress: (p: number) => number;
  /** Plastic extension at the maximum and at fracture. */
  readonly atMaximum: number;
  readonly atFracture: number;
  readonly upper: number | undefined;
  readonly lower: number | undefined;
  /** Plastic extension over which the stress falls from upper to lower, and where hardening begins. */
  readonly drop: number;
  readonly plateau: number;
  /** Power by which steps of plastic extension grow, so that steps of stress stay even. */
  readonly spacing: number;
}

const FROM = 'simulateTension';
/** Plastic extension over which the upper yield point falls to the plateau. */
const DROP = 0.0008;

/** @internal Checks a material and makes its curve. */
export function materialCurve(material: SimulatedMaterial): MaterialCurve {
  requireOptions(FROM, material, ['modulus', 'yieldStress', 'yieldPoint', 'hardening', 'fracture', 'reductionOfArea'], 'material');
  const { modulus, law, smooth, lower, spacing, flow, necks } = requireFlow(FROM, material);
  requireBetween(FROM, 'material.reductionOfArea', material.reductionOfArea ?? 0.5, 0, 0.999);
  if (smooth && material.yieldPoint)
    throw new InputError(
      FROM,
      'material.yieldPoint',
      'out-of-range',
      'does not go with the law hollomon, which is smooth from the start',
      material.yieldPoint.upper,
    );
  const point = material.yieldPoint;
  const upper = point && requirePositive(FROM, 'material.yieldPoint.upper', point.upper);
  if (upper !== undefined && upper <= lower)
    throw new InputError(FROM, 'material.yieldPoint.upper', 'out-of-range', `must be above yieldStress (${lower})`, upper);
  const plateau = point ? requireBetween(FROM, 'material.yieldPoint.plateau', point.plateau ?? 0.012, 2 * DROP, 0.2) : 0;
  // hardening counts from the end of the plateau, so that the stress is continuous there
  const hardening = (p: number): number => {
    const strain = Math.log((1 + p) / (1 + plateau));
    return flow(strain) * Math.exp(-strain);
  };
  const atMaximum = (1 + plateau) * Math.exp(necks) - 1;
  const highest = hardening(atMaximum);
  const given = material.fracture;
  const least = law === 'none' ? 0 : atMaximum;
  const atFracture = given
    ? requireBetween(FROM, 'material.fracture.extension', given.extension, least, 5)
    : law === 'none'
      ? 0
      : 1.6 * atMaximum;
  const share = requireBetween(FROM, 'material.fracture.share', given?.share ?? 0.75, 0.01, 1);
  const neck = (p: number): number => highest * (1 - (1 - share) * ((p - atMaximum) / (atFracture - atMaximum)) ** 2);
  const stress = (p: number): number => {
    if (upper !== undefined && p < DROP) {
      const t = p / DROP;
      return upper - (upper - lower) * t * t * (3 - 2 * t);
    }
    if (p < plateau) return lower;
    return p <= atMaximum ? hardening(p) : neck(p);
  };
  return {
    modulus,
    start: upper ?? lower,
    stress,
    atMaximum,
    atFracture,
    upper,
    lower: upper === undefined ? undefined : lower,
    drop: DROP,
    plateau,
    spacing,
  };
}
