import { InputError, requireColumn } from '../../base/index.js';
import type { CheckPieceChart } from '../../force/index.js';
import type { Figure } from './Figure.js';
import { figure } from './figureStyle.js';
import { numberedValues } from './numberedFigure.js';
import { shownTo, type FigureOptions } from '../words/presentation.js';
import { quantityOptions, requireQuantity, type QuantityOptions } from './quantityOptions.js';
import { requireMade } from './requireMade.js';

const FROM = 'checkPieceFigure';

/**
 * Control chart of a check piece as plain Vega-Lite JSON: its values in order, with centre and limits.
 *
 * @remarks
 * Values beyond the limits stand in squares with their number. Runs and trends are findings of the chart.
 *
 * @param values - The values that the chart was made of, in order.
 * @param chart - The result of `checkPieceChart` of them.
 * @param options - `symbol` and `unit` of the values; language, units, ground.
 * @returns The figure.
 * @throws {@link InputError} `missing`, `wrong-type`, `empty`, `not-finite`, `out-of-range`, `unequal-lengths`, `unknown-option`.
 *
 * @example
 * ```ts
 * const values = [10, 12, 11, 13];
 * checkPieceFigure(values, checkPieceChart(values), { symbol: 'F', unit: 'N' }).title; // => 'Control chart of the check piece'
 * ```
 *
 * @see ISO 7870-2, Shewhart control charts. Checked in `test/report/studyFigures.test.ts`.
 */
export function checkPieceFigure(values: ArrayLike<number>, chart: CheckPieceChart, options: FigureOptions & QuantityOptions = {}): Figure {
  const column = requireColumn(FROM, 'values', values);
  const { centre, lower, upper, outside } = requireMade(FROM, 'chart', chart, {
    numbers: ['centre', 'lower', 'upper'],
    lists: ['outside'],
  });
  const odd = outside.map((at) => {
    if (column[at] === undefined) throw new InputError(FROM, 'chart.outside', 'out-of-range', 'must be places in the values', at);
    return { at, text: String(at + 1) };
  });
  const show = shownTo(FROM, options, quantityOptions);
  const { say } = show;
  const axis = requireQuantity(FROM, options, show, say('Value of the check piece'));
  const said = { n: column.length, centre: axis.text(centre), low: axis.text(lower), high: axis.text(upper), outside: odd.length };
  return figure(
    show,
    say('Control chart of the check piece'),
    say('{n} checks about {centre}, limits {low} and {high}; beyond them: {outside}.', said),
    numberedValues(
      {
        along: say('Number of the check'),
        axis,
        values: column,
        odd,
        joined: true,
        levels: [
          { value: upper, text: say('upper limit') },
          { value: centre, text: say('centre'), strong: true },
          { value: lower, text: say('lower limit') },
        ],
      },
      show,
    ),
  );
}
