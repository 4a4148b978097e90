import type { TensionResult } from '../src/index.js';
import { assumptionRow, rowOf, type RowActions } from './assumptionRow.js';
import { applies, rows, type AssumptionKey, type Assumptions } from './assumptions.js';
import type { Effect } from './effects.js';
import { button, choice, h, labelled } from './element.js';
import { absentIn, propertiesTable, standingRow } from './standing.js';
import { properties, symbolsOf, type Property } from './values.js';
import { words } from './words.js';

/** What the table can ask for. */
export interface AssumptionActions extends RowActions {
  readonly shape: (shape: Assumptions['shape']) => void;
  readonly limits: (limits: Assumptions['limits']) => void;
  readonly basis: () => void;
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
  const standing = standingRow();
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
        ...standing.heads,
      ),
      h(
        'tr',
        { role: 'row', class: 'standing' },
        h('th', { role: 'rowheader', scope: 'row' }, words.assumptions.now),
        h('td', { role: 'cell' }),
        ...standing.cells,
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
    absent = absentIn(result);
    for (const line of lines) {
      line.columns(absent);
      line.refuse('');
    }
    standing.show(result);
    all.hidden = false;
    all.replaceChildren(all.firstElementChild!, propertiesTable(result));
  };
  /** Takes every number away that came from a record. */
  const clear = (): void => {
    wrong.textContent = '';
    done.textContent = '';
    for (const line of lines) line.clear();
    standing.show(undefined);
    all.hidden = true;
    all.replaceChildren(all.firstElementChild!);
  };
  const effect = (key: AssumptionKey, one: Effect, assumptions: Assumptions): void => {
    lines.find((line) => line.key === key)?.effect(one, rowOf(key, assumptions), symbols);
  };
  /** Says why there are no values, and beside which field. */
  const refuse = (message: string, key: AssumptionKey | undefined, rule: string): void => {
    wrong.textContent = message;
    for (const line of lines) line.refuse(line.key === key ? rule : '');
  };
  /** Leads a reader to a field. */
  const focus = (key: AssumptionKey): void => {
    lines.find((line) => line.key === key)?.focus();
  };
  return { element, update, results, clear, effect, refuse, focus };
}
