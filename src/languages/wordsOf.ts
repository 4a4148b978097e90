import { trailSentences, type Finding, type TrailStep } from '../base/index.js';
import { findingValueWords } from './findingValueWords.js';
import type { FindingWords, Language } from './Language.js';
import type { Phrase } from './phrases.js';
import { sayOfBlank } from './sayOfBlank.js';
import { spelledOut } from './spelledOut.js';
import { takesPower } from './takesPower.js';
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
  /** What stands between a number and %. */
  readonly gap: string;
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
const NUMBER = /^[-−]?\d+(\.\d+)?(e[-+]?\d+)?$/;

/** The one sign of what is below 0. */
const withMinus = (text: string): string => text.replace(/(?<![\w.])-(?=\d)/g, '−');
/** Powers of ten as the axes of figures have them. */
const withPowers = (text: string): string =>
  text.replace(
    /(?<=\d)e([-+]?)(\d+)/g,
    (_, sign: string, power: string) =>
      `\u00a0×\u00a010${sign === '-' ? '⁻' : ''}${power.replace(/\d/g, (digit) => '⁰¹²³⁴⁵⁶⁷⁸⁹'[Number(digit)]!)}`,
  );

/** The last two of a list; a name may hold the joining word itself. */
const AND = '{first} and {last}';
/** Two ends of a range, whatever the language joins them by. */
const RANGE = /\{(low\w*|least|from)\}( \S{1,3} |～)\{(high\w*|most|to)\}/g;

/** What a term with gaps looks like in data; one that is all gaps and joining words fits anything, so its parts must be words of ours. */
const shapes = [...termPatterns, ...findingValueWords.filter((one) => one.includes('{') && one !== AND)].map((pattern) => {
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
  'the flow curve', 'Ef by the chord', 'the proportional limit',
]); // prettier-ignore

/** What a table holds under a name of its own; names from outside may be those of every object. */
const held = <Value>(table: Readonly<Record<string, Value>>, name: string): Value | undefined =>
  Object.hasOwn(table, name) ? table[name] : undefined;

/** @internal A language at work. */
export function wordsOf(language: Language): Words {
  const { decimalSign, phrases, findings } = language;
  const digits = (text: string): string =>
    withMinus(withPowers(decimalSign === '.' ? text : text.replace(/(?<=\d)\.(?=\d)/g, decimalSign)));
  // a unit stays on the line of its number; French sets it closer
  const gap = language.tag.startsWith('fr') ? '\u202f' : '\u00a0';
  const number = (value: number, figures: number): string => {
    const rounded = Number(value.toPrecision(figures));
    return digits(takesPower(rounded) ? rounded.toExponential() : String(rounded));
  };
  const filled = (sentence: string, values: PhraseValues, text: (value: string, name: string) => string): string => {
    const shown = (name: string): string | undefined => {
      const value = held(values, name);
      return typeof value === 'number' ? number(value, Number.isInteger(value) ? 15 : FIGURES) : value && text(value, name);
    };
    return (
      sentence
        // ends that are the same are said once
        .replace(RANGE, (whole, low: string, _, high: string) => (shown(low) === shown(high) ? `{${low}}` : whole))
        .replace(/( ?)\{(\w+)\}/g, (whole, space: string, name: string) => {
          const value = shown(name);
          // an empty one is the unit of a bare number
          return value === undefined ? whole : value === '' ? '' : `${space}${value}`;
        })
    );
  };
  /** A term of one piece, where all of it is known. */
  const word = (text: string, known: (part: string) => string | undefined): string | undefined => {
    const own = held<string | undefined>(phrases, text) ?? held(spelledOut, text) ?? (NUMBER.test(text) ? digits(text) : undefined);
    if (own !== undefined) return own;
    for (const { pattern, names, loose, shape } of shapes) {
      const found = shape.exec(text);
      const sentence = found && held<string | undefined>(phrases, pattern);
      if (!sentence) continue;
      const parts = names.map((name, k) => [name, known(found[k + 1]!) ?? (loose ? undefined : found[k + 1])] as const);
      if (parts.every(([, part]) => part !== undefined)) return filled(sentence, Object.fromEntries(parts) as PhraseValues, (part) => part);
    }
    return undefined;
  };
  /** Two lists of words of ours, parted where both are known: a word may hold what joins them. */
  const parted = (text: string, sign: string, known: (part: string) => string | undefined): [string, string] | undefined => {
    for (let at = text.lastIndexOf(sign); at > 0; at = text.lastIndexOf(sign, at - 1)) {
      const last = known(text.slice(at + sign.length));
      const first = last === undefined ? undefined : known(text.slice(0, at));
      if (first !== undefined && last !== undefined) return [first, last];
    }
    return undefined;
  };
  /** The term in the language, where all of it is known. */
  const termOrNone = (whole: string): string | undefined => {
    const seen = new Map<string, string | undefined>();
    const known = (text: string): string | undefined => {
      if (seen.has(text)) return seen.get(text);
      let found = word(text, known);
      const pair = found === undefined ? parted(text, ' and ', known) : undefined;
      const joint = held<string | undefined>(phrases, AND);
      if (pair && joint !== undefined) found = filled(joint, { first: pair[0], last: pair[1] }, (part) => part);
      found ??= parted(text, ', ', known)?.join(', ');
      seen.set(text, found);
      return found;
    };
    return known(whole);
  };
  const term = (text: string): string => termOrNone(text) ?? text;
  /** Values are data: only those that are words of ours by their place are said in the language. */
  const valueOf = (text: string, name: string): string => (wordGaps.has(name) || standIns.has(text) ? term(text) : text);
  const say: Words['say'] = (phrase, values = {}) => filled(held<string | undefined>(phrases, phrase) ?? phrase, values, (text) => text);
  return {
    language,
    say,
    term,
    gap,
    number,
    percent: (value, figures = 3) => `${number(100 * value, figures)}${gap}%`,
    digits,
    finding: ({ code, values, message, remedy }) => {
      const own = held<FindingWords>(findings, code);
      // a finding of a newer version has its own sentence with it
      if (own === undefined) return { message, remedy };
      return { message: sayOfBlank(filled(own.message, values, valueOf), own.message, values, say), remedy: own.remedy };
    },
    step: ({ code, step, values }) => {
      const sentence: string | undefined = held<string>(trailSentences, code);
      // and so has a step
      if (sentence === undefined) return step;
      return sayOfBlank(filled(held<string | undefined>(phrases, sentence) ?? sentence, values, valueOf), sentence, values, say);
    },
  };
}
