import type { TensionResult } from '../src/index.js';
import { withValue, withWindow, type AssumptionKey, type Assumptions } from './assumptions.js';

const isWindow = (key: AssumptionKey): key is 'windowFirst' | 'windowLast' => key === 'windowFirst' || key === 'windowLast';

/** Limits of the window that a result has, as samples or stresses. */
function limitsOf({ limits }: Assumptions, result: TensionResult | undefined): readonly [number, number] | undefined {
  const found = result?.modulusWindow;
  return found && (limits === 'samples' ? [found.first, found.last] : found.stressLimits);
}

/** One value changed; of a window that was searched the other limit is held. */
export function changed(
  assumptions: Assumptions,
  key: AssumptionKey,
  value: number | undefined,
  result: TensionResult | undefined,
): Assumptions {
  if (!isWindow(key)) return withValue(assumptions, key, value);
  const found = limitsOf(assumptions, result);
  const { windowFirst = found?.[0], windowLast = found?.[1] } = assumptions.values;
  const [first, last] = key === 'windowFirst' ? [value, windowLast] : [windowFirst, value];
  return withWindow(assumptions, first === undefined || last === undefined ? undefined : [first, last]);
}

/** One value as it began; a window that began with a search is searched again. */
export function putBack(assumptions: Assumptions, basis: Assumptions, key: AssumptionKey): Assumptions {
  const before = basis.values[key];
  return isWindow(key) && before === undefined ? withWindow(assumptions, undefined) : withValue(assumptions, key, before);
}

/** Another shape of the section; sizes that are not given begin with the diameter. */
export function shaped(assumptions: Assumptions, shape: Assumptions['shape']): Assumptions {
  const { diameter = 10, width = diameter, thickness = diameter } = assumptions.values;
  return { ...assumptions, shape, values: { ...assumptions.values, diameter, width, thickness } };
}

/** The limits of a given window in another unit: the window stays where it is. */
export function limitedBy(assumptions: Assumptions, limits: Assumptions['limits'], result: TensionResult | undefined): Assumptions {
  const given = assumptions.values.windowFirst !== undefined;
  return { ...withWindow(assumptions, given ? limitsOf({ ...assumptions, limits }, result) : undefined), limits };
}
