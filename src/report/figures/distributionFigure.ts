import { requireColumn, requirePair, requirePositive, requireFinite, requireObject } from '../../base/index.js';
import type { TrialDistribution, UncertaintyBudget } from '../../uncertainty/index.js';
import type { Figure } from './Figure.js';
import { figure } from './figureStyle.js';
import { plane, type Place } from './plane.js';
import { shownTo, type FigureOptions } from '../words/presentation.js';
import { quantityOptions, requireQuantity, type QuantityOptions } from './quantityOptions.js';
import { requireMade } from './requireMade.js';
import { SHARE } from '../words/shownUnit.js';
import { largest } from './thinned.js';

/** Options of {@link distributionFigure}. */
export interface DistributionFigureOptions extends FigureOptions, QuantityOptions {
  /** Budget of the same result: its normal curve is drawn beside the trials; default none. */
  readonly budget?: Pick<UncertaintyBudget, 'value' | 'standardUncertainty'> | undefined;
}

const FROM = 'distributionFigure';
const BARS = 32;
const PLACES = 80;

/** Share of the trials below a value, by straight lines between the quantiles. */
function shareBelow(quantiles: Float64Array, value: number): number {
  const n = quantiles.length - 1;
  if (value >= quantiles[n]!) return 1;
  let k = 0;
  while (k < n && quantiles[k + 1]! <= value) k += 1;
  const width = quantiles[k + 1]! - quantiles[k]!;
  return Math.max(0, (k + (width > 0 ? Math.max(0, value - quantiles[k]!) / width : 0)) / n);
}

/**
 * The distribution of a result by Monte Carlo as plain Vega-Lite JSON: the trials in bars, the coverage interval, and the normal curve of a budget beside them.
 *
 * @remarks
 * Where bars and curve part, the budget is not to be trusted: the result is skewed, or its model bends within the uncertainty.
 *
 * @param distribution - A result of `monteCarlo` or `trialDistribution`, or one of those of `monteCarloTension`.
 * @param options - `symbol`, `unit`, `budget`; language, units, ground.
 * @returns The figure.
 * @throws {@link InputError} `missing`, `wrong-type`, `not-finite`, `not-positive`, `out-of-range`, `too-few`, `unequal-lengths`, `unknown-option`.
 *
 * @example
 * ```ts
 * const trials = required(monteCarlo(({ F }) => F / 50, { F: { value: 20000, uncertainty: { standardUncertainty: 100 } } }, { trials: 2000 }));
 * distributionFigure(trials, { symbol: 'Rm', unit: 'MPa' }).title; // => 'Distribution of Rm by Monte Carlo'
 * ```
 *
 * @see JCGM 101:2008, reporting the results. Checked in `test/report/studyFigures.test.ts`.
 */
export function distributionFigure(distribution: TrialDistribution, options: DistributionFigureOptions = {}): Figure {
  const { mean, standardUncertainty, coverage, trials } = requireMade(FROM, 'distribution', distribution, {
    numbers: ['coverage', 'trials'],
  });
  if (mean !== undefined) requireFinite(FROM, 'distribution.mean', mean);
  if (standardUncertainty !== undefined) requireFinite(FROM, 'distribution.standardUncertainty', standardUncertainty);
  const quantiles = requireColumn(FROM, 'distribution.quantiles', distribution.quantiles, { least: 3 });
  const interval = requirePair(FROM, 'distribution.interval', distribution.interval);
  const show = shownTo(FROM, options, [...quantityOptions, 'budget']);
  const { budget } = options;
  if (budget !== undefined) {
    requireObject(FROM, 'options.budget', budget);
    requireFinite(FROM, 'options.budget.value', budget.value);
    requirePositive(FROM, 'options.budget.standardUncertainty', budget.standardUncertainty);
  }
  const { say, percent, colours } = show;
  const { unit, text, title } = requireQuantity(FROM, options, show, say('Result'));
  const [low, high] = [quantiles[0]!, quantiles[quantiles.length - 1]!];
  // far tails of a few trials would press the rest together
  const middle = mean ?? (interval[0] + interval[1]) / 2;
  const reach = Math.max(
    standardUncertainty === undefined ? interval[1] - interval[0] : 4 * standardUncertainty,
    1e-9 * Math.abs(middle),
    Number.MIN_VALUE,
  );
  const [start, end] = [Math.max(low, middle - reach), Math.min(high, middle + reach)];
  const width = Math.max((end - start) / BARS, reach / BARS / 4);
  const bars = Array.from({ length: BARS }, (_, k) => {
    const a = start + k * width;
    return { a, b: a + width, share: shareBelow(quantiles, a + width) - (k === 0 ? 0 : shareBelow(quantiles, a)) };
  });
  const curve = budget
    ? Array.from({ length: PLACES }, (_, k): Place => {
        const u = budget.standardUncertainty;
        const z = -4 + (8 * k) / (PLACES - 1);
        return [budget.value + z * u, (width * Math.exp((-z * z) / 2)) / (u * Math.sqrt(2 * Math.PI))];
      })
    : [];
  const top = 1.16 * Math.max(largest(bars.map(({ share }) => share)), largest(curve.map(([, y]) => y)));
  const { boxes, path, words } = plane(
    show,
    { title, ...unit, from: start - width, to: start + (BARS + 1) * width },
    { title: say('Share of the trials'), metric: SHARE, from: 0, to: top },
  );
  const said = { trials, coverage: percent(coverage), low: text(interval[0]), high: text(interval[1]) };
  return figure(
    show,
    options.symbol === undefined
      ? say('Distribution by Monte Carlo')
      : say('Distribution of {symbol} by Monte Carlo', { symbol: options.symbol }),
    mean === undefined
      ? say('{trials} trials: {coverage} of them lie from {low} to {high}.', said)
      : say('{trials} trials with a mean of {mean}; {coverage} of them lie from {low} to {high}.', { ...said, mean: text(mean) }),
    [
      boxes(bars.map(({ a, b, share }): [Place, Place] => [[a, 0], [b, share]]), { color: colours.curve, opacity: 0.5, stroke: colours.ground, strokeWidth: 0.6 }), // prettier-ignore
      ...interval.map((at) => path([[at, 0], [at, top]], { color: colours.line, strokeWidth: 1.3, strokeDash: [6, 4] })), // prettier-ignore
      ...words([{ x: interval[1], y: 0.93 * top, text: say('{coverage} interval', said), side: 'left' }]),
      ...(curve.length > 0
        ? [
            path(curve, { color: colours.mark, strokeWidth: 1.4 }),
            ...words([
              {
                x: budget!.value + 0.9 * budget!.standardUncertainty,
                y: 0.68 * largest(curve.map(([, y]) => y)),
                text: say('budget'),
                side: 'right',
              },
            ]),
          ]
        : []),
    ],
  );
}
