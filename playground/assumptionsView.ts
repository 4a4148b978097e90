import type { TensionResult } from '../src/index.js';
import { summarise } from '../src/report/index.js';
import { applies, rows, type AssumptionKey, type AssumptionRow, type Assumptions } from './assumptions.js';
import type { Effect } from './effects.js';
import { properties, valuesOf, type Property, type Values } from './values.js';
import { button, choice, h, labelled } from './element.js';
import { change, edited, shown } from './format.js';
import { fill, words } from './words.js';

/** What the table can ask for. */
export interface AssumptionActions {
  readonly set: (key: AssumptionKey, value: number | undefined) => void;
  readonly back: (key: AssumptionKey) => void;
  readonly shape: (shape: Assumptions['shape']) => void;
  readonly limits: (limits: Assumptions['limits']) => void;
  readonly basis: () => void;
}

/** How the properties are shown: unit and factor. */
const shownAs: Readonly<Record<Property, readonly [unit: string, factor: number, figures: number]>> = {
  E: ['GPa', 1e-3, 4],
  ReH: ['MPa', 1, 4],
  ReL: ['MPa', 1, 4],
  Rp: ['MPa', 1, 4],
  Rm: ['MPa', 1, 4],
  Agt: ['%', 100, 3],
  A: ['%', 100, 3],
  Z: ['%', 100, 3],
  n: ['', 1, 3],
};

/** Time after the last key until a value counts [ms]. */
const PAUSE = 200;

/** A number as people type it. */
function numberOf(text: string): number | undefined {
  const plain = text.trim().replace(/\s/g, '').replace(',', '.').replace('−', '-');
  return plain === '' ? undefined : Number(plain);
}

/** Symbols of the columns, as the result names them. */
export const symbolsOf = (result: TensionResult): Readonly<Record<Property, string>> => ({
  E: result.modulus ? 'E' : 'mE',
  ReH: 'ReH',
  ReL: 'ReL',
  Rp: result.proofStrengths[0]?.symbol ?? 'Rp',
  Rm: 'Rm',
  Agt: 'Agt',
  A: 'A',
  Z: 'Z',
  n: 'n',
});

/** A value of an assumption with its unit. */
export const valueText = ({ unit, factor }: AssumptionRow, value: number | undefined): string =>
  value === undefined ? words.assumptions.notGiven : `${edited(value * factor)}${unit === '' ? '' : ` ${unit}`}`;

/** The row as it is shown: limits of a window are samples, or MPa. */
export const rowOf = (key: AssumptionKey, { limits }: Assumptions): AssumptionRow => {
  const row = rows.find((one) => one.key === key)!;
  return limits === 'stress' && (key === 'windowFirst' || key === 'windowLast') ? { ...row, unit: 'MPa' } : row;
};

/** One row of the table. */
function assumptionRow(row: AssumptionRow, actions: AssumptionActions) {
  const { key } = row;
  const name = words.assumptions.names[key];
  const input = h('input', { type: 'text', inputmode: 'decimal', autocomplete: 'off', id: `assume-${key}`, size: 8 });
  const unit = h('span', { class: 'unit' });
  const step = h('span', { class: 'step-text' });
  const back = button(words.assumptions.back, () => {
    actions.back(key);
    input.focus();
  });
  back.className = 'quiet';
  back.hidden = true;
  let timer: ReturnType<typeof setTimeout> | undefined;
  const commit = (): void => {
    clearTimeout(timer);
    if (input.dataset['typed'] !== 'yes') return;
    delete input.dataset['typed'];
    const value = numberOf(input.value);
    input.toggleAttribute('aria-invalid', false);
    if (value !== undefined && !Number.isFinite(value)) {
      input.setAttribute('aria-invalid', 'true');
      return;
    }
    actions.set(key, value === undefined ? undefined : value / row.factor);
  };
  input.addEventListener('input', () => {
    input.dataset['typed'] = 'yes';
    clearTimeout(timer);
    timer = setTimeout(commit, PAUSE);
  });
  input.addEventListener('change', commit);
  const cells = properties.map((property) => {
    const [now, later] = [h('span', { class: 'now' }), h('span', { class: 'later' })];
    return { property, now, later, cell: h('td', { role: 'cell', 'data-symbol': property }, now, later) };
  });
  const element = h(
    'tr',
    { role: 'row', 'data-key': key },
    h('th', { role: 'rowheader', scope: 'row' }, h('label', { for: input.id }, name)),
    h('td', { role: 'cell', class: 'value' }, input, unit, back, step),
    ...cells.map(({ cell }) => cell),
  );

  return {
    key,
    element,
    /** Leaves out the columns that have no value. */
    columns: (absent: readonly Property[]): void => {
      for (const { property, cell } of cells) cell.hidden = absent.includes(property);
    },
    /** Shows a value; what is being typed is left alone. */
    value: (shownRow: AssumptionRow, value: number | undefined, before: number | undefined, found: number | undefined): void => {
      unit.textContent = shownRow.unit;
      if (input.dataset['typed'] !== 'yes' && document.activeElement !== input)
        input.value = value === undefined ? (found === undefined ? '' : edited(found)) : edited(value * row.factor);
      back.hidden = value === before;
      back.setAttribute(
        'aria-label',
        fill(words.assumptions.backTo, {
          name,
          value: before === undefined && found !== undefined ? words.assumptions.automatic : valueText(shownRow, before),
        }),
      );
    },
    effect: (
      { changed, stepped, step: by, refused }: Effect,
      shownRow: AssumptionRow,
      symbols: Readonly<Record<Property, string>>,
    ): void => {
      step.textContent = refused ?? (by === undefined ? '' : fill(words.assumptions.step, { step: `+${valueText(shownRow, by)}` }));
      for (const { property, now, later, cell } of cells) {
        const [one, two] = [changed?.[property], stepped?.[property]];
        cell.dataset['symbol'] = symbols[property];
        now.textContent = one === undefined ? '' : change(one);
        later.textContent = two === undefined ? '' : change(two);
        cell.classList.toggle('moved', one !== undefined && change(one) !== '0');
        cell.classList.toggle('still', (one === undefined || change(one) === '0') && (two === undefined || change(two) === '0'));
      }
    },
  };
}

/** All properties with their rounding, folded away. */
function propertiesTable(result: TensionResult): HTMLElement {
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

/** The table of assumptions and their effects. */
export function assumptionsView(actions: AssumptionActions) {
  const shape = choice(words.assumptions.shapes, { id: 'shape' });
  shape.addEventListener('change', () => {
    actions.shape(shape.value as Assumptions['shape']);
  });
  const limits = choice(words.assumptions.limitKinds, { id: 'limits' });
  limits.addEventListener('change', () => {
    actions.limits(limits.value as Assumptions['limits']);
  });
  const heads = properties.map((property) => h('th', { role: 'columnheader', scope: 'col', class: 'symbol' }, property));
  const standing = properties.map((property) => h('td', { role: 'cell', 'data-symbol': property }));
  const body = h('tbody', { role: 'rowgroup' });
  const all = h('details', {}, h('summary', {}, words.assumptions.all));
  const wrong = h('p', { class: 'state wrong', role: 'alert' });
  const table = h(
    'table',
    { role: 'table', class: 'assumptions' },
    h('caption', {}, words.assumptions.caption),
    h(
      'thead',
      { role: 'rowgroup' },
      h(
        'tr',
        { role: 'row' },
        h('th', { role: 'columnheader', scope: 'col' }, words.assumptions.name),
        h('th', { role: 'columnheader', scope: 'col' }, words.assumptions.value),
        ...heads,
      ),
      h(
        'tr',
        { role: 'row', class: 'standing' },
        h('th', { role: 'rowheader', scope: 'row' }, words.assumptions.now),
        h('td', { role: 'cell' }),
        ...standing,
      ),
    ),
    body,
  );
  const done = h('span', { role: 'status', class: 'soft' });
  const element = h(
    'section',
    { 'aria-labelledby': 'assumptions-heading' },
    h('h2', { id: 'assumptions-heading' }, words.assumptions.heading),
    h('p', { class: 'soft' }, words.assumptions.lead),
    h('div', { class: 'fields' }, labelled(words.assumptions.shape, shape), labelled(words.assumptions.limits, limits)),
    wrong,
    table,
    h(
      'p',
      { class: 'row' },
      button(words.assumptions.basis, () => {
        actions.basis();
        done.textContent = words.assumptions.basisDone;
      }),
      done,
    ),
    all,
  );

  let lines: ReturnType<typeof assumptionRow>[] = [];
  /** Properties of a yield point, where there is none. */
  let absent: readonly Property[] = ['ReH', 'ReL'];
  let symbols: Readonly<Record<Property, string>> = Object.fromEntries(properties.map((one) => [one, one])) as Record<Property, string>;

  /** Shows the values; the rows are made anew only where others apply. */
  const update = (assumptions: Assumptions, basis: Assumptions, columns: readonly string[], result: TensionResult | undefined): void => {
    shape.value = assumptions.shape;
    limits.value = assumptions.limits;
    const keys = rows.map(({ key }) => key).filter((key) => applies(key, assumptions, columns));
    if (keys.join() !== lines.map(({ key }) => key).join()) {
      lines = keys.map((key) => assumptionRow(rowOf(key, assumptions), actions));
      body.replaceChildren(...lines.map((line) => line.element));
      for (const line of lines) line.columns(absent);
    }
    const window = result?.modulusWindow;
    const found: Partial<Record<AssumptionKey, number | undefined>> =
      assumptions.limits === 'samples'
        ? { windowFirst: window?.first, windowLast: window?.last }
        : { windowFirst: window?.stressLimits[0], windowLast: window?.stressLimits[1] };
    for (const line of lines)
      line.value(rowOf(line.key, assumptions), assumptions.values[line.key], basis.values[line.key], found[line.key]);
  };
  /** Shows the properties as they stand. */
  const results = (result: TensionResult): void => {
    wrong.textContent = '';
    done.textContent = '';
    symbols = symbolsOf(result);
    const values: Values = valuesOf(result);
    absent = (['ReH', 'ReL'] as const).filter((property) => values[property] === undefined);
    for (const line of lines) line.columns(absent);
    properties.forEach((property, k) => {
      const [unit, factor, figures] = shownAs[property];
      const value = values[property];
      heads[k]!.textContent = symbols[property];
      heads[k]!.hidden = standing[k]!.hidden = absent.includes(property);
      standing[k]!.dataset['symbol'] = symbols[property];
      standing[k]!.replaceChildren(
        value === undefined ? '–' : shown(value * factor, figures),
        h('span', { class: 'unit' }, value === undefined || unit === '' ? '' : ` ${unit}`),
      );
    });
    all.replaceChildren(all.firstElementChild!, propertiesTable(result));
  };
  const effect = (key: AssumptionKey, one: Effect, assumptions: Assumptions): void => {
    lines.find((line) => line.key === key)?.effect(one, rowOf(key, assumptions), symbols);
  };
  /** Says why the values cannot stand. */
  const refuse = (message: string): void => {
    wrong.textContent = message;
  };
  return { element, update, results, effect, refuse };
}
