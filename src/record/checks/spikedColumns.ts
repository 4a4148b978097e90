import { soundLength, type TensionRecord } from '../../base/index.js';
import type { RecordBlocks } from '../survey/recordBlocks.js';
import { findSpikes, jumpsInto, LONGEST, NOTHING, SHARE, type Spike } from './spikes.js';

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

/** Spikes of a motion leave by this share of its range: it does not serrate. */
const OF_MOTION = 0.002;

/** Channels may be read one after the other: a jump counts so many samples beside. */
const BESIDE = [-2, -1, 0, 1, 2];

/** Whether a column jumps off and back with another one; what hangs on the same plug does not. */
function jumpsWith(column: Float64Array, { range: [first, last], nothing }: Spike): boolean {
  const near = (at: number): boolean => BESIDE.some((by) => jumpsInto(column, at + by));
  const unplugged = nothing && Math.abs(column[(first + last) >> 1]!) <= NOTHING * Math.abs(column[first - BESIDE.length]!);
  return !unplugged && near(first) && near(last + 1);
}

/** Spikes of a column; where another one jumps off and back with it, the drive did so. */
function spikesOf(record: TensionRecord, name: SpikeColumn, column: Float64Array, blocks?: RecordBlocks): Spike[] {
  const withAnother = (spike: Spike): boolean =>
    spikeColumns.some((other) => other !== name && record[other] !== undefined && jumpsWith(record[other], spike));
  return findSpikes(column, soundLength(column), blocks?.[name], name === 'force' ? SHARE : OF_MOTION).filter(
    (spike) => spike.range[1] - spike.range[0] < LONGEST || !withAnother(spike),
  );
}

/** @internal The columns of a record that have spikes; its blocks may be known. */
export const spikedColumns = (record: TensionRecord, columns: readonly SpikeColumn[], blocks?: RecordBlocks): SpikedColumn[] =>
  columns.flatMap((name) => {
    const column = record[name];
    const spikes = column ? spikesOf(record, name, column, blocks) : [];
    return column && spikes.length > 0 ? [{ name, column, spikes }] : [];
  });
