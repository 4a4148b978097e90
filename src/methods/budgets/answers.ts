import type { CheckedInput } from '../../uncertainty/index.js';
import { NOTHING, type Values } from './noiseScatter.js';

/** @internal How a quantity answers to an input: its sensitivity, and the second-order part over one standard uncertainty. */
export interface Answer {
  readonly slope: number;
  readonly bend: number;
}

/** The step is halved so often at most: to a thousandth of the standard uncertainty. */
const HALVINGS = 10;
/** Where a step bends by more than this share of its change, it is too wide for a derivative: it may miss it by a hundredth. */
const STRAIGHT = 0.1;

/**
 * @internal How every quantity answers to an input, by what the test gives with it a step above and below its estimate. The step is one standard uncertainty. Where
 * a side then has no value, or the answer bends (a frame that takes nearly all of the motion), it is halved until that is over, since the Guide's coefficient
 * is a derivative. What leaps however small the step (a sample was chosen otherwise) keeps its first answer; what no step gives on both sides has none.
 */
export function answersTo(
  { value: estimate, standardUncertainty: u }: Pick<CheckedInput, 'value' | 'standardUncertainty'>,
  evaluate: (x: number) => Values,
  centre: Values,
): ReadonlyMap<string, Answer> {
  const found = new Map<string, Answer>();
  const open = new Set(centre.keys());
  for (let k = 0, share = 1; k <= HALVINGS && open.size > 0; k += 1, share /= 2) {
    const above = evaluate(estimate + share * u);
    const below = evaluate(estimate - share * u);
    for (const symbol of open) {
      const [a, b, c] = [above.get(symbol), below.get(symbol), centre.get(symbol)!];
      if (a === undefined || b === undefined) continue;
      const [change, bend] = [(a - b) / 2, (a + b) / 2 - c];
      const nothing = NOTHING * Math.abs(c);
      const straight = Math.abs(bend) <= Math.max(STRAIGHT * Math.abs(change), nothing);
      // both as they would be over one standard uncertainty
      if (straight || !found.has(symbol)) found.set(symbol, { slope: change / (share * u), bend: bend / share ** 2 });
      if (straight) open.delete(symbol);
    }
  }
  return found;
}
