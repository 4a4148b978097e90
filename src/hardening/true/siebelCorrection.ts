import { requireBetween, requireOptions, requirePositive } from '../../base/index.js';

/** A compressed cylinder with friction at its ends. */
export interface FrictionInput {
  /** Coefficient of friction μ, from 0 (none) to 0.577 (sticking). */
  readonly friction: number;
  /** Present diameter d [mm]. */
  readonly diameter: number;
  /** Present height h [mm]. */
  readonly height: number;
}

/**
 * Flow stress over true stress of a cylinder that is compressed between plates with friction, by Siebel.
 *
 * $$ \frac{\sigma_{flow}}{\sigma} = \frac{1}{1 + \dfrac{\mu d}{3 h}} $$
 *
 * @remarks
 * d and h are the present ones: the correction grows as the piece becomes flat. Coulomb friction that slides over the whole face; with good
 * lubrication μ is 0.05 to 0.15 (common practice), and its doubt is that of the correction. Not for pieces that have barrelled.
 *
 * @param input - `friction` from 0 to 0.577, `diameter` and `height` [mm], above 0.
 * @returns Factor on the true stress [1], at most 1.
 * @throws {@link InputError} `missing`, `not-finite`, `not-positive`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * 407.437 * siebelCorrection({ friction: 0.1, diameter: 11.1803, height: 12 }); // => 395.165
 * ```
 *
 * @see Siebel, Stahl und Eisen 43 (1923); Dieter, Mechanical Metallurgy, compression. Checked in `test/handbook/compression.test.ts`.
 */
export function siebelCorrection(input: FrictionInput): number {
  const from = 'siebelCorrection';
  requireOptions(from, input, ['friction', 'diameter', 'height'], 'input');
  const friction = requireBetween(from, 'friction', input.friction, 0, 0.577);
  return 1 / (1 + (friction * requirePositive(from, 'diameter', input.diameter)) / (3 * requirePositive(from, 'height', input.height)));
}
