import { requireObject, requireOneOf, requireOptions, requireText } from '../base/index.js';
import { english } from './english.js';
import type { Language, SlipWords } from './Language.js';
import { wordsOf, type Words } from './wordsOf.js';

/** In which language something is said. */
export interface SayOptions {
  /** The language, of `testpiece/languages` or your own; default {@link english}. */
  readonly language?: Language | undefined;
}

/** @internal Refuses what is no language: a sentence that is no text would fail where it is said. */
export function requireLanguage(from: string, language: Language): Language {
  const path = 'options.language';
  requireObject(from, path, language);
  requireText(from, `${path}.tag`, language.tag);
  requireOneOf(from, `${path}.decimalSign`, language.decimalSign, ['.', ',']);
  for (const [name, text] of Object.entries(requireObject(from, `${path}.phrases`, language.phrases)))
    if (text !== undefined) requireText(from, `${path}.phrases.${name}`, text);
  for (const [code, words] of Object.entries(requireObject(from, `${path}.findings`, language.findings) as Language['findings'])) {
    requireObject(from, `${path}.findings.${code}`, words);
    requireText(from, `${path}.findings.${code}.message`, words.message);
    requireText(from, `${path}.findings.${code}.remedy`, words.remedy);
  }
  const slips =
    language.slips === undefined ? {} : (requireObject(from, `${path}.slips`, language.slips) as Readonly<Record<string, SlipWords>>);
  for (const [key, words] of Object.entries(slips)) {
    requireObject(from, `${path}.slips.${key}`, words);
    requireText(from, `${path}.slips.${key}.slip`, words.slip);
    requireText(from, `${path}.slips.${key}.advice`, words.advice);
  }
  return language;
}

/** @internal The words of a function that has no other option. */
export function wordsToSay(from: string, options: SayOptions): Words {
  requireOptions(from, options, ['language']);
  const { language = english } = options;
  return wordsOf(requireLanguage(from, language));
}
