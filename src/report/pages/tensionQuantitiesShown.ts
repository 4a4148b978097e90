import type { Quantity } from '../../base/index.js';
import { modulusStep, shownByBasis, type ShownQuantity, type ShownStep } from './MethodPage.js';
import { elongationSymbol } from '../words/elongationSymbol.js';
import { hasPiece, type TensionOrCurve } from '../words/TensionOrCurve.js';

const figures = { figures: 3 };

/** How fields are rounded: by what the standards say of their kind, and in steps of common practice for the rest. */
const steps = {
  elasticSlope: modulusStep,
  modulus: modulusStep,
  proportionalLimit: 'strength',
  upperYieldStrength: 'strength',
  lowerYieldStrength: 'strength',
  yieldPointExtension: 'yieldPointExtension',
  proofStrengths: 'strength',
  totalExtensionStrengths: 'strength',
  maximumForce: 0.01,
  tensileStrength: 'strength',
  uniformExtension: 'extension',
  totalExtensionAtMaximumForce: 'extension',
  elongationAfterFracture: 'elongation',
  totalExtensionAtFracture: 'extension',
  plasticExtensionAtFracture: 'extension',
  reductionOfArea: 'reductionOfArea',
  resilience: figures,
  toughness: figures,
  necking: 0.001,
  hardeningExponent: 0.01,
  strengthCoefficient: 1,
} as const satisfies Readonly<Record<string, ShownStep | typeof modulusStep>>;

type Field = keyof typeof steps;

/** The quantities of a field. */
function quantitiesOf(result: TensionOrCurve, field: Field): Quantity | readonly Quantity[] | undefined {
  if (field === 'hardeningExponent') return result.hardening?.exponent;
  if (field === 'strengthCoefficient') return result.hardening?.strengthCoefficient;
  return result[field];
}

/** @internal The quantities of a tension test in the order of the test. */
export function tensionQuantitiesShown(result: TensionOrCurve): ShownQuantity[] {
  const shown = shownByBasis(result.extensionBasis);
  // E is the slope under another name, so both are rounded alike
  const written = hasPiece(result) ? { written: elongationSymbol(result.testPiece) } : {};
  return (Object.keys(steps) as Field[]).flatMap((field) => {
    const own = shown(field, steps[field], quantitiesOf(result, field));
    return field === 'elongationAfterFracture' ? own.map((one) => ({ ...one, ...written })) : own;
  });
}
