import { requireOneOf, requireOptions, requireProbability } from '../base/index.js';

/** Arguments of {@link leastPiecesForTolerance}. */
export interface RankToleranceArguments {
  /** Share P of all pieces, above 0 and below 1; default 0.9. */
  readonly content?: number | undefined;
  /** Confidence γ, above 0 and below 1; default 0.95. */
  readonly confidence?: number | undefined;
  /** Only the smallest value as limit, or smallest and largest; default 1. */
  readonly sides?: 1 | 2 | undefined;
}

/**
 * Fewest pieces whose smallest value (or smallest and largest) is a tolerance limit whatever the shape of the scatter.
 *
 * $$ 1 - P^n \ge \gamma, \qquad 1 - n P^{n-1} + (n-1) P^n \ge \gamma $$
 *
 * @remarks
 * Nothing is assumed but that the pieces are drawn at random from one lot. That is many more pieces than with a normal scatter.
 *
 * @param input - Share, confidence, one limit or two.
 * @returns Number of pieces.
 * @throws {@link InputError} `wrong-type`, `not-finite`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * leastPiecesForTolerance({ content: 0.9 }); // => 29
 * leastPiecesForTolerance({ content: 0.99 }); // => 299
 * ```
 *
 * @see ISO 16269-6, distribution-free tolerance intervals; Wilks (1941). Checked in `test/handbook/tolerance.test.ts`.
 */
export function leastPiecesForTolerance(input: RankToleranceArguments = {}): number {
  const from = 'leastPiecesForTolerance';
  requireOptions(from, input, ['content', 'confidence', 'sides'], 'input');
  const content = requireProbability(from, 'content', input.content ?? 0.9);
  const confidence = requireProbability(from, 'confidence', input.confidence ?? 0.95);
  const both = requireOneOf(from, 'sides', input.sides ?? 1, [1, 2]) === 2;
  const missed = (n: number) => (both ? n * content ** (n - 1) - (n - 1) * content ** n : content ** n);
  // the last bit of 1 − γ is no reason for one more piece
  const enough = (n: number) => missed(n) <= (1 - confidence) * (1 + 1e-12);
  let high = 2;
  while (!enough(high)) high *= 2;
  let low = both ? 1 : 0;
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    if (enough(middle)) high = middle;
    else low = middle;
  }
  return high;
}
