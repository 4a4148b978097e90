import type { FigureValue } from './Figure.js';
import { HEIGHT, NAME_SIZE, WIDTH, widthOf } from './figureStyle.js';
import type { Presentation } from '../words/presentation.js';
import { type MetricUnit } from '../words/shownUnit.js';
import { thinned, type Line } from './thinned.js';

/** @internal An axis: its title, its unit, and limits a little beyond the data, in the unit of what is drawn. */
export interface Axis {
  readonly title: string;
  /** Metric unit of what is drawn along it, or how that is shown in one; none for a number. */
  readonly metric?: string | MetricUnit;
  readonly from?: number;
  readonly to?: number;
  /** True where only whole numbers lie on it. */
  readonly whole?: true;
  /** True where equal steps are equal factors. */
  readonly log?: true;
  /** Names of rows, the first on top, in the place of numbers: row k lies at k. */
  readonly names?: readonly string[];
}

/** @internal A point that is named in a figure, in the units of what is drawn. */
export interface NamedPoint {
  readonly x: number;
  readonly y: number;
  readonly text: string;
  /** Where its name stands: above to the left, below to the right, above to the right (beside a falling line), or below to the left (under its end). */
  readonly side: 'left' | 'right' | 'over' | 'under';
}

type Mark = Readonly<Record<string, FigureValue>>;
type Encoding = Readonly<Record<string, FigureValue>>;

/** @internal A number pair, in the units of what is drawn. */
export type Place = readonly [x: number, y: number];

/** @internal Two axes on which lines and points are drawn; everything is given in the units of the library, or in metric ones that an axis names, and drawn in those of the reader. */
export interface Plane {
  /** A line through samples, in their order (a curve may run back), thinned to what can be seen. */
  readonly line: (line: Line, mark: Mark) => FigureValue;
  /** A line from point to point. */
  readonly path: (points: readonly Place[], mark: Mark) => FigureValue;
  /** Points with their names beside them. */
  readonly points: (points: readonly NamedPoint[]) => FigureValue[];
  /** Names alone, beside lines. */
  readonly words: (points: readonly NamedPoint[]) => FigureValue[];
  /** Points without names. */
  readonly marks: (points: readonly Place[], mark?: Mark) => FigureValue;
  /** Straight strokes, each from one place to another. */
  readonly strokes: (ends: readonly (readonly [from: Place, to: Place])[], mark: Mark) => FigureValue;
  /** Rectangles, each between two corners. */
  readonly boxes: (corners: readonly (readonly [from: Place, to: Place])[], mark: Mark) => FigureValue;
  /** A filled band between a lower and an upper line. */
  readonly band: (points: readonly (readonly [x: number, low: number, high: number])[], mark: Mark) => FigureValue;
}

/** A name may stand out beyond the plot by so much [px]. */
const BESIDE = 6;

/** A name below a point needs so much room above the axis [px]. */
const BELOW = 18;

/** True where a place lies on an axis; one beyond it would stand among the numbers of the axis. */
const isOn = (at: number, { from = -Infinity, to = Infinity, names }: Axis): boolean => names !== undefined || (at >= from && at <= to);

/** The side on which a name has room; that which was asked for, where it has. */
function sideOf({ x, y, text, side: asked }: NamedPoint, { from, to, log }: Axis, up: Axis): NamedPoint['side'] {
  const low = up.from !== undefined && up.to !== undefined && !up.log && ((y - up.from) / (up.to - up.from)) * HEIGHT < BELOW;
  const side = !low ? asked : asked === 'right' ? 'over' : asked === 'under' ? 'left' : asked;
  if (from === undefined || to === undefined) return side;
  const at = (log ? Math.log(x / from) / Math.log(to / from) : (x - from) / (to - from)) * WIDTH;
  const need = widthOf(text) + 8 - BESIDE;
  if (side === 'left') return at - need < 0 && at + need < WIDTH ? 'over' : 'left';
  if (side === 'under') return at - need < 0 && at + need < WIDTH ? 'right' : 'under';
  return at + need > WIDTH && at - need > 0 ? 'left' : side;
}

/** Names as text of an expression, in which the separators of lines and paragraphs would end the text. */
const quoted = (names: readonly string[]): string =>
  JSON.stringify(names).replace(/[\u2028\u2029]/g, (sign) => `\\u${sign.charCodeAt(0).toString(16)}`);

/** How the values of an axis are written: names of rows, whole numbers, or as the language writes numbers. */
function labels({ names, whole }: Axis): FigureValue {
  // the names stand in an expression as text, which runs nothing
  if (names)
    return {
      axis: {
        values: names.map((_, k) => k),
        labelExpr: `${quoted(names)}[datum.value]`,
        ...{ grid: false, ticks: false, domain: false, labelLimit: 0, labelPadding: 8, labelFontSize: NAME_SIZE },
      },
    };
  return whole ? { axis: { tickMinStep: 1 } } : {};
}

function scaleOf({ from, to, log, names }: Axis, factor: number): FigureValue {
  if (names) return { domain: [names.length - 0.5, -0.5], nice: false, zero: false };
  if (from === undefined || to === undefined) return { zero: false };
  return { domain: [from * factor, to * factor], nice: false, ...(log ? { type: 'log' } : {}) };
}

/** @internal The plane of two axes. */
export function plane(show: Presentation, x: Axis, y: Axis): Plane {
  const factorOf = ({ metric }: Axis): number => (metric === undefined ? 1 : show.unit(metric).factor);
  const [fx, fy] = [factorOf(x), factorOf(y)];
  const one = (field: string, axis: Axis, factor: number): FigureValue => ({
    field,
    type: 'quantitative',
    title: axis.names ? null : axis.metric === undefined ? axis.title : `${axis.title} / ${show.unit(axis.metric).unit}`,
    ...(labels(axis) as Encoding),
    scale: scaleOf(axis, factor),
  });
  const encoding: Encoding = { x: one('x', x, fx), y: one('y', y, fy) };
  const between: Encoding = { ...encoding, x2: { field: 'x2' }, y2: { field: 'y2' } };
  const drawn = (values: readonly FigureValue[], mark: Mark): FigureValue => ({
    data: { values },
    mark: { type: 'line', clip: true, ...mark },
    encoding: { ...encoding, order: { field: 'i', type: 'quantitative' } },
  });
  const names = (given: readonly NamedPoint[], side: NamedPoint['side']): FigureValue[] => {
    const own = given.filter((point) => sideOf(point, x, y) === side).map(({ x: px, y: py, text }) => ({ x: px * fx, y: py * fy, text }));
    if (own.length === 0) return [];
    const left = side === 'left' || side === 'under';
    const mark = {
      type: 'text',
      align: left ? 'right' : 'left',
      dx: left ? -8 : 8,
      dy: side === 'right' || side === 'under' ? 10 : -8,
      color: show.colours.mark,
      fontSize: NAME_SIZE,
    };
    return [{ data: { values: own }, mark, encoding: { ...encoding, text: { field: 'text' } } }];
  };
  const words = (given: readonly NamedPoint[]): FigureValue[] => [
    ...names(given, 'left'),
    ...names(given, 'right'),
    ...names(given, 'over'),
    ...names(given, 'under'),
  ];
  const marks = (given: readonly Place[], mark: Mark = {}): FigureValue => ({
    data: { values: given.map(([px, py]) => ({ x: px * fx, y: py * fy })) },
    mark: { type: 'point', filled: false, opacity: 1, size: 46, strokeWidth: 1.4, color: show.colours.mark, ...mark },
    encoding,
  });
  const spans = (given: readonly (readonly [Place, Place])[], mark: Mark): FigureValue => ({
    data: { values: given.map(([[x1, y1], [x2, y2]]) => ({ x: x1 * fx, y: y1 * fy, x2: x2 * fx, y2: y2 * fy })) },
    mark: { clip: true, ...mark },
    encoding: between,
  });
  return {
    line: ({ xFactor = 1, yFactor = 1, ...line }, mark) => drawn(thinned({ ...line, xFactor: xFactor * fx, yFactor: yFactor * fy }), mark),
    path: (points, mark) =>
      drawn(
        points.map(([px, py], i) => ({ i, x: px * fx, y: py * fy })),
        mark,
      ),
    points: (points) => {
      const seen = points.filter((point) => isOn(point.x, x) && isOn(point.y, y));
      return seen.length === 0 ? [] : [marks(seen.map(({ x: px, y: py }) => [px, py])), ...words(seen)];
    },
    words,
    marks,
    strokes: (ends, mark) => spans(ends, { type: 'rule', ...mark }),
    boxes: (corners, mark) => spans(corners, { type: 'rect', ...mark }),
    band: (points, mark) => ({
      data: { values: points.map(([px, low, high]) => ({ x: px * fx, y: low * fy, y2: high * fy })) },
      mark: { type: 'area', clip: true, ...mark },
      encoding: { ...encoding, y2: { field: 'y2' } },
    }),
  };
}
