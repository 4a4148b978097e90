import type { Phrase } from '../../languages/index.js';
import type { Figure } from './Figure.js';
import { figure } from './figureStyle.js';
import { plane, type NamedPoint } from './plane.js';
import type { Presentation } from '../words/presentation.js';
import { FORCE } from '../words/shownUnit.js';
import { largest } from './thinned.js';

/** @internal One line of a figure of force: force [N] over travel, depth or time. */
export interface ForceLine {
  readonly x: ArrayLike<number>;
  readonly force: ArrayLike<number>;
}

/** @internal What a figure of force shows. */
export interface ForceFigure {
  readonly title: Phrase;
  readonly description: string;
  /** Axis along. */
  readonly along: { readonly title: Phrase; readonly metric: string };
  readonly lines: readonly ForceLine[];
  /** Points that have names, in the metric unit of the axis and N. */
  readonly points: readonly NamedPoint[];
}

/** Dashes by which several lines are told apart, in black and white too. */
const DASHES = [[], [6, 3], [2, 3], [8, 3, 2, 3]] as const;

/** @internal Force against what lies along, one line for each record. */
export function forceFigure({ title, description, along, lines, points: named }: ForceFigure, show: Presentation): Figure {
  const top = Math.max(1e-9, ...lines.map(({ force }) => largest(force)));
  const most = Math.max(...lines.map(({ x }) => largest(x)));
  const least = Math.min(...lines.map(({ x }) => Array.from(x).reduce((a, b) => Math.min(a, b))));
  const span = Math.max(most - least, 1e-9);
  const { line, points } = plane(
    show,
    { title: show.say(along.title), metric: along.metric, from: least - 0.01 * span, to: most + 0.06 * span },
    { title: show.say('Force F'), metric: FORCE, from: 0, to: 1.15 * top },
  );
  return figure(show, show.say(title), description, [
    ...lines.map(({ x, force }, k) =>
      line({ x, y: force }, { color: show.colours.curve, strokeWidth: 1.6, strokeDash: DASHES[k % DASHES.length]! }),
    ),
    ...points(named),
  ]);
}
