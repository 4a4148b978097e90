import { LARGEST_READING, InputError, requireColumn, requireOptions } from '../../base/index.js';

/** Columns of a test of which force and travel are recorded, or force over time. */
export interface ForceColumns<A extends ArrayLike<number> = ArrayLike<number>> {
  /** Force [N], rising from about zero. */
  readonly force: A;
  /** Crosshead travel [mm]. */
  readonly travel?: A | undefined;
  /** Time [s]. */
  readonly time?: A | undefined;
}

/** The same columns as results hold them. */
export type ForceRecord = ForceColumns<Float64Array>;

/** @internal A checked copy of such columns; `needed` must be among them. */
export function requireForceColumns(
  from: string,
  path: string,
  record: ForceColumns,
  needed: readonly ('travel' | 'time')[] = [],
): ForceRecord {
  requireOptions(from, record, ['force', 'travel', 'time'], path);
  const force = requireColumn(from, `${path}.force`, record.force, { least: 2, largest: LARGEST_READING });
  const column = (name: 'travel' | 'time') => {
    const value = record[name];
    if (value === undefined && !needed.includes(name)) return {};
    return { [name]: requireColumn(from, `${path}.${name}`, value, { length: force.length, largest: LARGEST_READING }).slice() };
  };
  const own: ForceRecord = { force: force.slice(), ...column('travel'), ...column('time') };
  const { time } = own;
  if (time && needed.includes('time'))
    for (let i = 1; i < time.length; i += 1)
      if (time[i]! <= time[i - 1]!) throw new InputError(from, `${path}.time[${i}]`, 'not-increasing', 'must rise', time[i]);
  return own;
}
