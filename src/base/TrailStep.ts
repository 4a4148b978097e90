import type { ColumnName } from './columns.js';
import type { Gaps } from './catalogue.js';
import { shown } from './shown.js';
import { trailSentences, type TrailCode, type TrailSentence } from './trailSentences.js';

/** A change of the columns of a record, complete enough to be made again to the last bit. */
export type RecordChange =
  | {
      /** An amount is added to a stretch of a column. */
      readonly kind: 'add';
      /** Which column. */
      readonly column: ColumnName;
      /** First and last sample, both included. */
      readonly range: readonly [number, number];
      /** What is added [unit of the column]. */
      readonly amount: number;
    }
  | {
      /** A ramp is added to a column, straight over the samples from the first to the last. */
      readonly kind: 'ramp';
      /** Which column. */
      readonly column: ColumnName;
      /** What is added at the first sample and at the last [unit of the column]. */
      readonly amounts: readonly [number, number];
    }
  | {
      /** A column is multiplied. */
      readonly kind: 'multiply';
      /** Which column. */
      readonly column: ColumnName;
      /** By what. */
      readonly factor: number;
    }
  | {
      /** Samples of a column are given other values. */
      readonly kind: 'set';
      /** Which column. */
      readonly column: ColumnName;
      /** Which samples, ascending. */
      readonly samples: readonly number[];
      /** Their new values [unit of the column]. */
      readonly values: readonly number[];
    }
  | {
      /** A column is moved against the others: sample i takes the value of sample i + samples; the ends are held. */
      readonly kind: 'advance';
      /** Which column. */
      readonly column: ColumnName;
      /** By how many samples; negative for a delay. */
      readonly samples: number;
    }
  | {
      /** Time is counted anew in equal steps. */
      readonly kind: 'clock';
      /** Time of the first sample [s]. */
      readonly start: number;
      /** Step [s]. */
      readonly step: number;
    }
  | {
      /** Only some samples are kept. */
      readonly kind: 'keep';
      /** Stretches that are kept: first and last sample of each, ascending. */
      readonly ranges: readonly (readonly [number, number])[];
    };

/** One thing that was done to the record, in order. */
export interface TrailStep {
  /** Which step; never renamed. */
  readonly code: TrailCode;
  /** What was done, in one sentence with the numbers; it may be reworded. */
  readonly step: string;
  /** The numbers it was done with, and what they were before. */
  readonly values: Readonly<Record<string, number | string>>;
  /** The change of the columns, where the step was one; `reapplySteps` makes it again. */
  readonly change?: RecordChange | undefined;
}

type Values = TrailStep['values'];

/** @internal Makes a step of a trail from its code and its numbers; the sentence comes from the list, whose gaps the compiler asks for. */
export function trailStep<Code extends TrailCode>(
  code: Code,
  values: Values & Readonly<Record<Gaps<TrailSentence<Code>>, number | string>>,
  change?: RecordChange,
): TrailStep {
  return { code, step: shown(trailSentences[code], values), values, ...(change ? { change } : {}) };
}

/** @internal A number of the first step of a code. */
export function trailValue(trail: readonly TrailStep[], code: TrailCode, name: string): number | undefined {
  const value = trail.find((one) => one.code === code)?.values[name];
  return typeof value === 'number' ? value : undefined;
}
