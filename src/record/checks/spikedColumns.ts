import { soundLength, type TensionRecord } from '../../base/index.js';
import type { RecordBlocks } from '../survey/recordBlocks.js';
import { findSpikes, jumpsInto, LONGEST, type Spike } from './spikes.js';

/** Columns in which spikes are looked for. */
export type SpikeColumn = 'force' | 'extension' | 'strain' | 'travel';

/** @internal All of them. */
export const spikeColumns: readonly SpikeColumn[] = ['force', 'extension', 'strain', 'travel'];

/** @internal A column with its spikes. */
export interface SpikedColumn {
  readonly name: SpikeColumn;
  readonly column: Float64Array;
  readonly spikes: readonly Spike[];
}

/** Spikes leave by this share of the range: a force may serrate, a motion does not. */
const SHARE = { force: 0.02, extension: 0.002, strain: 0.002, travel: 0.002 };

/** Spikes of a column; where another one jumps off and back with it, the drive did so. */
function spikesOf(record: TensionRecord, name: SpikeColumn, column: Float64Array, blocks?: RecordBlocks): Spike[] {
  const others = spikeColumns.flatMap((other) => (other === name ? [] : (record[other] ?? [])));
  return findSpikes(column, soundLength(column), blocks?.[name], SHARE[name]).filter(
    ({ range: [first, last], nothing }) =>
      nothing || last - first < LONGEST || !others.some((other) => jumpsInto(other, first) && jumpsInto(other, last + 1)),
  );
}

/** @internal The columns of a record that have spikes; its blocks may be known. */
export const spikedColumns = (record: TensionRecord, columns: readonly SpikeColumn[], blocks?: RecordBlocks): SpikedColumn[] =>
  columns.flatMap((name) => {
    const column = record[name];
    const spikes = column ? spikesOf(record, name, column, blocks) : [];
    return column && spikes.length > 0 ? [{ name, column, spikes }] : [];
  });
