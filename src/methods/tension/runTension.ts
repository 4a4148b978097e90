import type { TensionColumns, TestPiece } from '../../base/index.js';
import { forceTrail } from '../common/forceOrigin.js';
import { plainCopy } from '../common/plainCopy.js';
import { provenanceOf } from '../common/provenanceOf.js';
import { statedResult } from '../budgets/statedResult.js';
import type { TensionTask } from '../budgets/tensionModel.js';
import { uncertaintyOf } from '../budgets/uncertaintyOf.js';
import { measuredBreak } from '../evaluation/brokeAtEnd.js';
import { evaluateRecord } from '../evaluation/evaluateRecord.js';
import type { TensionOptions } from '../evaluation/tensionOptions.js';
import type { TensionResult } from '../evaluation/TensionResult.js';
import type { TensionDoubts } from '../evaluation/tensionUncertainty.js';
import { frameRemoved } from '../loading/usableFrame.js';
import { preparedTest } from './preparedTest.js';
import { measuredQuantities, pace, slopeEvidence } from './tensionEvidence.js';
import { tensionFindings } from './tensionFindings.js';
import { modulusOfMetal, tensionLoading } from './tensionLoading.js';
import { tensionTask } from './tensionTask.js';
import { tensionTrail } from './tensionTrail.js';

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
  const test = preparedTest(from, record, testPiece, options, others);
  const { asked, raw, repairs, lengths, doubts } = test;
  const given = test.counted.record;
  const evaluated = evaluateRecord(test.counted, lengths, asked, measuredBreak(testPiece, test.broken));
  const { recorded, curve, numbers, part, interruptions, frameCompliance, refused } = evaluated;
  const settings = { ...asked, frameCompliance };

  const slope = slopeEvidence(test, evaluated);
  const measured = measuredQuantities(test, evaluated, slope);
  const task = tensionTask(test, evaluated, slope);
  const timed = pace(test, evaluated);
  const uncertainty = doubts && uncertaintyOf(task, doubts, measured.quantities, timed.missed);
  const quantities = uncertainty ? statedResult(measured.quantities, uncertainty) : measured.quantities;
  const metal = modulusOfMetal(asked.family, quantities.modulus);
  const loading = tensionLoading(timed.stages, numbers, metal);
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
    ...(timed.rates ? { rates: timed.rates } : {}),
    findings: [
      ...tensionFindings(test, evaluated, slope, measured, { ...timed, loading, metal }, quantities),
      ...(uncertainty?.findings ?? []),
    ],
    trail: [...forceTrail(settings.test), ...repairs, ...tensionTrail(given, recorded, lengths, numbers, settings, part)],
    provenance: provenanceOf(options, { ...raw }),
    ...(uncertainty ? { uncertainty: uncertainty.budgets } : {}),
  };
  return { result, task, doubts };
}
