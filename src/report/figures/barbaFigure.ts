import { USUAL_COEFFICIENT } from '../../geometry/index.js';
import { barba, type MeasuredElongation } from '../../piece/index.js';
import type { Figure } from './Figure.js';
import { figure } from './figureStyle.js';
import { plane, type NamedPoint } from './plane.js';
import { shownTo, type FigureOptions } from '../words/presentation.js';
import { SHARE } from '../words/shownUnit.js';

/**
 * Elongation after fracture against √S0/L0 as plain Vega-Lite JSON: Barba's law through two gauge lengths, with its uniform part and the elongation on a proportional length.
 *
 * @param first - As of `barba`.
 * @param second - Likewise.
 * @param options - Language, units, ground.
 * @returns The figure.
 * @throws {@link InputError} As `barba`; `unknown-option`.
 *
 * @example
 * ```ts
 * const [short, long] = [{ elongation: 0.3, gaugeLength: 5.65, area: 1 }, { elongation: 0.24, gaugeLength: 11.3, area: 1 }];
 * barbaFigure(short, long).description; // => 'Elongation by gauge length: uniform part 18\u00a0%, on 5.65 √S0 it is 30\u00a0%.'
 * ```
 *
 * @see J. Barba, Mémoires de la Société des ingénieurs civils (1880). Checked in `test/report/studyFigures.test.ts`.
 */
export function barbaFigure(first: MeasuredElongation, second: MeasuredElongation, options: FigureOptions = {}): Figure {
  const { uniform, neck } = barba(first, second);
  const show = shownTo('barbaFigure', options);
  const { say, percent, colours } = show;
  const measured = [first, second].map(({ elongation, gaugeLength, area }) => ({
    x: Math.sqrt(area) / gaugeLength,
    y: elongation,
    gaugeLength,
  }));
  const proportional = 1 / USUAL_COEFFICIENT;
  const end = 1.15 * Math.max(proportional, ...measured.map(({ x }) => x));
  const at = (x: number): number => uniform + neck * x;
  const heights = [at(0), at(end)];
  const top = 1.15 * Math.max(...heights);
  const { path, points } = plane(
    show,
    { title: say('√S0 / L0'), from: 0, to: end },
    { title: say('Elongation after fracture A'), metric: SHARE, from: Math.min(0, 1.15 * Math.min(...heights)), to: Math.max(top, 1e-8) },
  );
  const named: NamedPoint[] = measured.map(({ x, y, gaugeLength }) => ({
    x,
    y,
    text: `L0 ${show.value(gaugeLength, 'mm', 4)}`,
    side: 'left',
  }));
  // where a length was measured that is the proportional one, its name is enough
  if (measured.every(({ x }) => Math.abs(x / proportional - 1) > 0.02))
    named.push({ x: proportional, y: at(proportional), text: say('A on 5.65 √S0'), side: 'right' });
  named.push({ x: 0, y: at(0), text: say('uniform part'), side: 'right' });
  return figure(
    show,
    say("Elongation by gauge length (Barba's law)"),
    say('Elongation by gauge length: uniform part {uniform}, on 5.65 √S0 it is {proportional}.', {
      uniform: percent(uniform),
      proportional: percent(at(proportional)),
    }),
    [
      path([[0, at(0)], [end, at(end)]], { color: colours.line, strokeWidth: 1.4, strokeDash: [6, 4] }), // prettier-ignore
      ...points(named),
    ],
  );
}
