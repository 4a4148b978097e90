import { requireFinite, requireList, requireObject, requireOneOf, requireText } from '../base/index.js';
import type { AnswerExplanation, ExplainedSlip } from '../teaching/index.js';
import type { SlipWords } from './Language.js';
import { wordsToSay, type SayOptions } from './requireLanguage.js';
import type { Words } from './wordsOf.js';

/** What is said of an answer. */
export interface SpokenAnswer {
  /** Whether it is right; where a slip gives it, the sentence that leads to the slips. */
  readonly verdict: string;
  /** Slips that give it, nearest first. */
  readonly slips: readonly SlipWords[];
}

const verdicts = ['right', 'slip', 'unexplained'] as const;

function verdictIn({ say, percent }: Words, { verdict, deviation }: AnswerExplanation): string {
  if (verdict === 'right') return say('Right.');
  if (verdict === 'slip') return say('Not right. Just this number comes out so:');
  const values = { deviation: percent(Math.abs(deviation)) };
  return deviation > 0
    ? say('Not right, and no known slip gives this number: it is {deviation} above the truth.', values)
    : say('Not right, and no known slip gives this number: it is {deviation} below the truth.', values);
}

/** A slip that the language does not have, such as one of a newer version, keeps its own sentences. */
const slipIn = ({ language: { slips = {} } }: Words, { key, slip, advice }: ExplainedSlip): SlipWords =>
  (Object.hasOwn(slips, key) ? slips[key] : undefined) ?? { slip, advice };

/**
 * What is behind an answer, in a language: whether it is right, and each slip that gives it, with what to do instead.
 *
 * $$ \text{verdict},\ \text{key} \;\to\; \text{sentence} $$
 *
 * @remarks
 * Made from `verdict`, `deviation` and the `key` of each slip, so an explanation that was read from JSON is said as well. A slip that
 * the language does not have keeps its own English sentences.
 *
 * @param explanation - As {@link explainAnswer} gives it.
 * @param options - The language.
 * @returns Verdict, and slips with what to do instead.
 * @throws {@link InputError} `missing`, `wrong-type`, `not-finite`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * const exercise = exerciseFor('Ada');
 * const { truth } = exercise.questions.find(({ symbol }) => symbol === 'Rm')!;
 * const explanation = explainAnswer(exercise, { symbol: 'Rm', value: 4 * truth });
 * sayAnswer(explanation, { language: german }).slips[0]?.slip; // => 'Der Radius wurde als Durchmesser eingegeben.'
 * ```
 *
 * @see Checked in `test/languages/teaching.test.ts`.
 */
export function sayAnswer(explanation: AnswerExplanation, options: SayOptions = {}): SpokenAnswer {
  const from = 'sayAnswer';
  const { verdict, deviation, slips } = requireObject(from, 'explanation', explanation) as AnswerExplanation;
  requireOneOf(from, 'explanation.verdict', verdict, verdicts);
  requireFinite(from, 'explanation.deviation', deviation);
  const given = requireList(from, 'explanation.slips', slips, 0).map((one, k) => {
    const path = `explanation.slips[${k}]`;
    const slip = requireObject(from, path, one) as ExplainedSlip;
    for (const name of ['key', 'slip', 'advice'] as const) requireText(from, `${path}.${name}`, slip[name]);
    return slip;
  });
  const words = wordsToSay(from, options);
  return { verdict: verdictIn(words, explanation), slips: given.map((slip) => slipIn(words, slip)) };
}
