import type { UncertaintyBudget } from '../../uncertainty/index.js';
import { writtenSymbol, type PageTable, type ShownQuantity } from './MethodPage.js';
import type { Presentation } from '../words/presentation.js';
import { sourceInWords } from '../words/sourceInWords.js';

type Line = UncertaintyBudget['lines'][number];

/** What must shrink, and to which share of itself, for the uncertainty to halve: the least change of all. */
function halvedBy({ lines }: UncertaintyBudget, show: Presentation): string {
  const [best] = lines.filter(({ toHalve }) => toHalve !== undefined).sort((a, b) => b.toHalve! - a.toHalve!);
  return best?.toHalve === undefined
    ? show.say('no source alone')
    : show.say('{source} to {share} of itself', { source: sourceInWords(best, show), share: show.percent(best.toHalve, 2) });
}

/** A share of the variance worth naming. */
const NAMED = 0.05;
/** A share that is not told more closely. */
const LEAST = 0.001;

/** Symbols whose budgets stand line by line. */
const inFull = /^(E|ReH|ReL|Rp[\d.]+|Rm|A|Z)$/;

/** @internal The budgets of a test: all beside each other, and line by line those of the properties that orders speak of. */
export function budgetTables(
  budgets: Readonly<Record<string, UncertaintyBudget>>,
  shown: readonly ShownQuantity[],
  show: Presentation,
): PageTable[] {
  const { say, number, percent, doubt, beside, freedom } = show;
  const known = shown.flatMap((one) => {
    const budget = budgets[one.quantity.symbol];
    if (!budget) return [];
    const other = show.unit(one.unit);
    return [{ symbol: one.quantity.symbol, written: writtenSymbol(one), budget, factor: one.factor * other.factor, unit: other.unit }];
  });
  const shareOf = (line: Line): string => `${sourceInWords(line, show)} ${percent(line.share, 2)}`;
  const all: PageTable = {
    caption: say(
      'Values to the digits of U; u: standard uncertainty; U = k u; ν: effective degrees of freedom; shares of the variance from 5 % on.',
    ),
    columns: [say('Symbol'), say('Value'), 'u', 'k', 'U', say('Unit'), 'ν', say('What dominates'), say('u would halve with')],
    kinds: ['short', 'number', 'number', 'number', 'number', 'short', 'number'],
    rows: known.map(({ written, budget, factor, unit }) => [
      written,
      beside(budget.value * factor, budget.expandedUncertainty * factor, 5),
      doubt(budget.standardUncertainty * factor),
      number(budget.coverageFactor, 3),
      doubt(budget.expandedUncertainty * factor),
      unit,
      freedom(budget.degreesOfFreedom),
      show.listed(
        [...budget.lines]
          .filter(({ share }) => share >= NAMED)
          .sort((a, b) => b.share - a.share)
          .map(shareOf),
      ),
      halvedBy(budget, show),
    ]),
  };
  const each = known
    .filter(({ symbol }) => inFull.test(symbol))
    .map(({ written, budget, factor, unit }): PageTable => ({
      caption: say('Budget of {symbol}: contributions in {unit}.', { symbol: written, unit }),
      columns: [say('Source'), say('Type'), say('Shape'), 'u', say('Unit'), say('Contribution'), say('Share'), say('To halve u')],
      kinds: [undefined, 'short', 'short', 'number', 'short', 'number', 'number', 'number'],
      rows: budget.lines.map((line) => {
        // a line without a unit is of the result itself
        const own = line.unit === undefined ? { unit, factor } : show.unit(line.unit);
        return [
          sourceInWords(line, show),
          line.type,
          show.term(line.distribution),
          doubt(line.standardUncertainty * own.factor),
          own.unit,
          doubt(line.contribution * factor),
          Math.abs(line.share) < LEAST ? `<\u00a0${percent(LEAST)}` : percent(line.share, 2),
          line.toHalve === undefined ? '–' : `×\u00a0${number(line.toHalve, 2)}`,
        ];
      }),
    }));
  return known.length === 0 ? [] : [all, ...each];
}
