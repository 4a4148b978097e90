import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { finding, trailStep, type Finding } from '../../src/base/index.js';
import { english, french, german, wordsOf, type Language } from '../../src/languages/index.js';
import { figurePhrases } from '../../src/languages/figurePhrases.js';
import { pagePhrases } from '../../src/languages/pagePhrases.js';
import { phrases } from '../../src/languages/phrases.js';
import { planPhrases } from '../../src/languages/planPhrases.js';
import { tablePhrases } from '../../src/languages/tablePhrases.js';
import { replicateTraits, type ReplicateTrait } from '../../src/methods/replicates/replicateTraits.js';
import type { TestResult } from '../../src/index.js';
import { results } from '../support/pages.js';

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

test('a term is said in the language, a text stays as it is', () => {
  expect(words.say('Fracture: sample {sample}, recognised as {how}.', { sample: 7, how: words.term('sudden fall') })).toBe(
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
  expect(words.finding(made).message).toBe('Gaps in time: 3, the longest 1,25 s at sample 40, where samples come every 0,1 s.');
  const newer = { ...made, code: 'of-a-later-version' as never };
  expect(words.finding(newer)).toEqual({ message: made.message, remedy: made.remedy });
});

test('one minus sign in sentences, steps and percentages, and a unit that stays with its number', () => {
  const { number, percent, digits, step, say } = wordsOf(english);
  expect([number(-0.51, 3), percent(-0.02), digits('1.8e-4')]).toEqual(['−0.51', '−2\u00a0%', '1.8\u00a0×\u00a010⁻⁴']);
  expect(say('Runner-up windows give slopes of {slopes}.', { slopes: -3 })).toBe('Runner-up windows give slopes of −3.');
  const moved = { code: 'origin-moved', step: '', values: { shift: -0.25 } } as const;
  expect(step(moved)).toContain('−0.25');
});

test('no name of a field and no code of ours is printed as it is, in English either', () => {
  const { term } = wordsOf(english);
  const names = phrases.filter((one) => /^[a-z]+([A-Z][a-z]*)+$|^[a-z]+(-[a-z]+)+$/.test(one));
  expect(names.length).toBeGreaterThan(20);
  expect(names.filter((one) => term(one) === one)).toEqual([]);
  expect([term('outerDiameter'), wordsOf({ ...english, tag: 'x-none' }).term('wallThickness')]).toEqual([
    'outer diameter',
    'wall thickness',
  ]);
});

test('every phrase is there once, and is said somewhere', () => {
  expect(new Set(phrases).size).toBe(phrases.length);
  const code = ['src/report', 'src/cli', 'src/languages']
    .flatMap((folder) =>
      readdirSync(folder, { recursive: true, encoding: 'utf8' })
        // the lists of phrases and their languages say nothing themselves
        .filter((file) => file.endsWith('.ts') && (folder !== 'src/languages' || file.startsWith('say')))
        .map((file) => readFileSync(`${folder}/${file}`, 'utf8')),
    )
    .join('\n');
  const unused = [...pagePhrases, ...figurePhrases, ...planPhrases, ...tablePhrases].filter((one) => !code.includes(one));
  expect(unused).toEqual([]);
});

describe.each([german, french])('text from outside in $name', (language) => {
  const { say, term, finding: inWords, step } = wordsOf(language);
  const outside = ['Sheet', 'Smith and Jones', '2.5', 'constructor', 'toString', 'up', 'strain, force', 'B (certificate)', '__proto__'];

  test.each(outside)('a group, a test, a symbol, a grip called “%s” stay as they are', (name) => {
    expect(say('{groups} groups by h and k; beyond the limits (level {level}): {names}.', { groups: 3, level: 5, names: name })).toContain(
      `: ${name}.`,
    );
    const of = (made: Finding): string => inWords(made).message;
    expect(of(finding('group-off-the-mean', { group: name, h: 2.5, limit: 2 }))).toContain(name);
    expect(
      of(finding('replicate-outlying', { symbol: name, test: name, value: 1, unit: 'MPa', statistic: 2, limit: 3 })).split(name).length,
    ).toBe(3);
    expect(of(finding('compliance-of-other-grips', { measured: name, used: name })).split(name).length).toBe(3);
    expect(of(finding('force-outside-certificate', { identity: name, force: 1, low: 2, high: 3 }))).toContain(name);
    expect(of(finding('replicates-mixed', { what: 'the operator', values: `"${name}", "x"` }))).toContain(`"${name}", "x"`);
  });

  test('a code, a term and a gap called like a property of every object are none', () => {
    const made = finding('channel-empty', { column: 'force' });
    expect(inWords({ ...made, code: 'constructor' as never })).toEqual({ message: made.message, remedy: made.remedy });
    expect(wordsOf(language).term('constructor')).toBe('constructor');
    expect(step({ code: 'toString' as never, step: 'done', values: {} })).toBe('done');
    expect(say('{toString}' as never)).toBe('{toString}');
  });

  test('an input of a budget is said where all of it is a word of ours', () => {
    const of = (input: string): string => inWords(finding('one-term-dominates', { input, share: 90, symbol: 'F' })).message;
    expect(of('F (certificate)')).toContain('F (certificate)');
    expect(of('frameCompliance (certificate)')).not.toMatch(/frameCompliance|certificate\)/);
  });

  test('words of ours in a finding and a step are said, lists of them too', () => {
    const said = inWords(finding('uncertainty-incomplete', { missing: 'displacement, section' })).message;
    expect(said).not.toMatch(/displacement/);
    expect(step(trailStep('outer-fibre-strain-by-travel', { length: 12.5 }))).toContain('12,5 mm');
    expect(step(trailStep('tests-differ', { what: 'the section', values: 'round, tube' }))).not.toMatch(/round|the section/);
    // what several tests may differ in, of every method
    for (const result of Object.values(results()))
      for (const { what, words: own } of (replicateTraits[result.method] as (one: TestResult) => readonly ReplicateTrait[])(result)) {
        expect(term(what), what).not.toBe(what);
        if (own !== undefined && Number.isNaN(Number(own))) expect(Object.hasOwn(language.phrases, own), own).toBe(true);
      }
    expect(inWords(finding('replicates-mixed', { what: 'the thickness', values: '0.8 to 1 mm' })).message).not.toMatch(
      / to |thickness|0\.8/,
    );
  });
});
