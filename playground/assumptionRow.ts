import { rows, type AssumptionKey, type AssumptionRow, type Assumptions } from './assumptions.js';
import type { Effect } from './effects.js';
import { button, h } from './element.js';
import { change, edited } from './format.js';
import { typedNumber } from './typedNumber.js';
import { properties, type Property } from './values.js';
import { fill, words } from './words.js';

/** What a row can ask for. */
export interface RowActions {
  readonly set: (key: AssumptionKey, value: number | undefined) => void;
  readonly back: (key: AssumptionKey) => void;
}

/** Time after the last key until a value counts [ms]. */
const PAUSE = 200;

/** A value of an assumption with its unit. */
export const valueText = ({ unit, factor }: AssumptionRow, value: number | undefined): string =>
  value === undefined ? words.assumptions.notGiven : `${edited(value * factor)}${unit === '' ? '' : ` ${unit}`}`;

/** The row as it is shown: limits of a window are samples, or MPa. */
export const rowOf = (key: AssumptionKey, { limits }: Assumptions): AssumptionRow => {
  const row = rows.find((one) => one.key === key)!;
  return limits === 'stress' && (key === 'windowFirst' || key === 'windowLast') ? { ...row, unit: 'MPa' } : row;
};

/** One row of the table. */
export function assumptionRow(row: AssumptionRow, actions: RowActions) {
  const { key } = row;
  const name = words.assumptions.names[key];
  const wrong = h('span', { class: 'wrong field-wrong', id: `wrong-${key}`, 'aria-live': 'polite' });
  const input = h('input', {
    type: 'text',
    inputmode: 'decimal',
    autocomplete: 'off',
    id: `assume-${key}`,
    size: 8,
    'aria-describedby': wrong.id,
  });
  const unit = h('span', { class: 'unit' });
  const step = h('span', { class: 'step-text' });
  const back = button(words.assumptions.back, () => {
    actions.back(key);
    input.focus();
  });
  back.className = 'quiet';
  back.hidden = true;
  const refuse = (message: string): void => {
    wrong.textContent = message;
    if (message === '') input.removeAttribute('aria-invalid');
    else input.setAttribute('aria-invalid', 'true');
  };
  /** Whether what stands in the field is no number. */
  let unread = false;
  let timer: ReturnType<typeof setTimeout> | undefined;
  const commit = (): void => {
    clearTimeout(timer);
    if (input.dataset['typed'] !== 'yes') return;
    delete input.dataset['typed'];
    // the page fills its fields with a decimal point
    const typed = typedNumber(input.value, 'decimal');
    unread = !typed.ok;
    refuse(typed.ok ? '' : typed.message);
    if (typed.ok) actions.set(key, typed.value === undefined ? undefined : typed.value / row.factor);
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
    h('td', { role: 'cell', class: 'value' }, input, unit, back, step, wrong),
    ...cells.map(({ cell }) => cell),
  );

  return {
    key,
    element,
    focus: (): void => {
      input.focus();
    },
    /** Leaves out the columns that have no value. */
    columns: (absent: readonly Property[]): void => {
      for (const { property, cell } of cells) cell.hidden = absent.includes(property);
    },
    /** Shows a value; what is being typed is left alone. */
    value: (shownRow: AssumptionRow, value: number | undefined, before: number | undefined, found: number | undefined): void => {
      unit.textContent = shownRow.unit;
      if (input.dataset['typed'] !== 'yes' && document.activeElement !== input) {
        input.value = value === undefined ? (found === undefined ? '' : edited(found)) : edited(value * row.factor);
        if (unread) refuse('');
        unread = false;
      }
      back.hidden = value === before;
      back.setAttribute(
        'aria-label',
        fill(words.assumptions.backTo, {
          name,
          value: before === undefined && found !== undefined ? words.assumptions.automatic : valueText(shownRow, before),
        }),
      );
    },
    /** Says beside the field what is allowed; an empty text takes it away. */
    refuse: (message: string): void => {
      if (!unread) refuse(message);
    },
    /** Takes the effects away. */
    clear: (): void => {
      step.textContent = '';
      for (const { now, later, cell } of cells) {
        now.textContent = later.textContent = '';
        cell.classList.remove('moved', 'still');
      }
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
