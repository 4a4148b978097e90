import { InputError, requireOptions, requirePositive } from '../base/index.js';

/** Gauge lengths before and after. */
export interface ElongationInput {
  /** Original gauge length L0 [mm]. */
  readonly originalLength: number;
  /** Final gauge length Lu [mm], the pieces fitted together; not below the original. */
  readonly finalLength: number;
}

/**
 * Elongation after fracture.
 *
 * $$ A = \frac{L_u - L_0}{L_0} $$
 *
 * @remarks
 * Valid where the fracture is at least a third of the gauge length from the nearest mark, or where the value meets its minimum anyway.
 *
 * @param input - `originalLength` and `finalLength` [mm], above 0.
 * @returns Elongation [mm/mm]; times 100 it is the percentage of the standard.
 * @throws {@link InputError} `missing`, `not-finite`, `not-positive`, `unknown-option`; `out-of-range` where the piece would have shrunk.
 *
 * @example
 * ```ts
 * elongationAfterFracture({ originalLength: 40, finalLength: 51.2 }); // => 0.28
 * ```
 *
 * @see ISO 6892-1:2019, percentage elongation after fracture. Checked in `test/handbook/elongation.test.ts`.
 */
export function elongationAfterFracture(input: ElongationInput): number {
  const from = 'elongationAfterFracture';
  requireOptions(from, input, ['originalLength', 'finalLength'], 'input');
  const original = requirePositive(from, 'originalLength', input.originalLength);
  const final = requirePositive(from, 'finalLength', input.finalLength);
  if (final < original) throw new InputError(from, 'finalLength', 'out-of-range', `must not be below originalLength (${original})`, final);
  return (final - original) / original;
}
