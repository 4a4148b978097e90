import type { Finding } from '../base/index.js';
import { english, wordsOf } from '../languages/index.js';
import type { PresentationOptions } from '../report/index.js';

/** Findings with sentence and remedy in the reader's language. */
export function told(findings: readonly Finding[], { language = english }: PresentationOptions): Finding[] {
  const words = wordsOf(language);
  return findings.map((one) => ({ ...one, ...words.finding(one) }));
}
