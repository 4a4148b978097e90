import { displacementClasses, verifyDisplacement, type DisplacementVerification } from '../../force/index.js';
import { extentOf } from './extentOf.js';
import type { Figure } from './Figure.js';
import { figure } from './figureStyle.js';
import { plane, type Place } from './plane.js';
import { shownTo, type FigureOptions } from '../words/presentation.js';
import { SHARE } from '../words/shownUnit.js';
import { verificationLayers } from './verificationLayers.js';

const PLACES = 40;

/**
 * Errors of a verified travel sensor or extensometer by displacement as plain Vega-Lite JSON, with the limits of the classes.
 *
 * @remarks
 * Triangles that point up are readings from below, those that point down from above; the line joins the means of those from below. The limits are a share, and near
 * zero a length.
 *
 * @param verification - As of `verifyDisplacement`.
 * @param options - Language, units, ground.
 * @returns The figure.
 * @throws {@link InputError} As `verifyDisplacement`; `unknown-option`.
 *
 * @example
 * ```ts
 * const steps = [{ reference: 1, rising: [1.004, 1.006], falling: [1.009] }, { reference: 10, rising: [10.02, 10.03] }];
 * displacementVerificationFigure({ steps, resolution: 0.002 }).title; // => 'Errors of the displacement by displacement'
 * ```
 *
 * @see ISO 9513, calibration of extensometer systems. Checked in `test/report/studyFigures.test.ts`.
 */
export function displacementVerificationFigure(verification: DisplacementVerification, options: FigureOptions = {}): Figure {
  const from = 'displacementVerificationFigure';
  const { steps, displacementClass } = verifyDisplacement(verification);
  const show = shownTo(from, options);
  const { say, value } = show;
  const errors = (reference: number, readings: ArrayLike<number> = []): Place[] =>
    Array.from(readings, (one): Place => [reference, one / reference - 1]);
  const rising = verification.steps.flatMap((one) => errors(one.reference, one.rising));
  const falling = verification.steps.flatMap((one) => errors(one.reference, one.falling));
  const means = verification.steps.map(({ reference, rising: up }): Place => {
    const own = errors(reference, up);
    return [reference, own.reduce((sum, [, error]) => sum + error, 0) / own.length];
  });
  const start = steps[0]!.reference / 1.15;
  const end = 1.1 * steps[steps.length - 1]!.reference;
  const places = Array.from({ length: PLACES }, (_, k) => start * (end / start) ** (k / (PLACES - 1)));
  const widest = displacementClasses.findIndex(({ share, length }) =>
    [...rising, ...falling].every(([x, error]) => Math.abs(error) <= Math.max(share, length / x)),
  );
  const shown = displacementClasses.slice(
    Math.max(0, (widest < 0 ? displacementClasses.length : widest) - 1),
    widest < 0 ? undefined : widest + 1,
  );
  const classes = shown
    .map(({ displacementClass: name, share, length }) => ({
      text: say('class {name}', { name }),
      limits: places.map((x): Place => [x, Math.max(share, length / x)]),
    }))
    .reverse();
  const highest = classes.flatMap(({ limits }) => limits.map(([, y]) => y));
  const area = plane(
    show,
    { title: say('Displacement by the reference'), metric: 'mm', from: start, to: end, log: true },
    {
      title: say('Error of the displacement'),
      metric: SHARE,
      ...extentOf([rising.map(([, y]) => y), falling.map(([, y]) => y), highest, highest.map((y) => -y)], 0.12),
    },
  );
  const said = { steps: steps.length, most: value(Math.max(...steps.map(({ error }) => Math.abs(error))), 'mm', 3) };
  return figure(
    show,
    say('Errors of the displacement by displacement'),
    displacementClass === undefined
      ? say('Errors at {steps} displacements, at most {most}; no class is reached by all.', said)
      : say('Errors at {steps} displacements, at most {most}; class {class} by all terms.', { ...said, class: String(displacementClass) }),
    verificationLayers(area, { rising, falling, means, classes }, show),
  );
}
