import { requireFinite, requireObject, requireOneOf, requireOptions } from '../base/index.js';
import type { Exercise, ExerciseSymbol } from './Exercise.js';
import type { SlipKey } from './slipSentences.js';
import { wrongRoutes } from './wrongRoutes.js';

/** An answer to a question of an exercise. */
export interface ExerciseAnswer {
  /** Which quantity. */
  readonly symbol: ExerciseSymbol;
  /** The answer [MPa, or a ratio]. */
  readonly value: number;
}

/** A slip that gives the answer. */
export interface ExplainedSlip {
  /** Which slip. */
  readonly key: SlipKey;
  /** What was done, in one sentence. */
  readonly slip: string;
  /** What to do instead. */
  readonly advice: string;
  /** The number that the slip gives [MPa or 1]. */
  readonly value: number;
}

/** What is behind an answer. */
export interface AnswerExplanation {
  /** `right`, `slip` where one or more slips give just that number, `unexplained` where none does. */
  readonly verdict: 'right' | 'slip' | 'unexplained';
  /** What is true [MPa or 1]. */
  readonly truth: number;
  /** Answer less truth, over the truth [1]. */
  readonly deviation: number;
  /** Slips that give the answer, nearest first; none where it is right. */
  readonly slips: readonly ExplainedSlip[];
}

/**
 * Whether an answer is right, and if not, which slip gives just that number.
 *
 * $$ \left| \frac{x}{x_{true}} - 1 \right| \le t, \qquad \text{else slips with } \left| \frac{x}{x_{slip}} - 1 \right| \le t $$
 *
 * @remarks
 * The tolerance t is the question's. A slip whose number lies within it of the truth cannot be told from a right answer and is not named. Several
 * slips may give the same number: all are named, nearest first.
 *
 * @param exercise - As {@link exerciseFor} makes it.
 * @param answer - Which quantity, and its value [MPa, or a ratio].
 * @returns Verdict, truth, deviation, slips with what to do instead.
 * @throws {@link InputError} `missing`, `not-finite`, `out-of-range` for a quantity that is not asked, `unknown-option`.
 *
 * @example
 * ```ts
 * const exercise = exerciseFor('Ada');
 * const { truth } = exercise.questions.find(({ symbol }) => symbol === 'Rm')!;
 * explainAnswer(exercise, { symbol: 'Rm', value: truth }).verdict; // => 'right'
 * explainAnswer(exercise, { symbol: 'Rm', value: 4 * truth }).slips[0]?.key; // => 'radius-for-diameter'
 * ```
 *
 * @see Common practice of classes. Checked in `test/teaching/explainAnswer.test.ts`.
 */
export function explainAnswer(exercise: Exercise, answer: ExerciseAnswer): AnswerExplanation {
  const from = 'explainAnswer';
  requireObject(from, 'exercise', exercise);
  requireOptions(from, answer, ['symbol', 'value'], 'answer');
  const symbols = exercise.questions.map(({ symbol }) => symbol);
  const symbol = requireOneOf(from, 'answer.symbol', answer.symbol, symbols);
  const value = requireFinite(from, 'answer.value', answer.value);
  const { truth, tolerance } = exercise.questions[symbols.indexOf(symbol)]!;
  const deviation = value / truth - 1;
  if (Math.abs(deviation) <= tolerance) return { verdict: 'right', truth, deviation, slips: [] };
  const slips = wrongRoutes
    .filter((route) => route.symbols.includes(symbol))
    .flatMap(({ key, slip, advice, value: of }) => {
      const given = of(exercise, symbol);
      return given === undefined || !(Math.abs(value / given - 1) <= tolerance) ? [] : [{ key, slip, advice, value: given }];
    })
    .sort((a, b) => Math.abs(value / a.value - 1) - Math.abs(value / b.value - 1));
  return { verdict: slips.length > 0 ? 'slip' : 'unexplained', truth, deviation, slips };
}
