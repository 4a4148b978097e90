import type { ReplicateProperty, ReplicatesResult } from '../../methods/index.js';
import type { Figure } from './Figure.js';
import { figure } from './figureStyle.js';
import { numberedValues } from './numberedFigure.js';
import { shownTo, type FigureOptions, type Presentation } from '../words/presentation.js';
import { requireMade } from './requireMade.js';
import { valueAxis } from './valueAxis.js';

function one(property: ReplicateProperty, { tests }: ReplicatesResult, show: Presentation): Figure {
  const { say } = show;
  const { symbol, unit, values, summary, outlier, tolerance, name } = property;
  const axis = valueAxis(symbol, unit, show);
  const flagged = outlier?.flagged ? [outlier.index] : [];
  const said = {
    symbol,
    name,
    n: summary.n,
    mean: axis.text(summary.mean),
    low: axis.text(summary.minimum),
    high: axis.text(summary.maximum),
  };
  return figure(
    show,
    say('{symbol} of {n} tests', said),
    flagged.length > 0
      ? say('{symbol} of {n} tests from {low} to {high}, mean {mean}; one value is flagged as far out.', said)
      : say('{symbol} of {n} tests from {low} to {high}, mean {mean}.', said),
    numberedValues(
      {
        along: say('Number of the test'),
        axis,
        values,
        numbers: property.tests.map((k) => k + 1),
        odd: flagged.map((at) => ({ at, text: tests[property.tests[at]!]?.identity ?? say('far out') })),
        levels: [
          { value: summary.mean, text: say('mean {mean}', said), strong: true },
          ...(tolerance?.lower === undefined ? [] : [{ value: tolerance.lower, text: say('lower tolerance limit') }]),
        ],
        band: summary.interval && [summary.interval.low, summary.interval.high],
      },
      show,
    ),
  );
}

/**
 * The values of several tests, property by property, as plain Vega-Lite JSON.
 *
 * @remarks
 * Every value is a point; the line across is the mean, the band its interval of confidence, the dashed line the lower tolerance limit of a strength. A
 * value that Grubbs's test flags stands in a square with the name of its test: it is a question, nothing is left out.
 *
 * @param result - A result of `analyseReplicates`.
 * @param options - Language, units, ground.
 * @returns The figures by symbol, in the order of the result.
 * @throws {@link InputError} `missing`, `wrong-type`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * const test = (top: number) => analyseTension({ force: [0, top / 2, top, 0], strain: [0, 0.001, 0.05, 0.05] }, { section: round({ diameter: 8 }), gaugeLength: 40 });
 * Object.keys(replicatesFigures(analyseReplicates([test(20000), test(20100), test(20300)]))).includes('Rm'); // => true
 * ```
 *
 * @see ISO 2602, estimation of the mean; Grubbs (1969). Checked in `test/report/studyFigures.test.ts`.
 */
export function replicatesFigures(result: ReplicatesResult, options: FigureOptions = {}): Readonly<Record<string, Figure>> {
  requireMade('replicatesFigures', 'result', result, { lists: ['properties', 'tests'] });
  const show = shownTo('replicatesFigures', options);
  return Object.fromEntries(result.properties.map((property) => [property.symbol, one(property, result, show)]));
}
