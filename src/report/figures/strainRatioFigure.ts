import { required } from '../../base/index.js';
import { plasticStrainRatioFromCurve, type RatioOptions, type SheetCurve } from '../../hardening/index.js';
import { extentOf } from './extentOf.js';
import type { Figure } from './Figure.js';
import { figure } from './figureStyle.js';
import { plane } from './plane.js';
import { shownTo, type FigureOptions } from '../words/presentation.js';

/**
 * Plastic strain across the width against that along the piece as plain Vega-Lite JSON, with the line that the r-value follows from.
 *
 * $$ r = \frac{\varepsilon_w}{\varepsilon_t} = \frac{-m}{1 + m}, \qquad m = \frac{\mathrm{d}\varepsilon_w}{\mathrm{d}\varepsilon_l} $$
 *
 * @remarks
 * The line passes through the origin with the slope of r and is drawn where the fit was made; where the samples leave it, r changes with strain.
 *
 * @param curve - As of `plasticStrainRatioFromCurve`.
 * @param range - Its options: limits, modulus, Poisson's ratio.
 * @param options - Language, units, ground.
 * @returns The figure.
 * @throws {@link InputError} As `plasticStrainRatioFromCurve`; also where it fails (`withheld`); `unknown-option`.
 *
 * @example
 * ```ts
 * const strain = [0.02, 0.05, 0.08, 0.1, 0.12, 0.15];
 * const stress = [300, 340, 360, 370, 376, 382];
 * const transverseStrain = strain.map((e, i) => {
 *   const sigma = (stress[i] ?? 0) * (1 + e);
 *   return Math.exp(-0.6 * (Math.log1p(e) - sigma / 200000) - (0.3 * sigma) / 200000) - 1;
 * });
 * strainRatioFigure({ strain, transverseStrain, stress }, { from: 0.02, to: 0.15, modulus: 200000 }).title; // => 'Plastic strain ratio of the sheet'
 * ```
 *
 * @see ISO 10113, automatic determination. Checked in `test/report/studyFigures.test.ts`.
 */
export function strainRatioFigure(curve: SheetCurve, range: RatioOptions, options: FigureOptions = {}): Figure {
  const found = plasticStrainRatioFromCurve(curve, range);
  const show = shownTo('strainRatioFigure', options);
  const { ratio } = required(found);
  const { say, number, colours } = show;
  const { modulus, poissonRatio = 0.3 } = range;
  const elastic = (i: number): number => (curve.stress[i]! * (1 + curve.strain[i]!)) / modulus;
  const along = Float64Array.from(curve.strain, (e, i) => Math.log1p(e) - elastic(i));
  const across = Float64Array.from(curve.transverseStrain, (e, i) => Math.log1p(e) + poissonRatio * elastic(i));
  const inside = Array.from(curve.strain, (e, i) => (e >= range.from && e <= range.to ? along[i]! : NaN)).filter(
    (one) => !Number.isNaN(one),
  );
  const ends = [Math.min(...inside.slice(0, 1)), Math.max(...inside.slice(-1))];
  const slope = -ratio / (1 + ratio);
  const { line, path, words } = plane(
    show,
    { title: say('True plastic strain along'), ...extentOf([along], 0.06) },
    { title: say('True plastic strain across the width'), ...extentOf([across], 0.06) },
  );
  const middle = (ends[0]! + ends[1]!) / 2;
  return figure(
    show,
    say('Plastic strain ratio of the sheet'),
    say('Width strain against strain along: r = {ratio} from {low} to {high} of strain.', {
      ratio: number(ratio, 3),
      low: show.percent(range.from),
      high: show.percent(range.to),
    }),
    [
      line({ x: along, y: across }, { color: colours.curve, strokeWidth: 1.4 }),
      path(ends.map((x): [number, number] => [x, slope * x]), { color: colours.mark, strokeWidth: 3, opacity: 0.6 }), // prettier-ignore
      ...words([{ x: middle, y: slope * middle, text: `r = ${number(ratio, 3)}`, side: 'over' }]),
    ],
  );
}
