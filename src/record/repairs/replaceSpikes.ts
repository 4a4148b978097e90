import { requireOptions, requireWords, trailStep, type TensionColumns, type TensionRecord, type TrailStep } from '../../base/index.js';
import type { RecordBlocks } from '../survey/recordBlocks.js';
import { ownColumns, repairedBy, type Repaired } from './repaired.js';
import { spikesOfColumn, type Spike } from '../checks/spikes.js';

/** Columns in which spikes are looked for. */
export type SpikeColumn = 'force' | 'extension' | 'strain' | 'travel';

/** @internal All of them. */
export const spikeColumns: readonly SpikeColumn[] = ['force', 'extension', 'strain', 'travel'];

/** @internal The step that puts the straight line between the neighbours in the place of spikes. */
export function spikeStep(name: SpikeColumn, column: Float64Array, spikes: readonly Spike[]): TrailStep {
  const samples: number[] = [];
  const values: number[] = [];
  for (const { range } of spikes) {
    const [first, last] = range;
    const before = column[first - 1]!;
    const after = column[last + 1]!;
    for (let i = first; i <= last; i += 1) {
      samples.push(i);
      values.push(before + ((after - before) * (i - first + 1)) / (last - first + 2));
    }
  }
  return trailStep(
    'spikes-replaced',
    {
      column: name,
      samples: samples.join(' '),
      before: samples.map((i) => String(column[i])).join(' '),
      after: values.map(String).join(' '),
    },
    { kind: 'set', column: name, samples, values },
  );
}

/** @internal {@link replaceSpikes} on a checked record, whose blocks may be known. */
export function replaceSpikesKernel(
  record: TensionRecord,
  columns: readonly SpikeColumn[] = spikeColumns,
  blocks?: RecordBlocks,
): Repaired {
  const trail = columns.flatMap((name) => {
    const column = record[name];
    const spikes = spikesOfColumn(record, name, blocks?.[name]);
    return column && spikes.length > 0 ? [spikeStep(name, column, spikes)] : [];
  });
  return repairedBy(record, trail);
}

/**
 * Spikes of force and motion replaced by the straight line between their neighbours.
 *
 * $$ |x_i - x_{i-1}| > \max(8 s, 4\,\text{LSB}, 6\,\operatorname{med}|\Delta x|, 2\,\%), \qquad |x_{i+k} - x_{i-1}| \le \tfrac14 |x_i - x_{i-1}|, \quad k \le 3 $$
 * $$ \text{or}\quad |(x_{i+k} - x_{i+k-1}) + (x_i - x_{i-1})| \le \tfrac14 |x_i - x_{i-1}|, \quad k \le 200 $$
 *
 * @remarks
 * A spike leaves the line at once and is back within three samples; what jumps off and back by as much without another jump between counts too, up to
 * 200 samples, unless another column jumps with it (then the drive did so), and so does a signal that drops out to nothing. A motion need leave by 0.2 % of its
 * range only. A fracture, a yield drop, a slip or a serration does not come back so. Where there are more than ten, and more than one in a hundred samples,
 * they are no spikes, and nothing is replaced. The trail keeps the old values.
 *
 * @param record - `force` [N] and the other columns as logged.
 * @param options - `columns` in which spikes are replaced; default all of force, extension, strain, travel.
 * @returns New columns and the trail.
 * @throws {@link InputError} `missing`, `not-finite`, `unequal-lengths`, `unknown-option`, `out-of-range`.
 *
 * @example
 * ```ts
 * const force = Array.from({ length: 30 }, (_, i) => (i === 12 ? 900 : 10 * i));
 * const raw = { force, travel: force.map((_, i) => 0.1 * i) };
 * replaceSpikes(raw).record.force[12]; // => 120
 * ```
 *
 * @see Hampel, J. Am. Stat. Assoc. 69 (1974) 383, the idea of outliers by a local scale; common practice. Checked in `test/record/repairs.test.ts`.
 */
export function replaceSpikes(record: TensionColumns, options: { readonly columns?: readonly SpikeColumn[] | undefined } = {}): Repaired {
  const from = 'replaceSpikes';
  const own = ownColumns(from, record);
  requireOptions(from, options, ['columns']);
  const columns = requireWords(from, 'options.columns', options.columns ?? spikeColumns, spikeColumns);
  return replaceSpikesKernel(own, columns);
}
