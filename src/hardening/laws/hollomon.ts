import { requirePositive } from '../../base/index.js';
import { lawOf, type HardeningLaw } from './HardeningLaw.js';
import { requireParameters } from './requireParameters.js';

/** Parameters of Hollomon's law. */
export interface HollomonParameters {
  /** Strength coefficient K [MPa]. */
  readonly strengthCoefficient: number;
  /** Exponent n [1]. */
  readonly exponent: number;
}

/** @internal A constant stress has this exponent by rounding. */
export const NO_EXPONENT = 1e-12;

/**
 * Hollomon's law with its necking strain and strength.
 *
 * $$ \sigma = K \varepsilon^n, \qquad \frac{\mathrm{d}\sigma}{\mathrm{d}\varepsilon} = \frac{n \sigma}{\varepsilon}, \qquad \varepsilon_u = n, \qquad
 * R_m = K n^n \mathrm{e}^{-n} $$
 *
 * @remarks
 * By Considère a neck begins where hardening rate equals stress. Whether the strain is total or plastic depends on how K and n were found.
 *
 * @param parameters - `strengthCoefficient` [MPa] and `exponent` [1], above 0.
 * @returns The law: stress, rate, inverse, necking strain [mm/mm], tensile strength [MPa].
 * @throws {@link InputError} `missing`, `not-finite`, `not-positive`, `unknown-option`.
 *
 * @example
 * ```ts
 * hollomon({ strengthCoefficient: 530, exponent: 0.26 }).tensileStrength; // => 287.907
 * ```
 *
 * @see Hollomon, Trans. AIME 162 (1945) 268; Considère's construction (textbooks). Checked in `test/handbook/hardening.test.ts`.
 */
export function hollomon(parameters: HollomonParameters): HardeningLaw {
  requireParameters('hollomon', parameters, ['strengthCoefficient', 'exponent']);
  const K = requirePositive('hollomon', 'strengthCoefficient', parameters.strengthCoefficient);
  const n = requirePositive('hollomon', 'exponent', parameters.exponent);
  return lawOf('Hollomon', {
    stress: (strain) => K * strain ** n,
    rate: (strain) => n * K * strain ** (n - 1),
    inverse: (stress) => (stress / K) ** (1 / n),
    neckingStrain: n,
  });
}
