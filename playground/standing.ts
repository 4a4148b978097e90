import type { BaseUnit, TensionResult } from '../src/index.js';
import { shownUnit, summarise } from '../src/report/index.js';
import { h } from './element.js';
import { shown } from './format.js';
import { properties, symbolsOf, valuesOf, type Property } from './values.js';
import { words } from './words.js';

/** Unit of each property in a result, and to how many figures it is shown. */
const kinds: Readonly<Record<Property, readonly [unit: BaseUnit, figures: number]>> = {
  E: ['MPa', 4],
  ReH: ['MPa', 4],
  ReL: ['MPa', 4],
  Rp: ['MPa', 4],
  Rm: ['MPa', 4],
  Agt: ['1', 3],
  A: ['1', 3],
  Z: ['1', 3],
  n: ['1', 3],
};

/** All properties with their rounding, folded away. */
export function propertiesTable(result: TensionResult): HTMLElement {
  return h(
    'table',
    { class: 'all' },
    h('thead', {}, h('tr', {}, ...words.assumptions.allColumns.map((name) => h('th', { scope: 'col' }, name)))),
    h(
      'tbody',
      {},
      ...summarise(result).map(({ symbol, name, text, unit }) =>
        h('tr', {}, h('th', { scope: 'row' }, symbol), h('td', {}, name), h('td', { class: 'number' }, text), h('td', {}, unit)),
      ),
    ),
  );
}

/** Properties of a yield point, where there is none. */
export const absentIn = (result: TensionResult): readonly Property[] => {
  const values = valuesOf(result);
  return (['ReH', 'ReL'] as const).filter((property) => values[property] === undefined);
};

/** The head of the table: the properties, and what they are as it stands. */
export function standingRow() {
  const heads = properties.map((property) => h('th', { role: 'columnheader', scope: 'col', class: 'symbol' }, property));
  const cells = properties.map((property) => h('td', { role: 'cell', 'data-symbol': property }));
  return {
    heads,
    cells,
    /** Shows the properties of a result; without one there are none. */
    show: (result: TensionResult | undefined): void => {
      const values = result ? valuesOf(result) : {};
      const symbols = result && symbolsOf(result);
      const absent = result && absentIn(result);
      properties.forEach((property, k) => {
        const [own, figures] = kinds[property];
        const { unit, factor } = shownUnit(property, own);
        const value = values[property];
        if (symbols && absent) {
          heads[k]!.textContent = symbols[property];
          heads[k]!.hidden = cells[k]!.hidden = absent.includes(property);
          cells[k]!.dataset['symbol'] = symbols[property];
        }
        cells[k]!.replaceChildren(
          value === undefined ? '–' : shown(value * factor, figures),
          h('span', { class: 'unit' }, value === undefined || unit === '' ? '' : ` ${unit}`),
        );
      });
    },
  };
}
