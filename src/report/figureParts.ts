/** A value in a figure's data or settings. */
export type FigureValue = string | number | boolean | null | readonly FigureValue[] | { readonly [name: string]: FigureValue };

/** A figure as plain Vega-Lite JSON. */
export interface Figure {
  /** Which language the JSON is written in. */
  readonly $schema: string;
  /** Heading of the figure. */
  readonly title: string;
  /** What it shows, in words, for those who cannot see it. */
  readonly description: string;
  /** Width of the plot [px]. */
  readonly width: number;
  /** Height of the plot [px]. */
  readonly height: number;
  /** Layers, each with its data. */
  readonly layer: readonly FigureValue[];
  /** Type, lines and colours of the whole. */
  readonly config: FigureValue;
}

/** Points of a line in a figure. */
interface Line {
  readonly x: ArrayLike<number>;
  readonly y: ArrayLike<number>;
  readonly xFactor?: number;
  readonly yFactor?: number;
}

/** @internal Colours of Okabe and Ito, told apart by colour-blind readers; in black and white the dashes tell. */
export const ink = { curve: '#0072b2', line: '#d55e00', law: '#007a5a', mark: '#222222' } as const;

const MOST_POINTS = 900;

/** @internal At most so many points of a line, with the lowest and highest of each stretch, so that peaks stay. */
export function thinned({ x, y, xFactor = 1, yFactor = 1 }: Line): FigureValue[] {
  const n = x.length;
  const point = (i: number) => ({ i, x: x[i]! * xFactor, y: y[i]! * yFactor });
  if (n <= MOST_POINTS) return Array.from({ length: n }, (_, i) => point(i));
  const buckets = MOST_POINTS / 2 - 1;
  const kept = new Set([0, n - 1]);
  for (let b = 0; b < buckets; b += 1) {
    const from = Math.floor((b * n) / buckets);
    const to = Math.floor(((b + 1) * n) / buckets);
    let low = from;
    let high = from;
    for (let i = from; i < to; i += 1) {
      if (y[i]! < y[low]!) low = i;
      if (y[i]! > y[high]!) high = i;
    }
    kept.add(low).add(high);
  }
  return [...kept].sort((a, b) => a - b).map(point);
}

/** @internal An axis: its title, and limits a little beyond the data. */
export interface Axis {
  readonly title: string;
  readonly from?: number;
  readonly to?: number;
  /** True where only whole numbers lie on it. */
  readonly whole?: true;
}

/** @internal Both axes as encoding. */
export function axes(x: Axis, y: Axis): { readonly x: FigureValue; readonly y: FigureValue } {
  const one = (field: string, { title, from, to, whole }: Axis): FigureValue => ({
    field,
    type: 'quantitative',
    title,
    ...(whole === undefined ? {} : { axis: { tickMinStep: 1 } }),
    ...(from === undefined || to === undefined ? { scale: { zero: false } } : { scale: { domain: [from, to], nice: false } }),
  });
  return { x: one('x', x), y: one('y', y) };
}

/** @internal A line in the order of its points: a curve may run back. */
export function lineLayer(
  values: readonly FigureValue[],
  encoding: ReturnType<typeof axes>,
  mark: { readonly [name: string]: FigureValue },
): FigureValue {
  return {
    data: { values },
    mark: { type: 'line', clip: true, ...mark },
    encoding: { ...encoding, order: { field: 'i', type: 'quantitative' } },
  };
}

/** A point that is named in a figure. */
export interface NamedPoint {
  readonly x: number;
  readonly y: number;
  readonly text: string;
  /** Side of the point on which its name stands. */
  readonly side: 'left' | 'right';
}

/** @internal Points with their names beside them. */
export function pointLayers(points: readonly NamedPoint[], encoding: ReturnType<typeof axes>): FigureValue[] {
  const of = (side: NamedPoint['side']) => points.filter((one) => one.side === side).map(({ x, y, text }) => ({ x, y, text }));
  const names = (side: NamedPoint['side']): FigureValue[] => {
    const values = of(side);
    if (values.length === 0) return [];
    const mark = {
      type: 'text',
      align: side === 'left' ? 'right' : 'left',
      dx: side === 'left' ? -8 : 8,
      dy: side === 'left' ? -6 : 10,
      color: ink.mark,
      fontSize: 11.5,
    };
    return [{ data: { values }, mark, encoding: { ...encoding, text: { field: 'text' } } }];
  };
  if (points.length === 0) return [];
  const values = points.map(({ x, y }) => ({ x, y }));
  return [
    { data: { values }, mark: { type: 'point', filled: false, size: 46, strokeWidth: 1.4, color: ink.mark }, encoding },
    ...names('left'),
    ...names('right'),
  ];
}

/** @internal A figure of layers, in the one style of all figures. */
export function figure(title: string, description: string, layer: readonly FigureValue[]): Figure {
  return {
    $schema: 'https://vega.github.io/schema/vega-lite/v6.json',
    title,
    description,
    width: 560,
    height: 330,
    layer,
    config: {
      background: 'white',
      font: 'Georgia, "Times New Roman", serif',
      title: { anchor: 'start', fontSize: 14, fontWeight: 'normal', offset: 10, color: '#222222' },
      axis: {
        gridColor: '#e4e4e0',
        domainColor: '#777777',
        tickColor: '#777777',
        labelFontSize: 11,
        titleFontSize: 12,
        titleFontWeight: 'normal',
        labelColor: '#333333',
        titleColor: '#222222',
      },
      view: { stroke: null },
    },
  };
}

/** @internal Largest of a list. */
export const largest = (list: ArrayLike<number>, end = list.length): number => {
  let most = -Infinity;
  for (let i = 0; i < end; i += 1) most = Math.max(most, list[i]!);
  return most;
};
