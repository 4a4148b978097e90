import { required } from '../../base/index.js';
import { poissonRatio, type ElasticSamples, type TransverseCurve } from '../../curve/index.js';
import { extentOf } from './extentOf.js';
import type { Figure } from './Figure.js';
import { figure } from './figureStyle.js';
import { plane } from './plane.js';
import { shownTo, type FigureOptions } from '../words/presentation.js';
import { SHARE } from '../words/shownUnit.js';

/** Samples beyond the window are drawn up to so many times its length. */
const BEYOND = 1.5;

/**
 * Strain across against strain along in the elastic part as plain Vega-Lite JSON, with the line whose slope is Poisson's ratio.
 *
 * @remarks
 * The line has the slope that `poissonRatio` finds, from both strains against stress, and passes through the middle of the window. Axes are both in per cent.
 *
 * @param curve - As of `poissonRatio`.
 * @param window - Samples of the elastic line, likewise.
 * @param options - Language, units, ground.
 * @returns The figure.
 * @throws {@link InputError} As `poissonRatio`; also where it fails (`withheld`); `unknown-option`.
 *
 * @example
 * ```ts
 * const stress = Array.from({ length: 20 }, (_, i) => 10 * i);
 * const strain = stress.map((R) => R / 200000);
 * const curve = { strain, stress, transverseStrain: strain.map((e) => -0.29 * e) };
 * poissonFigure(curve, { first: 2, last: 18 }).description.includes('0.29'); // => true
 * ```
 *
 * @see ASTM E132. Checked in `test/report/studyFigures.test.ts`.
 */
export function poissonFigure(curve: TransverseCurve, window: ElasticSamples, options: FigureOptions = {}): Figure {
  const found = poissonRatio(curve, window);
  const show = shownTo('poissonFigure', options);
  const { ratio } = required(found);
  const { say, number, colours } = show;
  const { first, last } = window;
  const end = Math.min(curve.strain.length, last + 1 + Math.ceil((BEYOND - 1) * (last - first)));
  const along = Float64Array.from(curve.strain).subarray(0, end);
  const across = Float64Array.from(curve.transverseStrain).subarray(0, end);
  const count = last - first + 1;
  const middle = (column: Float64Array): number => column.subarray(first, last + 1).reduce((sum, one) => sum + one / count, 0);
  const [e, q] = [middle(along), middle(across)];
  const { line, path, words } = plane(
    show,
    { title: say('Strain along'), metric: SHARE, ...extentOf([along], 0.08) },
    { title: say('Strain across'), metric: SHARE, ...extentOf([across], 0.08) },
  );
  const ends = [along[first]!, along[last]!].map((x): [number, number] => [x, q - ratio * (x - e)]);
  return figure(
    show,
    say("Poisson's ratio"),
    say("Strain across against strain along: Poisson's ratio {ratio}.", { ratio: number(ratio, 3) }),
    [
      line({ x: along, y: across }, { color: colours.curve, strokeWidth: 1.4 }),
      path(ends, { color: colours.mark, strokeWidth: 3, opacity: 0.6 }),
      ...words([{ x: e, y: q, text: `ν = ${number(ratio, 3)}`, side: 'over' }]),
    ],
  );
}
