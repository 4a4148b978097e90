import { numberOf, type Layout } from './layout.js';
import type { NamedColumn } from './columnNames.js';

/**
 * @internal What the numbers of each column could be, by how they run and how large they are, for a message; nothing is decided by it. Of a
 * file of which only the beginning was read so far (`whole` false) that is said, and small numbers say nothing. Of columns that are
 * `taken` nothing is said.
 */
export function suggestColumns(
  layout: Layout,
  columns: readonly NamedColumn[],
  whole: boolean,
  taken: readonly NamedColumn[] = [],
): string {
  const seen = columns
    .filter(({ kind }) => kind === 'number')
    .map(({ index, name }) => {
      const values = layout.body
        .map((row) => numberOf(row[index], layout.decimal, undefined) ?? NaN)
        .filter((value) => !Number.isNaN(value));
      const steps = values.slice(1).map((value, i) => value - values[i]!);
      const largest = values.reduce((a, value) => Math.max(a, Math.abs(value)), 0);
      const mean = steps.reduce((a, step) => a + step, 0) / Math.max(steps.length, 1);
      const even = steps.length > 0 && mean > 0 && steps.every((step) => step > 0 && Math.abs(step - mean) <= 0.5 * mean);
      return { index, name, largest, even };
    });
  const clock = seen.find(({ even }) => even);
  const rest = seen.filter((one) => one !== clock).sort((a, b) => b.largest - a.largest);
  const guess = (one: (typeof seen)[number]): string => {
    if (one === clock) return 'time or travel (it rises evenly)';
    if (one === rest[0] && rest.length > 1) return 'force or pressure (the largest numbers)';
    return whole && one.largest < 0.5
      ? 'strain or extension (small numbers)'
      : whole
        ? 'travel or extension'
        : 'travel, extension or strain';
  };
  const seenOnly = whole ? '' : `in the first ${layout.body.length} rows `;
  return seen
    .filter(({ index }) => taken.every((one) => one.index !== index))
    .map(
      (one) =>
        `${seenOnly}${one.index}${one.name === '' ? '' : ` '${one.name}'`} goes up to ${Number(one.largest.toPrecision(4))}, perhaps ${guess(one)}`,
    )
    .join('; ');
}
