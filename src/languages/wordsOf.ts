import type { Finding } from '../base/index.js';
import { findingValueWords } from './findingValueWords.js';
import type { FindingWords, Language } from './Language.js';
import type { Phrase } from './phrases.js';
import { termPatterns } from './termPatterns.js';

/** What a sentence is filled with. */
export type PhraseValues = Readonly<Record<string, string | number>>;

/** A language at work: sentences, numbers, findings. */
export interface Words {
  /** The language. */
  readonly language: Language;
  /** A label or sentence, with what stands for its `{names}`; numbers in it as they are written in the language. */
  readonly say: (phrase: Phrase, values?: PhraseValues) => string;
  /** Words that came with the data (a symbol's name, a step, a source), in the language where it has them, else unchanged. */
  readonly term: (text: string) => string;
  /** A number to so many significant figures. */
  readonly number: (value: number, figures: number) => string;
  /** A ratio in per cent, to so many significant figures. */
  readonly percent: (value: number, figures?: number) => string;
  /** Digits that are there already, with the language's decimal sign. */
  readonly digits: (text: string) => string;
  /** Sentence and remedy of a finding. */
  readonly finding: (finding: Finding) => FindingWords;
}

/** Four significant digits are enough for a sentence; the data keeps them all. */
const FIGURES = 4;
const NUMBER = /^[-−]?\d+(\.\d+)?$/;

/** What a term with gaps looks like in data: the gaps take anything. */
const shapes = [...termPatterns, ...findingValueWords.filter((one) => one.includes('{'))].map((pattern) => {
  const names = [...pattern.matchAll(/\{(\w+)\}/g)].map(([, name = '']) => name);
  const literal = pattern.replace(/[.*+?^$()|[\]\\]/g, '\\$&').replace(/\{\w+\}/g, '(.+)');
  return { pattern, names, shape: new RegExp(`^${literal}$`) };
});

/** @internal A language at work. */
export function wordsOf(language: Language): Words {
  const { decimalSign, phrases, findings } = language;
  const known: Readonly<Record<string, string | undefined>> = phrases;
  const told: Readonly<Record<string, FindingWords | undefined>> = findings;
  const digits = (text: string): string => (decimalSign === '.' ? text : text.replace(/(?<=\d)\.(?=\d)/g, decimalSign));
  const number = (value: number, figures: number): string => digits(String(Number(value.toPrecision(figures))));
  const term = (text: string): string => {
    const own = known[text];
    if (own !== undefined || language.tag === 'en') return own ?? text;
    for (const { pattern, names, shape } of shapes) {
      const found = shape.exec(text);
      const sentence = found && known[pattern];
      if (sentence) return filled(sentence, Object.fromEntries(names.map((name, k) => [name, found[k + 1]!])));
    }
    return text;
  };
  const filled = (sentence: string, values: PhraseValues): string =>
    sentence.replace(/\{(\w+)\}/g, (gap, name: string) => {
      const value = values[name];
      if (value === undefined) return gap;
      if (typeof value === 'string') return NUMBER.test(value) ? digits(value) : term(value);
      return number(value, Number.isInteger(value) ? 15 : FIGURES);
    });
  return {
    language,
    say: (phrase, values = {}) => filled(known[phrase] ?? phrase, values),
    term,
    number,
    percent: (value, figures = 3) => `${number(100 * value, figures)} %`,
    digits,
    finding: ({ code, values, message, remedy }) => {
      const own = told[code];
      // a finding of a newer version has its own sentence with it
      return own === undefined ? { message, remedy } : { message: filled(own.message, values), remedy: own.remedy };
    },
  };
}
