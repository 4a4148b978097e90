import { required } from '../../base/index.js';
import type { Phrase } from '../../languages/index.js';
import { decide, type Decision, type Measured, type Specification } from '../../statistics/index.js';
import { extentOf } from './extentOf.js';
import type { Figure } from './Figure.js';
import { figuresApart } from './figuresApart.js';
import { figure } from './figureStyle.js';
import { plane, type NamedPoint, type Place } from './plane.js';
import { shownTo, type FigureOptions } from '../words/presentation.js';
import { quantityOptions, requireQuantity, type QuantityOptions } from './quantityOptions.js';

const FROM = 'decisionFigure';

const verdicts = {
  pass: 'pass',
  'conditional-pass': 'conditional pass',
  'conditional-fail': 'conditional fail',
  fail: 'fail',
} as const satisfies Record<Decision['verdict'], Phrase>;

/**
 * A decision as plain Vega-Lite JSON: the value with its expanded uncertainty against the limits, with the guard band where the rule has one.
 *
 * @remarks
 * The shaded part is what passes by the rule; between its edge and the limit lies the guard band. The bar is the value with ±U.
 *
 * @param measured - As of `decide`.
 * @param specification - Likewise.
 * @param options - `symbol`, `unit`; language, units, ground.
 * @returns The figure.
 * @throws {@link InputError} As `decide`; also where there is no decision (`withheld`); `wrong-type`, `unknown-option`.
 *
 * @example
 * ```ts
 * const measured = { value: 241, standardUncertainty: 3, symbol: 'ReH' };
 * const specification = { lower: 235, rule: 'guarded' as const };
 * decisionFigure(measured, specification, { unit: 'MPa' }).title; // => 'Value against its limits'
 * ```
 *
 * @see JCGM 106:2012, conformity assessment. Checked in `test/report/studyFigures.test.ts`.
 */
export function decisionFigure(measured: Measured, specification: Specification, options: FigureOptions & QuantityOptions = {}): Figure {
  const decided = decide(measured, specification);
  const show = shownTo(FROM, options, quantityOptions);
  const { compared, acceptance, verdict, coverageFactor = 0 } = required(decided);
  const u = measured.standardUncertainty ?? 0;
  const reach = u * coverageFactor;
  const { say, colours } = show;
  const symbol = options.symbol ?? measured.symbol;
  const {
    factor,
    unit,
    text: written,
    doubt,
    title,
  } = requireQuantity(FROM, { ...options, ...(symbol === undefined ? {} : { symbol }) }, show, say('Value'));
  const limits = (['lower', 'upper'] as const).flatMap((side) => {
    const limit = specification[side];
    return limit === undefined ? [] : [{ side, limit, passes: acceptance[side] ?? limit }];
  });
  const figures = figuresApart(
    [compared, ...limits.flatMap(({ limit, passes }) => [limit, passes])].map((one) => one * factor),
    4,
  );
  const text = (value: number): string => written(value, figures);
  const values = [compared - reach, compared + reach, ...limits.flatMap(({ limit, passes }) => [limit, passes])];
  const along = extentOf([values], 0.25);
  const { boxes, path, strokes, words, marks } = plane(show, { title, ...unit, ...along }, { title: '', names: [''] });
  const edge = (side: 'lower' | 'upper', otherwise: number): number => {
    const own = limits.find((one) => one.side === side);
    return own ? own.passes : otherwise;
  };
  const [low, high] = [edge('lower', along.from), edge('upper', along.to)];
  const upright = (at: number): Place[] => [[at, -0.5], [at, 0.5]]; // prettier-ignore
  const names = limits.map(({ side, limit }): NamedPoint => ({
    x: limit,
    y: -0.36,
    text: text(limit),
    side: side === 'lower' ? 'left' : 'right',
  }));
  return figure(
    show,
    say('Value against its limits'),
    reach > 0
      ? say('{value} with an expanded uncertainty of {expanded}: {verdict}.', {
          value: text(compared),
          expanded: doubt(reach),
          verdict: say(verdicts[verdict]),
        })
      : say('{value}: {verdict}.', { value: text(compared), verdict: say(verdicts[verdict]) }),
    [
      ...(low < high ? [boxes([[[low, -0.5], [high, 0.5]]], { color: colours.law, opacity: 0.18 })] : []), // prettier-ignore
      ...limits.map(({ limit }) => path(upright(limit), { color: colours.line, strokeWidth: 1.8 })),
      ...limits
        .filter(({ limit, passes }) => limit !== passes)
        .map(({ passes }) => path(upright(passes), { color: colours.line, strokeWidth: 1.1, strokeDash: [4, 3] })),
      ...words(names),
      ...words(
        limits
          .filter(({ limit, passes }) => limit !== passes)
          .map(({ side, passes }): NamedPoint => ({
            x: passes,
            y: 0.36,
            text: text(passes),
            side: side === 'lower' ? 'right' : 'left',
          })),
      ),
      ...(reach > 0
        ? [
            strokes(
              [
                [[compared - reach, 0], [compared + reach, 0]],
                ...[-1, 1].map((sign): [Place, Place] => [[compared + sign * reach, -0.07], [compared + sign * reach, 0.07]]), // prettier-ignore
              ], // prettier-ignore
              { color: colours.mark, strokeWidth: 2 },
            ),
          ]
        : []),
      marks([[compared, 0]], { filled: true, size: 80 }), // prettier-ignore
    ],
    { names: [''], height: 120 },
  );
}
