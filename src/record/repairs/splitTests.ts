import { maximumIndex } from '../../numeric/index.js';
import { requireWhole, trailStep, type TensionColumns } from '../../base/index.js';
import { ownColumns, repairedBy, type Repaired } from './repaired.js';
import { testSegments } from '../survey/segments.js';

/**
 * The tests that one file holds, each as a record of its own.
 *
 * @remarks
 * A test rises above 30 % of the highest force of the file and ends where the force stays below 2 % of it for more than a second (twenty samples without a
 * clock), where the clock starts anew, or, without a clock, where the names of the columns stand again. Each part keeps what stands before and after it; time goes on counting. A file with one test gives that test, unchanged.
 *
 * @param record - `force` [N] and the other columns as logged.
 * @param headings - Rows of the record before which the names of the columns stand again: `reading.headings` of {@link readRecord}.
 * @returns A record and its trail for each test, in order.
 * @throws {@link InputError} `missing`, `not-finite`, `out-of-range`, `unequal-lengths`.
 *
 * @example
 * ```ts
 * const pull = [...Array.from({ length: 40 }, (_, i) => 100 * i), ...Array.from({ length: 30 }, () => 0)];
 * const raw = { force: [...pull, ...pull], travel: [...pull, ...pull].map((_, i) => 0.01 * i) };
 * splitTests(raw).length; // => 2
 * ```
 *
 * @see Common practice. Checked in `test/record/repairs.test.ts`.
 */
export function splitTests(record: TensionColumns, headings: readonly number[] = []): Repaired[] {
  const own = ownColumns('splitTests', record);
  headings.forEach((one, k) => requireWhole('splitTests', `headings[${k}]`, one, 0));
  const highest = own.force[maximumIndex(own.force)]!;
  const parts = testSegments(own.force, highest, own.time, headings);
  if (parts.length < 2) return [{ record: own, trail: [] }];
  return parts.map(([first, last], k) =>
    repairedBy(own, [
      trailStep(
        'one-test-taken',
        { test: k + 1, of: parts.length, fromSample: first, toSample: last },
        { kind: 'keep', ranges: [[first, last]] },
      ),
    ]),
  );
}
