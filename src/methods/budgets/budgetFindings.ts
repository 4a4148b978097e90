import { finding, type Finding } from '../../base/index.js';
import { NOISE } from './noiseScatter.js';
import type { TensionBudgets } from './statedResult.js';

/** A budget's doubt about itself. */
interface Doubt {
  readonly symbol: string;
  readonly cause: string;
  /** How much it weighs beside others of the same cause. */
  readonly weight: number;
}

/** Doubts by their cause: all symbols, and the one that it weighs most with. */
function byCause(doubts: readonly Doubt[]) {
  const causes = [...new Set(doubts.map(({ cause }) => cause))];
  return causes.map((cause) => {
    const of = doubts.filter((one) => one.cause === cause);
    const worst = of.reduce((most, one) => (one.weight > most.weight ? one : most));
    return { cause, symbols: of.map(({ symbol }) => symbol).join(', '), worst };
  });
}

/**
 * @internal What the budgets of a test say against themselves, one finding for each cause, at the field of the quantity that it weighs most with. Remarks on what
 * dominates stay with the budgets: the force dominates in most.
 */
export function budgetFindings({ budgets, undetermined }: TensionBudgets, fields: ReadonlyMap<string, string>): Finding[] {
  const at = (symbol: string) => ({ field: fields.get(symbol) ?? 'uncertainty' });
  const missed = Object.entries(undetermined).flatMap(([symbol, inputs]) => inputs.map((cause) => ({ symbol, cause, weight: 0 })));
  const [large, bent, few] = ['uncertainty-large', 'budget-not-linear', 'few-degrees-of-freedom'].map((code) =>
    Object.entries(budgets).flatMap(([symbol, { findings, degreesOfFreedom = Infinity }]) =>
      findings
        .filter((one) => one.code === code)
        .map(({ values: { input, share } }) =>
          input === undefined ? { symbol, cause: '', weight: -degreesOfFreedom } : { symbol, cause: String(input), weight: Number(share) },
        ),
    ),
  ) as [Doubt[], Doubt[], Doubt[]];
  return [
    ...byCause(large).map(({ cause, worst }) => finding('uncertainty-large', { input: cause, share: worst.weight })),
    ...byCause(missed).map(({ cause, symbols, worst }) =>
      cause === NOISE
        ? finding('noise-decides', { symbols }, at(worst.symbol))
        : finding('uncertainty-not-determined', { input: cause, symbols }, at(worst.symbol)),
    ),
    ...byCause(bent).map(({ cause, symbols, worst }) =>
      finding('budgets-not-linear', { input: cause, symbols, share: worst.weight }, at(worst.symbol)),
    ),
    ...byCause(few).map(({ symbols, worst }) =>
      finding('budgets-of-few-degrees-of-freedom', { symbols, freedom: -worst.weight }, at(worst.symbol)),
    ),
  ];
}
