export { type Exercise, type ExerciseQuestion, type ExerciseSymbol, type ExerciseTest } from './Exercise.js';
export { exerciseFor } from './exerciseFor.js';
export { explainAnswer, type AnswerExplanation, type ExerciseAnswer, type ExplainedSlip } from './explainAnswer.js';
export { type SlipKey } from './slipSentences.js';
export { type WrongRoute } from './WrongRoute.js';
export { wrongRoutes } from './wrongRoutes.js';
/** @internal */
export { metalNames, questionNames } from './exerciseNames.js';
