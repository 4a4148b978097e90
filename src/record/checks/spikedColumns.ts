import { soundLength, type TensionRecord } from '../../base/index.js';
import type { RecordBlocks } from '../survey/recordBlocks.js';
import { findSpikes, type Spike } from './spikes.js';

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

/** @internal The columns of a record that have spikes; its blocks may be known. */
export const spikedColumns = (record: TensionRecord, columns: readonly SpikeColumn[], blocks?: RecordBlocks): SpikedColumn[] =>
  columns.flatMap((name) => {
    const column = record[name];
    const spikes = column ? findSpikes(column, soundLength(column), blocks?.[name]) : [];
    return column && spikes.length > 0 ? [{ name, column, spikes }] : [];
  });
