import { exportCsv, readRecord, toJson, type TensionResult } from '../src/index.js';
import { renderHtml } from '../src/report/index.js';
import { exerciseFor, explainAnswer, type Exercise } from '../src/teaching/index.js';
import { withWindow, type Assumptions } from './assumptions.js';
import { effectOf, evaluate, rowsFor, type AnyRecord } from './effects.js';
import { hardeningOf } from './hardening.js';
import type { Loaded, Reply, Request } from './protocol.js';
import { scenarioAssumptions, simulated } from './scenario.js';

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

async function evaluateAll(desk: Desk, assumptions: Assumptions, basis: Assumptions, send: Send, pause: Pause): Promise<void> {
  const record = desk.record;
  if (!record || (await pause())) return;
  const result = evaluate(record, assumptions, desk.invented);
  desk.result = result;
  send({ kind: 'result', result });
  if (assumptions.values.windowFirst !== undefined) {
    if (await pause()) return;
    send({ kind: 'searched', result: evaluate(record, withWindow(assumptions, undefined), desk.invented) });
  }
  for (const { key, share } of rowsFor(record, assumptions)) {
    if (await pause()) return;
    send({ kind: 'effect', key, effect: effectOf(record, assumptions, basis, result, key, share) });
  }
  if (await pause()) return;
  send({ kind: 'hardening', view: hardeningOf(result) });
}

/** Answers one request; what cannot be done is an answer too. */
export async function answer(desk: Desk, request: Request, send: Send, pause: Pause): Promise<void> {
  try {
    switch (request.kind) {
      case 'read': {
        const { record } = readRecord(request.bytes, request.options);
        Object.assign(desk, { record, invented: false, exercise: undefined });
        send(loaded(record));
        break;
      }
      case 'make': {
        const { record, truth } = simulated(request.scenario);
        Object.assign(desk, { record, invented: true, exercise: undefined });
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
        await evaluateAll(desk, request.assumptions, request.basis, send, pause);
        break;
      case 'answer':
        if (desk.exercise)
          send({
            kind: 'answer',
            symbol: request.symbol,
            explanation: explainAnswer(desk.exercise, { symbol: request.symbol, value: request.value }),
          });
        break;
      case 'report':
        if (desk.result) send({ kind: 'text', text: renderHtml(desk.result, { drawings: request.drawings }) });
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
    send({ kind: 'refused', message: error instanceof Error ? error.message : String(error) });
  }
  send({ kind: 'done' });
}

/** An empty desk. */
export const emptyDesk = (): Desk => ({ invented: false });
