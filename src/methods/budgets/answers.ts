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
 * is a derivative. What leaps however small the step (a sample was chosen otherwise) keeps its first answer; what no step gives on both sides has none. The bend is the
 * least that a step tells, as over one standard uncertainty: a curve bends in every step, while a leap in a narrow one would count by the square of how narrow it is.
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
      // none, or so far out that the curve of a meeting has no stress there
      if (a === undefined || b === undefined || !Number.isFinite(a - b)) continue;
      const [change, bend] = [(a - b) / 2, (a + b) / 2 - c];
      const nothing = NOTHING * Math.abs(c);
      const straight = Math.abs(bend) <= Math.max(STRAIGHT * Math.abs(change), nothing);
      const before = found.get(symbol);
      const over = bend / share ** 2;
      const least = before && Math.abs(before.bend) < Math.abs(over) ? before.bend : over;
      found.set(symbol, { slope: straight || !before ? change / (share * u) : before.slope, bend: least });
      if (straight) open.delete(symbol);
    }
  }
  return found;
}
