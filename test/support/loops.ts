/** A record of named columns. */
type Columns = Readonly<Record<string, ArrayLike<number>>>;

/** A loop that is put in: how far the force has come there, to which share of it the piece is let go, and over how many samples each way. */
export interface PutLoop {
  readonly force: number;
  readonly to: number;
  readonly samples?: number;
  /** First sample that is asked for its force; default 0. */
  readonly from?: number;
}

/**
 * A record with unloading loops put in on its way up, each along elastic lines: motions go back by so much for each newton (`ways`); the time goes on.
 * Every sample of the record is still there.
 */
export function withLoops<Record extends object>(
  record: Record,
  loops: readonly PutLoop[],
  ways: Readonly<{ [column: string]: number }>,
): Record {
  const columns = Object.fromEntries(Object.entries(record).filter(([, column]) => column !== undefined)) as Columns;
  const { force, time } = columns;
  const dt = time ? time[1]! - time[0]! : 0;
  const own: { [column: string]: number[] } = Object.fromEntries(Object.keys(columns).map((name) => [name, []]));
  let later = 0;
  let next = 0;
  for (let i = 0; i < force!.length; i += 1) {
    for (const [name, column] of Object.entries(columns)) own[name]!.push(column[i]! + (name === 'time' ? later : 0));
    const loop = loops[next];
    if (!loop || i < (loop.from ?? 0) || force![i]! < loop.force) continue;
    next += 1;
    const { samples = 30 } = loop;
    for (let k = 1; k < 2 * samples; k += 1) {
      const fall = (1 - loop.to) * force![i]! * (1 - Math.abs(k - samples) / samples);
      later += dt;
      for (const [name, column] of Object.entries(columns))
        own[name]!.push(name === 'force' ? column[i]! - fall : name === 'time' ? column[i]! + later : column[i]! - ways[name]! * fall);
    }
  }
  return Object.fromEntries(Object.entries(own).map(([name, column]) => [name, Float64Array.from(column)])) as Record;
}
