import type { TensionResult } from '../src/index.js';
import { rowOf, valueText } from './assumptionRow.js';
import type { AssumptionKey, Assumptions } from './assumptions.js';
import type { Effect } from './effects.js';
import { change } from './format.js';
import { properties, symbolsOf } from './values.js';
import { fill, words } from './words.js';

/** What a change has done, for those who do not see the table. */
export function effectSentence(key: AssumptionKey, { changed }: Effect, assumptions: Assumptions, result: TensionResult): string {
  const symbols = symbolsOf(result);
  const moved = properties.flatMap((property) => {
    const by = changed?.[property];
    return by === undefined || change(by) === '0' ? [] : [fill(words.assumptions.one, { symbol: symbols[property], change: change(by) })];
  });
  const values = {
    name: words.assumptions.names[key],
    value: valueText(rowOf(key, assumptions), assumptions.values[key]),
    effects: moved.join(', '),
  };
  return fill(moved.length > 0 ? words.assumptions.effect : words.assumptions.noEffect, values);
}
