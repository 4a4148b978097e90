import type { TestResult } from '../../methods/index.js';
import { decisionsTable, requireDecisions, type AskedDecision, type DecisionsTable } from './decisionsPart.js';
import { pageOf } from './pageOf.js';
import { presentation, type PresentationOptions } from '../words/presentation.js';

/** @internal Decisions about a result for one reader, as its page has them. */
export function decisionsInWords(
  result: TestResult,
  decisions: readonly AskedDecision[],
  options: PresentationOptions = {},
): DecisionsTable {
  const from = 'decisionsInWords';
  return decisionsTable(requireDecisions(from, decisions), pageOf(from, result).quantities(result), presentation(from, options));
}
