import { forceClasses, verifyForce, type ForceVerification } from '../../force/index.js';
import { extentOf } from './extentOf.js';
import type { Figure } from './Figure.js';
import { figure } from './figureStyle.js';
import { plane, type Place } from './plane.js';
import { shownTo, type FigureOptions } from '../words/presentation.js';
import { FORCE, SHARE } from '../words/shownUnit.js';
import { verificationLayers } from './verificationLayers.js';

/**
 * Errors of a verified force channel by force as plain Vega-Lite JSON, with the limits of the classes.
 *
 * @remarks
 * Triangles that point up are readings with rising force, those that point down with falling force; the line joins the means of the rising ones. The limits are those of the
 * indication error; the other terms (repeatability, reversibility, zero, resolution) have their own, and the class that the description names keeps all.
 *
 * @param verification - As of `verifyForce`.
 * @param options - Language, units, ground.
 * @returns The figure.
 * @throws {@link InputError} As `verifyForce`; `unknown-option`.
 *
 * @example
 * ```ts
 * const steps = [5000, 10000, 20000].map((force) => ({ force, rising: [1.004, 1.006, 1.002].map((share) => share * force) }));
 * forceVerificationFigure({ steps, range: 25000, resolution: 6 }).title; // => 'Errors of the force by force'
 * ```
 *
 * @see ISO 7500-1, calibration and verification of the force-measuring system. Checked in `test/report/studyFigures.test.ts`.
 */
export function forceVerificationFigure(verification: ForceVerification, options: FigureOptions = {}): Figure {
  const from = 'forceVerificationFigure';
  const { held, steps, forceClass } = verifyForce(verification);
  const show = shownTo(from, options);
  const { say, percent } = show;
  const errors = (force: number, readings: ArrayLike<number> = []): Place[] =>
    Array.from(readings, (one): Place => [force, held === 'true' ? one / force - 1 : force / one - 1]);
  const rising = verification.steps.flatMap(({ force, rising: readings }) => errors(force, readings));
  const falling = verification.steps.flatMap(({ force, falling: readings }) => errors(force, readings));
  const means = steps.map(({ force, indicationError }): Place => [force, indicationError]);
  const along = { from: 0, to: 1.1 * steps[steps.length - 1]!.force };
  const most = Math.max(...[...rising, ...falling].map(([, error]) => Math.abs(error)));
  // the class that holds the errors, and the next better one
  const wide = forceClasses.findIndex(({ indicationError }) => indicationError >= most);
  const shown = forceClasses.slice(Math.max(0, (wide < 0 ? forceClasses.length : wide) - 1), wide < 0 ? undefined : wide + 1);
  const classes = shown
    .map(({ forceClass: name, indicationError }) => ({
      text: say('class {name}', { name }),
      limits: [[0, indicationError], [along.to, indicationError]] as const, // prettier-ignore
    }))
    .reverse();
  const limits = shown.map(({ indicationError }) => indicationError);
  const area = plane(
    show,
    { title: say('Force F'), metric: FORCE, ...along },
    {
      title: say('Error of the force'),
      metric: SHARE,
      ...extentOf([rising.map(([, y]) => y), falling.map(([, y]) => y), limits, limits.map((one) => -one)], 0.12),
    },
  );
  const said = { steps: steps.length, most: percent(most) };
  return figure(
    show,
    say('Errors of the force by force'),
    forceClass === undefined
      ? say('Errors at {steps} forces, at most {most}; no class is reached by all.', said)
      : say('Errors at {steps} forces, at most {most}; class {class} by all terms.', { ...said, class: String(forceClass) }),
    verificationLayers(area, { rising, falling, means, classes }, show),
  );
}
