import type { ExerciseSymbol, ExerciseTest } from './Exercise.js';
import type { SlipKey } from './slipSentences.js';

/** A slip that gives a number of its own. */
export interface WrongRoute {
  /** Which slip; never renamed. */
  readonly key: SlipKey;
  /** Answers that it can spoil. */
  readonly symbols: readonly ExerciseSymbol[];
  /** What was done, in one sentence. */
  readonly slip: string;
  /** What to do instead. */
  readonly advice: string;
  /** The number that the slip gives [MPa or 1]; none where the record leaves it none. */
  readonly value: (test: ExerciseTest, symbol: ExerciseSymbol) => number | undefined;
}

/** @internal A slip without its sentences. */
export type SlipRoute = Omit<WrongRoute, 'slip' | 'advice'>;

/** @internal Answers that rest on force over area. */
export const ofStress: readonly ExerciseSymbol[] = ['mE', 'E', 'Rp0.2', 'Rm'];
