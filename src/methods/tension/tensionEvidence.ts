import { materialFamily } from '../../materials/index.js';
import { lineFit } from '../../numeric/index.js';
import { runningTime, slipsBackOf } from '../../record/index.js';
import { maximumForce } from '../common/quantity.js';
import { afterFracture } from '../evaluation/afterFracture.js';
import type { evaluateRecord } from '../evaluation/evaluateRecord.js';
import { missedPeak } from '../evaluation/missedPeak.js';
import { atMaximum, tensionQuantities } from '../evaluation/tensionQuantities.js';
import { markedBeyond } from '../loading/beyondExtensometer.js';
import { explanationOf } from '../loading/explanationOf.js';
import { frameShare, slopeWithFrame } from '../loading/frameShare.js';
import { isStrainOfPiece, slopeIsModulus } from '../loading/slopeIsModulus.js';
import { recordOfLoading } from '../loading/timeOfLoading.js';
import type { PreparedTest } from './preparedTest.js';
import { ratesOf } from './rateFindings.js';
import { withOthers } from './slopeAboveOthers.js';
import { slopeOverSlip } from './slopeOverSlip.js';
import { tensionStages } from './tensionLoading.js';
import { withYieldDips, yieldDips } from './yieldDips.js';
import { withYieldLeaps, yieldLeaps } from './yieldLeaps.js';

/** @internal A record as it was evaluated. */
export type EvaluatedRecord = ReturnType<typeof evaluateRecord>;

/** @internal What the slope of the line is worth: its explanation, the share of the frame in it, slips below it, and what it may be named by. */
export function slopeEvidence({ counted: { record, survey, outline }, asked, lengths, doubts }: PreparedTest, evaluated: EvaluatedRecord) {
  const { recorded, numbers, part, frameCompliance } = evaluated;
  const strainStep = (survey.motion?.step ?? 0) / (survey.motion?.column === 'strain' ? 1 : recorded.strainLength);
  const softest = asked.family && materialFamily(asked.family).modulus[0];
  // a doubt that the test states goes before the one that the compliance brings, as in its budgets
  const stated = doubts?.inputs.find(({ name }) => name === 'frameCompliance')?.standardUncertainty;
  const motion = frameCompliance && (stated === undefined ? frameCompliance : { ...frameCompliance, relativeUncertainty: () => stated });
  const share = frameShare(recorded, numbers, lengths, motion, softest);
  const strainOfPiece = isStrainOfPiece(recorded, share);
  const slipsBack = outline && slipsBackOf(record, outline);
  const explained = explanationOf(part.numbers, part.input.curve, strainStep, asked.thresholds);
  const explanation = withOthers(explained, part.numbers, part.input.curve, recorded);
  const overSlip = slopeOverSlip(record, recorded, numbers, slipsBack);
  const holds = {
    modulus: !overSlip && slopeIsModulus(numbers, explanation, asked.thresholds, strainOfPiece),
    strainOfPiece,
  };
  return { strainStep, share, slipsBack, explanation, overSlip, holds };
}

/** @internal What the slope is worth. */
export type SlopeEvidence = ReturnType<typeof slopeEvidence>;

/** @internal The quantities with the doubts that the record shows of them: by the curve alone, and with falls during yielding, the extensometer's end, and the broken piece. */
export function measuredQuantities(test: PreparedTest, evaluated: EvaluatedRecord, { share, holds, explanation }: SlopeEvidence) {
  const { recorded, curve, stress, numbers, excursions, leaps, without, frameCompliance } = evaluated;
  const dips = yieldDips(excursions?.untold ?? [], numbers, stress);
  const doubtful = yieldLeaps(leaps, numbers, without);
  const settings = { ...test.asked, frameCompliance };
  const plain = slopeWithFrame(tensionQuantities(numbers, curve, stress, settings, holds, explanation), share);
  const quantities = {
    ...markedBeyond(withYieldLeaps(withYieldDips(plain, dips), doubtful), recorded, curve),
    ...afterFracture(test.testPiece, test.broken),
    maximumForce: atMaximum(maximumForce(test.counted.record.force[numbers.maximumSample]!), numbers),
  };
  return { dips, doubtful, plain, quantities };
}

/**
 * @internal Time of the samples, the rates over the test and of its stages, where time was recorded; the record of what is loading, its stress rate over
 * the elastic window, and what its samples may have missed of the peak of yielding.
 */
export function pace({ counted: { record, survey }, lengths }: PreparedTest, { numbers, curve, part, recorded }: EvaluatedRecord) {
  const time = runningTime(record, survey);
  const rates = time && ratesOf(curve, time, Math.min(numbers.end, curve.strain.length));
  const loaded = recordOfLoading(record, part.ranges);
  const stages = time && tensionStages(loaded, part, recorded, lengths);
  const { line } = part.numbers;
  const stressRate = line.ok && loaded.time ? lineFit(loaded.time, part.input.curve.stress, line.first, line.last)?.slope : undefined;
  return { time, rates, stages, loaded, stressRate, missed: missedPeak(loaded.time, stressRate, part) };
}
