/** Pages of every kind, of invented tests, for tests that read them as a browser or a program does. */
import {
  analyseBending,
  analyseBrinell,
  analyseCompression,
  analyseCupping,
  analyseReplicates,
  analyseShear,
  analyseTension,
  analyseUnloading,
  interlaboratoryStudy,
  planTension,
  rectangular,
  required,
  round,
  verifyForce,
  type ReplicatesResult,
  type TestInfo,
  type TensionUncertainty,
  type TestResult,
} from '../../src/index.js';
import { drawFigure, drawFigures } from '../../src/render/index.js';
import {
  figures,
  planFigures,
  renderHtml,
  renderPlan,
  renderStudy,
  renderVerification,
  studyFigure,
  type AskedDecision,
  type Paper,
} from '../../src/report/index.js';
import {
  simulateBending,
  simulateBrinell,
  simulateCompression,
  simulateCupping,
  simulateShear,
  simulateTension,
} from '../../src/simulate/index.js';
import { COMPLIANCE, roundPiece } from './records.js';

const steel = {
  modulus: 206_000,
  yieldStress: 280,
  hardening: { law: 'swift', prestrain: 0.03, exponent: 0.25 },
  fracture: { extension: 0.35 },
} as const;

const doubts: TensionUncertainty = {
  forceClass: 1,
  section: { diameter: { halfWidth: 0.02 } },
  displacement: 0.005,
  gaugeLength: 0.05,
  parallelLength: 0.2,
  effectiveLength: 1,
  frameCompliance: 0.05,
  finalGaugeLength: 0.1,
  finalArea: 0.3,
};

/** A tension test by travel alone, of a frame whose give is taken out, with all that can be asked of it. */
export function tensionResult(test: TestInfo = {}, seed = 1, yieldStress = 280, budgets = true) {
  const piece = { ...roundPiece, effectiveLength: 52 };
  const { record, truth } = simulateTension({
    material: { ...steel, yieldStress },
    piece,
    frame: { compliance: COMPLIANCE, slack: 0.2 },
    hand: { speed: 0.05, speedAfterYield: 0.1 },
    logger: { rate: 20, lead: 1, tail: 1, forceNoise: 10, motionNoise: 2e-4 },
    seed,
  });
  return analyseTension(
    { force: record.force, travel: record.travel, time: record.time },
    { ...piece, afterFracture: truth.afterFracture },
    {
      frameCompliance: COMPLIANCE,
      offsets: [0.002, 0.01],
      test: { invented: true, ...test },
      ...(budgets ? { uncertainty: doubts } : {}),
    },
  );
}

/** One result of each method, with all that it can hold. */
export function results(): Readonly<Record<string, TestResult>> {
  const beam = { section: rectangular({ width: 10, thickness: 5 }), setup: { points: 3 as const, span: 100 } };
  const bent = simulateBending({ material: { modulus: 200_000, yieldStress: 300 }, piece: beam, until: 0.1 });
  const cylinder = { section: round({ diameter: 10 }), height: 15 };
  const pressed = simulateCompression({
    material: { modulus: 70_000, yieldStress: 200, hardening: { law: 'swift', prestrain: 0.01, exponent: 0.2 } },
    piece: cylinder,
    until: 0.3,
    friction: 0.1,
  });
  const force = 3000 * 9.80665;
  const hard = simulateBrinell({ hardness: 180, ballDiameter: 10, force, count: 3, hold: {} });
  const cupped = simulateCupping({ depth: 10.4, force: 9000, push: { compliance: 2e-5 } });
  const sheared = simulateShear({ strength: 300, diameter: 8, planes: 2 });
  const piece = roundPiece;
  const unloaded = simulateTension({
    material: { modulus: 70_000, hardening: { law: 'hollomon', strengthCoefficient: 420, exponent: 0.12 } },
    piece,
    hand: { speed: 0.02, unloadings: [{ stress: 150 }, { stress: 190, bow: 5e-5 }, { stress: 230, to: 0.1, bow: 1e-4 }] },
    logger: { rate: 20, extensometer: true },
  }).record;
  const test: TestInfo = { identity: 'invented piece', invented: true };
  return {
    tension: tensionResult(),
    compression: analyseCompression(
      pressed.record,
      { ...cylinder, afterTest: pressed.truth.afterTest },
      { friction: 0.1, frameCompliance: 1e-6, test },
    ),
    bending: analyseBending(bent.record, beam, { test }),
    brinell: analyseBrinell(hard.readings, { material: 'steel, nickel and titanium alloys', thickness: 5 }, { test }),
    cupping: analyseCupping(cupped.record, { thickness: 0.8 }, { frameCompliance: 2e-5, test }),
    shear: analyseShear(sheared.record, { diameter: 8, planes: 2 }, { test }),
    unloading: analyseUnloading({ force: unloaded.force, extension: unloaded.extension!, time: unloaded.time! }, piece, {
      reversibility: 0.005,
      test,
    }),
  };
}

/** Several tension tests together, one of them odd. */
export const replicates = (identity = 'piece'): ReplicatesResult =>
  analyseReplicates(
    [280, 282, 279, 281, 320].map((yieldStress, k) =>
      tensionResult({ identity: `${identity} ${k + 1}`, operator: 'A' }, k + 1, yieldStress, false),
    ),
  );

/** What an order may ask of a tension test: kept, not kept, too near to tell, and not comparable. */
export function asked(result = tensionResult()): readonly AskedDecision[] {
  const proof = result.proofStrengths[0]!;
  const { tensileStrength, elongationAfterFracture } = result;
  return [
    { measured: tensileStrength!, specification: { lower: 300, upper: 520, rule: 'guarded' } },
    { measured: tensileStrength!, specification: { lower: 500 } },
    { measured: { ...proof, extensionBasis: 'travel' }, specification: { lower: proof.value - 1, rounding: { step: 1 } } },
    {
      measured: { ...elongationAfterFracture!, gaugeLength: 40, area: roundPiece.section.area },
      specification: { lower: 0.2, gaugeLength: 80 },
    },
  ];
}

/** Every kind of page with its drawings. */
export async function pages(paper: Paper = 'A4'): Promise<Readonly<Record<string, string>>> {
  const made: Record<string, string> = {};
  for (const [name, result] of Object.entries(results())) {
    const decisions = name === 'tension' ? asked() : [];
    made[name] = renderHtml(result, { drawings: await drawFigures(figures(result)), decisions, paper });
  }
  const groups = [
    { name: 'A', values: [412, 409, 411] },
    { name: 'B', values: [415, 418, 414] },
    { name: 'C', values: [402, 420, 409] },
  ];
  const study = required(interlaboratoryStudy(groups));
  const drawing = await drawFigure(studyFigure(study));
  const together = replicates();
  made['replicates'] = renderHtml(together, { furtherFigures: [{ figure: studyFigure(study), drawing }], paper });
  made['study'] = renderStudy(study, { identity: 'an invented class', unit: 'MPa', drawing, invented: true, paper });
  const steps = [4, 8, 12, 16, 20].map((kN) => ({ force: 1000 * kN, rising: [1000 * kN + 5, 1000 * kN + 8, 1000 * kN + 2] }));
  made['verification'] = renderVerification(verifyForce({ steps, range: 20_000, resolution: 2 }), { invented: true, paper });
  const plan = planTension({
    family: 'low-carbon-steel-annealed',
    section: round({ diameter: 6 }),
    frame: { capacity: 25_000, compliance: 2e-5, bore: 40, rod: 20 },
  });
  made['plan'] = renderPlan(plan, { identity: 'invented', drawings: await drawFigures(planFigures(plan)), invented: true, paper });
  return made;
}
