import { columnUnits, trailStep, type TensionColumns, type TensionRecord, type TrailStep } from '../../base/index.js';
import { excursionsOf } from '../checks/excursions.js';
import { findJumps } from '../checks/jumps.js';
import { ownColumns, repairedBy, type Repaired } from './repaired.js';
import { recordOutline } from '../survey/recordOutline.js';

/** @internal {@link joinSlips} on a checked record. */
export function joinSlipsKernel(record: TensionRecord): Repaired {
  const outline = recordOutline(record);
  if (!outline?.motion) return { record, trail: [] };
  const { motion, force } = outline;
  let last = force.length - 1;
  // a travel that jumps ahead under load slipped within one sample
  const jumps = record.travel ? findJumps(outline, record.travel).filter(({ size }) => size > 0) : [];
  const ahead = jumps.map(({ at, size }): TrailStep[] => [
    trailStep(
      'slip-taken-out',
      { column: 'travel', sample: at, way: size, unit: 'mm' },
      { kind: 'add', column: 'travel', range: [at, last], amount: -size },
    ),
  ]);
  // later slips first, so that the samples of earlier ones keep their numbers; each leaves the record shorter
  const found = excursionsOf(record, outline);
  const drops = [...found.drops, ...found.leaps].sort((a, b) => b.range[0] - a.range[0]);
  const slips = drops.flatMap(({ kind, range, way }): TrailStep[][] => {
    if (kind !== 'slip' || way <= 0) return [];
    const [from, , to] = range;
    const cut = trailStep(
      'slip-left-out',
      { fromSample: from + 1, toSample: to - 1, samples: to - from - 1 },
      {
        kind: 'keep',
        ranges: [
          [0, from],
          [to, last],
        ],
      },
    );
    last -= to - from - 1;
    const shift = trailStep(
      'slip-taken-out',
      { column: motion.column, sample: from + 1, way, unit: columnUnits[motion.column] },
      { kind: 'add', column: motion.column, range: [from + 1, last], amount: -way },
    );
    return [to - from > 1 ? [cut, shift] : [shift]];
  });
  return repairedBy(record, [...ahead, ...slips].flat());
}

/**
 * Slips of the piece in the grips taken out of the motion: the excursion is left out and what follows is moved back by the way that was lost.
 *
 * $$ \Delta x = x_{back} - x_{peak} - \frac{F_{back} - F_{peak}}{k} $$
 *
 * @remarks
 * A slip is a sudden fall of the force that comes back along the elastic line (slope $k$) farther on, not in a pause of the hand and not by a drive that
 * went back; what an extensometer alone reads beyond yielding is strain, and left. Samples from the fall to where the force is reached again are left out, so the
 * record is shorter. Forces are not touched; extensions beyond a slip stay in doubt.
 *
 * @param record - `force` [N] and the other columns as logged.
 * @returns New columns and the trail.
 * @throws {@link InputError} `missing`, `not-finite`, `out-of-range`, `unequal-lengths`.
 *
 * @example
 * ```ts
 * const travel = Array.from({ length: 200 }, (_, i) => 0.01 * i);
 * const force = travel.map((x) => 10000 * (x < 1 ? x : x - 0.2));
 * const { record } = joinSlips({ force, travel });
 * record.travel?.[record.force.length - 1]; // => 1.79
 * ```
 *
 * @see Common practice. Checked in `test/record/repairs.test.ts`.
 */
export function joinSlips(record: TensionColumns): Repaired {
  return joinSlipsKernel(ownColumns('joinSlips', record));
}
