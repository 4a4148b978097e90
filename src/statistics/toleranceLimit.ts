import { failure, requireColumn, requireOneOf, requireOptions, requireProbability, success, type Outcome } from '../base/index.js';
import { mean, sampleDeviation } from '../numeric/index.js';
import { toleranceFactor } from './toleranceFactor.js';

/** Options of {@link toleranceLimit}. */
export interface ToleranceOptions {
  /** Share P of all pieces that the limit is to hold, above 0 and below 1; default 0.9. */
  readonly content?: number | undefined;
  /** Confidence γ that it holds them, above 0 and below 1; default 0.95. */
  readonly confidence?: number | undefined;
  /** Limit below, above, or both; default `lower`. */
  readonly side?: 'lower' | 'upper' | 'both' | undefined;
}

/** A tolerance limit of a normal scatter, in the unit of the values. */
export interface ToleranceLimit {
  /** Lower limit, where asked for. */
  readonly lower?: number;
  /** Upper limit, where asked for. */
  readonly upper?: number;
  /** Standard deviations from the mean to the limit [1]. */
  readonly factor: number;
  /** Number of values. */
  readonly n: number;
  /** Share of all pieces [1]. */
  readonly content: number;
  /** Confidence [1]. */
  readonly confidence: number;
  /** What the limit is, in words that may stand in a report. */
  readonly label: string;
}

/** Why there is no tolerance limit. */
export type ToleranceReason = 'too-few-values' | 'no-scatter';

/** Below so many pieces a limit is never more than like that of a handbook (common practice: 100 pieces of several lots). */
const HANDBOOK = 'not a design value: those ask for about 100 pieces of several lots';

function label(side: string, content: number, confidence: number): string {
  const percent = (share: number) => `${Number((100 * share).toPrecision(12))} %`;
  const like = side === 'lower' && confidence === 0.95 ? (content === 0.9 ? 'B-like, ' : content === 0.99 ? 'A-like, ' : '') : '';
  const which = side === 'both' ? 'tolerance limits' : `${side} tolerance limit`;
  return `${which} for ${percent(content)} of all pieces at ${percent(confidence)} confidence (${like}${HANDBOOK})`;
}

/**
 * Limit beyond which all but a small share of all pieces lie, with a given confidence.
 *
 * $$ \bar x - k_1 s, \qquad \bar x + k_1 s, \qquad \bar x \pm k_2 s $$
 *
 * @remarks
 * For a normal scatter of one lot. The interval of a mean ({@link summariseReplicates}) is far narrower and answers another question.
 * Never write such a limit as a basis value: the label says what it is. Structural values follow local codes and licensed practice.
 *
 * @param values - Results of one property in one unit, finite; at least 2 for an answer.
 * @param options - Share, confidence, side.
 * @returns Limit and factor; fails with `too-few-values`, or with `no-scatter` where all values are equal.
 * @throws {@link InputError} `missing`, `wrong-type`, `empty`, `not-finite`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * required(toleranceLimit([452.1, 449.8, 455.0, 451.2, 447.6])).lower; // => 441.79
 * ```
 *
 * @see ISO 16269-6, statistical tolerance intervals. Checked in `test/handbook/tolerance.test.ts`.
 */
export function toleranceLimit(values: ArrayLike<number>, options: ToleranceOptions = {}): Outcome<ToleranceLimit, ToleranceReason> {
  const from = 'toleranceLimit';
  const column = requireColumn(from, 'values', values);
  requireOptions(from, options, ['content', 'confidence', 'side']);
  const content = requireProbability(from, 'options.content', options.content ?? 0.9);
  const confidence = requireProbability(from, 'options.confidence', options.confidence ?? 0.95);
  const side = requireOneOf(from, 'options.side', options.side ?? 'lower', ['lower', 'upper', 'both']);
  const n = column.length;
  if (n < 2) return failure('too-few-values', 'One value has no scatter to go by.');
  const s = sampleDeviation(column);
  if (s === 0) return failure('no-scatter', 'All values are equal.');
  const factor = toleranceFactor({ n, content, confidence, sides: side === 'both' ? 2 : 1 });
  const centre = mean(column);
  return success({
    ...(side === 'upper' ? {} : { lower: centre - factor * s }),
    ...(side === 'lower' ? {} : { upper: centre + factor * s }),
    factor,
    n,
    content,
    confidence,
    label: label(side, content, confidence),
  });
}
