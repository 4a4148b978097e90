import { requireList, requireNonNegative, requireObject, requireOneOf, requirePositive, requireText } from '../base/index.js';
import type { Exercise, ExerciseQuestion } from '../teaching/index.js';
import { wordsToSay, type SayOptions } from './requireLanguage.js';

/** What a student is told, in sentences. */
export interface SpokenExercise {
  /** The metal, the piece before and after the test, the frame; the record goes with it as a file. */
  readonly given: string;
  /** Each question with the unit of its answer and the tolerance. */
  readonly questions: readonly string[];
}

/** What the sentence about the piece is filled with. */
function givenOf(from: string, { material, piece, frameCompliance, handbookModulus }: Exercise) {
  const { section, gaugeLength, parallelLength, afterFracture } = requireObject(from, 'exercise.piece', piece) as Exercise['piece'];
  const { dimensions } = requireObject(from, 'exercise.piece.section', section) as Exercise['piece']['section'];
  const { diameter } = requireObject(from, 'exercise.piece.section.dimensions', dimensions) as Readonly<Record<string, number | undefined>>;
  const after = 'exercise.piece.afterFracture';
  const broken = requireObject(from, after, afterFracture) as NonNullable<Exercise['piece']['afterFracture']>;
  return {
    material: requireText(from, 'exercise.material', material),
    diameter: requirePositive(from, 'exercise.piece.section.dimensions.diameter', diameter),
    gaugeLength: requirePositive(from, 'exercise.piece.gaugeLength', gaugeLength),
    parallelLength: requirePositive(from, 'exercise.piece.parallelLength', parallelLength),
    finalLength: requirePositive(from, `${after}.gaugeLength`, broken.gaugeLength),
    finalDiameter: requirePositive(from, `${after}.diameters[0]`, broken.diameters?.[0]),
    // mm/N are too small to be read
    compliance: 1000 * requireNonNegative(from, 'exercise.frameCompliance', frameCompliance),
    handbook: requirePositive(from, 'exercise.handbookModulus', handbookModulus),
  };
}

/** A question, once its fields are what its sentence needs. */
function requireQuestion(from: string, question: ExerciseQuestion, path: string): ExerciseQuestion {
  const { symbol, name, unit, tolerance } = requireObject(from, path, question) as ExerciseQuestion;
  requireText(from, `${path}.symbol`, symbol);
  requireText(from, `${path}.name`, name);
  requireOneOf(from, `${path}.unit`, unit, ['MPa', '1']);
  requirePositive(from, `${path}.tolerance`, tolerance);
  return question;
}

/**
 * An exercise in a language: what the student is given, and what is asked.
 *
 * $$ \text{values},\ \text{symbol} \;\to\; \text{sentence} $$
 *
 * @remarks
 * Lengths are in mm, the compliance in mm/kN, moduli in MPa. Names of metals and quantities that are your own stay as they are. The sentence says
 * that the test is invented.
 *
 * @param exercise - As {@link exerciseFor} makes it.
 * @param options - The language.
 * @returns The given things in one text, and the questions in their order.
 * @throws {@link InputError} `missing`, `wrong-type`, `not-finite`, `not-positive`, `negative`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * const { questions } = sayExercise(exerciseFor('Ada'), { language: german });
 * questions[3]?.startsWith('Rm: Zugfestigkeit, in MPa; richtig bis auf 1'); // => true
 * ```
 *
 * @see Checked in `test/languages/teaching.test.ts`.
 */
export function sayExercise(exercise: Exercise, options: SayOptions = {}): SpokenExercise {
  const from = 'sayExercise';
  requireObject(from, 'exercise', exercise);
  const values = givenOf(from, exercise);
  const asked = requireList(from, 'exercise.questions', exercise.questions).map((one, k) =>
    requireQuestion(from, one, `exercise.questions[${k}]`),
  );
  const { say, term, percent } = wordsToSay(from, options);
  return {
    given: say(
      'Invented tension test, recorded over crosshead travel. Metal: {material}. d0 = {diameter} mm, L0 = {gaugeLength} mm, Lc = {parallelLength} mm; after fracture Lu = {finalLength} mm, du = {finalDiameter} mm. Compliance of the frame: {compliance} mm/kN. Modulus by a handbook: E = {handbook} MPa.',
      { ...values, material: term(values.material) },
    ),
    questions: asked.map(({ symbol, name, unit, tolerance }) =>
      say(
        unit === 'MPa' ? '{symbol}: {name}, in MPa; right within {tolerance}.' : '{symbol}: {name}, as a ratio; right within {tolerance}.',
        { symbol, name: term(name), tolerance: percent(tolerance) },
      ),
    ),
  };
}
