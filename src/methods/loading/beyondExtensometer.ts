import type { Quantity, StressStrainCurve } from '../../base/index.js';
import type { RecordedCurve } from '../../curve/index.js';
import type { ModulusWindow, StrengthAtExtension } from './LineResult.js';

/** What of a result has a place on the curve. */
interface Placed {
  readonly elasticSlope?: Quantity | undefined;
  readonly modulus?: Quantity | undefined;
  readonly modulusWindow?: ModulusWindow | undefined;
  readonly upperYieldStrength?: { readonly strain: number } | undefined;
  readonly yieldPointExtension?: Quantity | undefined;
  readonly resilience?: Quantity | undefined;
  readonly proofStrengths: readonly StrengthAtExtension[];
  readonly totalExtensionStrengths?: readonly StrengthAtExtension[];
  readonly stressesAtStrain?: readonly StrengthAtExtension[];
}

/** @internal Quantities, those marked whose point lies beyond the last reading of an extensometer that travel carries on. */
export function markedBeyond<Q extends Placed>(quantities: Q, { basis, extensometerEnd }: RecordedCurve, { strain }: StressStrainCurve): Q {
  if (basis !== 'extensometer-then-travel' || extensometerEnd === undefined) return quantities;
  const reach = strain[extensometerEnd - 1]!;
  const marked = <T extends Quantity>(quantity: T, at: number): T => (at > reach ? { ...quantity, beyondExtensometer: true } : quantity);
  const { elasticSlope, modulus, modulusWindow, upperYieldStrength, yieldPointExtension, resilience, proofStrengths } = quantities;
  const window = modulusWindow?.strainLimits[1] ?? 0;
  const each = (list: readonly StrengthAtExtension[]) => list.map((one) => marked(one, one.strain));
  return {
    ...quantities,
    ...(elasticSlope && { elasticSlope: marked(elasticSlope, window) }),
    ...(modulus && { modulus: marked(modulus, window) }),
    ...(yieldPointExtension && {
      yieldPointExtension: marked(yieldPointExtension, (upperYieldStrength?.strain ?? 0) + yieldPointExtension.value),
    }),
    ...(resilience && { resilience: marked(resilience, proofStrengths[0]?.strain ?? 0) }),
    proofStrengths: each(proofStrengths),
    ...(quantities.totalExtensionStrengths && { totalExtensionStrengths: each(quantities.totalExtensionStrengths) }),
    ...(quantities.stressesAtStrain && { stressesAtStrain: each(quantities.stressesAtStrain) }),
  };
}
