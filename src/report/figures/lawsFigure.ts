import { InputError, requireColumn, requireFunction, requireObject, type CurveColumns } from '../../base/index.js';
import type { LawComparison } from '../../hardening/index.js';
import { apart } from './extentOf.js';
import type { Figure } from './Figure.js';
import { figure } from './figureStyle.js';
import { plane } from './plane.js';
import { shownTo, type FigureOptions } from '../words/presentation.js';
import { requireMade } from './requireMade.js';
import { largest, thinned } from './thinned.js';

const FROM = 'lawsFigure';
const PLACES = 100;
const MEASURED = 90;
/** Least distance of two names, as a share of the height. */
const NAMES = 0.045;
const DASHES = [[], [7, 3], [2, 3], [9, 3, 2, 3], [4, 2]] as const;

/**
 * Hardening laws that were compared, with the measured part and their extrapolation, as plain Vega-Lite JSON.
 *
 * @remarks
 * Points are measured; every law is drawn from the first of them to the last strain of the comparison. The shaded band is the room between the laws beyond
 * the measured part: what is not known there. The best by the comparison is the full line.
 *
 * @param comparison - A result of `compareLaws`.
 * @param flow - The flow curve that they were fitted to: true plastic strain [mm/mm] and true stress [MPa].
 * @param options - Language, units, ground.
 * @returns The figure.
 * @throws {@link InputError} `missing`, `wrong-type`, `empty`, `not-finite`, `not-positive`, `unequal-lengths`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * const strain = Array.from({ length: 60 }, (_, i) => 0.002 + 0.003 * i);
 * const flow = { strain, stress: strain.map((e) => 400 - 250 * Math.exp(-10 * e)) };
 * lawsFigure(compareLaws(flow, { laws: ['Voce', 'Swift'] }), flow).title; // => 'Hardening laws and what they say beyond the test'
 * ```
 *
 * @see Burnham and Anderson, Model Selection and Multimodel Inference (2002). Checked in `test/report/studyFigures.test.ts`.
 */
export function lawsFigure(comparison: LawComparison, flow: CurveColumns, options: FigureOptions = {}): Figure {
  const { ranked, strains, spread } = requireMade(FROM, 'comparison', comparison, { columns: ['strains', 'spread'], lists: ['ranked'] });
  if (ranked.length === 0) throw new InputError(FROM, 'comparison.ranked', 'empty', 'must hold a law that could be fitted', 0);
  for (const [k, { law }] of ranked.entries()) requireFunction(FROM, `comparison.ranked[${k}].law.stress`, law.stress);
  requireObject(FROM, 'flow', flow);
  const strain = requireColumn(FROM, 'flow.strain', flow.strain, { positive: true });
  const stress = requireColumn(FROM, 'flow.stress', flow.stress, { length: strain.length, positive: true });
  const show = shownTo(FROM, options);
  const { say, number, percent, colours } = show;
  const measured = largest(strain);
  const end = Math.max(measured, largest(strains));
  const first = strain.reduce((a, b) => Math.min(a, b));
  const places = Array.from({ length: PLACES }, (_, k) => first + ((end - first) * k) / (PLACES - 1));
  const drawn = ranked.map(({ name, law }) => ({ name, heights: places.map(law.stress) }));
  const top = 1.18 * Math.max(largest(stress), ...drawn.map(({ heights }) => largest(heights)));
  const { line, band, marks, words, path } = plane(
    show,
    { title: say('True plastic strain εp'), from: 0, to: 1.24 * end },
    { title: say('True stress σ'), metric: 'MPa', from: 0, to: top },
  );
  const palette = [colours.curve, colours.line, colours.law, colours.mark, colours.axis];
  const beyond = places
    .map((x, k): readonly [number, number, number] => {
      const heights = drawn.map((one) => one.heights[k]!);
      return [x, Math.min(...heights), Math.max(...heights)];
    })
    .filter(([x]) => x >= measured);
  const lasts = apart(drawn.map(({ heights }) => heights[PLACES - 1]!), NAMES * top); // prettier-ignore
  const few = thinned({ x: strain, y: stress, most: MEASURED });
  const said = { laws: ranked.length, best: ranked[0]!.name, strain: number(measured, 3) };
  const far = spread[strains.length - 1];
  return figure(
    show,
    say('Hardening laws and what they say beyond the test'),
    far === undefined || ranked.length < 2
      ? say('{laws} laws fitted up to a true plastic strain of {strain}; best by the comparison: {best}.', said)
      : say(
          '{laws} laws fitted up to a true plastic strain of {strain}; best by the comparison: {best}; at {end} they differ by {spread}.',
          {
            ...said,
            end: number(strains[strains.length - 1]!, 3),
            spread: percent(far),
          },
        ),
    [
      ...(beyond.length > 1 && ranked.length > 1 ? [band(beyond, { color: colours.axis, opacity: 0.2 })] : []),
      path([[measured, 0], [measured, top]], { color: colours.axis, strokeWidth: 1, strokeDash: [2, 3] }), // prettier-ignore
      ...words([{ x: measured, y: 0.04 * top, text: say('measured'), side: 'left' }]),
      marks(few.map(({ x, y }) => [x, y]), { size: 12, strokeWidth: 1 }), // prettier-ignore
      ...drawn.map(({ heights }, k) =>
        line(
          { x: places, y: heights },
          { color: palette[k % palette.length]!, strokeWidth: k === 0 ? 2 : 1.4, strokeDash: DASHES[k % DASHES.length]! },
        ),
      ),
      ...words(drawn.map(({ name }, k) => ({ x: end, y: lasts[k]! + 0.03 * top, text: name, side: 'right' }))),
    ],
  );
}
