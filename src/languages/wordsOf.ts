import { trailSentences, type Finding, type TrailStep } from '../base/index.js';
import { findingValueWords } from './findingValueWords.js';
import type { FindingWords, Language } from './Language.js';
import type { Phrase } from './phrases.js';
import { spelledOut } from './spelledOut.js';
import { termPatterns } from './termPatterns.js';

/** What a sentence is filled with. */
export type PhraseValues = Readonly<Record<string, string | number>>;

/** A language at work: sentences, numbers, findings. */
export interface Words {
  /** The language. */
  readonly language: Language;
  /** A label or sentence, with what stands for its `{names}`: numbers as the language writes them, texts as they are (a word of ours goes through `term` before). */
  readonly say: (phrase: Phrase, values?: PhraseValues) => string;
  /** Words of ours that came with the data (a symbol's name, a source), in the language where it has them, else unchanged; never for names from outside. */
  readonly term: (text: string) => string;
  /** A number to so many significant figures. */
  readonly number: (value: number, figures: number) => string;
  /** A ratio in per cent, to so many significant figures. */
  readonly percent: (value: number, figures?: number) => string;
  /** Digits that are there already, with the language's decimal sign and − as minus. */
  readonly digits: (text: string) => string;
  /** Sentence and remedy of a finding. */
  readonly finding: (finding: Finding) => FindingWords;
  /** Sentence of a step of a trail. */
  readonly step: (step: TrailStep) => string;
}

/** Four significant digits are enough for a sentence; the data keeps them all. */
const FIGURES = 4;
const NUMBER = /^[-−]?\d+(\.\d+)?$/;

/** The one sign of what is below 0, before a number and before a power. */
const withMinus = (text: string): string => text.replace(/(?<![\w.])-(?=\d)|(?<=\de)-(?=\d)/g, '−');

/** What a term with gaps looks like in data; one that is all gaps and joining words fits anything, so its parts must be words of ours. */
const shapes = [...termPatterns, ...findingValueWords.filter((one) => one.includes('{'))].map((pattern) => {
  const names = [...pattern.matchAll(/\{(\w+)\}/g)].map(([, name = '']) => name);
  const literal = pattern.replace(/[.*+?^$()|[\]\\]/g, '\\$&').replace(/\{\w+\}/g, '(.+)');
  return { pattern, names, loose: pattern.startsWith('{'), shape: new RegExp(`^${literal}$`) };
});

/** Gaps of findings that hold words of ours. Every other value came from outside (names, symbols, materials, dates) and stays as it is. */
const wordGaps: ReadonlySet<string> = new Set([
  'bound', 'cause', 'column', 'columns', 'device', 'dimension', 'direction', 'family', 'input', 'left', 'link', 'material', 'measuredDirection', 'missing',
  'place', 'right', 'rule', 'side', 'stage', 'term', 'usedDirection', 'values', 'verdict', 'what', 'where', 'why',
]); // prettier-ignore

/** Words of ours that stand where a symbol would. */
const standIns: ReadonlySet<string> = new Set([
  'the result', 'the value', 'unknown', 'The slope of the elastic line', 'The yield strength', 'Yield strength over Rm', 'The plastic extension at fracture',
  'The flow curve', 'Ef by the chord', 'the proportional limit',
]); // prettier-ignore

/** What a table holds under a name of its own; names from outside may be those of every object. */
const held = <Value>(table: Readonly<Record<string, Value>>, name: string): Value | undefined =>
  Object.hasOwn(table, name) ? table[name] : undefined;

/** @internal A language at work. */
export function wordsOf(language: Language): Words {
  const { decimalSign, phrases, findings } = language;
  const digits = (text: string): string => withMinus(decimalSign === '.' ? text : text.replace(/(?<=\d)\.(?=\d)/g, decimalSign));
  // a unit stays on the line of its number; French sets it closer
  const gap = language.tag.startsWith('fr') ? '\u202f' : '\u00a0';
  const number = (value: number, figures: number): string => digits(String(Number(value.toPrecision(figures))));
  const filled = (sentence: string, values: PhraseValues, text: (value: string, name: string) => string): string =>
    sentence.replace(/( ?)\{(\w+)\}/g, (whole, space: string, name: string) => {
      const value = held(values, name);
      if (value === undefined) return whole;
      // the unit of a bare number
      if (value === '') return '';
      return `${space}${typeof value === 'string' ? text(value, name) : number(value, Number.isInteger(value) ? 15 : FIGURES)}`;
    });
  /** The term in the language, where all of it is known. */
  const known = (text: string): string | undefined => {
    const own = held<string | undefined>(phrases, text) ?? held(spelledOut, text) ?? (NUMBER.test(text) ? digits(text) : undefined);
    if (own !== undefined) return own;
    for (const { pattern, names, loose, shape } of shapes) {
      const found = shape.exec(text);
      const sentence = found && held<string | undefined>(phrases, pattern);
      if (!sentence) continue;
      const parts = names.map((name, k) => [name, known(found[k + 1]!) ?? (loose ? undefined : found[k + 1])] as const);
      if (parts.every(([, part]) => part !== undefined)) return filled(sentence, Object.fromEntries(parts) as PhraseValues, (part) => part);
    }
    const list = text.split(', ').map((one, _, { length }) => (length > 1 ? known(one) : undefined));
    return list.every((one) => one !== undefined) ? list.join(', ') : undefined;
  };
  const term = (text: string): string => known(text) ?? text;
  /** Values are data: only those that are words of ours by their place are said in the language. */
  const valueOf = (text: string, name: string): string => (wordGaps.has(name) || standIns.has(text) ? term(text) : text);
  return {
    language,
    say: (phrase, values = {}) => filled(held<string | undefined>(phrases, phrase) ?? phrase, values, (text) => text),
    term,
    number,
    percent: (value, figures = 3) => `${number(100 * value, figures)}${gap}%`,
    digits,
    finding: ({ code, values, message, remedy }) => {
      const own = held<FindingWords>(findings, code);
      // a finding of a newer version has its own sentence with it
      return own === undefined ? { message, remedy } : { message: filled(own.message, values, valueOf), remedy: own.remedy };
    },
    step: ({ code, step, values }) => {
      const sentence: string | undefined = held<string>(trailSentences, code);
      // and so has a step
      return sentence === undefined ? step : filled(held<string | undefined>(phrases, sentence) ?? sentence, values, valueOf);
    },
  };
}
