import { requireOptions, requireWords, trailStep, type TensionColumns, type TensionRecord, type TrailStep } from '../../base/index.js';
import type { RecordBlocks } from '../survey/recordBlocks.js';
import { ownColumns, repairedBy, type Repaired } from './repaired.js';
import { spikeColumns, spikedColumns, type SpikeColumn, type SpikedColumn } from '../checks/spikedColumns.js';
import { straightened } from '../checks/spikes.js';

/** The step that takes the spikes of a column out. */
function spikeStep({ name, column, spikes }: SpikedColumn): TrailStep {
  const straight = straightened(column, spikes);
  const samples = spikes.flatMap(({ range: [first, last] }) => Array.from({ length: last - first + 1 }, (_, k) => first + k));
  const values = samples.map((i) => straight[i]!);
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
export const replaceSpikesKernel = (record: TensionRecord, columns: readonly SpikeColumn[], blocks?: RecordBlocks): Repaired =>
  repairedBy(record, spikedColumns(record, columns, blocks).map(spikeStep));

/**
 * Spikes of force and motion replaced by the straight line between their neighbours.
 *
 * $$ |x_i - x_{i-1}| > \max(8 s, 4\,\text{LSB}, 6\,\operatorname{med}|\Delta x|, 2\,\%), \qquad |x_{i+k} - x_{i-1}| \le \tfrac14 |x_i - x_{i-1}|, \quad k \le 3 $$
 * $$ \text{or}\quad |(x_{i+k} - x_{i+k-1}) + (x_i - x_{i-1})| \le \tfrac14 |x_i - x_{i-1}|, \quad k \le 200 $$
 *
 * @remarks
 * A spike leaves the line at once and is back within three samples; what jumps off and back by as much without another jump between counts too, up to
 * 200 samples, unless another column jumps with it (then the drive did so), and so does a signal that drops out to nothing. A motion need leave by 0.2 % of its
 * range only. A fracture, a yield drop or a slip does not come back so, and a serration comes back along the elastic line, by which it is told where the record shows a
 * straight part. By that line a force that bulges counts too: within 200 samples it rises, or comes back from a dip, more steeply over the motion than 1.25 times the line, by 2 % of its
 * highest; or it rises by 3 % above a parabola through the curve beside it where the piece yields, and falls again, while the motion goes on evenly. Where there are more than ten, and more than one in a hundred samples,
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
