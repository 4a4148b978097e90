import type { TensionRecord } from '../../base/index.js';
import { soundLength } from '../../base/index.js';

/** Columns that carry a sign. */
const signed = ['force', 'extension', 'strain', 'travel'] as const;

/** Sample of the largest magnitude. */
function largestIndex(column: Float64Array): number {
  let at = 0;
  for (let i = 1; i < column.length; i += 1) if (Math.abs(column[i]!) > Math.abs(column[at]!)) at = i;
  return at;
}

/**
 * @internal The record with loading positive, and which columns were turned. The sign of the force is that of its largest
 * magnitude; a motion is turned where it has fallen from the first sample to that of the largest force.
 */
export function loadingPositive(record: TensionRecord): { readonly record: TensionRecord; readonly turned: readonly string[] } {
  const top = largestIndex(record.force);
  const falls = (name: (typeof signed)[number]): boolean => {
    const column = record[name];
    if (!column) return false;
    if (name === 'force') return column[top]! < 0;
    return column[Math.min(top, soundLength(column) - 1)]! < column[0]!;
  };
  const turned = signed.filter(falls);
  return { turned, record: { ...record, ...Object.fromEntries(turned.map((name) => [name, record[name]!.map((value) => -value)])) } };
}
