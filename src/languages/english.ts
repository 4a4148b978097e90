import { catalogue } from '../base/index.js';
import { cautions, type CautionTag } from '../methods/index.js';
import type { Language } from './Language.js';

/** English: the language in which the library speaks by itself. */
export const english: Language = {
  tag: 'en',
  name: 'English',
  decimalSign: '.',
  findings: catalogue,
  cautions: Object.fromEntries(cautions.map(({ tag, text }) => [tag, text])) as Record<CautionTag, string>,
  phrases: {},
};
