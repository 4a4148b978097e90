import { InputError, requireColumn, requireFinite, requireOptions, type PressureColumns, type TensionRecord } from '../base/index.js';
import { betweenPoints } from '../numeric/index.js';
import { pistonAreaOf, efficiencyOf, type Cylinder } from './pistonArea.js';

/** The pull that a spring-return cylinder keeps back, growing with travel. */
export interface TareTable {
  /** Travel [mm], ascending. */
  readonly travel: ArrayLike<number>;
  /** Force kept back there [N]. */
  readonly force: ArrayLike<number>;
}

/** How pressure becomes force. */
export interface HydraulicChain extends Cylinder {
  /** Efficiency η: force over pressure times area, above 0, at most 1; default 1. */
  readonly efficiency?: number | undefined;
  /** Force to take off [N]: a number, or a table over travel for a spring-return cylinder; default 0. */
  readonly tareForce?: number | TareTable | undefined;
}

const FROM = 'pressureToForce';

const isColumns = (given: unknown): given is PressureColumns => typeof given === 'object' && given !== null && 'pressure' in given;

/** A checked tare table. */
interface CheckedTare {
  readonly x: Float64Array;
  readonly y: Float64Array;
}

function requireTable(from: string, table: TareTable, at: string): CheckedTare {
  requireOptions(from, table, ['travel', 'force'], `${at}tareForce`);
  const x = requireColumn(from, `${at}tareForce.travel`, table.travel, { least: 2 });
  const y = requireColumn(from, `${at}tareForce.force`, table.force, { length: x.length });
  for (let k = 1; k < x.length; k += 1)
    if (x[k]! <= x[k - 1]!)
      throw new InputError(from, `${at}tareForce.travel[${k}]`, 'not-increasing', 'must be above the one before', x[k]);
  return { x, y };
}

/** @internal Checks how pressure becomes force, named `chain` at a path: the force that each MPa makes [N], and what is taken off. */
export function requireHydraulicChain(
  from: string,
  chain: HydraulicChain,
  path = '',
): { readonly perPressure: number; readonly tare: number | CheckedTare } {
  requireOptions(from, chain, ['bore', 'rod', 'efficiency', 'tareForce'], path || 'chain');
  const at = path && `${path}.`;
  const { tareForce = 0 } = chain;
  return {
    perPressure: efficiencyOf(from, chain.efficiency, at) * pistonAreaOf(from, chain, at),
    tare: typeof tareForce === 'object' ? requireTable(from, tareForce, at) : requireFinite(from, `${at}tareForce`, tareForce),
  };
}

/** Interpolates a tare table at each travel; it does not extrapolate beyond the ends. */
function tareOver({ x, y }: CheckedTare, travel: Float64Array): Float64Array {
  return travel.map((at, i) => {
    if (at < x[0]! || at > x[x.length - 1]!)
      throw new InputError(FROM, `travel[${i}]`, 'out-of-range', `must lie within tareForce.travel (${x[0]!} to ${x[x.length - 1]!})`, at);
    return betweenPoints(x, y, at);
  });
}

/**
 * Force from oil pressure.
 *
 * $$ F = \eta\, p\, A - F_{tare} $$
 *
 * @remarks
 * From nominal bore and efficiency alone no verification class follows: calibrate against a reference instrument where a class is
 * claimed. A tare is subtracted only where it is given. With a record the other columns are kept.
 *
 * @param pressure - Pressure [MPa]: a number, an array, or a record with a `pressure` column.
 * @param chain - `bore` [mm]; `rod` [mm] means that the annulus pulls; `efficiency`; `tareForce` [N] or its table over travel.
 * @returns Force [N]: a number, an array, or the record with `force` in place of `pressure`.
 * @throws {@link InputError} `missing`, `not-finite`, `not-positive`, `out-of-range`, `unequal-lengths`, `not-increasing`, `unknown-option`.
 *
 * @example
 * ```ts
 * pressureToForce(8, { bore: 40, efficiency: 0.97, tareForce: 60 }); // => 9691.50
 * pressureToForce([0, 10], { bore: 40, rod: 20 }); // => [0, 9424.78]
 * ```
 *
 * @see Pascal's law. Checked in `test/handbook/hydraulics.test.ts`.
 */
export function pressureToForce(pressure: number, chain: HydraulicChain): number;
export function pressureToForce(pressure: ArrayLike<number>, chain: HydraulicChain): Float64Array;
export function pressureToForce(record: PressureColumns, chain: HydraulicChain): TensionRecord;
export function pressureToForce(
  given: number | ArrayLike<number> | PressureColumns,
  chain: HydraulicChain,
): number | Float64Array | TensionRecord {
  const { perPressure, tare } = requireHydraulicChain(FROM, chain);
  if (typeof given === 'number') {
    if (typeof tare !== 'number')
      throw new InputError(FROM, 'tareForce', 'wrong-type', 'must be a number where there is no travel', chain.tareForce);
    return requireFinite(FROM, 'pressure', given) * perPressure - tare;
  }
  const isRecord = isColumns(given);
  const column = requireColumn(FROM, isRecord ? 'record.pressure' : 'pressure', isRecord ? given.pressure : given);
  const others = Object.entries(isRecord ? given : {}).flatMap(([name, one]: [string, ArrayLike<number> | undefined]) => {
    if (name === 'pressure' || one === undefined) return [];
    const endsEarly = name !== 'travel' && name !== 'time';
    return [[name, Float64Array.from(requireColumn(FROM, `record.${name}`, one, { length: column.length, endsEarly }))] as const];
  });
  const kept = Object.fromEntries(others) as Omit<TensionRecord, 'force'>;
  let force: Float64Array;
  if (typeof tare === 'number') force = column.map((p) => p * perPressure - tare);
  else {
    if (!kept.travel) throw new InputError(FROM, 'record.travel', 'missing', 'must be there for a tare over travel', undefined);
    const zero = tareOver(tare, kept.travel);
    force = column.map((p, i) => p * perPressure - zero[i]!);
  }
  return isRecord ? { ...kept, force } : force;
}
