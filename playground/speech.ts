import type { Finding, Severity, TensionResult } from '../src/index.js';
import { english, languages, wordsOf, type Language } from '../src/languages/index.js';
import type { Tongue } from './tongues.js';

/** A finding in the reader's language. */
export interface SpokenFinding {
  readonly severity: Severity;
  readonly message: string;
  readonly remedy: string;
}

/** Words of a drawing. */
export interface FigureWords {
  readonly strain: string;
  readonly stress: string;
  readonly maximum: string;
  readonly fracture: string;
}

/** What a result says in a language: its findings, and the words on the drawings of its report. */
export interface Spoken {
  readonly findings: readonly SpokenFinding[];
  readonly figure: FigureWords;
}

/** The language of a tag. */
export const languageOf = (tongue: Tongue): Language => languages.find(({ tag }) => tag === tongue) ?? english;

/** What a result says in a language. */
export function spoken({ findings }: TensionResult, tongue: Tongue): Spoken {
  const { finding, say } = wordsOf(languageOf(tongue));
  return {
    findings: findings.map((one: Finding) => ({ severity: one.severity, ...finding(one) })),
    figure: { strain: `${say('Strain e')} / %`, stress: `${say('Stress R')} / MPa`, maximum: 'Rm', fracture: say('fracture') },
  };
}
