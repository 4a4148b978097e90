import type { PaceAction, TensionPlan } from '../planning/index.js';
import { axes, figure, ink, lineLayer, pointLayers, thinned, type Figure } from './figureParts.js';

const said: Readonly<Partial<Record<PaceAction, string>>> = {
  'slow-down': 'slow down',
  'hold-speed': 'keep the speed',
  'watch-yield': 'yield may begin',
  'speed-up': 'yield over: faster',
  maximum: 'maximum',
};

/** @internal Oil pressure, or force where there is no cylinder, against time, with the changes of speed. */
export function paceFigure({ pace, force }: TensionPlan): Figure {
  const oil = force.pressure !== undefined;
  const shown = (row: TensionPlan['pace'][number]): number => (oil ? 10 * row.pressure! : row.force / 1000);
  const time = pace.map((row) => row.time);
  const values = pace.map(shown);
  const [end, top] = [Math.max(...time), Math.max(...values)];
  const what = oil ? 'Oil pressure p / bar' : 'Force F / kN';
  const encoding = axes({ title: 'Time t / s', from: 0, to: 1.18 * end }, { title: what, from: Math.min(0, ...values), to: 1.15 * top });
  const points = pace.flatMap((row, k) => {
    const text = said[row.action];
    return text === undefined
      ? []
      : [{ x: time[k]!, y: values[k]!, text, side: row.action === 'maximum' ? ('left' as const) : ('right' as const) }];
  });
  return figure('Pace of the test', `${what} over ${end.toFixed(0)} s, with the places where the speed changes: a guide to the hand.`, [
    lineLayer(thinned({ x: time, y: values }), encoding, { color: ink.curve, strokeWidth: 1.6 }),
    ...pointLayers(points, encoding),
  ]);
}
