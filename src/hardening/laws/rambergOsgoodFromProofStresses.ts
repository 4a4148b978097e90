import { InputError, PROOF_OFFSET, requireOptions, requirePositive } from '../../base/index.js';
import type { RambergOsgoodParameters } from './rambergOsgoodStrain.js';

/** Two proof stresses of one curve. */
export interface TwoProofStresses {
  /** Modulus E [MPa]. */
  readonly modulus: number;
  /** Proof stress at 0.2 % [MPa]. */
  readonly proofStress: number;
  /** Proof stress at another offset [MPa]. */
  readonly otherStress: number;
  /** The other offset [mm/mm]. */
  readonly otherOffset: number;
}

/**
 * Ramberg-Osgood parameters from two proof stresses.
 *
 * $$ n = \frac{\ln(\varepsilon_{p,2} / 0.002)}{\ln(R_{p,2} / R_{p0.2})} $$
 *
 * @remarks
 * Different pairs of one real curve give different exponents: name the pair.
 *
 * @param pair - `modulus`, `proofStress`, `otherStress` [MPa], `otherOffset` [mm/mm], above 0; the larger stress with the larger offset.
 * @returns Modulus [MPa], proof stress [MPa] and exponent [1].
 * @throws {@link InputError} `missing`, `not-finite`, `not-positive`, `unknown-option`; `out-of-range` where the pair does not rise.
 *
 * @example
 * ```ts
 * rambergOsgoodFromProofStresses({ modulus: 70000, proofStress: 300, otherStress: 222.340, otherOffset: 0.0001 }).exponent; // => 10.000
 * ```
 *
 * @see EN 1993-1-4, stress-strain curve of stainless steel (from memory). Checked in `test/handbook/ramberg-osgood.test.ts`.
 */
export function rambergOsgoodFromProofStresses(pair: TwoProofStresses): RambergOsgoodParameters {
  const from = 'rambergOsgoodFromProofStresses';
  requireOptions(from, pair, ['modulus', 'proofStress', 'otherStress', 'otherOffset'], 'pair');
  const modulus = requirePositive(from, 'modulus', pair.modulus);
  const proofStress = requirePositive(from, 'proofStress', pair.proofStress);
  const otherStress = requirePositive(from, 'otherStress', pair.otherStress);
  const otherOffset = requirePositive(from, 'otherOffset', pair.otherOffset);
  const exponent = Math.log(otherOffset / PROOF_OFFSET) / Math.log(otherStress / proofStress);
  if (!(exponent > 0) || !Number.isFinite(exponent))
    throw new InputError(
      from,
      'otherStress',
      'out-of-range',
      `must lie on the same side of proofStress as otherOffset of ${PROOF_OFFSET}`,
      otherStress,
    );
  return { modulus, proofStress, exponent };
}
