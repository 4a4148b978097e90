import { InputError, PROOF_OFFSET, requireFinite, requirePositive } from '../../base/index.js';
import { requireParameters } from './requireParameters.js';

/** Parameters of a Ramberg-Osgood curve. */
export interface RambergOsgoodParameters {
  /** Modulus E [MPa]. */
  readonly modulus: number;
  /** Stress at the offset [MPa]. */
  readonly proofStress: number;
  /** Exponent n [1]. */
  readonly exponent: number;
  /** Plastic strain at the proof stress [mm/mm]; default 0.002. */
  readonly offset?: number | undefined;
}

/** @internal Checked parameters, with the offset filled in. */
export function requireRambergOsgood(
  from: string,
  parameters: RambergOsgoodParameters,
): RambergOsgoodParameters & { readonly offset: number } {
  requireParameters(from, parameters, ['modulus', 'proofStress', 'exponent', 'offset']);
  return {
    modulus: requirePositive(from, 'modulus', parameters.modulus),
    proofStress: requirePositive(from, 'proofStress', parameters.proofStress),
    exponent: requirePositive(from, 'exponent', parameters.exponent),
    offset: requirePositive(from, 'offset', parameters.offset ?? PROOF_OFFSET),
  };
}

/**
 * Strain of a Ramberg-Osgood curve at a stress.
 *
 * $$ \varepsilon = \frac{\sigma}{E} + \varepsilon_0 \left( \frac{\sigma}{\sigma_0} \right)^n, \qquad \varepsilon_0 = 0.002 $$
 *
 * @remarks
 * Odd in stress: compression gives the negative strain.
 *
 * @param parameters - `modulus` [MPa], `proofStress` [MPa], `exponent`, `offset` [mm/mm], above 0.
 * @param stress - Stress [MPa].
 * @returns Strain [mm/mm].
 * @throws {@link InputError} `missing`, `not-finite`, `not-positive`, `unknown-option`.
 *
 * @example
 * ```ts
 * rambergOsgoodStrain({ modulus: 70000, proofStress: 300, exponent: 10 }, 300); // => 0.00628571
 * ```
 *
 * @see Ramberg and Osgood, NACA TN 902 (1943), in the form with the 0.2 % proof strength. Checked in `test/handbook/ramberg-osgood.test.ts`.
 */
export function rambergOsgoodStrain(parameters: RambergOsgoodParameters, stress: number): number {
  const { modulus, proofStress, exponent, offset } = requireRambergOsgood('rambergOsgoodStrain', parameters);
  requireFinite('rambergOsgoodStrain', 'stress', stress);
  const strain = stress / modulus + Math.sign(stress) * offset * (Math.abs(stress) / proofStress) ** exponent;
  if (!Number.isFinite(strain))
    throw new InputError('rambergOsgoodStrain', 'stress', 'out-of-range', 'must be a stress whose strain is a number', stress);
  return strain;
}
