import type { Assumptions } from './assumptions.js';
import type { Wrong } from './protocol.js';
import { fill, words } from './words.js';

/** Why an evaluation was refused: for the whole table, and beside the field that is wrong. */
export function refusalSentences(message: string, wrong: Wrong | undefined, { values }: Assumptions) {
  const failed = fill(words.record.failed, { message });
  if (!wrong) return { whole: failed, beside: '' };
  const name = words.assumptions.names[wrong.key];
  const missing = fill(words.assumptions.missing, { name });
  if (values[wrong.key] === undefined) return { whole: missing, beside: missing };
  return { whole: failed, beside: fill(words.assumptions.rule, { name, rule: wrong.rule }) };
}
