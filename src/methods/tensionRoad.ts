import {
  finding,
  soundLength,
  type Finding,
  type TensionColumns,
  type TensionRecord,
  type TestPiece,
  type TrailStep,
} from '../base/index.js';
import {
  breakOf,
  requirePiece,
  requireRecord,
  stressStrainKernel,
  travelWithoutFrame,
  type FrameMotion,
  type PieceLengths,
  type RecordedCurve,
} from '../curve/index.js';
import {
  allSpikeFindings,
  checkRecordKernel,
  endExtensometer,
  motionOf,
  ofPiece,
  pausesOf,
  recordOutline,
  repairRecordKernel,
  runningTime,
  unloadedFrom,
} from '../record/index.js';
import { afterFracture } from './afterFracture.js';
import { requireBrokenPiece } from './brokenPiece.js';
import { calibrationFindings, forcesOf } from './calibrationFindings.js';
import { frameFindings } from './frameFindings.js';
import { frameShare, modulusWithFrame } from './frameShare.js';
import { isCurved } from './lineFindings.js';
import { tensionLoading } from './tensionLoading.js';
import { methodFindings } from './methodFindings.js';
import { familyFindings } from './familyFindings.js';
import { pieceFindings } from './pieceFindings.js';
import { rateFindings, ratesOf } from './rateFindings.js';
import { recordFindings } from './recordFindings.js';
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

/** The frame's motion taken out of the travel, where its compliance is known. */
function withoutFrame(record: TensionRecord, motion: FrameMotion | undefined): TensionRecord {
  return motion && record.travel ? { ...record, travel: travelWithoutFrame(record.travel, record.force, motion) } : record;
}

/** Below this share of the maximum the piece has broken. */
const BROKEN = 0.02;

/** Travel has nothing to carry on where the extensometer reads up to the fracture. */
function withoutNeedlessTravel(record: TensionRecord, fractureAt: number | undefined): TensionRecord {
  const column = motionOf(record, ofPiece);
  if (fractureAt === undefined || column === 'travel' || record.travel === undefined) return record;
  const end = soundLength(record[column]!);
  if (end <= fractureAt || end === record.force.length) return record;
  return Object.fromEntries(Object.entries(record).filter(([name]) => name !== 'travel')) as unknown as TensionRecord;
}

/** E is the piece's only where the strain is: an extensometer's, or travel less the frame; on a straight line of enough samples. */
function slopeIsModulus(recorded: RecordedCurve, numbers: TensionNumbers, settings: TensionSettings): boolean {
  const { line } = numbers;
  const ofPiece = recorded.basis !== 'travel' || settings.frameCompliance !== undefined;
  return line.ok && ofPiece && line.points >= settings.thresholds.leastElasticPoints && !isCurved(numbers, settings.thresholds.slopeFall);
}

/** Travel without the frame still holds the fillets' share; an extensometer's strain, and a raw one, are left as they are. */
function elasticLengthRatio(recorded: RecordedCurve, lengths: PieceLengths, settings: TensionSettings): number {
  const corrected = recorded.basis === 'travel' && settings.frameCompliance !== undefined;
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
  const settings = requireTensionOptions(from, options, [...tensionOptionNames, ...others]);
  const raw = requireRecord(from, record);
  const { record: repaired, trail: repairs } = repairRecordKernel(raw, settings.repairs);
  const { record: given, survey, ended } = endExtensometer(repaired);
  // where spikes were looked for and none replaced, there are none to speak of
  const spikeless = settings.repairs.spikes !== false && !repairs.some(({ change }) => change?.kind === 'set');
  const lengths = requirePiece(from, testPiece);
  const after = requireBrokenPiece(from, testPiece);
  const doubts = options.uncertainty && requireTensionUncertainty(from, options.uncertainty, testPiece.section, lengths, after);

  const outline = recordOutline(given, survey);
  const unloaded = outline && unloadedFrom(outline);
  const broken = breakOf(given.force, survey.top, BROKEN);
  const brokenAt = broken.ok && unloaded === undefined ? broken.index : undefined;
  const strainRecord = (one: TensionRecord): TensionRecord => withoutNeedlessTravel(withoutFrame(one, settings.frameCompliance), brokenAt);
  const recorded = stressStrainKernel(strainRecord(given), lengths);
  const curve = { strain: recorded.strain, stress: recorded.stress };
  const n = curve.strain.length;
  const stress = n === given.force.length ? curve.stress : given.force.map((F) => F / lengths.area);
  const time = runningTime(given, survey);
  const pauses = pausesOf(given, survey.clock, survey.top);
  const strainStep = (survey.motion?.step ?? 0) / (survey.motion?.column === 'strain' ? 1 : recorded.strainLength);

  const step = survey.forceStep / lengths.area;

  const numbers = tensionKernel(
    {
      curve,
      stress,
      highest: survey.top,
      resolution: step,
      broken,
      unloadedFrom: unloaded,
      pauses: pauses.map(({ range }) => range),
      elasticLengthRatio: elasticLengthRatio(recorded, lengths, settings),
    },
    settings,
  );

  const end = Math.min(numbers.end, n);
  const rates = time && ratesOf(curve, time, end);
  const share = frameShare(recorded, numbers, lengths, settings.frameCompliance);
  const isModulus = slopeIsModulus(recorded, numbers, settings);
  const explanation = explanationOf(numbers, curve);
  const quantities = {
    ...modulusWithFrame(tensionQuantities(numbers, curve, stress, settings, isModulus, explanation), share),
    ...afterFracture(testPiece, after),
  };
  const loading = tensionLoading(curve, time, numbers, quantities.modulus?.value);
  const findings: Finding[] = [
    ...(spikeless ? [] : inKept(allSpikeFindings(raw), repairs)),
    ...checkRecordKernel(given, {}, { survey, pauses, ended }),
    ...recordFindings(given, recorded, numbers, { ...quantities, curve }, lengths.parallelLength),
    ...familyFindings(quantities, numbers, settings, {
      strainFrom: recorded.basis === 'travel' ? 'travel' : 'extensometer',
      frameRemoved: settings.frameCompliance !== undefined,
      parallelLengthGiven: testPiece.parallelLength !== undefined,
      shape: testPiece.section.shape,
    }),
    ...rateFindings(given, curve, quantities, numbers, rates, pauses, settings),
    ...pieceFindings(testPiece, after, quantities, settings, recorded.basis !== 'extensometer'),
    ...frameFindings(given, recorded, numbers, quantities, settings, share, strainStep, 'tension'),
    ...calibrationFindings(settings.test, forcesOf(strengthsOf(quantities), lengths.area), options.uncertainty),
    ...methodFindings(numbers, curve, quantities, settings),
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
    broken: after,
    lengths,
    settings,
    strainRecord,
    elasticLengthRatio: (one, its) => elasticLengthRatio(one, its, settings),
    isModulus,
    resolution: step,
    pauses: pauses.map(({ range }) => range),
    top: survey.top,
    unloadedFrom: unloaded,
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
