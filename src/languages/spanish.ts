import { spanishCautions } from './spanishCautions.js';
import { spanishFindings } from './spanishFindings.js';
import { spanishPhrases } from './spanishPhrases.js';
import { spanishSlips } from './spanishSlips.js';
import { spanishValueWords } from './spanishValueWords.js';
import type { Language } from './Language.js';

/** Spanish. */
export const spanish: Language = {
  tag: 'es',
  name: 'Español',
  decimalSign: ',',
  findings: spanishFindings,
  cautions: spanishCautions,
  slips: spanishSlips,
  phrases: { ...spanishValueWords, ...spanishPhrases },
};
