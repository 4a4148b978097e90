import { requireFinite, requireOptions, requirePositive } from '../base/index.js';

/** A straight piece under an elastic stress. */
export interface ElasticBar {
  /** Stress [MPa]. */
  readonly stress: number;
  /** Modulus [MPa]. */
  readonly modulus: number;
  /** Length that stretches [mm]. */
  readonly length: number;
}

/**
 * Elastic extension of a straight piece.
 *
 * $$ \Delta L = \frac{R\, L}{E} $$
 *
 * @remarks
 * Below the proportional limit only.
 *
 * @param bar - `stress` [MPa], `modulus` [MPa] above 0, `length` [mm] above 0.
 * @returns Extension [mm].
 * @throws {@link InputError} `missing`, `not-finite`, `not-positive`, `unknown-option`.
 *
 * @example
 * ```ts
 * elasticExtension({ stress: 276, modulus: 110000, length: 305 }); // => 0.7653
 * ```
 *
 * @see Hooke's law; Callister and Rethwisch, Materials Science and Engineering, worked example on elongation. Checked in
 * `test/handbook/frame.test.ts`.
 */
export function elasticExtension(bar: ElasticBar): number {
  const from = 'elasticExtension';
  requireOptions(from, bar, ['stress', 'modulus', 'length'], 'bar');
  return (
    (requireFinite(from, 'bar.stress', bar.stress) * requirePositive(from, 'bar.length', bar.length)) /
    requirePositive(from, 'bar.modulus', bar.modulus)
  );
}
