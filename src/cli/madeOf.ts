import type { Failure, Success } from '../base/index.js';
import { usage } from './usage.js';

/** What the numbers of a file gave, or why they give nothing, as wrong input. */
export function madeOf<T, Reason extends string>(outcome: Success<T> | Failure<Reason>): Success<T> {
  if (outcome.ok) return outcome;
  throw usage(outcome.message);
}
