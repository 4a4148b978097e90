import { exportCsv, isInputError, readRecord, toJson, type TensionResult } from '../src/index.js';
import { sayAnswer } from '../src/languages/index.js';
import { renderHtml } from '../src/report/index.js';
import { exerciseFor, explainAnswer, type Exercise } from '../src/teaching/index.js';
import { keyOf, withWindow } from './assumptions.js';
import { effectOf, evaluate, rowsFor, type AnyRecord } from './effects.js';
import { hardeningOf, type HardeningView } from './hardening.js';
import type { Loaded, Reply, Request } from './protocol.js';
import { scenarioAssumptions, simulated } from './scenario.js';
import { languageOf, spoken } from './speech.js';

/** What lies on the desk: one record, and what was last made of it. */
interface Desk {
  record?: AnyRecord;
  invented: boolean;
  exercise?: Exercise;
  result?: TensionResult;
}

type Send = (reply: Reply) => void;

/** Lets newer requests in; tells whether one has come. */
type Pause = () => Promise<boolean>;

const loaded = (record: AnyRecord, more: Partial<Loaded> = {}): Reply => ({
  kind: 'loaded',
  loaded: { samples: ('force' in record ? record.force : record.pressure).length, columns: Object.keys(record), ...more },
});

const messageOf = (error: unknown): string => (error instanceof Error ? error.message : String(error));

/** Why a request was refused; of a wrong assumption, which one. */
function refusal(error: unknown): Reply {
  const message = messageOf(error);
  const key = isInputError(error) ? keyOf(error.path) : undefined;
  if (!isInputError(error) || key === undefined) return { kind: 'refused', message };
  // a message is "function: path rule, got value"; the value is of the library's units
  const rule = message.slice(message.indexOf(`${error.path} `) + error.path.length + 1, message.lastIndexOf(', got '));
  return { kind: 'refused', message, wrong: { key, rule } };
}

/** Necking and hardening; what cannot be drawn leaves the values as they are. */
function hardeningView(result: TensionResult): HardeningView {
  try {
    return hardeningOf(result);
  } catch (error) {
    return { ok: false, message: messageOf(error) };
  }
}

type Evaluate = Extract<Request, { kind: 'evaluate' }>;

async function evaluateAll(desk: Desk, { assumptions, basis, language }: Evaluate, send: Send, pause: Pause): Promise<void> {
  const record = desk.record;
  if (!record || (await pause())) return;
  const result = evaluate(record, assumptions, desk.invented);
  desk.result = result;
  send({ kind: 'result', result, spoken: spoken(result, language) });
  if (assumptions.values.windowFirst !== undefined) {
    if (await pause()) return;
    send({ kind: 'searched', result: evaluate(record, withWindow(assumptions, undefined), desk.invented) });
  }
  for (const { key, share } of rowsFor(record, assumptions)) {
    if (await pause()) return;
    send({ kind: 'effect', key, effect: effectOf(record, assumptions, basis, result, key, share) });
  }
  if (await pause()) return;
  send({ kind: 'hardening', view: hardeningView(result) });
}

/** Requests that begin something new. */
export const begins: readonly Request['kind'][] = ['read', 'make', 'exercise', 'evaluate'];

/** Takes away what was made, and, unless it is evaluated anew, the record. */
function clear(desk: Desk, kind: Request['kind']): void {
  delete desk.result;
  if (kind === 'evaluate') return;
  delete desk.record;
  delete desk.exercise;
}

/** Answers one request; what cannot be done is an answer too. */
export async function answer(desk: Desk, request: Request, send: Send, pause: Pause): Promise<void> {
  // whatever is begun, what came before it stands no more
  if (begins.includes(request.kind)) clear(desk, request.kind);
  try {
    switch (request.kind) {
      case 'read': {
        const { record } = readRecord(request.bytes, request.options);
        Object.assign(desk, { record, invented: false });
        send(loaded(record));
        break;
      }
      case 'make': {
        const { record, truth } = simulated(request.scenario);
        Object.assign(desk, { record, invented: true });
        send(loaded(record, { known: scenarioAssumptions(request.scenario, truth) }));
        break;
      }
      case 'exercise': {
        const exercise = exerciseFor(request.name);
        const { record, ...given } = exercise;
        Object.assign(desk, { record, invented: true, exercise });
        send(loaded(record, { exercise: given }));
        break;
      }
      case 'evaluate':
        await evaluateAll(desk, request, send, pause);
        break;
      case 'answer':
        if (desk.exercise) {
          const { symbol, value, language } = request;
          const explanation = explainAnswer(desk.exercise, { symbol, value });
          const said = sayAnswer(explanation, { language: languageOf(language) });
          send({ kind: 'answer', symbol, verdict: explanation.verdict, said, language });
        }
        break;
      case 'report':
        if (desk.result)
          send({ kind: 'text', text: renderHtml(desk.result, { drawings: request.drawings, language: languageOf(request.language) }) });
        break;
      case 'json':
        if (desk.result) send({ kind: 'text', text: toJson(desk.result) });
        break;
      case 'text':
        if (desk.record)
          send({
            kind: 'text',
            text: exportCsv(desk.record, desk.invented ? { provenance: { data: 'invented, made by a simulation' } } : {}),
          });
    }
  } catch (error) {
    if (begins.includes(request.kind)) clear(desk, request.kind);
    send(refusal(error));
  }
  send({ kind: 'done' });
}

/** An empty desk. */
export const emptyDesk = (): Desk => ({ invented: false });
