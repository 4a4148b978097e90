import { requireColumn, requireObject } from '../../base/index.js';
import { applyCalibration, type Calibration, type CalibrationPairs } from '../../force/index.js';
import { extentOf } from './extentOf.js';
import type { Figure } from './Figure.js';
import { figure } from './figureStyle.js';
import { plane, type Place } from './plane.js';
import { shownTo, type FigureOptions } from '../words/presentation.js';
import { requireMade } from './requireMade.js';
import { FORCE, SMALL_FORCE } from '../words/shownUnit.js';
import { thinned } from './thinned.js';

const FROM = 'calibrationFigures';
const PLACES = 60;
const MOST = 150;

/**
 * A calibration as plain Vega-Lite JSON: the line through its pairs, and what is left over beside it.
 *
 * @remarks
 * The line looks straight whatever it is worth; the residuals show what it is worth: a bend in them asks for a higher degree, a fan for relative weights. Dashed
 * lines are two standard deviations of the residuals (of equal weights).
 *
 * @param calibration - A result of `fitCalibration`.
 * @param pairs - The pairs that it was fitted to.
 * @param options - Language, units, ground.
 * @returns `line` and `residuals`.
 * @throws {@link InputError} `missing`, `wrong-type`, `not-finite`, `unequal-lengths`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * const pairs = { indicated: [0, 5, 10, 15, 20], reference: [12, 6011, 12013, 18010, 24012] };
 * const { residuals } = calibrationFigures(required(fitCalibration(pairs)), pairs);
 * residuals.title; // => 'What the calibration leaves over'
 * ```
 *
 * @see ASTM E74, calibration of force-measuring instruments. Checked in `test/report/studyFigures.test.ts`.
 */
export function calibrationFigures(
  calibration: Calibration,
  pairs: CalibrationPairs,
  options: FigureOptions = {},
): Readonly<Record<'line' | 'residuals', Figure>> {
  const made = requireMade(FROM, 'calibration', calibration, {
    numbers: ['degree', 'residualStandardDeviation', 'points'],
    columns: ['residuals', 'span'],
  });
  requireObject(FROM, 'pairs', pairs);
  const indicated = requireColumn(FROM, 'pairs.indicated', pairs.indicated, { length: made.residuals.length });
  const reference = requireColumn(FROM, 'pairs.reference', pairs.reference, { length: indicated.length });
  const show = shownTo(FROM, options);
  const { say, value, colours } = show;
  const [low, high] = made.span;
  const x = Array.from({ length: PLACES }, (_, k) => low + ((high - low) * k) / (PLACES - 1)).map((one) => Math.min(high, one));
  const fitted = applyCalibration(calibration, x);
  const along = { title: say('Indicated value'), ...extentOf([indicated, x], 0.05) };
  const places = (y: ArrayLike<number>): Place[] => thinned({ x: indicated, y, most: MOST }).map((one) => [one.x, one.y]);
  const line = plane(show, along, {
    title: say('Force of the reference'),
    metric: FORCE,
    ...extentOf([reference], 0.06),
  });
  const deviation = 2 * made.residualStandardDeviation;
  // weights other than equal have no one width
  const even = made.residuals.every((one) => Math.abs(one) <= 5 * deviation);
  const rest = plane(show, along, {
    title: say('Reference less calibration'),
    metric: SMALL_FORCE,
    ...extentOf([made.residuals, [0], even ? [-deviation, deviation] : []], 0.12),
  });
  const across = (y: number): Place[] => [[along.from, y], [along.to, y]]; // prettier-ignore
  const said = { points: made.points, degree: made.degree, deviation: value(made.residualStandardDeviation, SMALL_FORCE, 3) };
  return {
    line: figure(show, say('Calibration'), say('Calibration of degree {degree} through {points} pairs.', said), [
      line.line({ x, y: fitted }, { color: colours.curve, strokeWidth: 1.5 }),
      line.marks(places(reference)),
    ]),
    residuals: figure(
      show,
      say('What the calibration leaves over'),
      say('{points} residuals of a calibration of degree {degree}, with a standard deviation of {deviation}.', said),
      [
        rest.path(across(0), { color: colours.curve, strokeWidth: 1.5 }),
        ...(even
          ? [-deviation, deviation].map((y) => rest.path(across(y), { color: colours.line, strokeWidth: 1, strokeDash: [6, 4] }))
          : []),
        ...(even ? rest.words([{ x: along.to, y: deviation, text: say('two standard deviations'), side: 'left' }]) : []),
        rest.marks(places(made.residuals)),
      ],
    ),
  };
}
