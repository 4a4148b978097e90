import { frenchCautions } from './frenchCautions.js';
import { frenchFindings } from './frenchFindings.js';
import { frenchPhrases } from './frenchPhrases.js';
import { frenchSlips } from './frenchSlips.js';
import { frenchValueWords } from './frenchValueWords.js';
import type { Language } from './Language.js';

/** French, by the words of the standards' own editions (from memory). */
export const french: Language = {
  tag: 'fr',
  name: 'Français',
  decimalSign: ',',
  findings: frenchFindings,
  cautions: frenchCautions,
  slips: frenchSlips,
  phrases: { ...frenchValueWords, ...frenchPhrases },
};
