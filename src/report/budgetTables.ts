import type { Phrase } from '../languages/index.js';
import type { UncertaintyBudget } from '../uncertainty/index.js';
import type { PageTable, ShownQuantity } from './MethodPage.js';
import type { Presentation } from './presentation.js';

/** What the inputs of a test are, in words. */
const inputs: Readonly<Record<string, Phrase | undefined>> = {
  force: 'scale of the force',
  forceZero: 'zero of the force',
  displacement: 'scale of the displacement',
  gaugeLength: 'gauge length L0',
  extensometerLength: 'base of the extensometer Le',
  parallelLength: 'parallel length Lc',
  effectiveLength: 'effective length Leff',
  frameCompliance: 'compliance of the frame',
  finalGaugeLength: 'gauge length after fracture Lu',
  finalArea: 'area after fracture Su',
  noise: 'noise of the record',
  'shift by noise': 'shift by noise',
  'bend of the elastic line': 'bend of the elastic line',
  'choice of the window': 'choice of the window',
  'plateau of the force': 'plateau of the force',
};

type Line = UncertaintyBudget['lines'][number];

function sourceInWords({ input, source }: Line, { say, term }: Presentation): string {
  const known = Object.hasOwn(inputs, input) ? inputs[input] : undefined;
  const [, dimension] = /^section\.(.+)$/.exec(input) ?? [];
  const words =
    dimension !== undefined
      ? say('{dimension} of the section', { dimension: term(dimension) })
      : known === undefined
        ? term(input)
        : say(known);
  return source === undefined || source === input ? words : `${words}: ${term(source)}`;
}

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
  const { say, number, percent } = show;
  const known = shown.flatMap((one) => {
    const budget = budgets[one.quantity.symbol];
    if (!budget) return [];
    const other = show.unit(one.unit);
    return [{ symbol: one.quantity.symbol, budget, factor: one.factor * other.factor, unit: other.unit }];
  });
  const shareOf = (line: Line): string => `${sourceInWords(line, show)} ${percent(line.share, 2)}`;
  const all: PageTable = {
    caption: say('u: standard uncertainty; U = k u; ν: effective degrees of freedom; shares of the variance from 5 % on.'),
    columns: [say('Symbol'), 'u', 'k', 'U', say('Unit'), 'ν', say('What dominates'), say('u would halve with')],
    kinds: ['short', 'number', 'number', 'number', 'short', 'number'],
    rows: known.map(({ symbol, budget, factor, unit }) => [
      symbol,
      number(budget.standardUncertainty * factor, 2),
      number(budget.coverageFactor, 3),
      number(budget.expandedUncertainty * factor, 2),
      unit,
      budget.degreesOfFreedom === undefined ? '∞' : number(budget.degreesOfFreedom, 2),
      [...budget.lines]
        .filter(({ share }) => share >= NAMED)
        .sort((a, b) => b.share - a.share)
        .map(shareOf)
        .join('; '),
      halvedBy(budget, show),
    ]),
  };
  const each = known
    .filter(({ symbol }) => inFull.test(symbol))
    .map(({ symbol, budget, factor, unit }): PageTable => ({
      caption: say('Budget of {symbol}: contributions in {unit}.', { symbol, unit }),
      columns: [say('Source'), say('Type'), say('Shape'), 'u', say('Unit'), say('Contribution'), say('Share'), say('To halve u')],
      kinds: [undefined, 'short', 'short', 'number', 'short', 'number', 'number', 'number'],
      rows: budget.lines.map((line) => [
        sourceInWords(line, show),
        line.type,
        show.term(line.distribution),
        // a line without a unit is of the result itself
        number(line.standardUncertainty * (line.unit === undefined ? factor : 1), 2),
        line.unit ?? unit,
        number(line.contribution * factor, 2),
        Math.abs(line.share) < LEAST ? `< ${percent(LEAST)}` : percent(line.share, 2),
        line.toHalve === undefined ? '–' : `× ${number(line.toHalve, 2)}`,
      ]),
    }));
  return known.length === 0 ? [] : [all, ...each];
}
