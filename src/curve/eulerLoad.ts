import { requireBetween, requireOptions, requirePositive } from '../base/index.js';

/** A column under compression. */
export interface ColumnInput {
  /** Modulus [MPa]: E while elastic, the slope of the curve at the present stress (tangent modulus) beyond. */
  readonly modulus: number;
  /** Least second moment of area I [mm⁴]. */
  readonly secondMoment: number;
  /** Length between the ends L [mm]. */
  readonly length: number;
  /** End factor k, from 0.5 (ends that cannot turn) to 1 (hinged) and 2 (one end free); default 1. */
  readonly endFactor?: number | undefined;
}

/**
 * Force at which a straight column buckles.
 *
 * $$ F_{cr} = \frac{\pi^2 E\, I}{(k L)^2}, \qquad F_t = \frac{\pi^2 E_t\, I}{(k L)^2} $$
 *
 * @remarks
 * With E it is Euler's load, and holds only while the stress stays elastic: of a short piece it lies far above yield and is no safe
 * load. Beyond yield the tangent modulus $E_t$ at the present stress governs (Engesser). Eccentric load and crooked pieces buckle earlier.
 *
 * @param column - `modulus` [MPa], `secondMoment` [mm⁴], `length` [mm], above 0; `endFactor` from 0.5 to 2, default 1.
 * @returns Force [N].
 * @throws {@link InputError} `missing`, `not-finite`, `not-positive`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * eulerLoad({ modulus: 210000, secondMoment: 490.874, length: 80 }) / 1000; // => 158.968
 * ```
 *
 * @see Euler (1744), Engesser (1889); Timoshenko and Gere, Theory of Elastic Stability. Checked in `test/handbook/compression.test.ts`.
 */
export function eulerLoad(column: ColumnInput): number {
  const from = 'eulerLoad';
  requireOptions(from, column, ['modulus', 'secondMoment', 'length', 'endFactor'], 'column');
  const effective = requireBetween(from, 'endFactor', column.endFactor ?? 1, 0.5, 2) * requirePositive(from, 'length', column.length);
  return (
    (Math.PI ** 2 * requirePositive(from, 'modulus', column.modulus) * requirePositive(from, 'secondMoment', column.secondMoment)) /
    effective ** 2
  );
}
