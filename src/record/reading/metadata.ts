import type { Layout } from './layout.js';
import type { MetadataEntry } from './reading.js';

/** @internal The text above the columns: name and value at a colon, an equals sign or the first cells. */
export function metadataOf(layout: Layout): Record<string, MetadataEntry> {
  const end = layout.namesRow ?? layout.bodyRow;
  const entries: [string, MetadataEntry][] = [];
  layout.head.slice(0, end).forEach((row, k) => {
    const cells = row.filter((cell) => cell !== '');
    if (cells.length === 0) return;
    const [first = '', ...rest] = cells;
    const [, name, value] = rest.length > 0 ? [undefined, first.replace(/[:=]$/, ''), rest[0]] : (/^([^:=]+)[:=](.*)$/.exec(first) ?? []);
    if (name === undefined || value === undefined) entries.push([`line ${k + 1}`, { value: cells.join(' ') }]);
    else entries.push([name.trim(), { value: value.trim(), ...(rest.length > 1 ? { unit: rest.slice(1).join(' ') } : {}) }]);
  });
  return Object.fromEntries(entries);
}
