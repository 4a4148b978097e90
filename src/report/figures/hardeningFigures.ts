import type { HardeningPicture } from '../../hardening/index.js';
import { extentOf } from './extentOf.js';
import type { Figure } from './Figure.js';
import { figure } from './figureStyle.js';
import { plane } from './plane.js';
import { shownTo, type FigureOptions } from '../words/presentation.js';
import { requireMade } from './requireMade.js';
import { largest } from './thinned.js';

/** Rates are drawn up to so many times the stress: above it lies the elastic part. */
const STEEPEST = 8;

/**
 * Hardening along a curve as plain Vega-Lite JSON: the instantaneous exponent against true strain, and the rate against true stress (Kocks-Mecking).
 *
 * $$ n_i = \frac{\mathrm{d} \ln \sigma}{\mathrm{d} \ln \varepsilon}, \qquad \theta = \frac{\mathrm{d}\sigma}{\mathrm{d}\varepsilon} $$
 *
 * @remarks
 * A power law is a level line in the first, Voce's law a falling straight line in the second. Dashed lines mark where a neck begins: n = ε, and θ = σ.
 *
 * @param picture - A result of `hardeningPicture`.
 * @param options - Language, units, ground.
 * @returns `exponent` and `rate`; `testpiece/render` draws them.
 * @throws {@link InputError} `missing`, `wrong-type`, `not-finite`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * const strain = Array.from({ length: 100 }, (_, i) => 0.02 + 0.002 * i);
 * const picture = hardeningPicture({ strain, stress: strain.map((e) => 500 * e ** 0.2) });
 * hardeningFigures(picture).exponent.title; // => 'Instantaneous hardening exponent'
 * ```
 *
 * @see Kocks and Mecking, Prog. Mater. Sci. 48 (2003) 171. Checked in `test/report/studyFigures.test.ts`.
 */
export function hardeningFigures(picture: HardeningPicture, options: FigureOptions = {}): Readonly<Record<'exponent' | 'rate', Figure>> {
  const from = 'hardeningFigures';
  const { strain, stress, rate, exponent } = requireMade(from, 'picture', picture, { columns: ['strain', 'stress', 'rate', 'exponent'] });
  const show = shownTo(from, options);
  const { say, number, value, colours } = show;
  const most = Math.max(largest(strain), 1e-9);
  const strongest = Math.max(largest(stress), 1e-9);
  const curve = { color: colours.curve, strokeWidth: 1.5 };
  const limit = { color: colours.line, strokeWidth: 1.1, strokeDash: [6, 4] };
  const n = { from: 0, to: Math.max(1.1 * most, Math.min(1.2, 1.15 * Math.max(largest(exponent), 1e-9))) };
  const byStrain = plane(show, { title: say('True strain ε'), from: 0, to: 1.06 * most }, { title: say('Instantaneous exponent n'), ...n });
  const stresses = extentOf([stress], 0.06);
  const steepest = Math.max(1.3 * strongest, Math.min(1.1 * largest(rate), STEEPEST * strongest));
  const byStress = plane(
    show,
    { title: say('True stress σ'), metric: 'MPa', ...stresses },
    { title: say('Hardening rate θ'), metric: 'MPa', from: 0, to: steepest },
  );
  return {
    exponent: figure(
      show,
      say('Instantaneous hardening exponent'),
      say('Exponent along the curve up to a true strain of {strain}; the dashed line is where a neck begins.', { strain: number(most, 3) }),
      [
        byStrain.line({ x: strain, y: exponent }, curve),
        byStrain.path([[0, 0], [most, most]], limit), // prettier-ignore
        ...byStrain.words([{ x: 0.72 * most, y: 0.72 * most, text: 'n = ε', side: 'right' }]),
      ],
    ),
    rate: figure(
      show,
      say('Hardening rate against true stress'),
      say('Hardening rate up to a true stress of {stress}; the dashed line is where a neck begins.', {
        stress: value(strongest, 'MPa', 3),
      }),
      [
        byStress.line({ x: stress, y: rate }, curve),
        byStress.path([[stresses.from, stresses.from], [strongest, strongest]], limit), // prettier-ignore
        ...byStress.words([{ x: (stresses.from + strongest) / 2, y: (stresses.from + strongest) / 2, text: 'θ = σ', side: 'left' }]),
      ],
    ),
  };
}
