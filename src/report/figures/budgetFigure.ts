import type { UncertaintyBudget } from '../../uncertainty/index.js';
import type { Figure } from './Figure.js';
import { figure } from './figureStyle.js';
import { plane, type NamedPoint, type Place } from './plane.js';
import { shownTo, type FigureOptions } from '../words/presentation.js';
import { requireMade } from './requireMade.js';
import { SHARE } from '../words/shownUnit.js';
import { sourceInWords } from '../words/sourceInWords.js';
import { valueAxis } from './valueAxis.js';

const FROM = 'budgetFigure';
/** Sources beyond these stand together. */
const ROWS = 12;
const HALF = 0.32;

/**
 * What the uncertainty of a result is made of, as plain Vega-Lite JSON: a bar for each source, by its share of the variance.
 *
 * @remarks
 * The largest is on top. A share may be negative where a correlation makes two doubts cancel. Of more than twelve sources the least stand together.
 *
 * @param budget - A result of `uncertaintyBudget`, or of one of the ready budgets.
 * @param options - Language, units, ground.
 * @returns The figure.
 * @throws {@link InputError} `missing`, `wrong-type`, `not-finite`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * const budget = uncertaintyBudget(({ F, d }) => F / ((Math.PI / 4) * d ** 2), {
 *   F: { value: 22619, uncertainty: { halfWidth: 226 } },
 *   d: { value: 8, uncertainty: { halfWidth: 0.01 } },
 * }, { symbol: 'Rm', unit: 'MPa' });
 * budgetFigure(budget).title; // => 'What the uncertainty of Rm is made of'
 * ```
 *
 * @see JCGM 100:2008, determining combined standard uncertainty. Checked in `test/report/studyFigures.test.ts`.
 */
export function budgetFigure(budget: UncertaintyBudget, options: FigureOptions = {}): Figure {
  const { lines, symbol, unit, value, expandedUncertainty, coverageFactor } = requireMade(FROM, 'budget', budget, {
    numbers: ['value', 'standardUncertainty', 'expandedUncertainty', 'coverageFactor'],
    lists: ['lines'],
  });
  const show = shownTo(FROM, options);
  const { say, percent, number, colours } = show;
  const sorted = lines.map((line) => ({ name: sourceInWords(line, show), share: line.share })).sort((a, b) => b.share - a.share);
  const rest = sorted.slice(ROWS);
  const rows =
    rest.length > 1
      ? [
          ...sorted.slice(0, ROWS),
          { name: say('{count} others', { count: rest.length }), share: rest.reduce((sum, one) => sum + one.share, 0) },
        ]
      : sorted;
  const shares = rows.map(({ share }) => share);
  const { boxes, words, path } = plane(
    show,
    {
      title: say('Share of the variance'),
      metric: SHARE,
      from: Math.min(0, 1.3 * Math.min(0, ...shares)),
      to: 1.18 * Math.max(0.01, ...shares),
    },
    { title: '', names: rows.map(({ name }) => name) },
  );
  const { beside, doubt } = valueAxis(symbol ?? '', unit, show);
  const names = rows.map(({ share }, k): NamedPoint => ({
    x: Math.max(0, share),
    y: k,
    text: percent(share, share < 0.0995 ? 2 : 3),
    side: 'right',
  }));
  const said = {
    symbol: symbol ?? '',
    value: beside(value, expandedUncertainty, 5),
    expanded: doubt(expandedUncertainty),
    factor: number(coverageFactor, 3),
  };
  return figure(
    show,
    symbol === undefined ? say('What the uncertainty is made of') : say('What the uncertainty of {symbol} is made of', said),
    rows[0] === undefined
      ? say('{value} with an expanded uncertainty of {expanded} (k = {factor}).', said)
      : say('{value} with an expanded uncertainty of {expanded} (k = {factor}); most of it comes from {source}, {share} of the variance.', {
          ...said,
          source: rows[0].name,
          share: percent(rows[0].share),
        }),
    [
      boxes(rows.map(({ share }, k): [Place, Place] => [[0, k - HALF], [share, k + HALF]]), { color: colours.curve, opacity: 0.85 }), // prettier-ignore
      path([[0, -0.5], [0, rows.length - 0.5]], { color: colours.axis, strokeWidth: 1 }), // prettier-ignore
      // beside a bar there is room in the middle of its height
      ...words(names.map((one) => ({ ...one, y: one.y - 0.3 }))),
    ],
    { names: rows.map(({ name }) => name), height: 40 + 26 * Math.max(1, rows.length) },
  );
}
