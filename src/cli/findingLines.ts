import type { Finding, Severity } from '../base/index.js';
import { english, wordsOf, type Phrase } from '../languages/index.js';
import type { PresentationOptions } from '../report/index.js';
import { remedyAsFlag } from './remedyAsFlag.js';

const labels: Readonly<Record<Severity, Phrase>> = { fault: 'fault:', caution: 'caution:', note: 'note:' };

/** Findings in the reader's language, a line each, with their remedies or with those of faults alone; repairs are flags where the command has them. */
export function findingLines(
  findings: readonly Finding[],
  { language = english }: PresentationOptions = {},
  remedies: 'all' | 'faults' = 'all',
  repairs = true,
): string[] {
  const words = wordsOf(language);
  if (findings.length === 0) return [words.say('Nothing to report.')];
  return findings.map((one) => {
    const { message, remedy } = words.finding(one);
    return [
      words.say(labels[one.severity]),
      message,
      ...(remedies === 'all' || one.severity === 'fault' ? [repairs ? remedyAsFlag(remedy) : remedy] : []),
    ].join(' ');
  });
}
