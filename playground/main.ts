import type { ReadOptions, TensionResult } from '../src/index.js';
import { decode, encode } from './address.js';
import { unknownPiece, withWindow, type AssumptionKey, type Assumptions } from './assumptions.js';
import { assumptionsView } from './assumptionsView.js';
import { awayView } from './awayView.js';
import { changed, limitedBy, putBack, shaped } from './changeAssumptions.js';
import { startWorker } from './client.js';
import { exerciseView } from './exerciseView.js';
import { figureView } from './figureView.js';
import { findingsView } from './findingsView.js';
import { hardeningView } from './hardeningView.js';
import { layOut } from './layOut.js';
import { loading } from './loading.js';
import type { Loaded, Reply, Source } from './protocol.js';
import { recordView } from './recordView.js';
import { usualScenario } from './scenario.js';
import { showing } from './showing.js';
import type { FigureWords } from './speech.js';
import { emptyState, recordName, type State } from './state.js';
import { tongueOf } from './tongues.js';
import type { Window } from './windowFigure.js';
import { words } from './words.js';

/** Rest of the hand after which a window is evaluated in full [ms]. */
const SETTLED = 180;

const language = tongueOf(navigator.languages) ?? 'en';
let state: State = { ...emptyState, language };
let loaded: Loaded | undefined;
let result: TensionResult | undefined;
/** Words on the drawings of a report, in its language. */
let figureWords: FigureWords = words.figure;
let file: File | undefined;
/** What the reader changed last, and is to be told of. */
let touched: AssumptionKey | 'window' | undefined;
let ticket = 0;
let settling: ReturnType<typeof setTimeout> | undefined;

const ask = startWorker((message) => {
  leave();
  record.say(message, true);
});
const record = recordView({
  file: (given) => {
    file = given;
    // settings that waited for their file are taken up; those of another record are not
    const kept = state.source.from === 'file' ? state : undefined;
    void sources.read(given, kept?.read ?? {}, kept);
  },
  make: (scenario) => {
    sources.load({ from: 'made', scenario });
  },
  readAgain: (options) => {
    if (file) void sources.read(file, options, state);
  },
});
const sources = loading(ask, record, {
  leave: (next) => {
    leave();
    state = { ...state, ...next };
  },
  begin,
});
const findings = findingsView((chosen) => {
  state = { ...state, language: chosen };
  evaluate();
});
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
    assume(changed(state.assumptions, key, value, result));
  },
  back: (key) => {
    touched = key;
    assume(putBack(state.assumptions, state.basis, key));
  },
  shape: (shape) => {
    assume(shaped(state.assumptions, shape));
  },
  limits: (limits) => {
    assume(limitedBy(state.assumptions, limits, result));
  },
  basis: () => {
    state = { ...state, basis: state.assumptions };
    evaluate();
  },
});
const hardening = hardeningView();
const away = awayView({
  ask,
  name: () => recordName(state.source),
  report: () => ({ kind: 'report', drawings: figure.drawings(figureWords), language: state.language }),
});
const exercise = exerciseView({
  make: (name) => {
    sources.load({ from: 'exercise', name });
  },
  answer: (symbol, value) => {
    ask({ kind: 'answer', symbol, value, language: state.language }, (reply) => {
      if (reply.kind === 'answer') exercise.explain(reply);
    });
  },
  download: away.record,
});

const shows = showing({
  findings,
  figure,
  table,
  hardening,
  away,
  say: (sentence) => {
    page.say(sentence);
  },
});

function assume(assumptions: Assumptions): void {
  state = { ...state, assumptions };
  evaluate();
}

/** A window that is still being moved is evaluated in full once the hand rests. */
function settle(window: Window): void {
  clearTimeout(settling);
  away.offer({ record: true, result: false });
  settling = setTimeout(() => {
    assume(withWindow({ ...state.assumptions, limits: 'samples' }, window));
  }, SETTLED);
}

/** Takes every number away that came from a record. */
function clear(said: string): void {
  result = undefined;
  shows.clear(said, loaded !== undefined);
}

/** Leaves the record that was there; what was asked about it counts no more. */
function leave(): void {
  ticket += 1;
  clearTimeout(settling);
  loaded = undefined;
  exercise.show('', undefined);
  clear(words.findings.waiting);
}

/** Asks for everything anew; what was asked before counts no more. */
function evaluate(): void {
  clearTimeout(settling);
  if (!loaded) return;
  ticket += 1;
  const own = ticket;
  const { assumptions, basis } = state;
  history.replaceState(null, '', `#${encode(state)}`);
  table.update(assumptions, basis, loaded.columns, result);
  away.offer({ record: true, result: false });
  ask({ kind: 'evaluate', assumptions, basis, language: state.language }, (reply) => {
    if (own === ticket) take(reply);
  });
}

function take(reply: Reply): void {
  if (reply.kind === 'result') {
    result = reply.result;
    figureWords = reply.spoken.figure;
  } else if (reply.kind === 'refused') result = undefined;
  shows.reply(reply, { state, columns: loaded?.columns, result, touched });
}

/** Takes up a record that was loaded. */
function begin(source: Source, read: ReadOptions, next: Loaded, kept: Pick<State, 'assumptions' | 'basis'> | undefined): void {
  loaded = next;
  touched = undefined;
  const start = next.known ?? unknownPiece;
  state = { ...state, source, read, assumptions: kept?.assumptions ?? start, basis: kept?.basis ?? start };
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

/** Takes up what an address says. */
function open(): void {
  const { state: given, settings } = decode(location.hash, state.language);
  const { source } = given;
  state = { ...state, language: given.language };
  if (source.from === 'made' || source.from === 'exercise') sources.load(source, settings ? given : undefined);
  else if (source.from === 'file') {
    leave();
    state = given;
    record.say(words.record.dropAgain);
  } else sources.load({ from: 'made', scenario: usualScenario });
}

const page = layOut(
  [record.element, findings.element, figure.element, table.element, hardening.element, exercise.element, away.element],
  findings.element,
);
globalThis.addEventListener('hashchange', open);
open();
