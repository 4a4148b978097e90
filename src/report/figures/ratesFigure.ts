import { testingRates } from '../../curve/index.js';
import type { Figure } from './Figure.js';
import { figure } from './figureStyle.js';
import { plane } from './plane.js';
import type { Presentation } from '../words/presentation.js';
import { STRAIN_RATE } from '../words/shownUnit.js';
import type { TensionOrCurve } from '../words/TensionOrCurve.js';
import { largest } from './thinned.js';

/** @internal Strain rate over time, with the highest rates of ISO 6892-1 method B where they are near. */
export function ratesFigure({ rates }: TensionOrCurve, show: Presentation): Figure | undefined {
  if (!rates || rates.time.length < 2) return undefined;
  const { say, digits, colours } = show;
  const top = Math.max(largest(rates.strainRate), 1e-12);
  const end = rates.time[rates.time.length - 1]!;
  const { upToProof, afterYield } = testingRates.methodB;
  const limits = [upToProof, afterYield].filter((limit) => limit < 1.1 * top && limit > 0.1 * top);
  const { line, path } = plane(
    show,
    { title: say('Time t'), metric: 's', from: 0, to: end },
    { title: say('Strain rate'), metric: STRAIN_RATE, from: 0, to: 1.1 * top },
  );
  return figure(
    show,
    say('Strain rate over time'),
    say('Local strain rates up to {rate} per second.', { rate: digits(top.toExponential(2)) }),
    [
      line({ x: rates.time, y: rates.strainRate }, { color: colours.curve, strokeWidth: 1.3 }),
      ...limits.map((limit) =>
        path(
          [
            [0, limit],
            [end, limit],
          ],
          { color: colours.line, strokeDash: [5, 4], strokeWidth: 1 },
        ),
      ),
    ],
  );
}
