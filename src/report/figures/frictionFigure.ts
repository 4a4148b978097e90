import { cylinderFriction, type Cylinder, type EqualForceRuns, type EqualPressureRuns } from '../../force/index.js';
import { extentOf } from './extentOf.js';
import type { Figure } from './Figure.js';
import { figure } from './figureStyle.js';
import { plane, type Place } from './plane.js';
import { shownTo, type FigureOptions } from '../words/presentation.js';
import { FORCE, SMALL_FORCE } from '../words/shownUnit.js';
import { largest } from './thinned.js';

/**
 * Friction of the cylinder against force as plain Vega-Lite JSON, with its straight line where there is one.
 *
 * @remarks
 * Where the line meets no force lies the constant part (seals, guide); its slope is the part that grows with the force.
 *
 * @param runs - As of `cylinderFriction`.
 * @param cylinder - `bore` and `rod` [mm], likewise.
 * @param options - Language, units, ground.
 * @returns The figure, over the mean of rising and falling force.
 * @throws {@link InputError} As `cylinderFriction`; `unknown-option`.
 *
 * @example
 * ```ts
 * const runs = { pressure: [5, 10, 15], risingForce: [6100, 12300, 18500], fallingForce: [6300, 12700, 19100] };
 * frictionFigure(runs, { bore: 40 }).title; // => 'Friction of the cylinder'
 * ```
 *
 * @see Balance of forces at the piston. Checked in `test/report/studyFigures.test.ts`.
 */
export function frictionFigure(runs: EqualPressureRuns | EqualForceRuns, cylinder: Cylinder, options: FigureOptions = {}): Figure {
  const { friction, constantPart, proportionalPart } = cylinderFriction(runs, cylinder);
  const show = shownTo('frictionFigure', options);
  const { say, value, percent, colours } = show;
  const mean = 'pressure' in runs ? Array.from(runs.risingForce, (one, k) => (one + runs.fallingForce[k]!) / 2) : Array.from(runs.force);
  const end = 1.08 * largest(mean);
  const fitted =
    constantPart === undefined || proportionalPart === undefined ? undefined : (F: number) => constantPart + proportionalPart * F;
  const { path, marks } = plane(
    show,
    { title: say('Force F'), metric: FORCE, from: 0, to: end },
    { title: say('Friction'), metric: SMALL_FORCE, ...extentOf([friction, [0], fitted ? [fitted(0), fitted(end)] : []], 0.08) },
  );
  return figure(
    show,
    say('Friction of the cylinder'),
    fitted
      ? say('Friction at {steps} steps: {constant} and {share} of the force.', {
          steps: friction.length,
          constant: value(constantPart!, SMALL_FORCE, 3),
          share: percent(proportionalPart!),
        })
      : say('Friction at {steps} steps.', { steps: friction.length }),
    [
      ...(fitted ? [path([[0, fitted(0)], [end, fitted(end)]], { color: colours.line, strokeWidth: 1.3, strokeDash: [6, 4] })] : []), // prettier-ignore
      marks(Array.from(friction, (one, k): Place => [mean[k]!, one]), { filled: true, color: colours.curve }), // prettier-ignore
    ],
  );
}
