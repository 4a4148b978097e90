import type { Quantity } from '../../base/index.js';

/** @internal A quantity of a result and the field that holds it, such as `hardening.exponent` or `indentations[0].depth`. */
export interface PlacedQuantity {
  readonly field: string;
  readonly quantity: Quantity;
}

/** What is no determined quantity, or repeats one. */
const aside = ['test', 'findings', 'trail', 'provenance', 'uncertainty'];

const isObject = (one: unknown): one is object => typeof one === 'object' && one !== null && !ArrayBuffer.isView(one);
const isQuantity = (one: object): one is Quantity =>
  'symbol' in one && typeof one.symbol === 'string' && 'value' in one && typeof one.value === 'number' && 'unit' in one;

/** @internal The quantities of a result of any method, in its order. */
export function resultQuantities(result: object): PlacedQuantity[] {
  const found: PlacedQuantity[] = [];
  const walk = (one: unknown, field: string): void => {
    if (!isObject(one)) return;
    if (Array.isArray(one))
      // quantities of a list are told apart by their symbols, Rp0.1 from Rp0.2; others by their place
      one.forEach((item: unknown, k) => {
        walk(item, isObject(item) && isQuantity(item) ? field : `${field}[${k}]`);
      });
    else if (isQuantity(one)) found.push({ field, quantity: one });
    else for (const [name, value] of Object.entries(one)) walk(value, field === '' ? name : `${field}.${name}`);
  };
  for (const [name, value] of Object.entries(result)) if (!aside.includes(name)) walk(value, name);
  return found;
}
