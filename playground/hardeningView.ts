import { considereFigure, lawsFigure, lawStroke } from './curveFigures.js';
import { h, s } from './element.js';
import { shown } from './format.js';
import type { HardeningView } from './hardening.js';
import { fill, words } from './words.js';

const HEIGHT = 320;
/** Weights below it are next to nothing. */
const LEAST = 1e-4;
const symbols: Readonly<Record<string, string>> = words.hardening.symbols;

/** The section of necking and hardening. */
export function hardeningView() {
  const considere = h('div', { class: 'figure' });
  const said = h('p');
  const laws = h('div', { class: 'figure' });
  const table = h('tbody');
  const failed = h('p', { class: 'soft' });
  const none = h('p');
  const tableElement = h(
    'table',
    { class: 'laws' },
    h('caption', {}, words.hardening.table),
    h('thead', {}, h('tr', {}, h('td'), ...words.hardening.columns.map((name) => h('th', { scope: 'col' }, name)))),
    table,
  );
  const pictures = h(
    'div',
    {},
    h(
      'div',
      { class: 'pair' },
      h('div', {}, h('h3', {}, words.hardening.considere), considere, said),
      h('div', {}, h('h3', {}, words.hardening.laws), laws),
    ),
    tableElement,
    failed,
  );
  const element = h(
    'section',
    { 'aria-labelledby': 'hardening-heading' },
    h('h2', { id: 'hardening-heading' }, words.hardening.heading),
    none,
    pictures,
  );
  pictures.hidden = true;

  let last: HardeningView | undefined;
  const size = (place: HTMLElement) => ({ width: Math.max(280, Math.floor(place.clientWidth)), height: HEIGHT });
  const update = (view: HardeningView): void => {
    last = view;
    pictures.hidden = !view.ok;
    none.textContent = view.ok ? '' : fill(words.hardening.none, { message: view.message || words.hardening.noFlow });
    if (!view.ok) return;
    considere.replaceChildren(considereFigure(view, size(considere)));
    said.textContent =
      'strain' in view.neck
        ? fill(words.hardening.considereFound, { strain: shown(view.neck.strain, 3), stress: shown(view.neck.stress, 3) })
        : fill(words.hardening.considereNone, { message: view.neck.message });
    laws.replaceChildren(lawsFigure(view, size(laws)));
    table.replaceChildren(
      ...view.laws.map(({ name, weight, necking, parameters }, k) => {
        const { colour, dash } = lawStroke(k);
        const sample = s(
          'svg',
          { width: 34, height: 10, 'aria-hidden': 'true' },
          s('line', { x1: 0, x2: 34, y1: 5, y2: 5, stroke: colour, 'stroke-width': 2, 'stroke-dasharray': dash }),
        );
        const list = Object.entries(parameters).map(([key, value]) => `${symbols[key] ?? key} = ${shown(value)}`);
        return h(
          'tr',
          {},
          h('td', {}, sample),
          h('th', { scope: 'row' }, name),
          h(
            'td',
            { class: 'number', 'data-name': words.hardening.columns[1] },
            weight < LEAST ? words.hardening.next : `${shown(100 * weight, 3)} %`,
          ),
          h('td', { class: 'number', 'data-name': words.hardening.columns[2] }, shown(necking, 3)),
          h('td', {}, list.join(', ')),
        );
      }),
    );
    failed.textContent = view.failed.length > 0 ? fill(words.hardening.failed, { names: view.failed.join(', ') }) : '';
  };
  /** Takes away what was drawn of a record. */
  const clear = (): void => {
    last = undefined;
    for (const place of [considere, said, laws, table, failed]) place.replaceChildren();
    pictures.hidden = true;
    none.textContent = words.figure.waiting;
  };
  let width = 0;
  new ResizeObserver(() => {
    if (considere.clientWidth === width || considere.clientWidth === 0) return;
    width = considere.clientWidth;
    if (last) update(last);
  }).observe(considere);
  return { element, update, clear };
}
