import { germanCautions } from './germanCautions.js';
import { germanFindings } from './germanFindings.js';
import { germanPhrases } from './germanPhrases.js';
import { germanSlips } from './germanSlips.js';
import { germanValueWords } from './germanValueWords.js';
import type { Language } from './Language.js';

/** German, by the words of the standards' own editions (from memory). */
export const german: Language = {
  tag: 'de',
  name: 'Deutsch',
  decimalSign: ',',
  findings: germanFindings,
  cautions: germanCautions,
  slips: germanSlips,
  phrases: { ...germanValueWords, ...germanPhrases },
};
