import { testingRates } from '../../curve/index.js';
import type { LoadingStage } from '../../methods/index.js';
import type { Figure } from './Figure.js';
import { figure } from './figureStyle.js';
import { plane } from './plane.js';
import type { Presentation } from '../words/presentation.js';
import { STRAIN_RATE } from '../words/shownUnit.js';
import type { TensionOrCurve } from '../words/TensionOrCurve.js';
import { largest } from './thinned.js';

/** The time at which the stage of yielding is over: there one limit ends and the next begins. */
function timeOfYield({ loading }: TensionOrCurve): number | undefined {
  const timeOf = (name: LoadingStage['stage']) => loading?.stages.find(({ stage }) => stage === name)?.time;
  // a stage of few samples is left out
  return timeOf('yield')?.[1] ?? timeOf('hardening')?.[0];
}

/** @internal Strain rate over time, with the highest rates of ISO 6892-1 method B where they are near. */
export function ratesFigure(result: TensionOrCurve, show: Presentation): Figure | undefined {
  const { rates, upperYieldStrength } = result;
  if (!rates || rates.time.length < 2) return undefined;
  const { say, digits, colours } = show;
  const top = Math.max(largest(rates.strainRate), 1e-12);
  const end = rates.time[rates.time.length - 1]!;
  const { upToProof, afterYield } = testingRates.methodB;
  const yields = timeOfYield(result);
  const limits =
    yields === undefined
      ? []
      : [
          {
            limit: upToProof,
            from: 0,
            to: yields,
            text: upperYieldStrength ? say('limit to the end of yield') : say('limit up to the proof strength'),
          },
          { limit: afterYield, from: yields, to: end, text: say('limit after yield') },
        ].filter(({ limit }) => limit < 1.1 * top && limit > 0.1 * top);
  const { line, path, words } = plane(
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
      ...limits.map(({ limit, from, to }) =>
        path(
          [
            [from, limit],
            [to, limit],
          ],
          { color: colours.line, strokeDash: [5, 4], strokeWidth: 1 },
        ),
      ),
      ...words(limits.map(({ limit, from, text }) => ({ x: from, y: limit, text, side: 'over' }))),
    ],
  );
}
