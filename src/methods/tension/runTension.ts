import type { Finding, TensionColumns, TestPiece, TrailStep } from '../../base/index.js';
import { requirePiece, requireRecord } from '../../curve/index.js';
import { materialFamily } from '../../materials/index.js';
import { applyChange, checkRecordKernel, endExtensometer, runningTime, slipsBackOf } from '../../record/index.js';
import { afterFracture } from '../evaluation/afterFracture.js';
import { requireBrokenPiece } from '../common/brokenPiece.js';
import { brokenPieceFindings } from './brokenPieceFindings.js';
import { calibrationFindings, forcesOf, forceTrail, windowForce } from '../common/calibrationFindings.js';
import { brokenAt, elasticLengthRatio, evaluateRecord, strainRecord } from '../evaluation/evaluateRecord.js';
import { frameFindings } from '../loading/frameFindings.js';
import { frameShare, slopeWithFrame } from '../loading/frameShare.js';
import { findingOnRecord } from '../evaluation/loadingPart.js';
import { missedPeak } from '../evaluation/missedPeak.js';
import { tensionLoading } from './tensionLoading.js';
import { methodFindings } from './methodFindings.js';
import { familyFindings } from './familyFindings.js';
import { dimensionFindings, lengthFindings, readingFindings } from '../common/pieceFindings.js';
import { pullPositive } from './pullPositive.js';
import { rateFindings, ratesOf } from './rateFindings.js';
import { recordFindings } from './recordFindings.js';
import { slopeOverSlip } from './slopeOverSlip.js';
import { othersFindings, withOthers } from './slopeAboveOthers.js';
import { slipFindings } from './slipFindings.js';
import { isStrainOfPiece, slopeIsModulus } from '../loading/slopeIsModulus.js';
import { spikesOf } from '../common/spikeRepair.js';
import { statedResult } from '../budgets/statedResult.js';
import { plainCopy } from '../common/plainCopy.js';
import type { TensionTask } from '../budgets/tensionModel.js';
import { uncertaintyOf } from '../budgets/uncertaintyOf.js';
import { requireTensionUncertainty, type TensionDoubts } from '../evaluation/tensionUncertainty.js';
import { explanationOf } from '../loading/explanationOf.js';
import { requireTensionOptions, tensionOptionNames, type TensionOptions } from '../evaluation/tensionOptions.js';
import { maximumForce } from '../common/quantity.js';
import { tensionQuantities } from '../evaluation/tensionQuantities.js';
import { tensionTrail } from './tensionTrail.js';
import type { TensionResult } from '../evaluation/TensionResult.js';
import { provenanceOf } from '../common/provenanceOf.js';
import { withYieldDips, yieldDipFindings, yieldDips } from './yieldDips.js';
import { withYieldLeaps, yieldLeapFindings, yieldLeaps } from './yieldLeaps.js';
import { frameRemoved } from '../loading/usableFrame.js';

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
export interface TensionRun {
  readonly result: TensionResult;
  readonly task: TensionTask;
  readonly doubts: TensionDoubts | undefined;
}

/** @internal {@link analyseTension}, with what a Monte Carlo run starts from; `others` are options that are read elsewhere. */
export function runTension(
  from: string,
  record: TensionColumns,
  testPiece: TestPiece,
  options: TensionOptions,
  others: readonly string[] = [],
): TensionRun {
  const asked = requireTensionOptions(from, options, [...tensionOptionNames, ...others]);
  const raw = requireRecord(from, record);
  const { record: repaired, trail: repairs, survey: first, turned } = pullPositive(raw, asked.repairs);
  const counted = endExtensometer(repaired, first);
  const { record: given, survey, outline, ended } = counted;
  const lengths = requirePiece(from, testPiece);
  const after = requireBrokenPiece(from, testPiece);
  const doubts =
    options.uncertainty && requireTensionUncertainty(from, options.uncertainty, testPiece.section, lengths, after, asked.frameCompliance);

  const evaluated = evaluateRecord(counted, lengths, asked);
  const { recorded, curve, stress, numbers, part, pauses, excursions, interruptions, leaps, without, frameCompliance, refused } = evaluated;
  const settings = { ...asked, frameCompliance };
  const time = runningTime(given, survey);
  const strainStep = (survey.motion?.step ?? 0) / (survey.motion?.column === 'strain' ? 1 : recorded.strainLength);

  const end = Math.min(numbers.end, curve.strain.length);
  const rates = time && ratesOf(curve, time, end);
  const softest = settings.family && materialFamily(settings.family).modulus[0];
  const share = frameShare(recorded, numbers, lengths, frameCompliance, softest);
  const strainOfPiece = isStrainOfPiece(recorded, share);
  const slipsBack = outline && slipsBackOf(given, outline);
  const explanation = withOthers(
    explanationOf(part.numbers, part.input.curve, strainStep, settings.thresholds),
    part.numbers,
    part.input.curve,
    recorded,
  );
  const overSlip = slopeOverSlip(given, recorded, numbers, slipsBack);
  const holds = {
    modulus: !overSlip && slopeIsModulus(numbers, explanation, settings.thresholds, strainOfPiece),
    totalExtension: strainOfPiece,
  };
  const missed = missedPeak(given, part);
  const dips = yieldDips(excursions?.untold ?? [], numbers, stress);
  const doubtful = yieldLeaps(leaps, numbers, without);
  const plain = slopeWithFrame(tensionQuantities(numbers, curve, stress, settings, holds, explanation), share);
  const bare = {
    ...withYieldLeaps(withYieldDips(plain, dips), doubtful),
    ...afterFracture(testPiece, after),
    maximumForce: maximumForce(given.force[numbers.maximumSample]!),
  };
  const { input, ranges } = part;
  const task: TensionTask = {
    record: ranges ? applyChange(given, { kind: 'keep', ranges }) : given,
    piece: testPiece,
    broken: after,
    lengths,
    settings,
    strainRecord: (one) => strainRecord(one, frameCompliance, brokenAt(input)),
    elasticLengthRatio: (one, its) => elasticLengthRatio(one, its, frameCompliance),
    holds,
    resolution: evaluated.resolution,
    pauses: input.pauses,
    slips: input.slips,
    zeroMoves: input.zeroMoves,
    unloadedFrom: input.unloadedFrom,
    top: input.highest ?? survey.top,
    numbers: part.numbers,
    recorded: ranges ? { ...recorded, ...input.curve } : recorded,
    explanation,
  };
  const uncertainty = doubts && uncertaintyOf(task, doubts, bare, missed);
  // doubts about a value are judged by the uncertainty that is stated with it
  const quantities = uncertainty ? statedResult(bare, uncertainty) : bare;
  const loading = tensionLoading(curve, time, numbers, quantities.modulus?.value);
  const findings: Finding[] = [
    ...inKept(spikesOf(raw, asked.repairs, repairs), repairs),
    ...turned,
    ...checkRecordKernel(given, {}, { survey, outline, pauses, excursions, ended, slipsBack }),
    ...recordFindings(given, recorded, numbers, { tensileStrength: quantities.tensileStrength, curve }, lengths.parallelLength),
    ...familyFindings(quantities, numbers, settings, {
      strainFrom: recorded.basis === 'travel' ? 'travel' : 'extensometer',
      frameRemoved: frameCompliance !== undefined,
      parallelLengthGiven: testPiece.parallelLength !== undefined,
      shape: testPiece.section.shape,
    }),
    ...rateFindings({ record: given, curve, numbers, rates, pauses, part, missed }, quantities, settings),
    ...dimensionFindings(testPiece.section),
    ...readingFindings(testPiece.section, settings.thresholds.sectionSpread),
    ...lengthFindings(testPiece, settings.thresholds.gaugeLengthDeviation, recorded.basis !== 'extensometer'),
    ...brokenPieceFindings(testPiece, after, quantities, settings.minimumElongation),
    ...frameFindings({ record: given, recorded, numbers, share, refused, strainStep }, 'tension', quantities, settings),
    ...calibrationFindings(
      settings.test,
      forcesOf(strengthsOf(quantities), lengths.area),
      options.uncertainty,
      windowForce(numbers.line, stress, lengths.area),
    ),
    ...slipFindings(numbers, plain, settings),
    ...(overSlip ? [overSlip] : []),
    ...othersFindings(quantities),
    ...yieldDipFindings(dips),
    ...yieldLeapFindings(doubtful),
    ...methodFindings(part.numbers, part.input.curve, quantities, settings, strainOfPiece).map(findingOnRecord(part)),
    ...(uncertainty?.findings ?? []),
  ];
  const result: TensionResult = {
    method: 'tension',
    test: settings.test,
    testPiece: plainCopy(testPiece),
    extensionBasis: recorded.basis,
    strainLength: recorded.strainLength,
    ...(recorded.extensometerEnd === undefined ? {} : { extensometerEnd: recorded.extensometerEnd }),
    ...frameRemoved(asked.frameCompliance, given.travel, refused),
    curve,
    ...(interruptions.length > 0 ? { interruptions } : {}),
    ...quantities,
    ...(loading ? { loading } : {}),
    ...(rates ? { rates } : {}),
    findings,
    trail: [...forceTrail(settings.test), ...repairs, ...tensionTrail(given, recorded, lengths, numbers, settings, part)],
    provenance: provenanceOf(options, { ...raw }),
    ...(uncertainty ? { uncertainty: uncertainty.budgets } : {}),
  };
  return { result, task, doubts };
}
