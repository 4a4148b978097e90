import { s } from './element.js';

/** Colours by name: a page sets the variable, a report keeps what stands behind it. */
export const ink = {
  curve: 'var(--fig-curve, #0072b2)',
  line: 'var(--fig-line, #b34a00)',
  law: 'var(--fig-law, #007a5a)',
  mark: 'var(--fig-mark, #222222)',
  grid: 'var(--fig-grid, #e4e4e0)',
  text: 'var(--fig-text, #333333)',
} as const;

const FONT = "Georgia, 'Times New Roman', serif";
const LEFT = 52;
const BOTTOM = 42;
const TOP = 12;
const RIGHT = 14;

/** Limits of an axis. */
export type Limits = readonly [low: number, high: number];

/** A drawing with its axes. */
export interface Plot {
  readonly svg: SVGSVGElement;
  /** Where a value stands [px]. */
  readonly x: (value: number) => number;
  readonly y: (value: number) => number;
  /** The value that stands at a place [px]. */
  readonly valueAt: (place: number) => number;
  /** Layer of the curves, cut off at the axes. */
  readonly inside: SVGGElement;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** Round places between two limits, each with its number. */
function ticks([low, high]: Limits, wanted: number): { readonly value: number; readonly text: string }[] {
  const rough = (high - low) / wanted;
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = ([1, 2, 5, 10].find((one) => one * power >= rough) ?? 10) * power;
  const first = Math.ceil(low / step - 1e-9);
  const decimals = Math.max(0, -Math.floor(Math.log10(step) + 1e-9));
  return Array.from({ length: Math.max(0, Math.floor(high / step + 1e-9) - first + 1) }, (_, k) => {
    const value = (first + k) * step;
    return { value, text: value.toFixed(decimals).replace('-', '−') };
  });
}

let clips = 0;

/** An empty drawing with axes and grid. */
export function plot(
  size: { readonly width: number; readonly height: number },
  x: { readonly title: string; readonly limits: Limits },
  y: { readonly title: string; readonly limits: Limits },
): Plot {
  const { width, height } = size;
  const [right, bottom] = [width - RIGHT, height - BOTTOM];
  const scale =
    ([low, high]: Limits, from: number, to: number) =>
    (value: number): number =>
      from + ((value - low) / (high - low)) * (to - from);
  const px = scale(x.limits, LEFT, right);
  const py = scale(y.limits, bottom, TOP);
  clips += 1;
  const clip = `clip${clips}`;
  const text = (content: string, at: Readonly<Record<string, string | number>>): SVGTextElement =>
    s('text', { fill: ink.text, 'font-family': FONT, 'font-size': 12, ...at }, content);
  const grid = s('g', { stroke: ink.grid, 'stroke-width': 1 });
  const labels = s('g');
  for (const { value, text: number } of ticks(x.limits, width / 90)) {
    const at = px(value);
    grid.append(s('line', { x1: at, x2: at, y1: TOP, y2: bottom }));
    labels.append(text(number, { x: at, y: bottom + 16, 'text-anchor': 'middle' }));
  }
  for (const { value, text: number } of ticks(y.limits, height / 55)) {
    const at = py(value);
    grid.append(s('line', { x1: LEFT, x2: right, y1: at, y2: at }));
    labels.append(text(number, { x: LEFT - 7, y: at + 4, 'text-anchor': 'end' }));
  }
  labels.append(
    text(x.title, { x: (LEFT + right) / 2, y: height - 6, 'text-anchor': 'middle' }),
    text(y.title, { x: 13, y: (TOP + bottom) / 2, 'text-anchor': 'middle', transform: `rotate(-90 13 ${(TOP + bottom) / 2})` }),
  );
  const inside = s('g', { 'clip-path': `url(#${clip})` });
  const svg = s(
    'svg',
    { viewBox: `0 0 ${width} ${height}`, width, height, xmlns: 'http://www.w3.org/2000/svg' },
    s('clipPath', { id: clip }, s('rect', { x: LEFT, y: TOP, width: right - LEFT, height: bottom - TOP })),
    grid,
    labels,
    inside,
  );
  const valueAt = (place: number): number => x.limits[0] + ((place - LEFT) / (right - LEFT)) * (x.limits[1] - x.limits[0]);
  return { svg, x: px, y: py, valueAt, inside, left: LEFT, right, top: TOP, bottom };
}

/** A line through points, as the path of a drawing. */
export function pathOf({ x, y }: Pick<Plot, 'x' | 'y'>, xs: ArrayLike<number>, ys: ArrayLike<number>): string {
  let path = '';
  for (let i = 0; i < xs.length; i += 1) path += `${i === 0 ? 'M' : 'L'}${x(xs[i]!).toFixed(1)} ${y(ys[i]!).toFixed(1)}`;
  return path;
}

/** A line through points. */
export function curve(
  on: Plot,
  xs: ArrayLike<number>,
  ys: ArrayLike<number>,
  colour: string,
  more: Readonly<Record<string, string | number>> = {},
): SVGPathElement {
  return s('path', { d: pathOf(on, xs, ys), fill: 'none', stroke: colour, 'stroke-width': 1.8, 'stroke-linejoin': 'round', ...more });
}

/** A point with its name, on the side where there is room; at the height of another value where lines would cross the name. */
export function named(on: Plot, x: number, y: number, name: string, nameAt = y): SVGGElement {
  const [px, py] = [on.x(x), on.y(y)];
  const toLeft = px > (on.left + on.right) / 2;
  return s(
    'g',
    { fill: ink.mark },
    s('circle', { cx: px, cy: py, r: 3.5 }),
    s(
      'text',
      {
        x: px + (toLeft ? -7 : 7),
        y: Math.min(on.y(nameAt) + 15, on.bottom - 6),
        'text-anchor': toLeft ? 'end' : 'start',
        'font-family': FONT,
        'font-size': 13,
        stroke: 'var(--paper, #ffffff)',
        'stroke-width': 3,
        'paint-order': 'stroke',
      },
      name,
    ),
  );
}
