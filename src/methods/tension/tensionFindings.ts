import { toldOnce, type Finding, type TrailStep } from '../../base/index.js';
import type { UsualRange } from '../../materials/index.js';
import { checkRecordKernel } from '../../record/index.js';
import { calibrationFindings, forcesOf, windowForce } from '../common/calibrationFindings.js';
import { dimensionFindings, extensometerLengthFindings, lengthFindings, readingFindings } from '../common/pieceFindings.js';
import { spikesOf } from '../common/spikeRepair.js';
import { findingOnRecord } from '../evaluation/loadingPart.js';
import type { TensionResult } from '../evaluation/TensionResult.js';
import { frameFindings } from '../loading/frameFindings.js';
import { brokenPieceFindings } from './brokenPieceFindings.js';
import { familyFindings } from './familyFindings.js';
import { idleRepairs } from './idleRepairs.js';
import { methodFindings } from './methodFindings.js';
import type { PreparedTest } from './preparedTest.js';
import { rateFindings } from './rateFindings.js';
import { recordFindings } from './recordFindings.js';
import { othersFindings } from './slopeAboveOthers.js';
import { slipFindings } from './slipFindings.js';
import type { EvaluatedRecord, measuredQuantities, pace, SlopeEvidence } from './tensionEvidence.js';
import { yieldDipFindings } from './yieldDips.js';
import { yieldLeapFindings } from './yieldLeaps.js';

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

/** @internal All that is doubtful about a test but its budgets, in the order of the work: record, piece, frame, force, evaluation. Doubts about a value are judged by the uncertainty that is stated with it, so `quantities` are those of the result. */
export function tensionFindings(
  test: PreparedTest,
  evaluated: EvaluatedRecord,
  slope: SlopeEvidence,
  { plain, dips, doubtful }: ReturnType<typeof measuredQuantities>,
  timed: ReturnType<typeof pace> & Pick<TensionResult, 'loading'> & { readonly metal: UsualRange | undefined },
  quantities: ReturnType<typeof measuredQuantities>['quantities'],
): Finding[] {
  const { testPiece, options, asked, raw, repairs, turned, counted, lengths, broken } = test;
  const { record: given, survey, outline, ended } = counted;
  const { recorded, curve, stress, numbers, part, pauses, excursions, frameCompliance, refused } = evaluated;
  const { strainStep, share, holds, slipsBack, overSlip } = slope;
  const settings = { ...asked, frameCompliance };
  // the trail tells what was left out after the fracture
  const fractureTold = numbers.fracture.ok && numbers.fracture.index < recorded.strain.length - 1;
  const ofRecord = checkRecordKernel(given, {}, { survey, outline, pauses, excursions, ended, slipsBack });
  return toldOnce([
    ...idleRepairs(options.repairs ?? {}, repairs),
    ...inKept(spikesOf(raw, asked.repairs, repairs), repairs),
    ...turned,
    ...(fractureTold ? ofRecord.filter(({ code }) => code !== 'tail-after-fracture') : ofRecord),
    ...recordFindings(given, recorded, numbers, { tensileStrength: quantities.tensileStrength, curve }, lengths.parallelLength),
    ...familyFindings(quantities, numbers, settings, {
      strainFrom: recorded.basis === 'travel' ? 'travel' : 'extensometer',
      frameRemoved: frameCompliance !== undefined,
      parallelLengthGiven: testPiece.parallelLength !== undefined,
      shape: testPiece.section.shape,
    }),
    ...rateFindings({ ...timed, record: given, curve, numbers, pauses, part }, quantities, settings),
    ...dimensionFindings(testPiece.section),
    ...readingFindings(testPiece.section, settings.thresholds.sectionSpread),
    ...lengthFindings(testPiece, settings.thresholds.gaugeLengthDeviation, recorded.basis !== 'extensometer'),
    ...(recorded.basis === 'travel' ? [] : extensometerLengthFindings(testPiece)),
    ...brokenPieceFindings(testPiece, broken, quantities, settings.minimumElongation),
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
    ...methodFindings(part.numbers, part.input.curve, quantities, settings, holds.strainOfPiece).map(findingOnRecord(part)),
  ]);
}
