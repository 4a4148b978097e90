import type { TensionRecord } from '../../base/index.js';
import { blockExtremes, type BlockExtremes } from '../../numeric/index.js';
import { ofDrive, type MotionColumn } from './motionColumn.js';

/** @internal Force and motions of a record by blocks: checks, repairs and excursions pass over what cannot concern them. */
export type RecordBlocks = Readonly<Partial<Record<MotionColumn, BlockExtremes>>> & { readonly force: BlockExtremes };

/** @internal The blocks of a record. */
export function recordBlocks(record: TensionRecord): RecordBlocks {
  const motions: Partial<Record<MotionColumn, BlockExtremes>> = {};
  for (const column of ofDrive) {
    const values = record[column];
    if (values) motions[column] = blockExtremes(values);
  }
  return { force: blockExtremes(record.force), ...motions };
}
