import type { Phrase } from '../../languages/index.js';
import type { PaceAction, TensionPlan } from '../../planning/index.js';
import type { Figure } from './Figure.js';
import { figure } from './figureStyle.js';
import { plane } from './plane.js';
import type { Presentation } from '../words/presentation.js';
import { FORCE, PRESSURE } from '../words/shownUnit.js';

const said: Readonly<Partial<Record<PaceAction, Phrase>>> = {
  'slow-down': 'slow down',
  'hold-speed': 'keep the speed',
  'watch-yield': 'yield may begin',
  'speed-up': 'yield over: faster',
  maximum: 'maximum',
  stop: 'stop',
};

/** @internal Oil pressure, or force where there is no cylinder, against time, with the changes of speed. */
export function paceFigure({ pace, force }: TensionPlan, show: Presentation): Figure {
  const oil = force.pressure !== undefined;
  const shown = (row: TensionPlan['pace'][number]): number => (oil ? row.pressure! : row.force);
  const time = pace.map((row) => row.time);
  const values = pace.map(shown);
  const [end, top] = [Math.max(...time), Math.max(...values)];
  const what = show.say(oil ? 'Oil pressure p' : 'Force F');
  const { line, points } = plane(
    show,
    { title: show.say('Time t'), metric: 's', from: 0, to: 1.18 * end },
    { title: what, metric: oil ? PRESSURE : FORCE, from: Math.min(0, ...values), to: 1.15 * top },
  );
  const named = pace.flatMap((row, k) => {
    const text = said[row.action];
    return text === undefined
      ? []
      : [
          {
            x: time[k]!,
            y: values[k]!,
            text: show.say(text),
            side: row.action === 'maximum' || row.action === 'stop' ? ('left' as const) : ('right' as const),
          },
        ];
  });
  return figure(
    show,
    show.say('Pace of the test'),
    show.say('{what} over {time} s, with the places where the speed changes: a guide to the hand.', { what, time: show.number(end, 3) }),
    [line({ x: time, y: values }, { color: show.colours.curve, strokeWidth: 1.6 }), ...points(named)],
  );
}
