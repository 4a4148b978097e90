import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { catalogue, type FindingCode } from '../../src/base/index.js';
import { chineseCautions } from '../../src/languages/chineseCautions.js';
import { chineseFindings } from '../../src/languages/chineseFindings.js';
import { chineseValueWords } from '../../src/languages/chineseValueWords.js';
import { findingValueWords, type FindingValueWord } from '../../src/languages/findingValueWords.js';
import { frenchCautions } from '../../src/languages/frenchCautions.js';
import { frenchFindings } from '../../src/languages/frenchFindings.js';
import { frenchValueWords } from '../../src/languages/frenchValueWords.js';
import { germanCautions } from '../../src/languages/germanCautions.js';
import { germanFindings } from '../../src/languages/germanFindings.js';
import { germanValueWords } from '../../src/languages/germanValueWords.js';
import type { FindingWords } from '../../src/languages/Language.js';
import { spanishCautions } from '../../src/languages/spanishCautions.js';
import { spanishFindings } from '../../src/languages/spanishFindings.js';
import { spanishValueWords } from '../../src/languages/spanishValueWords.js';
import { cautions, type CautionTag } from '../../src/methods/index.js';

/** What one language holds; the types ask for every code, tag and word when this file is compiled. */
interface Words {
  readonly language: string;
  readonly findings: Readonly<Record<FindingCode, FindingWords>>;
  readonly cautions: Readonly<Record<CautionTag, string>>;
  readonly values: Readonly<Record<FindingValueWord, string>>;
  /** Decimal signs and spaces that the language does not write. */
  readonly foreign: RegExp;
}

const languages: readonly Words[] = [
  { language: 'German', findings: germanFindings, cautions: germanCautions, values: germanValueWords, foreign: /\d\.\d|\s[:;?!,]/ },
  {
    language: 'French',
    findings: frenchFindings,
    cautions: frenchCautions,
    values: frenchValueWords,
    foreign: /\d\.\d|[^\u202F][:;?!%»]|«[^\u202F]|['"]/,
  },
  { language: 'Spanish', findings: spanishFindings, cautions: spanishCautions, values: spanishValueWords, foreign: /\d\.\d|\s[:;?!,]/ },
  { language: 'Chinese', findings: chineseFindings, cautions: chineseCautions, values: chineseValueWords, foreign: /[,;?!](?![^`]*`)/ },
];

const codes = Object.keys(catalogue) as FindingCode[];
const sorted = (found: Iterable<string>): string[] => [...found].sort();
const placeholders = (text: string): string[] => sorted(new Set(text.match(/\{\w+\}/g)));
const backticked = (text: string): string[] => sorted(new Set(text.match(/`[^`]+`/g)));
/** Digits of a sentence, whatever its decimal sign; not those of names in backticks. */
const numbers = (text: string): string[] =>
  sorted((text.replace(/`[^`]+`/g, '').match(/\d+(?:[.,]\d+)?/g) ?? []).map((one) => one.replace(',', '.')));

describe.each(languages)('$language', ({ foreign, findings, cautions: cautioned, values }) => {
  test('holds every finding in the words of the catalogue, and no other', () => {
    expect(sorted(Object.keys(findings))).toEqual(sorted(codes));
  });

  describe.each(codes)('%s', (code) => {
    const own = findings[code];
    const english = catalogue[code];

    test.each(['message', 'remedy'] as const)('%s says the same with the same values, numbers and names', (part) => {
      expect(placeholders(own[part])).toEqual(placeholders(english[part]));
      expect(backticked(own[part])).toEqual(backticked(english[part]));
      expect(numbers(own[part])).toEqual(numbers(english[part]));
    });

    test.each(['message', 'remedy'] as const)('%s is a sentence of its own', (part) => {
      expect(own[part]).toMatch(/^[\p{Lu}\p{Lo}\d{“„«].*[.。}]$/u);
      expect(own[part]).not.toBe(english[part]);
    });
  });

  test('holds the cautions of every tag, none in English', () => {
    expect(sorted(Object.keys(cautioned))).toEqual(sorted(new Set(cautions.map(({ tag }) => tag))));
    const english = cautions.map(({ text }) => text);
    for (const text of Object.values(cautioned)) {
      expect(text).toMatch(/^[\p{Lu}\p{Lo}].*[.。]$/u);
      expect(english).not.toContain(text);
    }
  });

  test('says every sentence of the cautions of a tag', () => {
    // a semicolon may stand where English begins another sentence
    const sentences = (text: string): number => text.match(/[.;。；](?=\s|$|\p{Lo})/gu)?.length ?? 0;
    for (const [tag, text] of Object.entries(cautioned)) {
      const english = cautions.filter((one) => one.tag === tag).map((one) => one.text.replaceAll(';', ','));
      expect(sentences(text)).toBeGreaterThanOrEqual(sentences(english.join(' ')));
    }
  });

  test.each(findingValueWords)('has words for the value %s', (word) => {
    expect(values[word]).not.toBe('');
    expect(placeholders(values[word])).toEqual(placeholders(word));
    expect(numbers(values[word])).toEqual(numbers(word));
  });

  test('has no value words beyond the list', () => {
    expect(Object.keys(values)).toEqual([...findingValueWords]);
  });

  test('has the decimal sign and the spaces of its typography', () => {
    const all = [
      ...Object.values(findings).flatMap(({ message, remedy }) => [message, remedy]),
      ...Object.values(cautioned),
      ...Object.values(values),
    ];
    // symbols keep their own sign
    for (const text of all) expect(text.replace(/Rp0\.2|A11\.3/g, 'R')).not.toMatch(foreign);
  });
});

const sources = readdirSync('src', { recursive: true, encoding: 'utf8' })
  .filter((file) => file.endsWith('.ts') && !file.startsWith('languages') && !file.startsWith('simulate'))
  .map((file) => readFileSync(`src/${file}`, 'utf8').toLowerCase())
  .join('\n');

test.each(findingValueWords)('%s is written somewhere in the sources', (word) => {
  // the sources put a pattern together from pieces
  const pieces = word.toLowerCase().split(/\{\w+\}|(?<=reading is )|\.$/);
  for (const piece of pieces) expect(sources).toContain(piece);
});
