import type { TensionColumns, TensionRecord, TrailStep } from '../../base/index.js';
import { applyChange } from './applyChange.js';
import { requireColumns } from '../survey/requireColumns.js';

/** A record after a repair, with what was done to it. */
export interface Repaired {
  /** New columns; the same values where nothing was to be repaired. */
  readonly record: TensionRecord;
  /** What was done, in order; empty where nothing was. */
  readonly trail: readonly TrailStep[];
}

/** @internal A record after some steps. */
export const repairedBy = (record: TensionRecord, trail: readonly TrailStep[]): Repaired => ({
  record: trail.reduce((columns, { change }) => (change ? applyChange(columns, change) : columns), record),
  trail,
});

/** @internal The columns of a record, checked, in memory of their own. */
export function ownColumns(from: string, record: TensionColumns, least?: number): TensionRecord {
  const checked = requireColumns(from, record, least);
  return Object.fromEntries(
    Object.entries(checked).map(([name, column]) => [name, Float64Array.from(column as Float64Array)]),
  ) as unknown as TensionRecord;
}
