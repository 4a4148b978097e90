import type { TrailSentence } from '../base/index.js';
import type { figurePhrases } from './figurePhrases.js';
import type { pagePhrases } from './pagePhrases.js';
import type { planPhrases } from './planPhrases.js';
import type { tablePhrases } from './tablePhrases.js';
import type { teachingPhrases } from './teachingPhrases.js';
import type { termPatterns } from './termPatterns.js';
import type { termPhrases } from './termPhrases.js';

/** @internal Every phrase but the words that findings carry as values. */
export type SpokenPhrase =
  | TrailSentence
  | (
      | typeof pagePhrases
      | typeof figurePhrases
      | typeof planPhrases
      | typeof tablePhrases
      | typeof teachingPhrases
      | typeof termPhrases
      | typeof termPatterns
    )[number];
