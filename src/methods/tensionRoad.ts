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
import {
  allSpikeFindings,
  applyChange,
  checkRecordKernel,
  pausesOf,
  repairRecordKernel,
  runningTime,
  surveyExcursions,
  surveyRecord,
  type Pause,
} from '../record/index.js';
import { afterFracture } from './afterFracture.js';
import { requireBrokenPiece } from './brokenPiece.js';
import { calibrationFindings, forcesOf, forceTrail, windowForce } from './calibrationFindings.js';
import { departuresOf, type Departures } from './departures.js';
import { frameFindings } from './frameFindings.js';
import { frameShare, modulusWithFrame } from './frameShare.js';
import { isCurved } from './lineFindings.js';
import { evaluateLoading, findingOnRecord } from './loadingPart.js';
import { tensionLoading } from './tensionLoading.js';
import { methodFindings } from './methodFindings.js';
import { familyFindings } from './familyFindings.js';
import { pieceFindings } from './pieceFindings.js';
import { rateFindings, ratesOf } from './rateFindings.js';
import { recordFindings } from './recordFindings.js';
import { slipFindings } from './slipFindings.js';
import { quantitiesOf, statedResult } from './statedResult.js';
import { structure } from './structure.js';
import { missingDoubts, tensionBudgets } from './tensionBudgets.js';
import type { TensionTask } from './tensionModel.js';
import { tensionNoise } from './tensionNoise.js';
import { requireTensionUncertainty, type TensionDoubts } from './tensionUncertainty.js';
import { explanationOf, type TensionNumbers } from './tensionKernel.js';
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

/** A drive that went back and came again within a moment stood nowhere. */
const isExcursion = ({ range: [first, last] }: Pause, { excursions }: Departures): boolean =>
  excursions.some(([leaves, , back]) => 2 * leaves <= first + last && first + last <= 2 * back);

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
  const { record: given, trail: repairs } = repairRecordKernel(raw, settings.repairs);
  // where spikes were looked for and none replaced, there are none to speak of
  const spikeless = settings.repairs.spikes !== false && !repairs.some(({ change }) => change?.kind === 'set');
  const lengths = requirePiece(from, testPiece);
  const broken = requireBrokenPiece(from, testPiece);
  const doubts = options.uncertainty && requireTensionUncertainty(from, options.uncertainty, testPiece.section, lengths, broken);

  const used = withoutFrame(given, settings.frameCompliance);
  const recorded = stressStrainKernel(used, lengths);
  const curve = { strain: recorded.strain, stress: recorded.stress };
  const n = curve.strain.length;
  const stress = n === given.force.length ? curve.stress : given.force.map((F) => F / lengths.area);
  const survey = surveyRecord(given);
  const time = runningTime(given, survey);
  const rests = pausesOf(given, survey.clock, survey.top);
  const excursions = surveyExcursions(given, survey, rests);
  const departures = departuresOf(excursions, recorded);
  const pauses = rests.filter((rest) => !isExcursion(rest, departures));
  const strainStep = (survey.motion?.step ?? 0) / (survey.motion?.column === 'strain' ? 1 : recorded.strainLength);

  const step = survey.forceStep / lengths.area;

  const { numbers, part } = evaluateLoading(
    {
      curve,
      stress,
      highest: survey.top,
      resolution: step,
      pauses: pauses.map(({ range }) => range),
      slips: departures.slips,
      zeroMoves: departures.zeroMoves,
      elasticLengthRatio: elasticLengthRatio(recorded, lengths, settings),
    },
    settings,
    departures.excursions,
  );

  const end = numbers.fracture.ok ? numbers.fracture.index + 1 : n;
  const rates = time && ratesOf(curve, time, end);
  const share = frameShare(recorded, numbers, lengths, settings.frameCompliance);
  const isModulus = slopeIsModulus(recorded, numbers, settings);
  const explanation = explanationOf(part.numbers, part.input.curve);
  const quantities = {
    ...modulusWithFrame(tensionQuantities(numbers, curve, stress, settings, isModulus, explanation), share),
    ...afterFracture(testPiece, broken),
  };
  const loading = tensionLoading(curve, time, numbers, quantities.modulus?.value);
  const findings: Finding[] = [
    ...(spikeless ? [] : inKept(allSpikeFindings(raw), repairs)),
    ...checkRecordKernel(given, {}, { survey, pauses, excursions }),
    ...recordFindings(given, recorded, numbers, { tensileStrength: quantities.tensileStrength, curve }, lengths.parallelLength),
    ...familyFindings(quantities, numbers, settings, {
      strainFrom: recorded.basis === 'travel' ? 'travel' : 'extensometer',
      frameRemoved: settings.frameCompliance !== undefined,
      parallelLengthGiven: testPiece.parallelLength !== undefined,
      shape: testPiece.section.shape,
    }),
    ...rateFindings(given, curve, quantities, numbers, rates, pauses, settings),
    ...pieceFindings(testPiece, broken, quantities, settings, recorded.basis !== 'extensometer'),
    ...frameFindings(given, recorded, numbers, quantities, settings, share, strainStep, 'tension'),
    ...calibrationFindings(
      settings.test,
      forcesOf(strengthsOf(quantities), lengths.area),
      options.uncertainty,
      windowForce(numbers.line, stress, lengths.area),
    ),
    ...slipFindings(numbers, quantities, settings),
    ...methodFindings(part.numbers, part.input.curve, quantities, settings).map(findingOnRecord(part)),
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
    trail: [...forceTrail(settings.test), ...repairs, ...tensionTrail(given, recorded, lengths, numbers, settings, part)],
    provenance: provenanceOf(options, { ...raw }),
  };
  const { input, ranges } = part;
  const task: TensionTask = {
    record: ranges ? applyChange(given, { kind: 'keep', ranges }) : given,
    piece: testPiece,
    broken,
    lengths,
    settings,
    withoutFrame: (one) => withoutFrame(one, settings.frameCompliance),
    elasticLengthRatio: (one, its) => elasticLengthRatio(one, its, settings),
    isModulus,
    resolution: step,
    pauses: input.pauses,
    slips: input.slips,
    zeroMoves: input.zeroMoves,
    top: input.highest ?? survey.top,
    numbers: part.numbers,
    recorded: ranges ? { ...recorded, ...input.curve } : recorded,
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
