import { requireObject, requireText, type Finding } from '../base/index.js';
import type { FindingWords } from './Language.js';
import { wordsToSay, type SayOptions } from './requireLanguage.js';

/**
 * A finding in a language: its sentence filled with its numbers, and what can be done about it.
 *
 * $$ \text{code},\ \text{values} \;\to\; \text{sentence} $$
 *
 * @remarks
 * Made from `code` and `values`, so a finding that was read from JSON is said as well. Numbers have four figures and the decimal sign of the
 * language, and are in N, mm, MPa and s. A code that the language does not have keeps the finding's own English sentence.
 *
 * @param finding - A finding of any result.
 * @param options - The language.
 * @returns Sentence and remedy.
 * @throws {@link InputError} `missing`, `wrong-type`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * const record = { force: [0, 1000, 2000, 3000, 3100], strain: [0, 0.001, 0.002, 0.003, 0.05] };
 * const { findings } = analyseTension(record, { section: round({ diameter: 8 }), gaugeLength: 40 });
 * const finding = findings.find(({ code }) => code === 'maximum-at-end')!;
 * sayFinding(finding, { language: german }).message; // => 'Die höchste Kraft liegt am Ende der Aufzeichnung: Der Versuch oder seine Aufzeichnung wurde vorzeitig beendet, oder die Probe brach bei der Höchstkraft.'
 * ```
 *
 * @see The codes with their sentences: `docs/codes.md`. Checked in `test/languages/said.test.ts`.
 */
export function sayFinding(finding: Finding, options: SayOptions = {}): FindingWords {
  const from = 'sayFinding';
  const { code, message, remedy, values } = requireObject(from, 'finding', finding) as Finding;
  requireText(from, 'finding.code', code);
  requireText(from, 'finding.message', message);
  requireText(from, 'finding.remedy', remedy);
  requireObject(from, 'finding.values', values);
  return wordsToSay(from, options).finding(finding);
}
