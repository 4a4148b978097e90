import * as base from '../base/index.js';
import * as curve from '../curve/index.js';
import * as force from '../force/index.js';
import * as geometry from '../geometry/index.js';
import * as hardening from '../hardening/index.js';
import * as materials from '../materials/index.js';
import * as methods from '../methods/index.js';
import * as piece from '../piece/index.js';
import * as planning from '../planning/index.js';
import * as record from '../record/index.js';
import * as statistics from '../statistics/index.js';
import * as uncertainty from '../uncertainty/index.js';
import * as units from '../units/index.js';
import type { VectorCall } from './CheckVector.js';

const { InputError, requireArray, requireObject, requireOptions } = base;
const FUNCTION = 'runVectors';
const floors: readonly object[] = [
  base,
  units,
  geometry,
  piece,
  force,
  record,
  curve,
  hardening,
  materials,
  uncertainty,
  statistics,
  methods,
  planning,
];

/** @internal Why a call has no value. */
export interface Missing {
  readonly withoutValue: string;
}

export const isMissing = (value: unknown): value is Missing => typeof value === 'object' && value !== null && 'withoutValue' in value;

/** The public function of a name. */
function functionNamed(path: string, name: unknown): (...args: unknown[]) => unknown {
  const floor = typeof name === 'string' ? floors.find((one) => Object.hasOwn(one, name)) : undefined;
  const found = floor?.[name as keyof typeof floor] as unknown;
  if (typeof found !== 'function') throw new InputError(FUNCTION, path, 'out-of-range', 'must be a function of the library', name);
  return found as (...args: unknown[]) => unknown;
}

/** @internal What stands at a place of a result. */
export function valueAt(result: unknown, at: string | undefined): unknown {
  let value = result;
  for (const key of at === undefined ? [] : at.split('.')) {
    if (typeof value !== 'object' || value === null || !Object.hasOwn(value, key)) return undefined;
    value = value[key as keyof typeof value];
  }
  return value;
}

const isCall = (value: object): value is VectorCall => Object.hasOwn(value, 'function') && Object.hasOwn(value, 'arguments');

/** An argument with the calls inside it made. */
function argument(path: string, value: unknown): unknown {
  if (typeof value === 'string' || typeof value === 'boolean' || (typeof value === 'number' && Number.isFinite(value))) return value;
  if (Array.isArray(value)) {
    const list = value.map((one, i) => argument(`${path}[${i}]`, one));
    return list.find(isMissing) ?? list;
  }
  if (typeof value !== 'object' || value === null) {
    const code = typeof value === 'number' ? 'not-finite' : 'wrong-type';
    throw new InputError(FUNCTION, path, code, 'must be plain data: finite numbers, words, lists, objects', value);
  }
  if (isCall(value)) {
    requireOptions(FUNCTION, value, ['function', 'arguments', 'at'], path);
    return runCall(path, value);
  }
  const entries = Object.entries(value).map(([key, one]) => [key, argument(`${path}.${key}`, one)] as const);
  return entries.map(([, one]) => one).find(isMissing) ?? Object.fromEntries(entries);
}

/** @internal Makes a call, or says why it gave nothing; what is no call at all is refused. */
export function runCall(path: string, call: VectorCall): unknown {
  requireObject(FUNCTION, path, call);
  const { at, arguments: given } = call;
  const run = functionNamed(`${path}.function`, call.function);
  if (at !== undefined && typeof at !== 'string')
    throw new InputError(FUNCTION, `${path}.at`, 'wrong-type', 'must be names and indices with points between', at);
  const args = requireArray(FUNCTION, `${path}.arguments`, given).map((one, i) => argument(`${path}.arguments[${i}]`, one));
  const missing = args.find(isMissing);
  if (missing) return missing;
  try {
    const result = run(...args);
    const failed = valueAt(result, 'ok') === false;
    const value = failed ? undefined : valueAt(result, at);
    const problem = failed ? String(valueAt(result, 'message')) : `${call.function} gives nothing at ${at ?? 'its result'}`;
    return value ?? { withoutValue: problem };
  } catch (reason) {
    return { withoutValue: reason instanceof Error ? reason.message : String(reason) };
  }
}
