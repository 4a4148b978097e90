import { finding, type Finding } from '../base/index.js';
import {
  crossCheck,
  explainProperties,
  materialFamily,
  metalModuli,
  type ComparedProperty,
  type MeasuredProperties,
  type Measurement,
  type PropertyCause,
  type PropertyName,
} from '../materials/index.js';
import { isCurved } from './lineFindings.js';
import type { TensionNumbers } from './TensionNumbers.js';
import type { TensionSettings } from './tensionOptions.js';
import type { Quantities } from './tensionQuantities.js';

/** A slope scattered by more than this says nothing about the metal. */
const LEAST_TRUST = 0.05;
/** A law that explains less of the curve than this is none. */
const LEAST_FIT = 0.95;

const codes = { piece: 'dimension-looks-wrong', record: 'unit-looks-wrong', frame: 'strain-looks-wrong', method: 'unlike-family' } as const;

const words: Readonly<Record<PropertyName, readonly [symbol: string, field: string]>> = {
  modulus: ['The slope of the elastic line', 'elasticSlope'],
  yieldStrength: ['The yield strength', 'proofStrengths'],
  tensileStrength: ['Rm', 'tensileStrength'],
  yieldRatio: ['Yield strength over Rm', 'tensileStrength'],
  elongation: ['A', 'elongationAfterFracture'],
  plasticExtension: ['The plastic extension at fracture', 'plasticExtensionAtFracture'],
  exponent: ['n', 'hardening'],
};

/** What of a result can be compared; a slope only where the line can be trusted. */
function propertiesOf(result: Quantities, numbers: TensionNumbers, { thresholds, family }: TensionSettings): MeasuredProperties {
  const { line } = numbers;
  const straight = line.ok && line.points >= thresholds.leastElasticPoints && !isCurved(numbers, thresholds.slopeFall);
  const trusted = straight && line.relativeStandardError < LEAST_TRUST;
  // a slope far below that of any metal is one, however scattered; high ones come from noise
  const slope = line.ok && line.slope > 0 && (trusted || (!family && line.slope < metalModuli[0])) ? line.slope : undefined;
  const rm = result.tensileStrength.value;
  const broke = result.fracture !== undefined && result.fracture.how !== 'end-of-record';
  const plastic = result.plasticExtensionAtFracture?.value;
  const { hardening } = result;
  const proof = result.proofStrengths.find(({ extension }) => Math.abs(extension - 0.002) < 1e-9)?.value;
  const positive = (value: number | undefined): number | undefined => (value !== undefined && value > 0 ? value : undefined);
  return {
    modulus: slope,
    tensileStrength: positive(rm),
    ...(family
      ? {
          yieldStrength: positive(result.upperYieldStrength?.value ?? proof),
          elongation: result.elongationAfterFracture && Math.max(0, result.elongationAfterFracture.value),
          plasticExtension: broke && plastic !== undefined && plastic >= 0 ? plastic : undefined,
          exponent: hardening && hardening.rSquared > LEAST_FIT ? hardening.exponent.value : undefined,
        }
      : {}),
  };
}

/** The property that the sentence is about: the first that the likeliest cause explains. */
function first(outside: readonly ComparedProperty[], cause: PropertyCause | undefined): ComparedProperty {
  return outside.find(({ property }) => cause?.explains.includes(property)) ?? outside[0]!;
}

/** @internal Properties that no metal has, or that lie outside the usual ranges of the family, with ranked causes; relations that are broken. */
export function familyFindings(result: Quantities, numbers: TensionNumbers, settings: TensionSettings, how: Measurement): Finding[] {
  const { family, thresholds } = settings;
  const found: Finding[] = [];
  const properties = propertiesOf(result, numbers, settings);
  if (Object.values(properties).some((value) => value !== undefined)) {
    const options = { ...how, ...(family ? { family, margin: thresholds.familyMargin } : {}) };
    const { compared, causes } = explainProperties(properties, options);
    const outside = compared.filter((one) => one.outside);
    if (outside.length > 0) found.push(unlike(outside, causes, properties, numbers, settings, how));
  }
  return [...found, ...crossed(result, numbers)];
}

/** The finding of properties outside their ranges. */
function unlike(
  outside: readonly ComparedProperty[],
  causes: readonly PropertyCause[],
  properties: MeasuredProperties,
  numbers: TensionNumbers,
  { family }: TensionSettings,
  how: Measurement,
): Finding {
  const [cause] = causes;
  const { property, value, range } = first(outside, cause);
  const [symbol, field] = words[property];
  // without a family a property is outside only where no metal comes near it
  const metals = explainProperties(properties, how).compared;
  const impossible = metals.some((one) => one.outside && (one.property === 'modulus' || one.property === 'tensileStrength'));
  const ranked = causes.map(({ key, score }) => `${key} (${score.toFixed(2)})`).join(', ');
  const values = {
    symbol,
    value,
    unit: property === 'modulus' || property === 'yieldStrength' || property === 'tensileStrength' ? 'MPa' : '',
    low: range[0],
    high: range[1],
    family: family ? materialFamily(family).name : 'any metal',
    why: cause ? cause.sentence : 'No usual mistake explains it.',
    outside: outside.map((one) => one.property).join(', '),
    causes: ranked,
    ...(cause ? { factor: cause.factor } : {}),
  };
  const severity = impossible ? 'fault' : 'caution';
  if (cause?.key === 'force-in-kilonewtons')
    return finding(
      'force-looks-like-kilonewton',
      { ...values, stress: properties.tensileStrength ?? value },
      { field: 'tensileStrength', severity },
    );
  const { modulus: slope, tensileStrength: strength } = properties;
  if (cause?.key === 'strain-in-percent' && slope !== undefined && strength !== undefined) {
    const strain = numbers.maximum?.strain ?? strength / slope;
    return finding('strain-looks-like-percent', { ...values, strain, slope }, { field: 'elasticSlope', severity });
  }
  const code = codes[cause ? cause.about : 'method'];
  // of travel with the frame in it the fault of the missing modulus has said so already
  const known = cause?.key === 'frame-compliance-left-in' && how.frameRemoved !== true && outside.length === 1;
  return finding(code, values, { field, severity: known ? 'note' : severity });
}

/** Relations between the properties of this test. */
function crossed(result: Quantities, { yielding }: TensionNumbers): Finding[] {
  const paused = yielding?.ok === false && yielding.reason === 'fall-in-pause';
  const { fracture, reductionOfArea: reduction } = result;
  const positive = (value: number | undefined): number | undefined => (value !== undefined && value > 0 ? value : undefined);
  const share = reduction === undefined ? 1 : 1 - reduction.value;
  return crossCheck({
    upperYieldStrength: positive(result.upperYieldStrength?.value),
    lowerYieldStrength: positive(result.lowerYieldStrength?.value),
    tensileStrength: positive(result.tensileStrength.value),
    modulus: positive(result.modulus?.value),
    uniformExtension: positive(result.uniformExtension?.value),
    totalExtensionAtMaximumForce: positive(result.totalExtensionAtMaximumForce?.value),
    elongation: positive(result.elongationAfterFracture?.value),
    ...(fracture?.how === 'sudden-fall' && share > 0 && share < 1
      ? { trueFractureStress: positive(fracture.stress / share), reductionOfArea: 1 - share }
      : {}),
    // a hand that paused lets the stress sink: no order of proof strengths then
    ...(paused
      ? {}
      : { proofStrengths: result.proofStrengths.filter(({ value }) => value > 0).map(({ extension, value }) => ({ extension, value })) }),
    // the family's own ranges are compared above, with the margin that was asked for
  });
}
