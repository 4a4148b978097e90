import type { Section } from '../base/index.js';
import { leastSamplingRate } from '../curve/index.js';
import { cautionsFor } from '../methods/index.js';
import { middle, requireMaterial, type PlannedMaterial } from './expectedProperties.js';
import { expectedUncertainties, plannedResolution, requireErrors } from './expectedUncertainties.js';
import { ifItStalls } from './ifItStalls.js';
import { largestSection, SECTION_STEP, type LargestSection } from './largestSection.js';
import { oilEnergy } from './oilEnergy.js';
import { paceSheet } from './paceSheet.js';
import { planForce, requireLimits } from './planForce.js';
import { plannedLengths } from './plannedLengths.js';
import { requirePlanInput } from './requirePlanInput.js';
import { speedStages, type StageInput } from './speedStages.js';
import { storedEnergy } from './storedEnergy.js';
import type { PlannedEnergy, TensionPlan } from './TensionPlan.js';
import type { TensionPlanInput } from './TensionPlanInput.js';
import { tensionPlanFindings } from './tensionPlanFindings.js';
import { pressureOf, requireFrame, type TestFrame } from './TestFrame.js';
import { travelNeeded } from './travelNeeded.js';
import { trustLadder } from './trustLadder.js';

/** Round, square and, where the thickness is given, flat. */
function largestSections(section: Section, capacity: number, strength: number, utilisation: number): LargestSection[] {
  const common = { capacity, strength, utilisation };
  const { thickness } = section.dimensions;
  return [
    largestSection(common),
    largestSection({ ...common, shape: 'square' }),
    // a sheet that is too strong for the frame at any width has no largest one
    ...(section.shape === 'rectangular' && thickness !== undefined && thickness * SECTION_STEP < (utilisation * capacity) / strength
      ? [largestSection({ ...common, shape: 'flat', thickness })]
      : []),
  ];
}

/** Energy at the force of fracture, or at the capacity where the frame stops before. */
function plannedEnergy(frame: TestFrame, greatest: number, material: PlannedMaterial, length: number, area: number): PlannedEnergy {
  const force = Math.min(greatest, frame.capacity);
  const frameAndPiece = storedEnergy({ force, compliance: frame.compliance, length, area, modulus: middle(material.modulus) });
  const pressure = pressureOf(frame, force);
  if (pressure === undefined || frame.oilVolume === undefined) return { frameAndPiece, total: frameAndPiece };
  const oil = oilEnergy({ pressure, volume: frame.oilVolume, bulkModulus: frame.oilBulkModulus, hoseGrowth: frame.hoseGrowth });
  return { frameAndPiece, oil, total: frameAndPiece + oil };
}

/**
 * Plans a tension test: whether the frame breaks the piece, with which lengths, at which speeds, and what it can answer.
 *
 * $$ F_{pred} = R_{m,upper}\, S_0, \qquad u = \frac{F_{pred}}{F_{cap}}, \qquad v = \dot e \left( L_c + m_t S_0 C_f \right) $$
 *
 * @remarks
 * The greatest force is that of the strongest bar of the family, the least that of its lowest yield. The pace sheet follows the middle of
 * the ranges: a guide to the hand, no prediction. Energies are least values. Uncertainties are those of the plan's own budget, without the
 * material's scatter. Thresholds of the findings and the rungs of the trust ladder are common practice. A family does not bound an
 * unknown bar: the plan always says what to do where the piece does not give way.
 *
 * @param input - `family` or `expected`, `section`, `frame` (N, mm, MPa); lengths, extensometer, control of the rates, sampling rate, use.
 * @returns The plan: force, lengths, travel, energy, stages, pace sheet, resolution, uncertainties, answers, cautions, findings.
 * @throws {@link InputError} `missing`, `wrong-type`, `not-finite`, `not-positive`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * const frame = { capacity: 25000, compliance: 2e-5, bore: 40, rod: 20 };
 * const plan = planTension({ family: 'structural-steel', section: round({ diameter: 5 }), frame });
 * plan.force.utilisation; // => 0.5655
 * plan.lengths.gaugeLength; // => 25
 * plan.largest[0]?.dimension; // => 5.9
 * ```
 *
 * @see ISO 6892-1:2019, testing rate, original gauge length, annexes on test pieces. Checked in `test/planning/planTension.test.ts`.
 */
export function planTension(input: TensionPlanInput): TensionPlan {
  const from = 'planTension';
  requirePlanInput(from, input);
  const material = requireMaterial(from, input);
  const frame = requireFrame(from, input.frame);
  const limits = requireLimits(from, input.thresholds);
  const errors = requireErrors(from, input.errors);
  const { section, extensometer, control = 'iso-a' } = input;
  const lengths = plannedLengths(from, section, input.lengths ?? {});
  const { area } = section;
  const modulus = middle(material.modulus);
  const yields = material.yieldStrength;

  const greatest = material.tensileStrength[1] * area;
  const least = (yields ?? material.tensileStrength)[0] * area;
  const load = planForce(frame, { greatest, least, what: yields ? 'of the lowest yield' : 'of the lowest strength' }, limits);
  const give = (frame.compliance ?? 0) + (lengths.effectiveLength - lengths.parallelLength) / (modulus * area);
  const stageInput: StageInput = {
    frame,
    control,
    strengthRange: input.strengthRange ?? 4,
    length: lengths.parallelLength,
    area,
    modulus,
    give,
    lowestYield: yields?.[0],
  };
  const stages = speedStages(stageInput);
  const travel = travelNeeded({
    slack: frame.slack,
    compliance: frame.compliance,
    force: greatest,
    parallelLength: lengths.parallelLength,
    uniformExtension: material.uniformExtension[1],
    area,
    necks: material.ductile,
  });
  const resolution = plannedResolution({ material, frame, lengths, extensometer, area, give });
  const known = { material, frame, force: load.force, lengths, resolution, extensometer, errors };
  const samplingRate = leastSamplingRate({
    stressRate: modulus * stages[0]!.strainRate,
    stress: (yields ?? material.tensileStrength)[0],
  });
  const parts = { material, lengths, travel, stages, resolution, leastSamplingRate: samplingRate };
  return {
    planOf: 'tension',
    ...parts,
    section,
    frame,
    control,
    force: load.force,
    ...(yields ? { yieldForce: [yields[0] * area, yields[1] * area] as const } : {}),
    largest: largestSections(section, frame.capacity, material.tensileStrength[1], limits.utilisation),
    energy: plannedEnergy(frame, greatest, material, lengths.effectiveLength, area),
    pace: paceSheet(stages, material, stageInput),
    uncertainties: expectedUncertainties(known),
    answers: trustLadder(known),
    ifItStalls: ifItStalls(frame, 'take a smaller section'),
    cautions: cautionsFor('tension'),
    findings: [...load.findings, ...tensionPlanFindings(input, parts, stageInput, limits)],
  };
}
