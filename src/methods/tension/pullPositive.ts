import { finding, type Finding, type TensionRecord } from '../../base/index.js';
import { recordBlocks, repairRecordKernel, reversedForce, surveyRecord, type RecordBlocks, type Repairs } from '../../record/index.js';
import { timeOfLoading } from '../loading/timeOfLoading.js';

/** A record after its repairs, its time that of the loading. */
function repairedOf(raw: TensionRecord, repairs: Repairs, blocks?: RecordBlocks) {
  const { record, trail } = repairRecordKernel(raw, repairs, blocks);
  return { record: timeOfLoading(record, trail), trail };
}

/**
 * @internal A record as it is repaired and surveyed, with pull positive: a force that counts it as negative is turned as `repairs.reverse` does,
 * which the trail says, and the finding is then a caution, since nothing of the result is wrong.
 */
export function pullPositive(raw: TensionRecord, repairs: Repairs) {
  const blocks = recordBlocks(raw);
  const done = repairedOf(raw, repairs, blocks);
  const survey = surveyRecord(done.record, undefined, done.trail.length === 0 ? blocks : undefined);
  const reversed = reversedForce(survey.blocks.force, done.record.force[survey.top]!);
  if (!reversed || repairs.reverse?.includes('force') === true) return { survey, turned: [] as Finding[], ...done };
  const turned = repairedOf(raw, { ...repairs, reverse: [...(repairs.reverse ?? []), 'force'] });
  return {
    ...turned,
    survey: surveyRecord(turned.record),
    turned: [
      finding('force-sign-reversed', reversed, { field: 'maximumForce', severity: 'caution' }),
      finding('signs-turned', { columns: 'force' }, { field: 'maximumForce' }),
    ],
  };
}
