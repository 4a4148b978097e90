import { finding, type Finding } from '../../base/index.js';
import type { Excursions } from './excursions.js';
import type { RecordOutline } from '../survey/recordOutline.js';
import { unloadedFrom } from './unloadedFrom.js';

/** @internal Shares of the maximum force that are worth a word. */
export interface ZeroLimits {
  readonly lateStart: number;
  readonly zeroDrift: number;
}

/** @internal What stands before loading and after fracture; `carriesOn` where a piece may go on carrying force when it has broken. */
export function zeroFindings(
  outline: RecordOutline,
  { zeros, zeroMoves }: Excursions,
  { lateStart, zeroDrift }: ZeroLimits,
  carriesOn = false,
): Finding[] {
  const { force, last, highest } = outline;
  const found: Finding[] = [];
  const n = force.length;
  const share = (part: number): number => (100 * Math.abs(part)) / highest;
  const severity = (part: number) => ({ severity: Math.abs(part) > 2 * zeroDrift * highest ? ('fault' as const) : ('caution' as const) });
  const { from, tareStep, before, after } = zeros;
  // a piece that goes on carrying force can only add to it: nothing but a level below the zero shows that the zero moved
  const lifted = carriesOn && !(after !== undefined && after - (before ?? 0) < -zeroDrift * highest);
  const moves = lifted ? [] : zeroMoves;
  for (const { at, fall } of moves)
    found.push(finding('force-zero-moved', { sample: at, fall }, { field: 'maximumForce', range: [at - 1, at] }));
  if (tareStep !== undefined) found.push(finding('late-tare', { sample: from, step: tareStep }, { range: [0, from] }));
  if (force[from]! > lateStart * highest && (before === undefined || before > lateStart * highest))
    found.push(finding('record-starts-late', { share: share(force[from]!) }));
  else if (before !== undefined && Math.abs(before) > zeroDrift * highest)
    found.push(finding('zero-before-loading', { force: before, share: share(before) }, { range: [from, from + 1] }));
  // the end of a test that was stopped and unloaded is no zero: the piece is still held, and the drive may not be back
  if (last === n - 1 || unloadedFrom(outline) !== undefined) return found;
  found.push(finding('tail-after-fracture', { count: n - 1 - last }, { range: [last + 1, n - 1] }));
  // a zero that was set under load shows again here
  if (after === undefined || moves.length > 0 || (lifted && before !== undefined)) return found;
  if (before !== undefined) {
    const drift = after - before;
    if (Math.abs(drift) > zeroDrift * highest) found.push(finding('zero-drift', { force: drift, share: share(drift) }, severity(drift)));
  } else if (Math.abs(after) > zeroDrift * highest)
    found.push(finding('zero-after-fracture', { force: after, share: share(after) }, lifted ? { severity: 'caution' } : severity(after)));
  return found;
}
