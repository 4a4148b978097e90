import { requireObject, requireText, type TrailStep } from '../base/index.js';
import { wordsToSay, type SayOptions } from './requireLanguage.js';

/**
 * A step of a trail in a language: what was done to the record, with the numbers it was done with.
 *
 * $$ \text{code},\ \text{values} \;\to\; \text{sentence} $$
 *
 * @remarks
 * Made from `code` and `values`, as a finding is by {@link sayFinding}.
 *
 * @param step - A step of the `trail` of any result or repair.
 * @param options - The language.
 * @returns The sentence.
 * @throws {@link InputError} `missing`, `wrong-type`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * const record = { force: [0, 1000, 2000, 3000, 3100], strain: [0, 0.001, 0.002, 0.003, 0.05] };
 * const { trail } = analyseTension(record, { section: round({ diameter: 8 }), gaugeLength: 40 });
 * sayStep(trail[0]!, { language: german }); // => 'Die Kraft wurde durch den Anfangsquerschnitt von 50,27 mm² geteilt.'
 * ```
 *
 * @see Checked in `test/languages/said.test.ts`.
 */
export function sayStep(step: TrailStep, options: SayOptions = {}): string {
  const from = 'sayStep';
  const { code, step: own, values } = requireObject(from, 'step', step) as TrailStep;
  requireText(from, 'step.code', code);
  requireText(from, 'step.step', own);
  requireObject(from, 'step.values', values);
  return wordsToSay(from, options).step(step);
}
