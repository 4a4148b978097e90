import type { TensionRecord } from '../base/index.js';
import { maximumIndex } from '../numeric/index.js';

type Change = (value: number, i: number) => number;

/** @internal A record with some columns changed, sample by sample. */
export const changed = (record: TensionRecord, changes: Partial<Record<keyof TensionRecord, Change>>): TensionRecord => ({
  ...record,
  ...Object.fromEntries(
    Object.entries(changes).flatMap(([name, change]) => {
      const column = record[name as keyof TensionRecord];
      return column ? [[name, column.map((value, i) => change(value, i))]] : [];
    }),
  ),
});

/** @internal A record whose samples are some of those of another: left out, cut, repeated. */
export const picked = (record: TensionRecord, samples: readonly number[]): TensionRecord =>
  Object.fromEntries(
    Object.entries(record).map(([name, column]) => [name, Float64Array.from(samples, (i) => (column as Float64Array)[i]!)]),
  ) as unknown as TensionRecord;

/** @internal First sample on the way up that reaches a share of the highest force. */
export function sampleAt({ force }: TensionRecord, share: number): number {
  const top = maximumIndex(force);
  let i = top;
  while (i > 0 && force[i - 1]! >= share * force[top]!) i -= 1;
  return i;
}

/** Value of a column at a place between samples, by the motion that leads to it. */
function valueAt(motion: Float64Array, column: Float64Array, x: number, from: number): number {
  let i = from;
  while (i > 0 && motion[i]! > x) i -= 1;
  const [a, b] = [motion[i]!, motion[i + 1] ?? motion[i]!];
  const share = b > a ? Math.min(1, Math.max(0, (x - a) / (b - a))) : 0;
  return column[i]! + share * ((column[i + 1] ?? column[i]!) - column[i]!);
}

/** @internal The piece slips in the grips at a sample: from there on it is where the crosshead was so much earlier. */
export function slipped(record: TensionRecord, at: number, way: number): TensionRecord {
  const { travel, force } = record;
  if (!travel) return record;
  const last = lastLoaded(force);
  const before = (column: Float64Array): Float64Array =>
    column.map((value, i) => (i < at || i > last ? value : valueAt(travel, column, travel[i]! - way, i)));
  return {
    ...record,
    force: before(force),
    ...(record.extension ? { extension: before(record.extension) } : {}),
  };
}

function lastLoaded(force: Float64Array): number {
  let i = force.length - 1;
  while (i > 0 && force[i]! < 0.02 * force[maximumIndex(force)]!) i -= 1;
  return i;
}

/** @internal The drive goes back at a sample by so much and forth again, the force with it along the stiffness. */
export function reversed(record: TensionRecord, at: number, way: number, stiffness: number): TensionRecord {
  const { travel, force, time } = record;
  if (!travel || !time) return record;
  const pace = Math.max((travel[at]! - travel[at - 20]!) / 20, way / 200);
  const steps = Math.max(4, Math.round(way / pace));
  const dt = time[at]! - time[at - 1]!;
  // back and forth: a triangle
  const excursion = Array.from({ length: 2 * steps }, (_, k) => (way * (steps - Math.abs(k + 1 - steps))) / steps);
  const put = (column: Float64Array, part: (back: number, k: number) => number, later = 0): Float64Array =>
    Float64Array.from([
      ...column.subarray(0, at + 1),
      ...excursion.map((back, k) => part(back, k)),
      ...column.subarray(at + 1).map((value) => value + later),
    ]);
  const others = record.extension ? { extension: put(record.extension, (back) => record.extension![at]! - 0.2 * back) } : {};
  return {
    force: put(force, (back) => Math.max(0, force[at]! - back * stiffness)),
    travel: put(travel, (back) => travel[at]! - back),
    ...others,
    time: put(time, (_, k) => time[at]! + (k + 1) * dt, excursion.length * dt),
  };
}

/** @internal One record after another, with seconds of nothing between: two tests in one file. */
export function inOneFile(a: TensionRecord, b: TensionRecord, seconds: number): TensionRecord {
  const last = (column: Float64Array | undefined): number => column?.[column.length - 1] ?? 0;
  const dt = a.time ? a.time[1]! - a.time[0]! : 0.05;
  const between = Math.round(seconds / dt);
  const joined = (name: keyof TensionRecord, rest: number, offset: number): Float64Array =>
    Float64Array.from([
      ...a[name]!,
      ...Array.from({ length: between }, (_, k) => (name === 'time' ? last(a.time) + (k + 1) * dt : rest)),
      ...b[name]!.map((value) => value + offset),
    ]);
  return {
    force: joined('force', 0, 0),
    travel: joined('travel', 0, 0),
    ...(a.time && b.time ? { time: joined('time', 0, last(a.time) + (between + 1) * dt) } : {}),
  };
}
