import { describe, expect, test } from 'vitest';
import { chinese, french, german, spanish, wordsOf, type Language } from '../../src/languages/index.js';
import { figurePhrases } from '../../src/languages/figurePhrases.js';
import { pagePhrases } from '../../src/languages/pagePhrases.js';
import { phrases } from '../../src/languages/phrases.js';
import { planPhrases } from '../../src/languages/planPhrases.js';
import { tablePhrases } from '../../src/languages/tablePhrases.js';
import { teachingPhrases } from '../../src/languages/teachingPhrases.js';
import { termPatterns } from '../../src/languages/termPatterns.js';
import { termPhrases } from '../../src/languages/termPhrases.js';

/** A language, how a sentence ends in it, and decimal signs and spaces that it does not write. */
const languages: readonly { readonly language: Language; readonly end: RegExp; readonly foreign: RegExp }[] = [
  { language: german, end: /\.$/, foreign: /\d\.\d|\s[:;?!,]/ },
  { language: french, end: /\.$/, foreign: /\d\.\d|[^\u202F][:;?!%»]|«[^\u202F]|['"]/ },
  { language: spanish, end: /\.$/, foreign: /\d\.\d|\s[:;?!,]|[,;:](?=[^\s\d])/ },
  { language: chinese, end: /。$/, foreign: /[,;?!]|[^\s\d]:|\d,\d| [，；：。]/u },
];

const spoken = [...pagePhrases, ...figurePhrases, ...planPhrases, ...tablePhrases, ...teachingPhrases, ...termPhrases, ...termPatterns];

const sorted = (found: Iterable<string>): string[] => [...found].sort();
const placeholders = (text: string): string[] => sorted(text.match(/\{\w+\}/g) ?? []);
/** Digits of a sentence, whatever its decimal sign. */
const numbers = (text: string): string[] => sorted((text.match(/\d+(?:[.,]\d+)?/g) ?? []).map((one) => one.replace(',', '.')));
/** Symbols and units of a sentence, which no language changes. */
const symbols = (text: string): string[] =>
  sorted(text.match(/[=×±√λσεα%]|\b(?:Re[HL]|R[mpt]|R²|A[egt]+|L[0c]|h0|HBW|MPa|GPa|ISO \d+|ASTM E\d+M?|S_m|kL\/i)(?![\wáéíóú])/g) ?? []);

describe.each(languages)('$language.name', ({ language, end, foreign }) => {
  const said: Readonly<Partial<Record<string, string>>> = language.phrases;
  const own = (phrase: string): string => said[phrase] ?? '';

  test('has words for every phrase, and no other', () => {
    expect(sorted(Object.keys(said))).toEqual(sorted(phrases));
  });

  test.each(phrases)('says “%s” with the same values and numbers', (phrase) => {
    expect(own(phrase).trim()).toBe(own(phrase));
    expect(placeholders(own(phrase))).toEqual(placeholders(phrase));
    expect(numbers(own(phrase))).toEqual(numbers(phrase));
  });

  test.each(spoken)('says “%s” with the same symbols, and ends a sentence as a sentence', (phrase) => {
    expect(symbols(own(phrase))).toEqual(symbols(phrase));
    expect(end.test(own(phrase))).toBe(phrase.endsWith('.'));
  });

  test('leaves no sentence in English and none empty', () => {
    // names and words in common (ISO 178, Force F) may be the same
    expect(spoken.filter((phrase) => own(phrase) === phrase && phrase.split(' ').length > 2 && /[a-z]{3}/.test(phrase))).toEqual([]);
    expect(phrases.filter((phrase) => own(phrase).trim() === '')).toEqual([]);
  });

  test('has the decimal sign and the spaces of its typography', () => {
    // symbols and names of standards keep their own sign
    const plain = spoken.map((phrase) => own(phrase).replace(/Rp0\.2|ISO \d+(-\d)?:\d{4}/g, 'R'));
    expect(plain.filter((text) => foreign.test(text))).toEqual([]);
  });

  test('fills a term that holds another term and a number', () => {
    const { term, digits } = wordsOf(language);
    const filled = term('limit of proportionality (highest slope less 3.5 standard errors)');
    expect(filled).toContain(digits('3.5'));
    expect(filled).not.toMatch(/limit of|slope/);
    const full = term(
      'highest slope less 4 standard errors, within 0.5 % of the highest, from 0.1 of the 0.2 % offset stress on and over 0.3 of it',
    );
    for (const number of ['4', '0.5', '0.1', '0.3']) expect(full).toContain(digits(number));
    expect(full).not.toMatch(/slope|within|from|highest/);
  });
});
