import { PROOF_OFFSET, atExtension, type Finding } from '../../base/index.js';
import {
  crossCheck,
  materialFamily,
  metalModuli,
  type MeasuredProperties,
  type Measurement,
  type PropertyCause,
} from '../../materials/index.js';
import type { TensionNumbers } from '../loading/TensionNumbers.js';
import type { TensionSettings } from '../evaluation/tensionOptions.js';
import { hasNoLine, type Quantities } from '../evaluation/tensionQuantities.js';
import { unlikeFinding, type PropertyWords } from '../common/unlikeFinding.js';

/** A slope scattered by more than this says nothing about the metal. */
const LEAST_TRUST = 0.05;
/** A law that explains less of the curve than this is none. */
const LEAST_FIT = 0.95;

const words: PropertyWords = {
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
  const { linearPart } = result.modulusWindow ?? {};
  // where windows disagree for another reason than yielding, the slope is no modulus, but its size still tells of frame, unit or section
  const yields = linearPart?.why === 'slope-falls' || linearPart?.why === 'yields-early';
  const trusted = line.ok && !yields && line.points >= thresholds.leastElasticPoints && line.relativeStandardError < LEAST_TRUST;
  // a slope far below that of any metal is one, however scattered; high ones come from noise
  const slope = line.ok && line.slope > 0 && (trusted || (!family && line.slope < metalModuli[0])) ? line.slope : undefined;
  const { atLeast, value } = result.tensileStrength;
  // a strength that is at least so large is not too low for a family
  const low = family !== undefined && atLeast === true && value < materialFamily(family).tensileStrength[0];
  const rm = low ? undefined : value;
  const broke = result.fracture !== undefined && result.fracture.how !== 'end-of-record';
  const plastic = result.plasticExtensionAtFracture?.value;
  const { hardening } = result;
  const proof = atExtension(result.proofStrengths, PROOF_OFFSET)?.value;
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

/** @internal Properties that no metal has, or that lie outside the usual ranges of the family, with ranked causes; relations that are broken. */
export function familyFindings(result: Quantities, numbers: TensionNumbers, settings: TensionSettings, how: Measurement): Finding[] {
  const { family, thresholds } = settings;
  const properties = propertiesOf(result, numbers, settings);
  const strain = numbers.maximum?.strain;
  // another family is told by its modulus first, which a curve without a linear part does not have
  const possible = ({ key }: PropertyCause): boolean => key !== 'another-family' || !hasNoLine(numbers, result.modulusWindow);
  return [
    ...unlikeFinding({ properties, how, words, family, margin: thresholds.familyMargin, strain, possible }),
    ...crossed(result, numbers),
  ];
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
