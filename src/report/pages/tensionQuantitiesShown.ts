import type { Quantity } from '../../base/index.js';
import type { Phrase } from '../../languages/index.js';
import { fromCrosshead, shownAs, type ShownQuantity, type ShownStep } from './MethodPage.js';
import type { TensionOrCurve } from '../words/TensionOrCurve.js';

/** How a field is rounded, and whether strain is in it. */
interface ShownField {
  readonly step: ShownStep;
  readonly strain?: true;
}

const strength: ShownField = { step: 'strength' };
const proof: ShownField = { ...strength, strain: true };
const extension: ShownField = { step: 'extension', strain: true };
const figures: ShownField = { step: { figures: 3 }, strain: true };

/** What the standards round by kind, and steps of common practice for the rest. */
const shown = {
  elasticSlope: figures,
  modulus: figures,
  proportionalLimit: proof,
  upperYieldStrength: strength,
  lowerYieldStrength: strength,
  yieldPointExtension: { ...extension, step: 'yieldPointExtension' },
  proofStrengths: proof,
  totalExtensionStrengths: proof,
  maximumForce: { step: 0.01 },
  tensileStrength: strength,
  uniformExtension: extension,
  totalExtensionAtMaximumForce: extension,
  elongationAfterFracture: { step: 'elongation' },
  totalExtensionAtFracture: extension,
  plasticExtensionAtFracture: extension,
  reductionOfArea: { step: 'reductionOfArea' },
  resilience: figures,
  toughness: figures,
  necking: { step: 0.001, strain: true },
  hardeningExponent: { step: 0.01, strain: true },
  strengthCoefficient: { ...proof, step: 1 },
} as const satisfies Readonly<Record<string, ShownField>>;

type Field = keyof typeof shown;

/** Where the extensometer still held, a value is its own, else the crosshead's. */
function stampOf(result: TensionOrCurve, field: Field): Phrase | undefined {
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
    ? 'determined from crosshead displacement beyond the extensometer'
    : undefined;
}

/** The quantities of a field. */
function quantitiesOf(result: TensionOrCurve, field: Field): Quantity | readonly Quantity[] | undefined {
  if (field === 'hardeningExponent') return result.hardening?.exponent;
  if (field === 'strengthCoefficient') return result.hardening?.strengthCoefficient;
  return result[field];
}

/** @internal The quantities of a tension test in the order of the test. */
export function tensionQuantitiesShown(result: TensionOrCurve): ShownQuantity[] {
  // E is the slope under another name, so both are rounded alike
  return (Object.keys(shown) as Field[]).flatMap((field) =>
    shownAs(field, shown[field].step, quantitiesOf(result, field), stampOf(result, field)),
  );
}
