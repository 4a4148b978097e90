import { analyseTension, pressureToForce, type PressureRecord, type TensionRecord, type TensionResult } from '../src/index.js';
import { applies, optionsOf, pieceOf, rows, withValue, withWindow, type AssumptionKey, type Assumptions } from './assumptions.js';
import { changes, valuesOf, type Values } from './values.js';

/** A record as it was read. */
export type AnyRecord = TensionRecord | PressureRecord;

/** What an assumption does: relative changes of every property. */
export interface Effect {
  /** By the value as it stands, against the one it began with; absent where it is the same. */
  readonly changed?: Values | undefined;
  /** By a step of the value. */
  readonly stepped?: Values | undefined;
  /** The step, in the unit of the library. */
  readonly step?: number | undefined;
  /** Why a value cannot stand. */
  readonly refused?: string | undefined;
}

/** The test evaluated under assumptions. */
export function evaluate(record: AnyRecord, assumptions: Assumptions, invented: boolean): TensionResult {
  const { bore = NaN, rod } = assumptions.values;
  const loaded = 'pressure' in record ? pressureToForce(record, { bore, rod }) : record;
  const test = { ...(invented ? { invented: true } : {}) };
  return analyseTension(loaded, pieceOf(assumptions), { ...optionsOf(assumptions), test });
}

/** The same assumptions with the window held where it was found, so that a change is the assumption's own. */
function held(assumptions: Assumptions, { modulusWindow }: TensionResult): Assumptions {
  const { windowFirst, windowLast } = assumptions.values;
  if (!modulusWindow || (windowFirst !== undefined && windowLast !== undefined)) return assumptions;
  return withWindow({ ...assumptions, limits: 'samples' }, [modulusWindow.first, modulusWindow.last]);
}

const isWindow = (key: AssumptionKey): boolean => key === 'windowFirst' || key === 'windowLast';

/** The step of an assumption: a share of it, or of the window's width; whole samples. */
function stepOf(key: AssumptionKey, share: number, { limits, values }: Assumptions): number | undefined {
  const value = values[key];
  if (value === undefined) return undefined;
  if (!isWindow(key)) return share * value;
  const width = (values.windowLast ?? 0) - (values.windowFirst ?? 0);
  return limits === 'samples' ? Math.max(1, Math.round(share * width)) : share * width;
}

/** What one assumption does to every property. */
export function effectOf(
  record: AnyRecord,
  assumptions: Assumptions,
  basis: Assumptions,
  result: TensionResult,
  key: AssumptionKey,
  share: number,
): Effect {
  const now = valuesOf(result);
  const with_ = (changed: Assumptions): Values => valuesOf(evaluate(record, changed, false));
  const fixed = held(assumptions, result);
  const before = basis.values[key];
  const same = before === assumptions.values[key] && (!isWindow(key) || basis.limits === assumptions.limits);
  const back = isWindow(key) && before === undefined ? withWindow(assumptions, undefined) : withValue(fixed, key, before);
  const step = stepOf(key, share, fixed);
  try {
    return {
      ...(same ? {} : { changed: changes(with_(back), now) }),
      ...(step === undefined ? {} : { step, stepped: changes(now, with_(withValue(fixed, key, fixed.values[key]! + step))) }),
    };
  } catch (error) {
    return { refused: error instanceof Error ? error.message : String(error) };
  }
}

/** The rows that have a meaning here. */
export const rowsFor = (record: AnyRecord, assumptions: Assumptions) =>
  rows.filter(({ key }) => applies(key, assumptions, Object.keys(record)));
