import { requireObject, requireOneOf, requireOptions } from '../base/index.js';
import { english } from './english.js';
import type { Language } from './Language.js';
import { wordsOf, type Words } from './wordsOf.js';

/** In which language something is said. */
export interface SayOptions {
  /** The language, of `testpiece/languages` or your own; default {@link english}. */
  readonly language?: Language | undefined;
}

/** @internal Refuses what is no language. */
export function requireLanguage(from: string, language: Language): Language {
  requireObject(from, 'options.language', language);
  requireObject(from, 'options.language.phrases', language.phrases);
  requireObject(from, 'options.language.findings', language.findings);
  requireOneOf(from, 'options.language.decimalSign', language.decimalSign, ['.', ',']);
  return language;
}

/** @internal The words of a function that has no other option. */
export function wordsToSay(from: string, options: SayOptions): Words {
  requireOptions(from, options, ['language']);
  return wordsOf(requireLanguage(from, options.language ?? english));
}
