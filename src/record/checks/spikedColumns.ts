import { soundLength, type TensionRecord } from '../../base/index.js';
import { blockExtremes, firstReaching, highestSample } from '../../numeric/index.js';
import { motionColumn, ofDrive } from '../survey/motionColumn.js';
import type { RecordBlocks } from '../survey/recordBlocks.js';
import { findDisturbances, STEEPER } from './disturbances.js';
import { straightSlope } from './straightLine.js';
import { findSpikes, jumpsInto, LONGEST, NOTHING, SHARE, straightened, type Spike } from './spikes.js';

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

/** A rise regains what was lost before to this share of itself. */
const REGAINED = 0.75;

/**
 * Whether a force regains a level that it had no more steeply than piece and frame do elastically: between distant samples a serration of the material
 * looks so. Above all that it bore before nothing is regained.
 */
function isSerration(force: Float64Array, motion: Float64Array, stiffness: number, { range: [first, last], nothing }: Spike): boolean {
  const [from, to] = force[first]! > force[first - 1]! ? [first - 1, first] : [last, last + 1];
  const rise = force[to]! - force[from]!;
  const elastic = rise <= STEEPER * stiffness * (motion[to]! - motion[from]!);
  return elastic && !nothing && firstReaching(force, force[from]! + REGAINED * rise, 0, first) < first;
}

/** Spikes of a column; where another one jumps off and back with it, the drive did so. */
function spikesOf(record: TensionRecord, name: SpikeColumn, column: Float64Array, blocks?: RecordBlocks): Spike[] {
  const withAnother = (spike: Spike): boolean =>
    spikeColumns.some((other) => other !== name && record[other] !== undefined && jumpsWith(record[other], spike));
  const spikes = findSpikes(column, soundLength(column), blocks?.[name], name === 'force' ? SHARE : OF_MOTION).filter(
    (spike) => spike.range[1] - spike.range[0] < LONGEST || !withAnother(spike),
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
