import type { Quantity } from '../../base/index.js';
import type { UncertaintyBudget } from '../../uncertainty/index.js';

const isObject = (one: unknown): one is object => typeof one === 'object' && one !== null;
const isQuantity = (one: unknown): one is Quantity => isObject(one) && 'symbol' in one && 'unit' in one && 'source' in one;

/** @internal The quantities of a result, wherever they stand in it: as a field, in a list, in a law. */
export function quantitiesOf(result: object): readonly Quantity[] {
  const found: Quantity[] = [];
  for (const one of Object.values(result) as unknown[]) {
    if (isQuantity(one)) found.push(one);
    else if (isObject(one) && (Array.isArray(one) || 'law' in one))
      for (const inner of Object.values(one) as unknown[]) if (isQuantity(inner)) found.push(inner);
  }
  return found;
}

/** @internal The same result with the standard uncertainty, and its degrees of freedom, of every quantity that has a budget. */
export function statedResult<T extends object>(result: T, budgets: Readonly<Record<string, UncertaintyBudget>>): T {
  const stated = (one: unknown): unknown => {
    if (isQuantity(one)) {
      const budget = budgets[one.symbol];
      if (!budget) return one;
      const { standardUncertainty, degreesOfFreedom } = budget;
      return { ...one, standardUncertainty, ...(degreesOfFreedom === undefined ? {} : { degreesOfFreedom }) };
    }
    if (Array.isArray(one)) return one.map(stated);
    return isObject(one) && 'law' in one ? Object.fromEntries(Object.entries(one).map(([name, inner]) => [name, stated(inner)])) : one;
  };
  return Object.fromEntries(Object.entries(result).map(([name, one]) => [name, stated(one)])) as T;
}
