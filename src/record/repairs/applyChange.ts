import type { ColumnName, RecordChange, TensionRecord } from '../../base/index.js';
import { keptColumn } from './keptRanges.js';

/** A column less or more than it was, in new memory. */
function changed(name: string, column: Float64Array, change: RecordChange): Float64Array {
  if (change.kind === 'keep') return keptColumn(column, change.ranges);
  if (change.kind === 'clock') return name === 'time' ? column.map((_, i) => change.start + i * change.step) : column;
  if (change.column !== name) return column;
  const n = column.length;
  switch (change.kind) {
    case 'add': {
      const [first, last] = change.range;
      return column.map((value, i) => (i >= first && i <= last ? value + change.amount : value));
    }
    case 'ramp': {
      const [from, to] = change.amounts;
      return column.map((value, i) => value + (from + ((to - from) * i) / (n - 1)));
    }
    case 'multiply':
      return column.map((value) => value * change.factor);
    case 'set': {
      const copy = Float64Array.from(column);
      change.samples.forEach((i, k) => (copy[i] = change.values[k]!));
      return copy;
    }
    case 'advance':
      return column.map((_, i) => column[Math.min(n - 1, Math.max(0, i + change.samples))]!);
  }
}

/** @internal One change made to a record; columns that it does not touch stay the same arrays. */
export function applyChange(record: TensionRecord, change: RecordChange): TensionRecord {
  const columns = Object.entries(record) as [ColumnName, Float64Array | undefined][];
  return Object.fromEntries(
    columns.flatMap(([name, column]) => (column === undefined ? [] : [[name, changed(name, column, change)]])),
  ) as unknown as TensionRecord;
}
