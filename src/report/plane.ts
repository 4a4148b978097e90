import type { Figure, FigureValue } from './Figure.js';
import type { Presentation } from './presentation.js';
import { thinned, type Line } from './thinned.js';

/** @internal An axis: its title, its metric unit, and limits a little beyond the data, in that unit. */
export interface Axis {
  readonly title: string;
  /** Unit of what is drawn along it, as `kN`; none for a number. */
  readonly metric?: string;
  readonly from?: number;
  readonly to?: number;
  /** True where only whole numbers lie on it. */
  readonly whole?: true;
}

/** @internal A point that is named in a figure, in the metric units of the axes. */
export interface NamedPoint {
  readonly x: number;
  readonly y: number;
  readonly text: string;
  /** Side of the point on which its name stands. */
  readonly side: 'left' | 'right';
}

type Mark = Readonly<Record<string, FigureValue>>;
type Encoding = Readonly<Record<string, FigureValue>>;

/** @internal Two axes on which lines and points are drawn; everything is given in metric units and drawn in those of the reader. */
export interface Plane {
  /** A line through samples, in their order (a curve may run back), thinned to what can be seen. */
  readonly line: (line: Line, mark: Mark) => FigureValue;
  /** A line from point to point. */
  readonly path: (points: readonly (readonly [x: number, y: number])[], mark: Mark) => FigureValue;
  /** Points with their names beside them. */
  readonly points: (points: readonly NamedPoint[]) => FigureValue[];
}

/** @internal The plane of two axes. */
export function plane(show: Presentation, x: Axis, y: Axis): Plane {
  const factorOf = ({ metric }: Axis): number => (metric === undefined ? 1 : show.unit(metric).factor);
  const [fx, fy] = [factorOf(x), factorOf(y)];
  const one = (field: string, { title, metric, from, to, whole }: Axis, factor: number): FigureValue => ({
    field,
    type: 'quantitative',
    title: metric === undefined ? title : `${title} / ${show.unit(metric).unit}`,
    ...(whole === undefined ? {} : { axis: { tickMinStep: 1 } }),
    scale: from === undefined || to === undefined ? { zero: false } : { domain: [from * factor, to * factor], nice: false },
  });
  const encoding: Encoding = { x: one('x', x, fx), y: one('y', y, fy) };
  const drawn = (values: readonly FigureValue[], mark: Mark): FigureValue => ({
    data: { values },
    mark: { type: 'line', clip: true, ...mark },
    encoding: { ...encoding, order: { field: 'i', type: 'quantitative' } },
  });
  const names = (values: readonly (NamedPoint & { readonly text: string })[], side: NamedPoint['side']): FigureValue[] => {
    const own = values.filter((point) => point.side === side).map(({ x: px, y: py, text }) => ({ x: px, y: py, text }));
    if (own.length === 0) return [];
    const left = side === 'left';
    const mark = {
      type: 'text',
      align: left ? 'right' : 'left',
      dx: left ? -8 : 8,
      dy: left ? -6 : 10,
      color: show.colours.mark,
      fontSize: 11.5,
    };
    return [{ data: { values: own }, mark, encoding: { ...encoding, text: { field: 'text' } } }];
  };
  return {
    line: ({ xFactor = 1, yFactor = 1, ...line }, mark) => drawn(thinned({ ...line, xFactor: xFactor * fx, yFactor: yFactor * fy }), mark),
    path: (points, mark) =>
      drawn(
        points.map(([px, py], i) => ({ i, x: px * fx, y: py * fy })),
        mark,
      ),
    points: (points) => {
      if (points.length === 0) return [];
      const values = points.map((point) => ({ ...point, x: point.x * fx, y: point.y * fy }));
      const mark = { type: 'point', filled: false, size: 46, strokeWidth: 1.4, color: show.colours.mark };
      return [
        { data: { values: values.map(({ x: px, y: py }) => ({ x: px, y: py })) }, mark, encoding },
        ...names(values, 'left'),
        ...names(values, 'right'),
      ];
    },
  };
}

/** @internal A figure of layers, in the one style of all figures. */
export function figure({ colours, language }: Presentation, title: string, description: string, layer: readonly FigureValue[]): Figure {
  return {
    $schema: 'https://vega.github.io/schema/vega-lite/v6.json',
    title,
    description,
    width: 560,
    height: 330,
    layer,
    config: {
      background: colours.ground,
      font: 'Georgia, "Times New Roman", serif',
      locale: { number: { decimal: language.decimalSign, thousands: '\u202f', grouping: [3], currency: ['', ''] } },
      title: { anchor: 'start', fontSize: 14, fontWeight: 'normal', offset: 10, color: colours.mark },
      axis: {
        gridColor: colours.grid,
        domainColor: colours.axis,
        tickColor: colours.axis,
        labelFontSize: 11,
        titleFontSize: 12,
        titleFontWeight: 'normal',
        labelColor: colours.words,
        titleColor: colours.mark,
      },
      view: { stroke: null },
    },
  };
}
