import { s } from './element.js';
import { shown } from './format.js';
import { ink, type Plot } from './plot.js';
import type { Preview } from './preview.js';
import { fill, words } from './words.js';

/** Size of the name of the crossing [px]. */
const SIZE = 14;

/** Elastic line, offset line and their crossing, drawn anew for every window. */
export function lines(on: Plot, top: number, offset: number, symbol: string) {
  const span = s('rect', { y: on.top, height: on.bottom - on.top, fill: ink.line, 'fill-opacity': 0.1 });
  const line = s('line', { stroke: ink.line, 'stroke-width': 1.8 });
  const offsetLine = s('line', { stroke: ink.line, 'stroke-width': 1.5, 'stroke-dasharray': '6 4' });
  const point = s('circle', { r: 4.5, fill: ink.mark });
  const name = s('text', {
    fill: ink.mark,
    'font-family': "Georgia, 'Times New Roman', serif",
    'font-size': SIZE,
    stroke: 'var(--paper, #ffffff)',
    'stroke-width': 4,
    'paint-order': 'stroke',
  });
  on.inside.append(span, line, offsetLine, point, name);
  const set = (element: SVGElement, attributes: Readonly<Record<string, number>>): void => {
    for (const [key, value] of Object.entries(attributes)) element.setAttribute(key, value.toFixed(2));
  };
  const along = (element: SVGElement, origin: number, slope: number): void => {
    set(element, { x1: on.x(origin), y1: on.y(0), x2: on.x(origin + top / slope), y2: on.y(top) });
  };
  return (left: number, right: number, found: Preview): void => {
    set(span, { x: left, width: Math.max(0, right - left) });
    const drawn = found.ok ? 'visible' : 'hidden';
    for (const each of [line, offsetLine]) each.setAttribute('visibility', drawn);
    const proof = found.ok ? found.proof : undefined;
    for (const each of [point, name]) each.setAttribute('visibility', proof ? 'visible' : 'hidden');
    if (!found.ok) return;
    along(line, found.origin, found.line);
    along(offsetLine, found.origin + offset, found.line);
    if (!proof) return;
    const [x, y] = [on.x(proof.strain), on.y(proof.stress)];
    set(point, { cx: x, cy: y });
    const text = fill(words.figure.offset, { symbol, value: `${shown(proof.stress)} MPa` });
    name.textContent = text;
    // on a narrow screen there is no room beside the point but above the curve
    const beside = x + 9 + 0.56 * SIZE * text.length < on.right;
    set(name, beside ? { x: x + 9, y: y + 20 } : { x: on.right - 2, y: y - 12 });
    name.setAttribute('text-anchor', beside ? 'start' : 'end');
  };
}
