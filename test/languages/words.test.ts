import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { finding } from '../../src/base/index.js';
import { english, wordsOf, type Language } from '../../src/languages/index.js';
import { figurePhrases } from '../../src/languages/figurePhrases.js';
import { pagePhrases } from '../../src/languages/pagePhrases.js';
import { phrases } from '../../src/languages/phrases.js';
import { planPhrases } from '../../src/languages/planPhrases.js';
import { tablePhrases } from '../../src/languages/tablePhrases.js';

/** A made-up language: every word is known by its marks. */
const marked: Language = {
  ...english,
  tag: 'x-marked',
  decimalSign: ',',
  phrases: Object.fromEntries(phrases.map((one) => [one, `‹${one}›`])),
};
const words = wordsOf(marked);

test('a sentence is said in the language, with its numbers as the language writes them', () => {
  expect(words.say('Runner-up windows give slopes of {slopes}.', { slopes: 70.25 })).toBe('‹Runner-up windows give slopes of 70,25.›');
  expect(wordsOf(english).say('Maximum: sample {sample}.', { sample: 120000 })).toBe('Maximum: sample 120000.');
});

test('a value that is itself a known word is said in the language too; names from outside stay', () => {
  expect(words.say('Fracture: sample {sample}, recognised as {how}.', { sample: 7, how: 'sudden fall' })).toBe(
    '‹Fracture: sample 7, recognised as ‹sudden fall›.›',
  );
  expect(words.term('bar of Ada 1.5')).toBe('bar of Ada 1.5');
});

test('terms that hold numbers are found by their shape', () => {
  expect(words.term('permanent set from 301.5 MPa')).toBe('‹permanent set from 301,5 MPa›');
  expect(words.term('limit of proportionality (tangent of 90 % of the slope)')).toBe(
    '‹limit of proportionality (‹tangent of 90 % of the slope›)›',
  );
});

test('a finding is filled from its values, and one of a code not known yet keeps its own sentence', () => {
  const made = finding('time-gap', { count: 3, longest: 1.25, first: 40, usual: 0.1 });
  expect(words.finding(made).message).toBe('3 gaps in time, the longest 1,25 s at sample 40, where samples come every 0,1 s.');
  const newer = { ...made, code: 'of-a-later-version' as never };
  expect(words.finding(newer)).toEqual({ message: made.message, remedy: made.remedy });
});

test('every phrase is there once, and is said somewhere', () => {
  expect(new Set(phrases).size).toBe(phrases.length);
  const code = ['src/report', 'src/cli']
    .flatMap((folder) => readdirSync(folder).map((file) => readFileSync(`${folder}/${file}`, 'utf8')))
    .join('\n');
  const unused = [...pagePhrases, ...figurePhrases, ...planPhrases, ...tablePhrases].filter((one) => !code.includes(one));
  expect(unused).toEqual([]);
});
