import { trailStep, type TensionColumns, type TensionRecord } from '../../base/index.js';
import { isOfDrive } from '../checks/drops.js';
import { excursionsOf } from '../checks/excursions.js';
import { keptRanges } from './keptRanges.js';
import { ownColumns, repairedBy, type Repaired } from './repaired.js';
import { recordOutline } from '../survey/recordOutline.js';

/** @internal {@link loadingEnvelope} on a checked record. */
export function loadingEnvelopeKernel(record: TensionRecord): Repaired {
  const outline = recordOutline(record);
  if (!outline) return { record, trail: [] };
  const away = excursionsOf(record, outline).drops.filter(isOfDrive);
  if (away.length === 0) return { record, trail: [] };
  const excursions = away.map(({ range: [leaves, , back] }) => [leaves, back] as const);
  const ranges = keptRanges(excursions, record.force.length);
  const samples = excursions.reduce((sum, [leaves, back]) => sum + back - leaves - 1, 0);
  return repairedBy(record, [trailStep('excursions-left-out', { count: away.length, samples }, { kind: 'keep', ranges })]);
}

/**
 * The loading envelope of a record whose drive went back on the way: each excursion is left out, from where the motion turned to where that force is
 * reached again or the motion is back, whichever comes first.
 *
 * @remarks
 * Unloading is part of the truth (its slope shows the modulus); take it out only where a single rising curve is wanted: `analyseTension` evaluates the
 * envelope anyhow and leaves the record whole. The record is shorter afterwards.
 *
 * @param record - `force` [N] and the other columns as logged.
 * @returns New columns and the trail.
 * @throws {@link InputError} `missing`, `not-finite`, `out-of-range`, `unequal-lengths`.
 *
 * @example
 * ```ts
 * const way = Array.from({ length: 160 }, (_, i) => (i < 60 ? i : i < 90 ? 118 - i : i - 60));
 * const raw = { force: way.map((x) => 100 * x), travel: way.map((x) => 0.01 * x) };
 * loadingEnvelope(raw).record.force.length; // => 101
 * ```
 *
 * @see Common practice. Checked in `test/record/repairs.test.ts`.
 */
export function loadingEnvelope(record: TensionColumns): Repaired {
  return loadingEnvelopeKernel(ownColumns('loadingEnvelope', record));
}
