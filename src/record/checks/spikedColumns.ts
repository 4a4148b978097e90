import { soundLength, type TensionRecord } from '../../base/index.js';
import { blockExtremes, firstReaching, highestSample } from '../../numeric/index.js';
import { motionColumn, ofDrive } from '../survey/motionColumn.js';
import type { RecordBlocks } from '../survey/recordBlocks.js';
import { findDisturbances, STEEPER_THAN_ELASTIC } from './disturbances.js';
import { straightSlope } from './straightLine.js';
import { findSpikes, jumpsInto, LONGEST_SPIKE, NEXT_TO_NOTHING, SPIKE_SHARE, straightened, type Spike } from './spikes.js';

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

/** Least change that begins a spike of a motion, which does not serrate, as a share of its range. */
const OF_MOTION = 0.002;

/** Samples beside a jump in which another channel may show it: channels may be read one after the other. */
const BESIDE = [-2, -1, 0, 1, 2];

/** Whether a column jumps off and back with another one; what hangs on the same plug does not. */
function jumpsWith(column: Float64Array, { range: [first, last], nothing }: Spike): boolean {
  const near = (at: number): boolean => BESIDE.some((by) => jumpsInto(column, at + by));
  const unplugged = nothing && Math.abs(column[(first + last) >> 1]!) <= NEXT_TO_NOTHING * Math.abs(column[first - BESIDE.length]!);
  return !unplugged && near(first) && near(last + 1);
}

/** Share of a rise that the force must have had before to regain it. */
const REGAINED = 0.75;

/**
 * Whether a force regains a level that it had before, no more steeply than piece and frame rise elastically: a serration of the material looks so between
 * distant samples. A rise above all that the piece bore before regains nothing.
 */
function isSerration(force: Float64Array, motion: Float64Array, stiffness: number, { range: [first, last], nothing }: Spike): boolean {
  const [from, to] = force[first]! > force[first - 1]! ? [first - 1, first] : [last, last + 1];
  const rise = force[to]! - force[from]!;
  const elastic = rise <= STEEPER_THAN_ELASTIC * stiffness * (motion[to]! - motion[from]!);
  return elastic && !nothing && firstReaching(force, force[from]! + REGAINED * rise, 0, first) < first;
}

/** Spikes of a column; a long one is none where another column jumps off and back with it, for that was the drive. */
function spikesOf(record: TensionRecord, name: SpikeColumn, column: Float64Array, blocks?: RecordBlocks): Spike[] {
  const withAnother = (spike: Spike): boolean =>
    spikeColumns.some((other) => other !== name && record[other] !== undefined && jumpsWith(record[other], spike));
  const spikes = findSpikes(column, soundLength(column), blocks?.[name], name === 'force' ? SPIKE_SHARE : OF_MOTION).filter(
    (spike) => spike.range[1] - spike.range[0] < LONGEST_SPIKE || !withAnother(spike),
  );
  const motion = name === 'force' ? record[motionColumn(record, ofDrive)] : undefined;
  if (!motion) return spikes;
  const rest = spikes.length > 0 ? straightened(column, spikes) : column;
  const known = spikes.length > 0 || !blocks ? blockExtremes(rest) : blocks.force;
  const stiffness = straightSlope(rest, motion, highestSample(rest, known), known);
  if (stiffness === undefined) return spikes;
  const own = spikes.filter((spike) => !isSerration(column, motion, stiffness, spike));
  const more = findDisturbances(rest, motion, stiffness, known).filter(({ range: [first, last] }) =>
    spikes.every(({ range }) => range[1] < first - 1 || last + 1 < range[0]),
  );
  return [...own, ...more].sort((a, b) => a.range[0] - b.range[0]);
}

/** @internal The columns of a record that have spikes; its blocks may be known. */
export const spikedColumns = (record: TensionRecord, columns: readonly SpikeColumn[], blocks?: RecordBlocks): SpikedColumn[] =>
  columns.flatMap((name) => {
    const column = record[name];
    const spikes = column ? spikesOf(record, name, column, blocks) : [];
    return column && spikes.length > 0 ? [{ name, column, spikes }] : [];
  });
