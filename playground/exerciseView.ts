import { SLOPE, shownUnit } from '../src/report/index.js';
import type { ExerciseSymbol } from '../src/teaching/index.js';
import { button, h, labelled } from './element.js';
import { shown } from './format.js';
import type { Loaded, Reply } from './protocol.js';
import { typedNumber } from './typedNumber.js';
import { fill, words } from './words.js';

/** What the exercise can ask for. */
export interface ExerciseActions {
  readonly make: (name: string) => void;
  readonly answer: (symbol: ExerciseSymbol, value: number) => void;
  readonly download: () => void;
}
type Given = NonNullable<Loaded['exercise']>;
type Answered = Extract<Reply, { kind: 'answer' }>;

/** One question with its field and what is said of the answer. */
function question({ symbol, unit }: Given['questions'][number], actions: ExerciseActions) {
  // strengths and moduli are asked for in MPa both
  const { unit: own, factor } = unit === '1' ? shownUnit(symbol, unit) : { unit, factor: 1 };
  const said = h('div', { role: 'status', class: 'said', id: `said-${symbol}` });
  const input = h('input', {
    type: 'text',
    inputmode: 'decimal',
    autocomplete: 'off',
    id: `answer-${symbol}`,
    size: 9,
    'aria-describedby': said.id,
  });
  const form = h(
    'form',
    { class: 'question' },
    h('label', { for: input.id }, h('strong', {}, symbol), ` ${words.exercise.names[symbol]}`),
    h('span', { class: 'entry' }, input, h('span', { class: 'unit' }, own)),
    h('button', { type: 'submit', 'aria-label': `${words.exercise.check} ${symbol}` }, words.exercise.check),
    said,
  );
  form.addEventListener('submit', (event) => {
    event.preventDefault();
    const typed = typedNumber(input.value);
    const wrong = typed.ok ? (typed.value === undefined ? words.exercise.noNumber : '') : typed.message;
    if (wrong === '') input.removeAttribute('aria-invalid');
    else input.setAttribute('aria-invalid', 'true');
    said.className = 'said';
    said.replaceChildren(...(wrong === '' ? [] : [h('p', {}, wrong)]));
    if (typed.ok && typed.value !== undefined) actions.answer(symbol, typed.value / factor);
  });
  const show = ({ verdict, said: spoken, language }: Answered): void => {
    said.className = `said ${verdict}`;
    said.replaceChildren(
      h('p', { lang: language }, spoken.verdict),
      ...(spoken.slips.length > 0
        ? [h('ul', { lang: language }, ...spoken.slips.map(({ slip, advice }) => h('li', {}, `${slip} ${advice}`)))]
        : []),
    );
  };
  return { symbol, form, show };
}

/** The section of the class exercise. */
export function exerciseView(actions: ExerciseActions) {
  const name = h('input', { type: 'text', required: true, autocomplete: 'off', name: 'student' });
  const form = h('form', { class: 'fields' }, labelled(words.exercise.name, name), h('button', { type: 'submit' }, words.exercise.make));
  form.addEventListener('submit', (event) => {
    event.preventDefault();
    if (name.value.trim() !== '') actions.make(name.value.trim());
  });
  const given = h('p', { class: 'given' });
  const questions = h('div', { class: 'questions' });
  const sheet = h(
    'div',
    {},
    given,
    h('p', { class: 'soft' }, words.exercise.work),
    h('p', {}, button(words.exercise.download, actions.download)),
    questions,
  );
  sheet.hidden = true;
  const element = h(
    'section',
    { 'aria-labelledby': 'exercise-heading', id: 'exercise' },
    h('h2', { id: 'exercise-heading' }, words.exercise.heading),
    h('p', { class: 'soft' }, words.exercise.lead),
    form,
    sheet,
  );
  let asked: ReturnType<typeof question>[] = [];
  return {
    element,
    /** Shows an exercise, or none. */
    show: (typed: string, exercise: Given | undefined): void => {
      sheet.hidden = exercise === undefined;
      if (!exercise) return;
      const { material, piece, frameCompliance, handbookModulus } = exercise;
      name.value = typed;
      given.textContent = fill(words.exercise.given, {
        material,
        diameter: shown(piece.section.dimensions['diameter']!, 4),
        gaugeLength: piece.gaugeLength,
        parallelLength: piece.parallelLength!,
        finalLength: piece.afterFracture!.gaugeLength!,
        finalDiameter: piece.afterFracture!.diameters![0]!,
        compliance: shown(1000 * frameCompliance, 3),
        handbook: handbookModulus * SLOPE.factor,
      });
      asked = exercise.questions.map((one) => question(one, actions));
      questions.replaceChildren(...asked.map((one) => one.form));
    },
    explain: (answered: Answered): void => {
      asked.find(({ symbol }) => symbol === answered.symbol)?.show(answered);
    },
  };
}
