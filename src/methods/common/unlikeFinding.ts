import { finding, type Finding } from '../../base/index.js';
import {
  explainProperties,
  materialFamily,
  type ComparedProperty,
  type MaterialFamilyKey,
  type MeasuredProperties,
  type Measurement,
  type PropertyCause,
  type PropertyName,
} from '../../materials/index.js';

const codes = { piece: 'dimension-looks-wrong', record: 'unit-looks-wrong', frame: 'strain-looks-wrong', method: 'unlike-family' } as const;

/** @internal Symbol and field of each property in a result. */
export type PropertyWords = Readonly<Partial<Record<PropertyName, readonly [symbol: string, field: string]>>>;

/** @internal Properties to be compared, and how they were measured. */
export interface Compared {
  readonly properties: MeasuredProperties;
  readonly how: Measurement;
  readonly words: PropertyWords;
  /** Default: any metal. */
  readonly family?: MaterialFamilyKey | undefined;
  readonly margin?: number | undefined;
  /** Strain at the highest stress, said where strain seems to be in per cent; default strength over slope. */
  readonly strain?: number | undefined;
  /** Which causes are possible in this test; default all. */
  readonly possible?: (cause: PropertyCause) => boolean;
  /** The measured value over the property that it is compared as; default 1. */
  readonly shown?: number;
}

/** The property that the sentence is about: the first that the likeliest cause explains. */
function first(outside: readonly ComparedProperty[], cause: PropertyCause | undefined): ComparedProperty {
  return outside.find(({ property }) => cause?.explains.includes(property)) ?? outside[0]!;
}

/** @internal The finding of properties outside their ranges, with ranked causes; none where all lie inside, or nothing was measured. */
export function unlikeFinding({ properties, how, words, family, margin, strain, possible = () => true, shown = 1 }: Compared): Finding[] {
  if (Object.values(properties).every((value) => value === undefined)) return [];
  const explained = explainProperties(properties, family ? { family, margin, ...how } : how);
  const { compared } = explained;
  const causes = explained.causes.filter(possible);
  const outside = compared.filter((one) => one.outside);
  if (outside.length === 0) return [];
  const [cause] = causes;
  const { property, value, range } = first(outside, cause);
  const [symbol, field] = words[property]!;
  // without a family a property is outside only where no metal comes near it
  const metals = explainProperties(properties, how).compared;
  const impossible = metals.some((one) => one.outside && (one.property === 'modulus' || one.property === 'tensileStrength'));
  const ranked = causes.map(({ key, score }) => `${key} (${score.toFixed(2)})`).join(', ');
  const values = {
    symbol,
    value: shown * value,
    unit: property === 'modulus' || property === 'yieldStrength' || property === 'tensileStrength' ? 'MPa' : '',
    low: shown * range[0],
    high: shown * range[1],
    family: family ? materialFamily(family).name : 'any metal',
    why: cause ? cause.sentence : 'No usual mistake explains it.',
    outside: outside.map((one) => one.property).join(', '),
    causes: ranked,
    ...(cause ? { factor: cause.factor } : {}),
  };
  const severity = impossible ? 'fault' : 'caution';
  const { modulus: slope, tensileStrength, yieldStrength } = properties;
  const strength = tensileStrength ?? yieldStrength;
  if (cause?.key === 'force-in-kilonewtons')
    return [
      finding(
        'force-looks-like-kilonewton',
        { ...values, stress: shown * (strength ?? value) },
        { field: words.tensileStrength?.[1] ?? field, severity },
      ),
    ];
  if (cause?.key === 'strain-in-percent' && slope !== undefined && strength !== undefined)
    return [
      finding(
        'strain-looks-like-percent',
        { ...values, strain: strain ?? strength / slope, slope },
        { field: words.modulus?.[1] ?? field, severity },
      ),
    ];
  const code = codes[cause ? cause.about : 'method'];
  // of travel with the frame in it the fault of the missing modulus has said so already
  const known = cause?.key === 'frame-compliance-left-in' && how.frameRemoved !== true && outside.length === 1;
  return [finding(code, values, { field, severity: known ? 'note' : severity })];
}
