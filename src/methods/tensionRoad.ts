import { finding, type Finding, type TensionColumns, type TensionRecord, type TestPiece, type TrailStep } from '../base/index.js';
import {
  requirePiece,
  requireRecord,
  stressStrainKernel,
  travelWithoutFrame,
  type FrameMotion,
  type PieceLengths,
  type RecordedCurve,
} from '../curve/index.js';
import { allSpikeFindings, checkRecordKernel, pausesOf, runningTime } from '../record/index.js';
import { afterFracture } from './afterFracture.js';
import { requireBrokenPiece } from './brokenPiece.js';
import { calibrationFindings, forcesOf } from './calibrationFindings.js';
import { materialFamily, metalModuli } from '../materials/index.js';
import { frameFindings } from './frameFindings.js';
import { frameShare, modulusWithFrame } from './frameShare.js';
import { isCurved } from './lineFindings.js';
import { tensionLoading } from './tensionLoading.js';
import { methodFindings } from './methodFindings.js';
import { familyFindings } from './familyFindings.js';
import { pieceFindings } from './pieceFindings.js';
import { rateFindings, ratesOf } from './rateFindings.js';
import { recordFindings } from './recordFindings.js';
import { pullPositive } from './pullPositive.js';
import { quantitiesOf, statedResult } from './statedResult.js';
import { structure } from './structure.js';
import { missingDoubts, tensionBudgets } from './tensionBudgets.js';
import type { TensionTask } from './tensionModel.js';
import { tensionNoise } from './tensionNoise.js';
import { requireTensionUncertainty, type TensionDoubts } from './tensionUncertainty.js';
import { explanationOf, tensionKernel, type TensionNumbers } from './tensionKernel.js';
import { requireTensionOptions, tensionOptionNames, type TensionOptions, type TensionSettings } from './tensionOptions.js';
import { maximumForce } from './quantity.js';
import { tensionQuantities } from './tensionQuantities.js';
import { tensionTrail } from './tensionTrail.js';
import type { TensionResult } from './TensionResult.js';
import { provenanceOf } from './provenanceOf.js';
import { withUsableFrame } from './usableFrame.js';

/** The frame's motion taken out of the travel, where its compliance is known. */
function withoutFrame(record: TensionRecord, motion: FrameMotion | undefined): TensionRecord {
  return motion && record.travel ? { ...record, travel: travelWithoutFrame(record.travel, record.force, motion) } : record;
}

/** E is the piece's only where the strain is, on a straight line of enough samples. */
function slopeIsModulus(numbers: TensionNumbers, { thresholds }: TensionSettings, strainOfPiece: boolean): boolean {
  const { line } = numbers;
  return line.ok && strainOfPiece && line.points >= thresholds.leastElasticPoints && !isCurved(numbers, thresholds.slopeFall);
}

/** Travel without the frame still holds the fillets' share; an extensometer's strain, and a raw one, are left as they are. */
function elasticLengthRatio(recorded: RecordedCurve, lengths: PieceLengths, frameCompliance: FrameMotion | undefined): number {
  const corrected = recorded.basis === 'travel' && frameCompliance !== undefined;
  return corrected ? lengths.effectiveLength / lengths.parallelLength : 1;
}

/** The strengths that a verification of the force should hold. */
const strengthsOf = (found: Pick<TensionResult, 'upperYieldStrength' | 'lowerYieldStrength' | 'proofStrengths' | 'tensileStrength'>) => [
  found.upperYieldStrength,
  found.lowerYieldStrength,
  ...found.proofStrengths,
  found.tensileStrength,
];

/** Findings of the record as given: where a repair left samples out, their ranges are not those of the curve. */
function inKept(found: readonly Finding[], repairs: readonly TrailStep[]): readonly Finding[] {
  if (!repairs.some(({ change }) => change?.kind === 'keep')) return found;
  return found.map(({ code, severity, about, message, remedy, values }) => ({ code, severity, about, message, remedy, values }));
}

/** @internal What an analysis leaves for evaluating the test again. */
export interface TensionRoad {
  readonly result: TensionResult;
  readonly task: TensionTask;
  readonly doubts: TensionDoubts | undefined;
}

/** @internal {@link analyseTension}, with what a Monte Carlo run starts from; `others` are options that are read elsewhere. */
export function tensionRoad(
  from: string,
  record: TensionColumns,
  testPiece: TestPiece,
  options: TensionOptions,
  others: readonly string[] = [],
): TensionRoad {
  const asked = requireTensionOptions(from, options, [...tensionOptionNames, ...others]);
  const raw = requireRecord(from, record);
  const { record: given, trail: repairs, survey, turned } = pullPositive(raw, asked.repairs);
  // where spikes were looked for and none replaced, there are none to speak of
  const spikeless = asked.repairs.spikes !== false && !repairs.some(({ change }) => change?.kind === 'set');
  const lengths = requirePiece(from, testPiece);
  const broken = requireBrokenPiece(from, testPiece);
  const doubts = options.uncertainty && requireTensionUncertainty(from, options.uncertainty, testPiece.section, lengths, broken);

  const time = runningTime(given, survey);
  const pauses = pausesOf(given, survey.clock, survey.top);
  const step = survey.forceStep / lengths.area;

  const evaluate = (frameCompliance: FrameMotion | undefined) => {
    const recorded = stressStrainKernel(withoutFrame(given, frameCompliance), lengths);
    const curve = { strain: recorded.strain, stress: recorded.stress };
    const stress = curve.stress.length === given.force.length ? curve.stress : given.force.map((F) => F / lengths.area);
    const numbers = tensionKernel(
      {
        curve,
        stress,
        highest: survey.top,
        resolution: step,
        pauses: pauses.map(({ range }) => range),
        elasticLengthRatio: elasticLengthRatio(recorded, lengths, frameCompliance),
      },
      asked,
    );
    return { recorded, curve, stress, numbers };
  };
  const used = withUsableFrame(evaluate, asked.frameCompliance, given, lengths, metalModuli[1]);
  const { recorded, curve, stress, numbers, frameCompliance, refused } = used;
  const settings = { ...asked, frameCompliance };
  const n = curve.strain.length;
  const strainStep = (survey.motion?.step ?? 0) / (survey.motion?.column === 'strain' ? 1 : recorded.strainLength);

  const end = numbers.fracture.ok ? numbers.fracture.index + 1 : n;
  const rates = time && ratesOf(curve, time, end);
  const softest = settings.family && materialFamily(settings.family).modulus[0];
  const share = frameShare(recorded, numbers, lengths, frameCompliance, softest);
  // an extensometer's, or travel less the frame
  const strainOfPiece = recorded.basis !== 'travel' || (share !== undefined && !share.vanishing);
  const holds = { modulus: slopeIsModulus(numbers, settings, strainOfPiece), totalExtension: strainOfPiece };
  const explanation = explanationOf(numbers, curve);
  const quantities = {
    ...modulusWithFrame(tensionQuantities(numbers, curve, stress, settings, holds, explanation), share),
    ...afterFracture(testPiece, broken),
  };
  const loading = tensionLoading(curve, time, numbers, quantities.modulus?.value);
  const findings: Finding[] = [
    ...(spikeless ? [] : inKept(allSpikeFindings(raw), repairs)),
    ...turned,
    ...checkRecordKernel(given, {}, { survey, pauses }),
    ...recordFindings(given, recorded, numbers, { ...quantities, curve }, lengths.parallelLength),
    ...familyFindings(quantities, numbers, settings, {
      strainFrom: recorded.basis === 'travel' ? 'travel' : 'extensometer',
      frameRemoved: frameCompliance !== undefined,
      parallelLengthGiven: testPiece.parallelLength !== undefined,
      shape: testPiece.section.shape,
    }),
    ...rateFindings(given, curve, quantities, numbers, rates, pauses, settings),
    ...pieceFindings(testPiece, broken, quantities, settings, recorded.basis !== 'extensometer'),
    ...frameFindings(given, recorded, numbers, quantities, settings, share, strainStep, 'tension', refused),
    ...calibrationFindings(settings.test, forcesOf(strengthsOf(quantities), lengths.area), options.uncertainty),
    ...methodFindings(numbers, curve, quantities, settings, strainOfPiece),
  ];
  const result: TensionResult = {
    method: 'tension',
    test: settings.test,
    testPiece: structure(testPiece),
    extensionBasis: recorded.basis,
    strainLength: recorded.strainLength,
    curve,
    ...quantities,
    maximumForce: maximumForce(given.force[numbers.maximumSample]!),
    ...(loading ? { loading } : {}),
    ...(rates ? { rates } : {}),
    findings,
    trail: [...repairs, ...tensionTrail(given, recorded, lengths, numbers, settings)],
    provenance: provenanceOf(options, { ...raw }),
  };
  const task: TensionTask = {
    record: given,
    piece: testPiece,
    broken,
    lengths,
    settings,
    withoutFrame: (one) => withoutFrame(one, frameCompliance),
    elasticLengthRatio: (one, its) => elasticLengthRatio(one, its, frameCompliance),
    holds,
    resolution: step,
    pauses: pauses.map(({ range }) => range),
    top: survey.top,
    numbers,
    recorded,
    residuals: explanation.residuals,
  };
  return doubts ? { result: withUncertainty(result, task, doubts), task, doubts } : { result, task, doubts };
}

/** The result with the uncertainty of its quantities, their budgets, and what was left out of them. */
function withUncertainty(result: TensionResult, task: TensionTask, doubts: TensionDoubts): TensionResult {
  const missing = missingDoubts(task, doubts);
  const noise = tensionNoise(task, doubts.noise);
  const uncertainty = tensionBudgets(task, doubts, noise, quantitiesOf(result));
  return {
    ...statedResult(result, uncertainty),
    findings: [
      ...result.findings,
      ...(missing.length > 0 ? [finding('uncertainty-incomplete', { missing: missing.join(', ') })] : []),
      ...(noise.correlation > 0 ? [finding('noise-correlated', { correlation: noise.correlation }, { field: 'elasticSlope' })] : []),
    ],
    uncertainty,
  };
}
