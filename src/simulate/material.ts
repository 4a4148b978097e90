import { InputError, requireBetween, requireObject, requireOneOf, requireOptions, requirePositive } from '../base/index.js';

/** How the stress rises with true plastic strain. */
export type SimulatedHardening =
  | {
      /** σ = K ε_p^n from the first load on: a smooth knee (Ramberg-Osgood). */
      readonly law: 'hollomon';
      /** K [MPa]. */
      readonly strengthCoefficient: number;
      /** n. */
      readonly exponent: number;
    }
  | {
      /** σ = σ_y (1 + ε_p/ε_0)^n from the yield stress on. */
      readonly law: 'swift';
      /** ε_0 [mm/mm]. */
      readonly prestrain: number;
      /** n. */
      readonly exponent: number;
    }
  | {
      /** σ = σ_s − (σ_s − σ_y) e^(−θ ε_p) from the yield stress on. */
      readonly law: 'voce';
      /** σ_s [MPa], above the yield stress. */
      readonly saturationStress: number;
      /** θ. */
      readonly rate: number;
    }
  | {
      /** None: the piece breaks at the yield stress. */
      readonly law: 'none';
    };

/** Where a simulated piece breaks. */
export interface SimulatedFracture {
  /** Plastic extension over the parallel length [mm/mm]. */
  readonly extension: number;
  /** Stress there as a share of the maximum; default 0.75. */
  readonly share?: number | undefined;
}

/** A material as the simulation knows it. */
export interface SimulatedMaterial {
  /** Modulus E [MPa]. */
  readonly modulus: number;
  /** Stress where yielding begins [MPa]: the lower yield strength, where there is a yield point; not for `hollomon`. */
  readonly yieldStress?: number | undefined;
  /** Yield point: upper strength [MPa] and plateau; default none. */
  readonly yieldPoint?:
    | {
        /** ReH [MPa], above the yield stress. */
        readonly upper: number;
        /** Plastic strain where hardening begins [mm/mm]; default 0.012. */
        readonly plateau?: number | undefined;
      }
    | undefined;
  /** Hardening. */
  readonly hardening: SimulatedHardening;
  /** Fracture: plastic extension over the parallel length [mm/mm], beyond the maximum; and stress there as a share of the maximum, default 0.75. */
  readonly fracture?: SimulatedFracture | undefined;
  /** Z [1]; default 0.5. */
  readonly reductionOfArea?: number | undefined;
}

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

/** True stress by true plastic strain, and the true plastic strain at which a neck begins. */
function flowLaw(
  from: string,
  hardening: SimulatedHardening,
  yieldStress: number,
): { readonly flow: (strain: number) => number; readonly necks: number } {
  switch (hardening.law) {
    case 'hollomon': {
      const K = requirePositive(from, 'material.hardening.strengthCoefficient', hardening.strengthCoefficient);
      const n = requireBetween(from, 'material.hardening.exponent', hardening.exponent, 1e-3, 1);
      return { flow: (strain) => K * strain ** n, necks: n };
    }
    case 'swift': {
      const start = requirePositive(from, 'material.hardening.prestrain', hardening.prestrain);
      const n = requireBetween(from, 'material.hardening.exponent', hardening.exponent, 1e-3, 1);
      return { flow: (strain) => yieldStress * (1 + strain / start) ** n, necks: Math.max(0, n - start) };
    }
    case 'voce': {
      const top = requirePositive(from, 'material.hardening.saturationStress', hardening.saturationStress);
      const rate = requirePositive(from, 'material.hardening.rate', hardening.rate);
      if (top <= yieldStress)
        throw new InputError(
          from,
          'material.hardening.saturationStress',
          'out-of-range',
          `must be above yieldStress (${yieldStress})`,
          top,
        );
      return {
        flow: (strain) => top - (top - yieldStress) * Math.exp(-rate * strain),
        necks: Math.max(0, Math.log(((top - yieldStress) * (1 + rate)) / top) / rate),
      };
    }
    case 'none':
      return { flow: () => yieldStress, necks: 0 };
  }
}

const fields = {
  hollomon: ['law', 'strengthCoefficient', 'exponent'],
  swift: ['law', 'prestrain', 'exponent'],
  voce: ['law', 'saturationStress', 'rate'],
  none: ['law'],
} as const;

/** @internal Modulus, yield stress and flow law of a material, checked. */
export function requireFlow(from: string, material: Pick<SimulatedMaterial, 'modulus' | 'yieldStress' | 'hardening'>) {
  const modulus = requirePositive(from, 'material.modulus', material.modulus);
  requireObject(from, 'material.hardening', material.hardening);
  const law = requireOneOf(from, 'material.hardening.law', material.hardening.law, ['hollomon', 'swift', 'voce', 'none']);
  requireOptions(from, material.hardening, fields[law], 'material.hardening');
  const smooth = law === 'hollomon';
  if (smooth && material.yieldStress !== undefined)
    throw new InputError(
      from,
      'material.yieldStress',
      'out-of-range',
      'does not go with the law hollomon, which is smooth from the start',
      material.yieldStress,
    );
  const lower = smooth ? 0 : requirePositive(from, 'material.yieldStress', material.yieldStress);
  // steps of plastic strain grow with this power, so that steps of stress stay even
  const spacing = material.hardening.law === 'hollomon' ? Math.max(2, 1 / material.hardening.exponent) : 2;
  return { modulus, law, smooth, lower, spacing, ...flowLaw(from, material.hardening, lower) };
}

/** @internal Checks a material and makes its curve. */
export function materialCurve(material: SimulatedMaterial): MaterialCurve {
  requireOptions(
    FROM,
    requireObject(FROM, 'material', material),
    ['modulus', 'yieldStress', 'yieldPoint', 'hardening', 'fracture', 'reductionOfArea'],
    'material',
  );
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
