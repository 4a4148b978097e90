import { rateSensitivity, type TwoRates } from '../../hardening/index.js';
import type { Figure } from './Figure.js';
import { figure } from './figureStyle.js';
import { plane, type NamedPoint, type Place } from './plane.js';
import { shownTo, type FigureOptions } from '../words/presentation.js';

/**
 * Flow stress against strain rate on axes of equal factors as plain Vega-Lite JSON: the slope of the line is the strain-rate sensitivity m.
 *
 * @param rates - As of `rateSensitivity`.
 * @param options - Language, units, ground.
 * @returns The figure.
 * @throws {@link InputError} As `rateSensitivity`; `unknown-option`.
 *
 * @example
 * ```ts
 * const rates = { stress: 300, strainRate: 0.001, otherStress: 306, otherStrainRate: 0.01 };
 * rateSensitivityFigure(rates).description; // => 'Flow stress at two strain rates: m = 0.0086.'
 * ```
 *
 * @see Textbooks of mechanical metallurgy. Checked in `test/report/studyFigures.test.ts`.
 */
export function rateSensitivityFigure(rates: TwoRates, options: FigureOptions = {}): Figure {
  const m = rateSensitivity(rates);
  const show = shownTo('rateSensitivityFigure', options);
  const { say, number, value, colours } = show;
  const { stress, strainRate, otherStress, otherStrainRate } = rates;
  const [least, most] = [Math.min(strainRate, otherStrainRate), Math.max(strainRate, otherStrainRate)];
  const beyond = (most / least) ** 0.15;
  const [from, to] = [least / beyond, most * beyond];
  const [low, high] = [Math.min(stress, otherStress), Math.max(stress, otherStress)];
  const room = Math.max((high / low) ** 0.4, 1.02);
  const at = (rate: number): Place => [rate, stress * (rate / strainRate) ** m];
  const { path, points, words } = plane(
    show,
    { title: say('Strain rate'), metric: '1/s', from, to, log: true },
    { title: say('True stress σ'), metric: 'MPa', from: low / room, to: high * room, log: true },
  );
  const named = (x: number, y: number): NamedPoint => ({ x, y, text: value(y, 'MPa', 4), side: x === least ? 'right' : 'left' });
  const middle = at(Math.sqrt(from * to));
  return figure(show, say('Strain-rate sensitivity'), say('Flow stress at two strain rates: m = {m}.', { m: number(m, 3) }), [
    path([at(from), at(to)], { color: colours.line, strokeWidth: 1.3, strokeDash: [6, 4] }),
    ...words([{ x: middle[0], y: middle[1], text: `m = ${number(m, 3)}`, side: 'right' }]),
    ...points([named(strainRate, stress), named(otherStrainRate, otherStress)]),
  ]);
}
