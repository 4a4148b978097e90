import type { TensionColumns, TestPiece } from '../../base/index.js';
import { requirePiece, requireRecord } from '../../curve/index.js';
import { endExtensometer } from '../../record/index.js';
import { requireBrokenPiece } from '../common/brokenPiece.js';
import { requireTensionOptions, tensionOptionNames, type TensionOptions } from '../evaluation/tensionOptions.js';
import { requireTensionUncertainty } from '../evaluation/tensionUncertainty.js';
import { pullPositive } from './pullPositive.js';

/** @internal What was given, checked: the record as it is evaluated (repaired, pulling counted positive, its extensometer ended where it no longer counts), the piece whole and broken, the options and the doubts. */
export function preparedTest(
  from: string,
  record: TensionColumns,
  testPiece: TestPiece,
  options: TensionOptions,
  others: readonly string[],
) {
  const asked = requireTensionOptions(from, options, [...tensionOptionNames, ...others]);
  const raw = requireRecord(from, record);
  const { record: repaired, trail: repairs, survey, turned } = pullPositive(raw, asked.repairs);
  const counted = endExtensometer(repaired, survey);
  const lengths = requirePiece(from, testPiece);
  const broken = requireBrokenPiece(from, testPiece);
  const highest = counted.record.force[counted.survey.top]!;
  const doubts =
    options.uncertainty === undefined
      ? undefined
      : requireTensionUncertainty(from, options.uncertainty, testPiece.section, lengths, broken, asked.frameCompliance, highest);
  return { testPiece, options, asked, raw, repairs, turned, counted, lengths, broken, doubts };
}

/** @internal A test as it was prepared. */
export type PreparedTest = ReturnType<typeof preparedTest>;
