import { describe, expect, test } from 'vitest';
import { chinese, english, french, german, sayAnswer, sayExercise, spanish, type Language } from '../../src/languages/index.js';
import { teachingPhrases } from '../../src/languages/teachingPhrases.js';
import { exerciseFor, explainAnswer, wrongRoutes, type AnswerExplanation, type ExerciseSymbol } from '../../src/teaching/index.js';
import { refusal } from '../support/thrown.js';

const exercise = exerciseFor('Ada');
/** As it comes out of a file. */
const again = <Value>(value: Value): Value => JSON.parse(JSON.stringify(value)) as Value;

/** Each slip, as an answer that it gives is explained. */
const explained: readonly AnswerExplanation[] = wrongRoutes.map(({ key, slip, advice }) => ({
  verdict: 'slip',
  truth: 1,
  deviation: 3,
  slips: [{ key, slip, advice, value: 4 }],
}));
const unexplained = (deviation: number): AnswerExplanation => ({ verdict: 'unexplained', truth: 500, deviation, slips: [] });
const verdicts: readonly AnswerExplanation[] = [
  { verdict: 'right', truth: 1, deviation: 0.001, slips: [] },
  unexplained(0.1234),
  unexplained(-0.056),
];

/** All that is said of an exercise and of answers to it. */
function saidIn(language: Language): readonly string[] {
  const { given, questions } = sayExercise(exercise, { language });
  const answers = [...explained, ...verdicts].map((one) => sayAnswer(one, { language }));
  return [
    given,
    ...questions,
    ...answers.flatMap(({ verdict, slips }) => [verdict, ...slips.flatMap(({ slip, advice }) => [slip, advice])]),
  ];
}
/** Numbers of a sentence with a decimal point; digits of symbols are among them. */
const numbers = (text: string, { decimalSign }: Language): string[] =>
  (text.replaceAll('Rp0.2', 'Rp').match(/\d+(?:[.,]\d+)?/g) ?? []).map((one) => one.replace(decimalSign, '.')).sort();
/** Symbols of what is measured, in the order of the alphabet. */
const symbols = (text: string): string[] =>
  text.match(/\b(?:Rp0\.2|Rm|Agt|At|mE|[LS][0uc]|d0|du(?= =)|[EZ](?=[ \u202f:：.。])|[kMG]?Pa|psi|N\/cm²)(?![\w²])/g)?.sort() ?? [];

const inEnglish = saidIn(english);
const englishWords = new Set(inEnglish.flatMap((text) => text.toLowerCase().match(/[a-z]{4,}/g) ?? []));
/** Words of the English sentences that a language has as well. */
const shared: Readonly<Record<string, readonly string[]>> = {
  de: ['extension', 'maximum', 'million', 'radius'],
  // prettier-ignore
  fr: ['cent', 'compare', 'dimension', 'distance', 'ductile', 'extension', 'extensions', 'force', 'maximum', 'million', 'part', 'pascals', 'place', 'point', 'section'],
  es: ['factor', 'final', 'total'],
  'zh-Hans': [],
};

describe.each([german, french, spanish, chinese].map((language) => [language.tag, language] as const))('%s', (_, language) => {
  const said = saidIn(language);

  test('says every sentence, with the numbers and symbols of the English one', () => {
    expect(said).toHaveLength(inEnglish.length);
    said.forEach((text, k) => {
      expect(numbers(text, language), text).toEqual(numbers(inEnglish[k]!, english));
      expect(symbols(text), text).toEqual(symbols(inEnglish[k]!));
    });
  });

  test('leaves no English, no gap and nothing undefined', () => {
    const words = said.flatMap((text) => text.toLowerCase().match(/\p{L}{4,}/gu) ?? []);
    expect([...new Set(words.filter((word) => englishWords.has(word)))].sort()).toEqual(shared[language.tag]);
    for (const text of said) expect(text).not.toMatch(/[{}]|undefined|NaN/);
  });

  test('writes numbers and signs as the language does', () => {
    const foreign = { de: /\d\.\d| [:;?!]/, fr: /\d\.\d|[^\u202f][:;?!%]|['"]/, es: /\d\.\d| [:;?!]/, 'zh-Hans': /\d,\d|[,;?!:] / }[
      language.tag
    ]!;
    for (const text of said) {
      expect(text.replaceAll('Rp0.2', 'Rp')).not.toMatch(foreign);
      expect(text).toMatch(/^[\p{Lu}\p{Lo}\d].*[.。:：]$|^mE/u);
    }
  });

  test('says what was read from JSON, and what a newer version or the caller named as it is', () => {
    expect(sayExercise(again(exercise), { language })).toEqual(sayExercise(exercise, { language }));
    expect(sayAnswer(again(explained[0]!), { language })).toEqual(sayAnswer(explained[0]!, { language }));
    const later = { key: 'of-a-later-version' as 'final-area', slip: 'It was so.', advice: 'Do thus.', value: 1 };
    expect(sayAnswer({ ...explained[0]!, slips: [later] }, { language }).slips).toEqual([{ slip: 'It was so.', advice: 'Do thus.' }]);
    expect(sayExercise({ ...exercise, material: 'Bar of lot seven' }, { language }).given).toContain('Bar of lot seven');
  });
});

test('in English a slip says what the explanation itself says', () => {
  const value = 4 * exercise.questions.find(({ symbol }) => symbol === 'Rm')!.truth;
  const explanation = explainAnswer(exercise, { symbol: 'Rm', value });
  const [first] = explanation.slips;
  expect(sayAnswer(explanation)).toEqual({
    verdict: 'Not right. Just this number comes out so:',
    slips: [{ slip: first!.slip, advice: first!.advice }],
  });
  expect(sayAnswer(verdicts[1]!).verdict.replaceAll('\u00a0', ' ')).toBe(
    'Not right, and no known slip gives this number: it is 12.3 % above the truth.',
  );
  expect(sayAnswer(verdicts[2]!).verdict).toContain('5.6\u00a0% below');
});

test('the sentence about the piece has its own numbers', () => {
  const { piece, frameCompliance, handbookModulus } = exercise;
  const { given, questions } = sayExercise(exercise, { language: german });
  const shown = (value: number): string => String(Number(value.toPrecision(4))).replace('.', ',');
  expect(given).toContain(`L0 = ${piece.gaugeLength} mm, Lc = ${piece.parallelLength!} mm`);
  expect(given).toContain(`Lu = ${shown(piece.afterFracture!.gaugeLength!)} mm, du = ${shown(piece.afterFracture!.diameters![0]!)} mm`);
  expect(given).toContain(`${shown(1e3 * frameCompliance)} mm/kN`);
  expect(given).toContain(`E = ${handbookModulus} MPa`);
  expect(questions.map((text) => text.split(':')[0])).toEqual(exercise.questions.map(({ symbol }) => symbol));
  expect(questions[2]).toBe('Rp0.2: Dehngrenze bei 0,2 % plastischer Extension, in MPa; richtig bis auf 1,5\u00a0%.');
});

test('every metal and question that an exercise can have is among the phrases', () => {
  const known = new Set<string>(teachingPhrases);
  for (let k = 0; k < 40; k++) {
    const { material, questions } = exerciseFor(k);
    expect(known).toContain(material);
    for (const { name } of questions) expect(known).toContain(name);
  }
});

test('a language of your own says what it has, the rest in English', () => {
  const own: Language = { ...german, slips: { 'final-area': { slip: 'So.', advice: 'Anders.' } } };
  const [first] = explained;
  expect(sayAnswer(first!, { language: own }).slips).toEqual(sayAnswer(first!).slips);
  const final = explained.find(({ slips }) => slips[0]!.key === 'final-area')!;
  expect(sayAnswer(final, { language: own }).slips).toEqual([{ slip: 'So.', advice: 'Anders.' }]);
});

describe('refusals', () => {
  const [one] = explained;
  test.each<[string, () => unknown]>([
    ['missing exercise', () => sayExercise(undefined as never)],
    ['missing exercise.piece.parallelLength', () => sayExercise({ ...exercise, piece: { ...exercise.piece, parallelLength: undefined } })],
    ['missing exercise.piece.afterFracture', () => sayExercise({ ...exercise, piece: { ...exercise.piece, afterFracture: undefined } })],
    [
      'out-of-range exercise.questions[0].unit',
      () => sayExercise({ ...exercise, questions: [{ ...exercise.questions[0]!, unit: 'GPa' as never }] }),
    ],
    ['wrong-type options.language', () => sayExercise(exercise, { language: 'de' as never })],
    ['missing explanation', () => sayAnswer(undefined as never)],
    ['out-of-range explanation.verdict', () => sayAnswer({ ...one!, verdict: 'wrong' as never })],
    ['not-finite explanation.deviation', () => sayAnswer({ ...one!, deviation: NaN })],
    ['missing explanation.slips[0].advice', () => sayAnswer({ ...one!, slips: [{ ...one!.slips[0]!, advice: undefined as never }] })],
    [
      'missing options.language.slips.final-area.advice',
      () => sayAnswer(one!, { language: { ...german, slips: { 'final-area': { slip: 'So.' } as never } } }),
    ],
    ['unknown-option options.tag', () => sayAnswer(one!, { tag: 'de' } as never)],
  ])('%s', (reason, call) => {
    expect(refusal(call)).toBe(reason);
  });
});

test('a symbol has its name', () => {
  const names: Readonly<Record<ExerciseSymbol, string>> = {
    mE: 'pente de la droite élastique',
    E: 'module d’élasticité',
    'Rp0.2': 'limite conventionnelle d’élasticité',
    Rm: 'résistance à la traction',
    Agt: 'extension totale à la force maximale',
    A: 'allongement après rupture',
    Z: 'coefficient de striction',
  };
  const { questions } = sayExercise(exercise, { language: french });
  Object.entries(names).forEach(([symbol, name], k) => {
    expect(questions[k]!.startsWith(`${symbol}\u202f: ${name}`), questions[k]).toBe(true);
  });
});
