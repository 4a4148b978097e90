import type { ReadOptions, TensionResult } from '../src/index.js';
import type { SpokenAnswer } from '../src/languages/index.js';
import type { AnswerExplanation, Exercise, ExerciseSymbol } from '../src/teaching/index.js';
import type { AssumptionKey, Assumptions } from './assumptions.js';
import type { Effect } from './effects.js';
import type { HardeningView } from './hardening.js';
import type { Scenario } from './scenario.js';
import type { Spoken } from './speech.js';
import type { Tongue } from './tongues.js';

/** Where a record comes from. */
export type Source =
  | { readonly from: 'nothing' }
  | { readonly from: 'file'; readonly name: string }
  | { readonly from: 'made'; readonly scenario: Scenario }
  | { readonly from: 'exercise'; readonly name: string };

/** What the page asks of the worker. */
export type Request =
  | { readonly kind: 'read'; readonly name: string; readonly bytes: ArrayBuffer; readonly options: ReadOptions }
  | { readonly kind: 'make'; readonly scenario: Scenario }
  | { readonly kind: 'exercise'; readonly name: string }
  | { readonly kind: 'evaluate'; readonly assumptions: Assumptions; readonly basis: Assumptions; readonly language: Tongue }
  | { readonly kind: 'answer'; readonly symbol: ExerciseSymbol; readonly value: number; readonly language: Tongue }
  | { readonly kind: 'report'; readonly drawings: Readonly<Record<string, string>>; readonly language: Tongue }
  | { readonly kind: 'json' }
  | { readonly kind: 'text' };

/** A record that is there: how many samples of which columns, and what is known of its piece. */
export interface Loaded {
  readonly samples: number;
  readonly columns: readonly string[];
  readonly known?: Assumptions | undefined;
  /** Of an exercise: what the student is given. */
  readonly exercise?: Omit<Exercise, 'record'> | undefined;
}

/** An assumption that cannot stand, and what is allowed, as the end of a sentence that begins with its name. */
export interface Wrong {
  readonly key: AssumptionKey;
  readonly rule: string;
}

/** What the worker answers. */
export type Reply =
  | { readonly kind: 'loaded'; readonly loaded: Loaded }
  /** What cannot be done; of a wrong assumption, which one, and what is allowed. */
  | { readonly kind: 'refused'; readonly message: string; readonly wrong?: Wrong | undefined }
  | { readonly kind: 'result'; readonly result: TensionResult; readonly spoken: Spoken }
  /** The result with its window searched, which changes are told against. */
  | { readonly kind: 'searched'; readonly result: TensionResult }
  | { readonly kind: 'effect'; readonly key: AssumptionKey; readonly effect: Effect }
  | { readonly kind: 'hardening'; readonly view: HardeningView }
  | {
      readonly kind: 'answer';
      readonly symbol: ExerciseSymbol;
      readonly verdict: AnswerExplanation['verdict'];
      readonly said: SpokenAnswer;
      readonly language: Tongue;
    }
  | { readonly kind: 'text'; readonly text: string }
  | { readonly kind: 'done' };

/** A message with the number of the request that it belongs to. */
export type Numbered<Message> = Message & { readonly id: number };
