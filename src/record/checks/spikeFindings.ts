import { columnUnits, finding, type ColumnName, type Finding, type TensionRecord } from '../../base/index.js';
import { spikeColumns, spikedColumns } from './spikedColumns.js';
import { LONGEST_SPIKE, type Spike } from './spikes.js';

/** @internal Doubts that spikes of a column are. */
export function spikeFindings(column: ColumnName, spikes: readonly Spike[]): Finding[] {
  const found: Finding[] = [];
  const short = spikes.filter(({ range, bulges }) => range[1] - range[0] < LONGEST_SPIKE && !bulges);
  const worst = short.reduce<Spike | undefined>((a, b) => (a && a.height >= b.height ? a : b), undefined);
  if (worst)
    found.push(
      finding(
        'spikes',
        { column, count: short.length, largest: worst.height, unit: columnUnits[column], first: worst.range[0] },
        { range: worst.range },
      ),
    );
  for (const { range, height, nothing, bulges } of spikes) {
    const count = range[1] - range[0] + 1;
    const values = { column, count, first: range[0] };
    if (bulges) found.push(finding('force-bulges', { count, first: range[0], height }, { range }));
    if (bulges || count <= LONGEST_SPIKE) continue;
    found.push(
      nothing
        ? finding('signal-drops-out', values, { range })
        : finding('signal-strays', { ...values, height, unit: columnUnits[column] }, { range }),
    );
  }
  return found;
}

/** @internal Spikes of all columns of force and motion. */
export const allSpikeFindings = (record: TensionRecord): Finding[] =>
  spikedColumns(record, spikeColumns).flatMap(({ name, spikes }) => spikeFindings(name, spikes));
