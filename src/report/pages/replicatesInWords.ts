import type { ReplicatesResult } from '../../methods/index.js';
import { presentation, type PresentationOptions } from '../words/presentation.js';
import type { TextTable } from './planSheet.js';
import { propertiesTable, repeated } from './replicatesPage.js';

/** @internal Several tests together for a terminal: their method, and each property as the page has it. */
export interface ReplicatesInWords {
  readonly method: string;
  readonly properties: TextTable;
}

/** @internal Several tests together in the language and units of one reader. */
export function replicatesInWords(result: ReplicatesResult, options: PresentationOptions = {}): ReplicatesInWords {
  const show = presentation('replicatesInWords', options);
  return { method: show.say(repeated(result).title), properties: propertiesTable(result, show) };
}
