import { PROOF_OFFSET, requireOptions, requirePositive } from '../base/index.js';
import { modulusContributions } from '../curve/index.js';
import { middle, type PlannedMaterial } from './expectedProperties.js';
import type { ExpectedUncertainty, PlannedLengths, PlannedResolution } from './TensionPlan.js';
import type { PlannedErrors, PlannedExtensometer } from './TensionPlanInput.js';
import type { PlannedForce } from './planForce.js';
import type { TestFrame } from './TestFrame.js';

/** @internal Uncertainties of what the operator measures, with their defaults (common practice). */
export type UsualErrors = Readonly<Record<keyof PlannedErrors, number>>;

const usual: UsualErrors = {
  section: 0.005,
  gaugeLength: 0.1,
  finalGaugeLength: 0.2,
  effectiveLength: 0.005,
  compliance: 0.03,
  slope: 0.01,
};

/** Exponent of Ramberg and Osgood near yield: a low one, of a rounded curve, on which the offset matters most (common practice). */
const ROUNDED = 10;
/** Greatest error of an extensometer of class 1 [1]. */
const CLASS_1 = 0.01;

/** @internal Errors of the operator, checked. */
export function requireErrors(from: string, given: PlannedErrors = {}): UsualErrors {
  const names = Object.keys(usual) as (keyof PlannedErrors)[];
  requireOptions(from, given, names, 'errors');
  const entries = names.map((name) => [name, requirePositive(from, `errors.${name}`, given[name] ?? usual[name])] as const);
  return Object.fromEntries(entries) as unknown as UsualErrors;
}

/** @internal What the expected uncertainties follow from. */
export interface UncertaintyInput {
  readonly material: PlannedMaterial;
  readonly frame: TestFrame;
  readonly force: PlannedForce;
  readonly lengths: PlannedLengths;
  readonly resolution: PlannedResolution;
  readonly extensometer: PlannedExtensometer | undefined;
  readonly errors: UsualErrors;
}

/** Relative standard uncertainty of a force: error and repeatability as rectangles, and half a step. */
function ofForce({ forceError = 0, forceStep = 0 }: TestFrame, force: number): number {
  return Math.hypot(forceError / Math.sqrt(3), forceError / (2 * Math.sqrt(3)), forceStep / (2 * Math.sqrt(3) * force));
}

const combined = (
  symbol: ExpectedUncertainty['symbol'],
  expected: number,
  terms: Readonly<Record<string, number>>,
): ExpectedUncertainty => ({ symbol, expected, standardUncertainty: expected * Math.hypot(...Object.values(terms)), terms });

function ofElongation({ material, lengths, errors }: UncertaintyInput): ExpectedUncertainty {
  const elongation = middle(material.elongation);
  const relative = 1 / (lengths.gaugeLength * elongation);
  return combined('A', elongation, {
    finalGaugeLength: relative * errors.finalGaugeLength,
    gaugeLength: relative * (1 + elongation) * errors.gaugeLength,
  });
}

function ofProofStrength(input: UncertaintyInput, expected: number): ExpectedUncertainty | undefined {
  const { resolution, errors, frame, force } = input;
  const { leverage, stepsInOffset } = resolution;
  if (leverage === undefined) return undefined;
  return combined('Rp0.2', expected, {
    force: ofForce(frame, force.least),
    section: errors.section,
    slope: (leverage / ROUNDED) * errors.slope,
    ...(stepsInOffset === undefined ? {} : { offset: 1 / (stepsInOffset * Math.sqrt(12) * ROUNDED) }),
  });
}

function ofModulus(input: UncertaintyInput): ExpectedUncertainty | undefined {
  const { material, frame, force, resolution, extensometer, errors } = input;
  const modulus = middle(material.modulus);
  if (extensometer)
    return combined('E', modulus, {
      section: errors.section,
      force: ofForce(frame, force.least),
      extensometer: (extensometer.error ?? CLASS_1) / Math.sqrt(3),
      slope: errors.slope,
    });
  const { frameOverPiece } = resolution;
  if (frameOverPiece === undefined) return undefined;
  const {
    area: section,
    effectiveLength: length,
    ...others
  } = modulusContributions(frameOverPiece, {
    area: errors.section,
    effectiveLength: errors.effectiveLength,
    compliance: errors.compliance,
    slope: errors.slope,
    force: ofForce(frame, force.least),
  });
  return combined('E', modulus, {
    section,
    length,
    ...others,
  });
}

/** @internal Uncertainties to be expected, by the law of propagation; those that rest on the force only where its error is known. */
export function expectedUncertainties(input: UncertaintyInput): ExpectedUncertainty[] {
  const { material, frame, errors } = input;
  const elongation = ofElongation(input);
  if (frame.forceError === undefined) return [elongation];
  const strength = middle(material.tensileStrength);
  const atLowest = material.tensileStrength[0] * (input.force.greatest / material.tensileStrength[1]);
  return [
    combined('Rm', strength, { force: ofForce(frame, atLowest), section: errors.section }),
    ...(material.yieldStrength ? [ofProofStrength(input, middle(material.yieldStrength))] : []),
    elongation,
    ofModulus(input),
  ].filter((one) => one !== undefined);
}

/** @internal What the readings resolve, and what the record's slope will be. */
export function plannedResolution(
  input: Pick<UncertaintyInput, 'material' | 'frame' | 'lengths' | 'extensometer'> & { readonly area: number; readonly give: number },
): PlannedResolution {
  const { material, frame, lengths, extensometer, area, give } = input;
  const modulus = middle(material.modulus);
  const base = extensometer?.length ?? lengths.parallelLength;
  const step = extensometer ? extensometer.step : frame.travelStep;
  const piece = lengths.effectiveLength / (modulus * area);
  const known = frame.compliance !== undefined;
  const slope = extensometer ? modulus : known ? 1 / (1 / modulus + (give * area) / lengths.parallelLength) : undefined;
  const stress = material.yieldStrength && middle(material.yieldStrength);
  return {
    ...(step === undefined ? {} : { stepsInOffset: (PROOF_OFFSET * base) / step }),
    ...(frame.forceStep === undefined || !material.yieldStrength
      ? {}
      : { forceStepsAtYield: (material.yieldStrength[0] * area) / frame.forceStep }),
    ...(slope === undefined ? {} : { slope }),
    ...(slope === undefined || stress === undefined ? {} : { leverage: stress / slope / PROOF_OFFSET }),
    ...(frame.compliance === undefined ? {} : { frameOverPiece: frame.compliance / piece }),
  };
}
