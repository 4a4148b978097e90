import type { TensionRecord, TestPiece } from '../base/index.js';

/** What an exercise asks for. */
export type ExerciseSymbol = 'mE' | 'E' | 'Rp0.2' | 'Rm' | 'Agt' | 'A' | 'Z';

/** What a student is given: a record of force and travel, the piece, the frame. */
export interface ExerciseTest {
  /** Columns `time` [s], `force` [N] and `travel` [mm]. */
  readonly record: TensionRecord;
  /** A round piece, with what was measured on it once it had broken. */
  readonly piece: TestPiece;
  /** Compliance of the frame [mm/N]. */
  readonly frameCompliance: number;
  /** Modulus that a handbook gives for the metal [MPa]. */
  readonly handbookModulus: number;
}

/** One question of an exercise. */
export interface ExerciseQuestion {
  /** Symbol. */
  readonly symbol: ExerciseSymbol;
  /** What it is, in words. */
  readonly name: string;
  /** Unit of the answer: MPa, or a ratio. */
  readonly unit: 'MPa' | '1';
  /** What is true. */
  readonly truth: number;
  /** Share by which an answer may differ and still be right. */
  readonly tolerance: number;
}

/** An exercise: a test, what is asked about it, and what is true. */
export interface Exercise extends ExerciseTest {
  /** What it was made from: the name or number of the student. */
  readonly seed: string;
  /** Kind of the metal. */
  readonly material: string;
  /** Questions in the order of the test. */
  readonly questions: readonly ExerciseQuestion[];
}
