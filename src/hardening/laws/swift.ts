import { requireNonNegative, requirePositive } from '../../base/index.js';
import { lawOf, type HardeningLaw } from './HardeningLaw.js';
import { requireParameters } from './requireParameters.js';

/** Parameters of Swift's law. */
export interface SwiftParameters {
  /** Strength coefficient K [MPa]. */
  readonly strengthCoefficient: number;
  /** Prestrain ε0 [mm/mm]. */
  readonly prestrain: number;
  /** Exponent n [1]. */
  readonly exponent: number;
}

/**
 * Swift's law with its necking strain and strength.
 *
 * $$ \sigma = K (\varepsilon_0 + \varepsilon_p)^n, \qquad \frac{\mathrm{d}\sigma}{\mathrm{d}\varepsilon_p} = \frac{n \sigma}{\varepsilon_0 +
 * \varepsilon_p}, \qquad \varepsilon_u = n - \varepsilon_0 $$
 *
 * @remarks
 * With a prestrain of 0 it is Hollomon's. Where the prestrain exceeds n it necks from the start.
 *
 * @param parameters - `strengthCoefficient` [MPa] and `exponent` [1] above 0, `prestrain` [mm/mm] 0 or more.
 * @returns The law: stress, rate, inverse, necking strain [mm/mm], tensile strength [MPa].
 * @throws {@link InputError} `missing`, `not-finite`, `not-positive`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * swift({ strengthCoefficient: 500, prestrain: 0.01, exponent: 0.2 }).tensileStrength; // => 299.682
 * ```
 *
 * @see Swift, J. Mech. Phys. Solids 1 (1952) 1. Checked in `test/handbook/laws.test.ts`.
 */
export function swift(parameters: SwiftParameters): HardeningLaw {
  const from = 'swift';
  requireParameters(from, parameters, ['strengthCoefficient', 'prestrain', 'exponent']);
  const K = requirePositive(from, 'strengthCoefficient', parameters.strengthCoefficient);
  const e0 = requireNonNegative(from, 'prestrain', parameters.prestrain);
  const n = requirePositive(from, 'exponent', parameters.exponent);
  return lawOf('Swift', {
    stress: (strain) => K * (e0 + strain) ** n,
    rate: (strain) => n * K * (e0 + strain) ** (n - 1),
    inverse: (stress) => (stress / K) ** (1 / n) - e0,
    neckingStrain: n - e0,
  });
}
