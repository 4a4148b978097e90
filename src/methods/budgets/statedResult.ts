import type { Quantity } from '../../base/index.js';
import type { UncertaintyBudget } from '../../uncertainty/index.js';

/** @internal Budgets by symbol, and by symbol the inputs that a quantity has no sensitivity to be had for: its uncertainty is not determinable. */
export interface TensionBudgets {
  readonly budgets: Readonly<Record<string, UncertaintyBudget>>;
  readonly undetermined: Readonly<Record<string, readonly string[]>>;
}

const isObject = (one: unknown): one is object => typeof one === 'object' && one !== null;
const isQuantity = (one: unknown): one is Quantity => isObject(one) && 'symbol' in one && 'unit' in one && 'source' in one;

const without = (one: Quantity): Quantity => {
  const { standardUncertainty, ...rest } = one;
  return standardUncertainty === undefined ? one : rest;
};

/** The quantities of a result with their fields, wherever they stand in it: as a field, in a list, in a law. */
function fieldsOf(result: object): readonly (readonly [field: string, one: Quantity])[] {
  const found: (readonly [string, Quantity])[] = [];
  for (const [field, one] of Object.entries(result) as [string, unknown][]) {
    if (isQuantity(one)) found.push([field, one]);
    else if (isObject(one) && (Array.isArray(one) || 'law' in one))
      for (const inner of Object.values(one) as unknown[]) if (isQuantity(inner)) found.push([field, inner]);
  }
  return found;
}

/** @internal The quantities of a result. */
export const quantitiesOf = (result: object): readonly Quantity[] => fieldsOf(result).map(([, one]) => one);

/** @internal The field of each quantity of a result, by symbol. */
export const fieldsBySymbol = (result: object): ReadonlyMap<string, string> =>
  new Map(fieldsOf(result).map(([field, { symbol }]) => [symbol, field]));

/** @internal The same result with the standard uncertainty, and its degrees of freedom, of every quantity that has a budget, and none of one whose uncertainty is not determinable. */
export function statedResult<T extends object>(result: T, { budgets, undetermined }: TensionBudgets): T {
  const stated = (one: unknown): unknown => {
    if (isQuantity(one)) {
      const budget = budgets[one.symbol];
      if (!budget) return one.symbol in undetermined ? without(one) : one;
      const { standardUncertainty, degreesOfFreedom } = budget;
      return { ...one, standardUncertainty, ...(degreesOfFreedom === undefined ? {} : { degreesOfFreedom }) };
    }
    if (Array.isArray(one)) return one.map(stated);
    return isObject(one) && 'law' in one ? Object.fromEntries(Object.entries(one).map(([name, inner]) => [name, stated(inner)])) : one;
  };
  return Object.fromEntries(Object.entries(result).map(([name, one]) => [name, stated(one)])) as T;
}
