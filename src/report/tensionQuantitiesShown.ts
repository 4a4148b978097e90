import type { Quantity } from '../base/index.js';
import type { TensionResult } from '../methods/index.js';
import { fromCrosshead, shownAs, type Shown, type ShownQuantity } from './MethodPage.js';

/** How a field is shown, and whether strain is in it. */
interface ShownField extends Shown {
  readonly strain?: true;
}

const strength: ShownField = { unit: 'MPa', factor: 1, step: 1 };
const proof: ShownField = { ...strength, strain: true };
const extension: ShownField = { unit: '%', factor: 100, step: 0.5, strain: true };
const energy: ShownField = { unit: 'MJ/m³', factor: 1, step: { figures: 3 }, strain: true };

/** Rounding steps of ISO 6892-1 (from memory): strengths 1 MPa, Ae 0.1 %, other extensions and A 0.5 %, Z 1 %. */
const shown = {
  elasticSlope: { unit: 'GPa', factor: 1e-3, step: { figures: 3 }, strain: true },
  modulus: { unit: 'GPa', factor: 1e-3, step: { figures: 3 }, strain: true },
  proportionalLimit: proof,
  upperYieldStrength: strength,
  lowerYieldStrength: strength,
  yieldPointExtension: { ...extension, step: 0.1 },
  proofStrengths: proof,
  totalExtensionStrengths: proof,
  maximumForce: { unit: 'kN', factor: 1e-3, step: 0.01 },
  tensileStrength: strength,
  uniformExtension: extension,
  totalExtensionAtMaximumForce: extension,
  elongationAfterFracture: { unit: '%', factor: 100, step: 0.5 },
  totalExtensionAtFracture: extension,
  plasticExtensionAtFracture: extension,
  reductionOfArea: { unit: '%', factor: 100, step: 1 },
  resilience: energy,
  toughness: energy,
  necking: { unit: '', factor: 1, step: 0.001, strain: true },
  hardeningExponent: { unit: '', factor: 1, step: 0.01, strain: true },
  strengthCoefficient: proof,
} as const satisfies Readonly<Record<string, ShownField>>;

type Field = keyof typeof shown;

/** Where the extensometer still held, a value is its own, else the crosshead's. */
function stampOf(result: TensionResult, field: Field): string | undefined {
  if (!('strain' in shown[field])) return undefined;
  if (result.extensionBasis === 'travel') return fromCrosshead;
  const beyond: readonly Field[] = [
    'uniformExtension',
    'totalExtensionAtMaximumForce',
    'totalExtensionAtFracture',
    'plasticExtensionAtFracture',
    'toughness',
    'necking',
    'hardeningExponent',
    'strengthCoefficient',
  ];
  return result.extensionBasis === 'extensometer-then-travel' && beyond.includes(field)
    ? `${fromCrosshead} beyond the extensometer`
    : undefined;
}

/** The quantities of a field. */
function quantitiesOf(result: TensionResult, field: Field): Quantity | readonly Quantity[] | undefined {
  if (field === 'hardeningExponent') return result.hardening?.exponent;
  if (field === 'strengthCoefficient') return result.hardening?.strengthCoefficient;
  return result[field];
}

/** @internal The quantities of a tension test in the order of the test; E has two figures where a frame compliance was removed. */
export function tensionQuantitiesShown(result: TensionResult): ShownQuantity[] {
  const frameRemoved = result.trail.some(({ step }) => step.startsWith('frame compliance removed'));
  return (Object.keys(shown) as Field[]).flatMap((field) => {
    const { unit, factor, step }: Shown = shown[field];
    const way = { unit, factor, step: field === 'modulus' && frameRemoved ? { figures: 2 } : step };
    return shownAs(field, way, quantitiesOf(result, field), stampOf(result, field));
  });
}
