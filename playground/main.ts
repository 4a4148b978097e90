import type { ReadOptions, TensionResult } from '../src/index.js';
import { decode, encode } from './address.js';
import { unknownPiece, withValue, withWindow, type AssumptionKey, type Assumptions } from './assumptions.js';
import { assumptionsView, rowOf, symbolsOf, valueText } from './assumptionsView.js';
import { awayView, download } from './awayView.js';
import { startWorker } from './client.js';
import type { Effect } from './effects.js';
import { h } from './element.js';
import { exerciseView } from './exerciseView.js';
import { figureView } from './figureView.js';
import { findingsView } from './findingsView.js';
import { change } from './format.js';
import { hardeningView } from './hardeningView.js';
import type { Loaded, Reply, Source } from './protocol.js';
import { recordView } from './recordView.js';
import { usualScenario } from './scenario.js';
import { emptyState, type State } from './state.js';
import { properties } from './values.js';
import type { Window } from './windowFigure.js';
import { fill, words } from './words.js';

/** Rest of the hand after which a window is evaluated in full [ms]. */
const SETTLED = 180;

const ask = startWorker();
let state: State = emptyState;
let loaded: Loaded | undefined;
let result: TensionResult | undefined;
let file: File | undefined;
/** What the reader changed last, and is to be told of. */
let touched: AssumptionKey | 'window' | undefined;
let ticket = 0;
let settling: ReturnType<typeof setTimeout> | undefined;

const live = h('p', { role: 'status', class: 'visually-hidden', id: 'live' });
const offset = (): number => state.assumptions.values.offset ?? 0.002;
const isWindow = (key: AssumptionKey): boolean => key === 'windowFirst' || key === 'windowLast';

const record = recordView({
  file: (given) => {
    file = given;
    // settings that waited for their file are taken up; those of another record are not
    const kept = state.source.from === 'file' ? state : undefined;
    void readFile(given, kept?.read ?? {}, kept);
  },
  make: (scenario) => {
    load({ from: 'made', scenario });
  },
  readAgain: (options) => {
    if (file) void readFile(file, options, state);
  },
});
const findings = findingsView();
const figure = figureView({
  moved: (window) => {
    touched = 'window';
    settle(window);
  },
  search: () => {
    touched = 'window';
    assume(withWindow(state.assumptions, undefined));
  },
});
const table = assumptionsView({
  set: (key, value) => {
    touched = key;
    assume(changedBy(key, value));
  },
  back: (key) => {
    touched = key;
    const before = state.basis.values[key];
    assume(isWindow(key) && before === undefined ? withWindow(state.assumptions, undefined) : withValue(state.assumptions, key, before));
  },
  shape: (shape) => {
    const { diameter, width, thickness } = state.assumptions.values;
    const size = diameter ?? 10;
    const sized = withValue(withValue(state.assumptions, 'width', width ?? size), 'thickness', thickness ?? size);
    assume({ ...sized, shape, values: { ...sized.values, diameter: size } });
  },
  limits: (limits) => {
    const found = result?.modulusWindow;
    const given = state.assumptions.values.windowFirst !== undefined && found;
    const window = given ? (limits === 'stress' ? found.stressLimits : ([found.first, found.last] as const)) : undefined;
    assume({ ...withWindow(state.assumptions, window), limits });
  },
  basis: () => {
    state = { ...state, basis: state.assumptions };
    evaluate();
  },
});
const hardening = hardeningView();
const exercise = exerciseView({
  make: (name) => {
    load({ from: 'exercise', name });
  },
  answer: (symbol, value) => {
    ask({ kind: 'answer', symbol, value }, (reply) => {
      if (reply.kind === 'answer') exercise.explain(reply.symbol, reply.explanation);
    });
  },
  download: downloadRecord,
});

/** The assumptions with one changed; of a window that was searched the other limit is held. */
function changedBy(key: AssumptionKey, value: number | undefined): Assumptions {
  if (!isWindow(key)) return withValue(state.assumptions, key, value);
  const found = result?.modulusWindow;
  if (value === undefined || !found) return withWindow(state.assumptions, undefined);
  const [first, last] = state.assumptions.limits === 'samples' ? [found.first, found.last] : found.stressLimits;
  return withWindow(state.assumptions, key === 'windowFirst' ? [value, last] : [first, value]);
}

function assume(assumptions: Assumptions): void {
  state = { ...state, assumptions };
  evaluate();
}

/** A window that is still being moved is evaluated in full once the hand rests. */
function settle(window: Window): void {
  clearTimeout(settling);
  settling = setTimeout(() => {
    assume(withWindow({ ...state.assumptions, limits: 'samples' }, window));
  }, SETTLED);
}

function saveAddress(): void {
  history.replaceState(null, '', `#${encode(state)}`);
}

/** Asks for everything anew; what was asked before counts no more. */
function evaluate(): void {
  clearTimeout(settling);
  if (!loaded) return;
  ticket += 1;
  const own = ticket;
  const { assumptions, basis } = state;
  saveAddress();
  table.update(assumptions, basis, loaded.columns, result);
  ask({ kind: 'evaluate', assumptions, basis }, (reply) => {
    if (own === ticket) take(reply);
  });
}

function take(reply: Reply): void {
  switch (reply.kind) {
    case 'result': {
      result = reply.result;
      const byHand = state.assumptions.values.windowFirst !== undefined;
      findings.update(result.findings);
      figure.draw(result, offset());
      figure.given(byHand);
      if (!byHand) figure.against(result);
      if (loaded) table.update(state.assumptions, state.basis, loaded.columns, result);
      table.results(result);
      if (touched === 'window' && !byHand) live.textContent = `${words.figure.searched} ${figure.sentence()}`;
      break;
    }
    case 'searched':
      figure.against(reply.result);
      if (touched === 'window') live.textContent = figure.sentence();
      break;
    case 'effect':
      table.effect(reply.key, reply.effect, state.assumptions);
      if (reply.key === touched) tellEffect(reply.key, reply.effect);
      break;
    case 'hardening':
      hardening.update(reply.view);
      break;
    case 'refused':
      table.refuse(fill(words.record.failed, { message: reply.message }));
  }
}

/** Says what a change has done, for those who do not see the table. */
function tellEffect(key: AssumptionKey, { changed }: Effect): void {
  if (!result) return;
  const symbols = symbolsOf(result);
  const moved = properties.flatMap((property) => {
    const by = changed?.[property];
    return by === undefined || change(by) === '0' ? [] : [fill(words.assumptions.one, { symbol: symbols[property], change: change(by) })];
  });
  const values = {
    name: words.assumptions.names[key],
    value: valueText(rowOf(key, state.assumptions), state.assumptions.values[key]),
    effects: moved.join(', '),
  };
  live.textContent = fill(moved.length > 0 ? words.assumptions.effect : words.assumptions.noEffect, values);
}

/** Takes up a record that was loaded. */
function begin(source: Source, read: ReadOptions, next: Loaded, kept: Pick<State, 'assumptions' | 'basis'> | undefined): void {
  loaded = next;
  result = undefined;
  touched = undefined;
  const start = next.known ?? unknownPiece;
  state = { source, read, assumptions: kept?.assumptions ?? start, basis: kept?.basis ?? start };
  exercise.show(source.from === 'exercise' ? source.name : '', next.exercise);
  if (source.from === 'made') {
    record.showScenario(source.scenario);
    record.loaded(words.record.made, next);
  } else if (source.from === 'file') record.loaded(words.record.read, next, { name: source.name });
  else if (source.from === 'exercise') {
    record.loaded(words.exercise.made, next, { name: source.name, material: next.exercise?.material ?? '' });
  }
  evaluate();
}

/** Makes a record; of an address its settings are kept. */
function load(source: Extract<Source, { from: 'made' | 'exercise' }>, kept?: State): void {
  ticket += 1;
  record.say(words.record.working);
  const request =
    source.from === 'made' ? ({ kind: 'make', scenario: source.scenario } as const) : ({ kind: 'exercise', name: source.name } as const);
  ask(request, (reply) => {
    if (reply.kind === 'loaded') begin(source, {}, reply.loaded, kept);
    if (reply.kind === 'refused') record.say(fill(words.record.failed, { message: reply.message }), true);
  });
}

async function readFile(given: File, options: ReadOptions, kept: State | undefined): Promise<void> {
  ticket += 1;
  record.say(fill(words.record.reading, { name: given.name }));
  const bytes = await given.arrayBuffer();
  ask({ kind: 'read', name: given.name, bytes, options }, (reply) => {
    if (reply.kind === 'loaded') begin({ from: 'file', name: given.name }, options, reply.loaded, kept);
    if (reply.kind === 'refused') record.say(fill(words.record.refused, { message: reply.message }), true);
    if (reply.kind === 'loaded' || reply.kind === 'refused') record.offerHelp(reply.kind === 'refused');
  });
}

const nameOf = (): string => {
  const { source } = state;
  if (source.from === 'file') return source.name.replace(/\.[^.]*$/, '') || 'record';
  return source.from === 'made' ? `made-${source.scenario.seed}` : source.from === 'exercise' ? `exercise-${source.name}` : 'record';
};

function downloadRecord(): void {
  ask({ kind: 'text' }, (reply) => {
    if (reply.kind === 'text') download(`${nameOf()}.csv`, 'text/csv', reply.text);
  });
}

const away = awayView({
  report: () => {
    ask({ kind: 'report', drawings: figure.drawings() }, (reply) => {
      if (reply.kind === 'text') download(`${nameOf()}.report.html`, 'text/html', reply.text);
    });
  },
  json: () => {
    ask({ kind: 'json' }, (reply) => {
      if (reply.kind === 'text') download(`${nameOf()}.report.json`, 'application/json', reply.text);
    });
  },
  record: downloadRecord,
});

/** Takes up what an address says. */
function open(): void {
  const { state: given, settings } = decode(location.hash);
  const { source } = given;
  if (source.from === 'made' || source.from === 'exercise') load(source, settings ? given : undefined);
  else if (source.from === 'file') {
    state = given;
    record.say(words.record.dropAgain);
  } else load({ from: 'made', scenario: usualScenario });
}

document.body.append(
  h('a', { class: 'skip', href: '#findings' }, words.skip),
  h(
    'header',
    {},
    h('p', { class: 'mark' }, 'testpiece'),
    h('h1', {}, words.title),
    h('p', { class: 'lead' }, words.lead),
    h('p', { class: 'soft' }, words.private),
  ),
  h('main', {}, record.element, findings.element, figure.element, table.element, hardening.element, exercise.element, away),
  live,
);
document.title = `testpiece: ${words.title}`;
document.querySelector('.skip')?.addEventListener('click', (event) => {
  // the part of the address behind # belongs to the state
  event.preventDefault();
  findings.element.focus();
});
globalThis.addEventListener('hashchange', open);
open();
