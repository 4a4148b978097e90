import type { TensionRecord } from '../../base/index.js';
import { travelWithoutFrame, type FrameMotion } from '../../curve/index.js';

/** @internal The frame's motion taken out of the travel, where its compliance is known. */
export function withoutFrame(record: TensionRecord, motion: FrameMotion | undefined): TensionRecord {
  return motion && record.travel ? { ...record, travel: travelWithoutFrame(record.travel, record.force, motion) } : record;
}
