import { PROOF_OFFSET, requireExtension, requireOptions, requirePositive } from '../../base/index.js';

/** A proof strength and the line it was drawn from. */
export interface LeverageInput {
  /** Stress at the crossing [MPa]. */
  readonly stress: number;
  /** Slope of the curve's own elastic line [MPa]. */
  readonly modulus: number;
  /** Plastic extension [mm/mm], 0.05 at most; default 0.002. */
  readonly offset?: number | undefined;
}

/**
 * Leverage of the elastic line on a proof strength: how many times the offset its elastic strain is.
 *
 * $$ \lambda = \frac{R / m_E}{e_p} $$
 *
 * @remarks
 * A relative error $s$ of the slope moves the offset by $\lambda s$, and the proof strength by about $-(\lambda / n)\, s$ of itself
 * ($n$ of Ramberg-Osgood). Above 3 the proof strength is limited by the slope (common practice).
 *
 * @param at - `stress` [MPa], `modulus` [MPa], `offset` [mm/mm], each above 0, the offset 0.05 at most.
 * @returns Leverage [1].
 * @throws {@link InputError} `missing`, `wrong-type`, `not-finite`, `not-positive`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * offsetLeverage({ stress: 250, modulus: 210000 }); // => 0.5952
 * ```
 *
 * @see Common practice. Checked in `test/handbook/frame.test.ts`.
 */
export function offsetLeverage(at: LeverageInput): number {
  const from = 'offsetLeverage';
  requireOptions(from, at, ['stress', 'modulus', 'offset'], 'at');
  const elastic = requirePositive(from, 'at.stress', at.stress) / requirePositive(from, 'at.modulus', at.modulus);
  return elastic / requireExtension(from, 'at.offset', at.offset ?? PROOF_OFFSET);
}
