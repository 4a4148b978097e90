import { InputError, requireOneOf, type TensionColumns } from '../base/index.js';
import { ownColumns, repairedBy, type Repaired } from './repaired.js';

const reversible = ['force', 'travel', 'extension', 'strain'] as const;

/**
 * Columns whose sign is the other way, turned.
 *
 * $$ x_i \leftarrow -x_i $$
 *
 * @param record - `force` [N] and the other columns as logged.
 * @param columns - Which are turned: `force`, `travel`, `extension`, `strain`.
 * @returns New columns and the trail.
 * @throws {@link InputError} `missing`, `not-finite`, `unequal-lengths`, `out-of-range`.
 *
 * @example
 * ```ts
 * reverseSign({ force: [0, -10, -20], travel: [0, 1, 2] }, ['force']).record.force[2]; // => 20
 * ```
 *
 * @see Common practice: pull counts as positive. Checked in `test/record/repairs.test.ts`.
 */
export function reverseSign(record: TensionColumns, columns: readonly (typeof reversible)[number][]): Repaired {
  const from = 'reverseSign';
  const own = ownColumns(from, record);
  if (!Array.isArray(columns)) throw new InputError(from, 'columns', 'wrong-type', 'must be a list of columns', columns);
  const trail = columns.map((name, k) => {
    const column = requireOneOf(from, `columns[${k}]`, name, reversible);
    if (!own[column]) throw new InputError(from, `columns[${k}]`, 'missing', 'must name a column of the record', column);
    return { step: `sign of ${column} turned`, values: { factor: -1 }, change: { kind: 'multiply', column, factor: -1 } as const };
  });
  return repairedBy(own, trail);
}
