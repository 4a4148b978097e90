import type { BatchComparison } from '../../statistics/index.js';
import { extentOf } from './extentOf.js';
import type { Figure } from './Figure.js';
import { figure } from './figureStyle.js';
import { plane, type Place } from './plane.js';
import { shownTo, type FigureOptions } from '../words/presentation.js';
import { quantityOptions, requireQuantity, type QuantityOptions } from './quantityOptions.js';
import { requireMade } from './requireMade.js';

const FROM = 'batchesFigure';

/**
 * The difference of two batches with its interval as plain Vega-Lite JSON, and the margin within which it does not matter where one was stated.
 *
 * @remarks
 * An interval that leaves out the line at 0 is a difference that chance does not explain; one that lies within the dashed lines is a difference that does not matter.
 *
 * @param comparison - A result of `compareBatches`.
 * @param options - `symbol` and `unit` of the values; language, units, ground.
 * @returns The figure.
 * @throws {@link InputError} `missing`, `wrong-type`, `not-finite`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * const both = required(compareBatches([452.1, 449.8, 455.0], [441.2, 439.9, 444.0], { margin: 25 }));
 * batchesFigure(both, { symbol: 'Rm', unit: 'MPa' }).title; // => 'Difference of two batches'
 * ```
 *
 * @see Welch (1947); Schuirmann (1987), two one-sided tests. Checked in `test/report/studyFigures.test.ts`.
 */
export function batchesFigure(comparison: BatchComparison, options: FigureOptions & QuantityOptions = {}): Figure {
  const { difference, interval, equivalence } = requireMade(FROM, 'comparison', comparison, { numbers: ['difference', 'standardError'] });
  requireMade(FROM, 'comparison.interval', interval, { numbers: ['low', 'high', 'confidence'] });
  const show = shownTo(FROM, options, quantityOptions);
  const { say, percent, colours } = show;
  const axis = requireQuantity(FROM, options, show, '');
  const { unit, text } = axis;
  const rows = [
    { name: say('difference, {confidence} interval', { confidence: percent(interval.confidence) }), ends: interval },
    ...(equivalence
      ? [
          {
            name: say('equivalence, {confidence} interval', { confidence: percent(equivalence.interval.confidence) }),
            ends: equivalence.interval,
          },
        ]
      : []),
  ];
  const margin = equivalence?.margin;
  const ends = rows.flatMap(({ ends: { low, high } }) => [low, high]);
  const title = axis.title === '' ? say('Difference of the means') : say('Difference of the means of {symbol}', { symbol: axis.title });
  const { strokes, marks, words, path } = plane(
    show,
    { title, ...unit, ...extentOf([ends, [0], margin === undefined ? [] : [-margin, margin]], 0.12) },
    { title: '', names: rows.map(({ name }) => name) },
  );
  const foot = rows.length - 0.5;
  const upright = (at: number): Place[] => [[at, -0.5], [at, foot]]; // prettier-ignore
  const said = { difference: text(difference), low: text(interval.low), high: text(interval.high) };
  return figure(
    show,
    say('Difference of two batches'),
    equivalence
      ? equivalence.equivalent
        ? say('The means differ by {difference} ({low} to {high}), which is shown to be within the margin of {margin}.', {
            ...said,
            margin: text(equivalence.margin),
          })
        : say('The means differ by {difference} ({low} to {high}), which is not shown to be within the margin of {margin}.', {
            ...said,
            margin: text(equivalence.margin),
          })
      : say('The means differ by {difference} ({low} to {high}).', said),
    [
      path(upright(0), { color: colours.axis, strokeWidth: 1.2 }),
      ...(margin === undefined
        ? []
        : [-margin, margin].map((at) => path(upright(at), { color: colours.line, strokeWidth: 1.2, strokeDash: [6, 4] }))),
      ...(margin === undefined ? [] : words([{ x: margin, y: foot - 0.06, text: say('margin'), side: 'left' }])),
      strokes(rows.map(({ ends: { low, high } }, k): [Place, Place] => [[low, k], [high, k]]), { color: colours.curve, strokeWidth: 2.4 }), // prettier-ignore
      marks(rows.map((_, k): Place => [difference, k]), { filled: true, color: colours.curve, size: 70 }), // prettier-ignore
    ],
    { names: rows.map(({ name }) => name), height: 70 + 60 * rows.length },
  );
}
