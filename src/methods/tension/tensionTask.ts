import { applyChange } from '../../record/index.js';
import type { TensionTask } from '../budgets/tensionModel.js';
import { brokenAt, elasticLengthRatio, strainRecord } from '../evaluation/evaluateRecord.js';
import type { PreparedTest } from './preparedTest.js';
import type { EvaluatedRecord, SlopeEvidence } from './tensionEvidence.js';

/** @internal What budgets and trials evaluate again: the loading part of the test, as it was evaluated. */
export function tensionTask(test: PreparedTest, evaluated: EvaluatedRecord, { holds, explanation }: SlopeEvidence): TensionTask {
  const { counted, lengths, testPiece, broken, asked } = test;
  const { recorded, part, frameCompliance } = evaluated;
  const { input, ranges, numbers } = part;
  return {
    record: ranges ? applyChange(counted.record, { kind: 'keep', ranges }) : counted.record,
    piece: testPiece,
    broken,
    lengths,
    settings: { ...asked, frameCompliance },
    strainRecord: (one) => strainRecord(one, frameCompliance, brokenAt(input)),
    elasticLengthRatio: (one, its) => elasticLengthRatio(one, its, frameCompliance),
    holds,
    input,
    top: input.highest ?? counted.survey.top,
    numbers,
    recorded: ranges ? { ...recorded, ...input.curve } : recorded,
    explanation,
  };
}
