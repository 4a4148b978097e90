import type { TensionResult } from '../src/index.js';
import { isUnknownPiece, type AssumptionKey } from './assumptions.js';
import type { assumptionsView } from './assumptionsView.js';
import type { awayView } from './awayView.js';
import { effectSentence } from './effectSentence.js';
import type { figureView } from './figureView.js';
import type { findingsView } from './findingsView.js';
import type { hardeningView } from './hardeningView.js';
import type { Reply } from './protocol.js';
import { refusalSentences } from './refusalSentences.js';
import type { State } from './state.js';
import { fill, words } from './words.js';

/** What shows numbers of a record, and the voice of the page. */
interface Views {
  readonly findings: ReturnType<typeof findingsView>;
  readonly figure: ReturnType<typeof figureView>;
  readonly table: ReturnType<typeof assumptionsView>;
  readonly hardening: ReturnType<typeof hardeningView>;
  readonly away: ReturnType<typeof awayView>;
  readonly say: (sentence: string) => void;
}

/** The page as it stands when a reply comes. */
export interface Standing {
  readonly state: State;
  /** Columns of the record; none where there is no record. */
  readonly columns: readonly string[] | undefined;
  readonly result: TensionResult | undefined;
  /** What the reader changed last, and is to be told of. */
  readonly touched: AssumptionKey | 'window' | undefined;
}

/** What stands in for a piece that the file does not describe, while it does. */
function assumedPiece({ source, assumptions }: State): string {
  if (source.from === 'made' || !isUnknownPiece(assumptions)) return '';
  const { diameter = NaN, gaugeLength = NaN } = assumptions.values;
  return fill(words.findings.assumed, { diameter, gaugeLength });
}

/** Shows in every view what the worker replies. */
export function showing({ findings, figure, table, hardening, away, say }: Views) {
  /** Takes every number away that came from a record, so that none stands under the name of another. */
  const clear = (said: string, record: boolean, toField?: () => void): void => {
    findings.clear(said, toField);
    figure.clear(toField !== undefined);
    table.clear();
    hardening.clear();
    away.offer({ record, result: false });
  };
  const reply = (given: Reply, { state, columns, result, touched }: Standing): void => {
    const { assumptions, basis, language } = state;
    switch (given.kind) {
      case 'result': {
        const byHand = assumptions.values.windowFirst !== undefined;
        findings.update(given.spoken.findings, language, assumedPiece(state));
        figure.draw(given.result, assumptions.values.offset ?? 0.002);
        figure.given(byHand);
        if (!byHand) figure.against(given.result);
        if (columns) table.update(assumptions, basis, columns, given.result);
        table.results(given.result);
        away.offer({ record: true, result: true });
        if (touched === 'window' && !byHand) say(`${words.figure.searched} ${figure.sentence()}`);
        break;
      }
      case 'searched':
        figure.against(given.result);
        if (touched === 'window') say(figure.sentence());
        break;
      case 'effect':
        table.effect(given.key, given.effect, assumptions);
        if (given.key === touched && result) say(effectSentence(given.key, given.effect, assumptions, result));
        break;
      case 'hardening':
        hardening.update(given.view);
        break;
      case 'refused': {
        // why there are no values, and beside the field what is allowed there
        const { whole, beside } = refusalSentences(given.message, given.wrong, assumptions);
        const key = given.wrong?.key;
        const toField = (): void => {
          if (key) table.focus(key);
        };
        clear(fill(words.findings.refused, { why: whole }), columns !== undefined, key && toField);
        table.refuse(whole, key, beside);
      }
    }
  };
  return { clear, reply };
}
