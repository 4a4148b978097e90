import { InputError, requireBetween, requireObject, requireOneOf, requireOptions, requirePositive } from '../base/index.js';
import { hollomon, voce, type HardeningLaw } from '../hardening/index.js';
import type { SimulatedHardening, SimulatedMaterial } from './SimulatedMaterial.js';

/** True stress by true plastic strain, and the true plastic strain at which a neck begins. */
type FlowLaw = Pick<HardeningLaw, 'stress' | 'neckingStrain'>;

function lawOf(from: string, hardening: SimulatedHardening, yieldStress: number): FlowLaw {
  switch (hardening.law) {
    case 'hollomon': {
      const K = requirePositive(from, 'material.hardening.strengthCoefficient', hardening.strengthCoefficient);
      const n = requireBetween(from, 'material.hardening.exponent', hardening.exponent, 1e-3, 1);
      return hollomon({ strengthCoefficient: K, exponent: n });
    }
    case 'swift': {
      const start = requirePositive(from, 'material.hardening.prestrain', hardening.prestrain);
      const n = requireBetween(from, 'material.hardening.exponent', hardening.exponent, 1e-3, 1);
      // not by K = σ_y/ε_0^n, from which the first stress would be the yield stress only nearly
      return { stress: (strain) => yieldStress * (1 + strain / start) ** n, neckingStrain: Math.max(0, n - start) };
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
      return voce({ saturationStress: top, initialStress: yieldStress, rate });
    }
    case 'none':
      return { stress: () => yieldStress, neckingStrain: 0 };
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
  const { stress: flow, neckingStrain: necks } = lawOf(from, material.hardening, lower);
  return { modulus, law, smooth, lower, spacing, flow, necks };
}
