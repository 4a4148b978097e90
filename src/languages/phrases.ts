import { trailSentences, type TrailSentence } from '../base/index.js';
import { findingValueWords } from './findingValueWords.js';
import { figurePhrases } from './figurePhrases.js';
import { pagePhrases } from './pagePhrases.js';
import { planPhrases } from './planPhrases.js';
import { tablePhrases } from './tablePhrases.js';
import { teachingPhrases } from './teachingPhrases.js';
import { termPatterns } from './termPatterns.js';
import { termPhrases } from './termPhrases.js';

/** Every label and sentence that a report, a figure or an exercise can say, in English; what a language of your own has words for; each once. */
export const phrases = [...new Set([...pagePhrases, ...figurePhrases, ...planPhrases, ...tablePhrases, ...teachingPhrases, ...termPhrases, ...termPatterns, ...(Object.values(trailSentences) as TrailSentence[]), ...findingValueWords])];

/** A label or sentence, by what it is in English; `{name}` stands for a value. */
export type Phrase = (typeof phrases)[number];
