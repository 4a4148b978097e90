import type { ColumnName, ReadOptions } from '../src/index.js';
import { usualMaterials } from '../src/simulate/index.js';
import { button, choice, h, labelled } from './element.js';
import { counted } from './format.js';
import type { Loaded } from './protocol.js';
import { seeds, usualScenario, type Scenario } from './scenario.js';
import { fill, words } from './words.js';

/** What the first section can ask for. */
export interface RecordActions {
  readonly file: (file: File) => void;
  readonly make: (scenario: Scenario) => void;
  /** Reads the last file again. */
  readonly readAgain: (options: ReadOptions) => void;
}

const names = words.record.columns;

/** Fields that say how a file is to be read where it does not say so itself. */
function readingForm(again: RecordActions['readAgain']) {
  const fields = (Object.keys(names) as ColumnName[]).map((quantity) => ({
    quantity,
    column: h('input', { type: 'text', 'aria-label': `${names[quantity]}: ${words.record.column}`, autocomplete: 'off' }),
    unit: h('input', { type: 'text', size: 6, 'aria-label': `${names[quantity]}: ${words.record.unit}`, autocomplete: 'off' }),
  }));
  const separator = choice({ '': words.record.find, ...words.record.separators });
  const decimal = choice({ '': words.record.find, ...words.record.decimals });
  const options = (): ReadOptions => {
    const texts = (part: 'column' | 'unit'): Record<string, string> =>
      Object.fromEntries(fields.flatMap((one) => (one[part].value.trim() === '' ? [] : [[one.quantity, one[part].value.trim()]])));
    const [columns, units] = [texts('column'), texts('unit')];
    return {
      ...(separator.value === '' ? {} : { separator: separator.value as NonNullable<ReadOptions['separator']> }),
      ...(decimal.value === '' ? {} : { decimal: decimal.value as NonNullable<ReadOptions['decimal']> }),
      ...(Object.keys(columns).length > 0 ? { columns } : {}),
      // a unit that is none is refused by the reader, with its name
      ...(Object.keys(units).length > 0 ? { units: units } : {}),
    };
  };
  const table = h(
    'table',
    { class: 'reading' },
    h('thead', {}, h('tr', {}, h('td'), h('th', { scope: 'col' }, words.record.column), h('th', { scope: 'col' }, words.record.unit))),
    h(
      'tbody',
      {},
      ...fields.map(({ quantity, column, unit }) =>
        h('tr', {}, h('th', { scope: 'row' }, names[quantity]), h('td', {}, column), h('td', {}, unit)),
      ),
    ),
  );
  return h(
    'details',
    { class: 'help' },
    h('summary', {}, words.record.help),
    h('p', { class: 'soft' }, words.record.helpLead),
    h('div', { class: 'fields' }, labelled(words.record.separator, separator), labelled(words.record.decimal, decimal)),
    table,
    button(words.record.readAgain, () => {
      again(options());
    }),
  );
}

/** Choices of the simulator. */
function simulatorForm(make: RecordActions['make']) {
  const { materials, frames, hands, sizes } = words.simulator;
  const material = choice(
    Object.fromEntries(usualMaterials.map(({ name }) => [name, name in materials ? materials[name as keyof typeof materials] : name])),
    { name: 'material' },
  );
  const frame = choice(frames, { name: 'frame' });
  const hand = choice(hands, { name: 'hand' });
  const samples = choice(sizes, { name: 'samples' });
  const seed = h('input', { type: 'number', min: seeds.least, max: seeds.most, step: 1, name: 'seed', required: true });
  const form = h(
    'form',
    { class: 'fields' },
    labelled(words.simulator.material, material),
    labelled(words.simulator.frame, frame),
    labelled(words.simulator.hand, hand),
    labelled(words.simulator.samples, samples),
    labelled(words.simulator.seed, seed),
    h('button', { type: 'submit' }, words.simulator.make),
  );
  form.addEventListener('submit', (event) => {
    event.preventDefault();
    make({
      material: material.value,
      frame: frame.value as Scenario['frame'],
      hand: hand.value as Scenario['hand'],
      samples: samples.value as Scenario['samples'],
      seed: Number(seed.value),
    });
  });
  const show = (scenario: Scenario): void => {
    material.value = scenario.material;
    frame.value = scenario.frame;
    hand.value = scenario.hand;
    samples.value = scenario.samples;
    seed.value = String(scenario.seed);
  };
  show(usualScenario);
  return { form, show };
}

/** The first section: a file, or a simulated test. */
export function recordView(actions: RecordActions) {
  const input = h('input', { type: 'file', id: 'file', class: 'hidden-input', 'aria-describedby': 'drop-help' });
  input.addEventListener('change', () => {
    const [file] = input.files ?? [];
    if (file) actions.file(file);
    input.value = '';
  });
  const drop = h(
    'div',
    { class: 'drop' },
    h('p', {}, words.record.drop),
    input,
    h('label', { for: 'file', class: 'button' }, words.record.choose),
    h('p', { class: 'soft', id: 'drop-help' }, words.record.dropHelp),
  );
  // the whole page takes a file, so that none opens in its place
  document.addEventListener('dragover', (event) => {
    event.preventDefault();
    drop.classList.add('over');
  });
  document.addEventListener('dragleave', (event) => {
    if (event.relatedTarget === null) drop.classList.remove('over');
  });
  document.addEventListener('drop', (event) => {
    event.preventDefault();
    drop.classList.remove('over');
    const [file] = event.dataTransfer?.files ?? [];
    if (file) actions.file(file);
  });
  const help = readingForm(actions.readAgain);
  help.hidden = true;
  const simulator = simulatorForm(actions.make);
  const status = h('p', { role: 'status', class: 'state' });
  const element = h(
    'section',
    { 'aria-labelledby': 'record-heading' },
    h('h2', { id: 'record-heading' }, words.record.heading),
    h(
      'div',
      { class: 'sources' },
      h('div', {}, drop, help),
      h('div', {}, h('h3', {}, words.simulator.heading), h('p', { class: 'soft' }, words.simulator.lead), simulator.form),
    ),
    status,
  );
  const say = (text: string, wrong = false): void => {
    status.textContent = text;
    status.classList.toggle('wrong', wrong);
  };
  return {
    element,
    say,
    showScenario: simulator.show,
    /** The form of reading is there once there is a file. */
    offerHelp: (open: boolean): void => {
      help.hidden = false;
      if (open) help.open = true;
    },
    loaded: (template: string, { samples, columns }: Loaded, more: Readonly<Record<string, string>> = {}): void => {
      const list = columns.map((name) => (name in names ? names[name as ColumnName] : name)).join(', ');
      say(fill(template, { samples: counted(samples), columns: list, ...more }));
    },
  };
}
