import { axes, figure, ink, largest, lineLayer, pointLayers, thinned, type Figure, type NamedPoint } from './figureParts.js';

/** @internal One line of a figure of force: force [N] over travel, depth or time. */
export interface ForceLine {
  readonly x: ArrayLike<number>;
  readonly force: ArrayLike<number>;
}

/** @internal What a figure of force shows. */
export interface ForceFigure {
  readonly title: string;
  readonly description: string;
  /** Title of the axis along. */
  readonly along: string;
  readonly lines: readonly ForceLine[];
  /** Points that have names, in the units of the axis and N. */
  readonly points: readonly NamedPoint[];
}

/** Dashes by which several lines are told apart, in black and white too. */
const DASHES = [[], [6, 3], [2, 3], [8, 3, 2, 3]] as const;

/** @internal Force in kN against what lies along, one line for each record. */
export function forceFigure({ title, description, along, lines, points }: ForceFigure): Figure {
  const top = Math.max(1e-9, ...lines.map(({ force }) => largest(force) / 1000));
  const most = Math.max(...lines.map(({ x }) => largest(x)));
  const least = Math.min(...lines.map(({ x }) => Array.from(x).reduce((a, b) => Math.min(a, b))));
  const span = Math.max(most - least, 1e-9);
  const encoding = axes(
    { title: along, from: least - 0.01 * span, to: most + 0.06 * span },
    { title: 'Force F / kN', from: 0, to: 1.15 * top },
  );
  return figure(title, description, [
    ...lines.map(({ x, force }, k) =>
      lineLayer(thinned({ x, y: force, yFactor: 1e-3 }), encoding, {
        color: ink.curve,
        strokeWidth: 1.6,
        strokeDash: DASHES[k % DASHES.length]!,
      }),
    ),
    ...pointLayers(
      points.map((one) => ({ ...one, y: one.y / 1000 })),
      encoding,
    ),
  ]);
}
