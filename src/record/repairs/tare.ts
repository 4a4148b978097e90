import {
  InputError,
  requireBetween,
  requireColumn,
  requireFinite,
  requireObject,
  requireOptions,
  requirePair,
  type TensionColumns,
  type TensionRecord,
  shownList,
} from '../../base/index.js';

/** Options of {@link tare}: the zero, or where it is to be read. */
export interface TareOptions {
  /** Zero of the force [N]; default the mean over `samples`. */
  readonly force?: number | undefined;
  /** First and last sample before loading, both included. */
  readonly samples?: readonly [number, number] | undefined;
}

/** A record less its zero. */
export interface TareResult {
  /** The columns, with the zero taken off the force. */
  readonly record: TensionRecord;
  /** The zero that was taken off [N]. */
  readonly tareForce: number;
}

/**
 * Takes the zero of the force off a record, once.
 *
 * $$ F = F_{read} - F_0 $$
 *
 * @remarks
 * Zero belongs to the load train with the piece held at one end only. Say which samples were recorded so, or give the zero as a number.
 *
 * @param record - Columns with `force` [N].
 * @param options - `force` [N], or `samples` before loading; one of the two.
 * @returns New columns and the zero [N]; the input is left as it is.
 * @throws {@link InputError} `missing`, `not-finite`, `unequal-lengths`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * tare({ force: [60, 62, 1061], travel: [0, 0, 1] }, { samples: [0, 1] }).record.force; // => [-1, 1, 1000]
 * ```
 *
 * @see ISO 6892-1:2019, setting the force zero point. Checked in `test/record/record.test.ts`.
 */
export function tare(record: TensionColumns, options: TareOptions): TareResult {
  const from = 'tare';
  requireObject(from, 'record', record);
  const force = requireColumn(from, 'record.force', record.force);
  requireOptions(from, options, ['force', 'samples']);
  let zero: number;
  if (options.force !== undefined) zero = requireFinite(from, 'options.force', options.force);
  else if (options.samples !== undefined) {
    const [first, last] = requirePair(from, 'options.samples', options.samples);
    requireBetween(from, 'options.samples[0]', first, 0, force.length - 1);
    requireBetween(from, 'options.samples[1]', last, first, force.length - 1);
    if (!Number.isInteger(first) || !Number.isInteger(last))
      throw new InputError(
        from,
        'options.samples',
        'out-of-range',
        'must be numbers of samples',
        options.samples,
        shownList(options.samples),
      );
    let sum = 0;
    for (let i = first; i <= last; i += 1) sum += force[i]!;
    zero = sum / (last - first + 1);
  } else throw new InputError(from, 'options', 'missing', 'must give force or samples', options);
  const others = Object.entries(record).flatMap(([name, column]: [string, ArrayLike<number> | undefined]) => {
    if (name === 'force' || column === undefined) return [];
    const endsEarly = name !== 'travel' && name !== 'time';
    return [[name, Float64Array.from(requireColumn(from, `record.${name}`, column, { length: force.length, endsEarly }))] as const];
  });
  return { record: { force: force.map((F) => F - zero), ...Object.fromEntries(others) }, tareForce: zero };
}
