import { requireNonNegative, requirePositive } from '../../base/index.js';
import { lawOf, type HardeningLaw } from './HardeningLaw.js';
import { requireParameters } from './requireParameters.js';

/** Parameters of Ludwik's law. */
export interface LudwikParameters {
  /** Yield stress σ0 [MPa]. */
  readonly yieldStress: number;
  /** Strength coefficient K [MPa]. */
  readonly strengthCoefficient: number;
  /** Exponent n [1]. */
  readonly exponent: number;
}

/**
 * Ludwik's law with its necking strain and strength.
 *
 * $$ \sigma = \sigma_0 + K \varepsilon_p^{\,n}, \qquad \frac{\mathrm{d}\sigma}{\mathrm{d}\varepsilon_p} = n K \varepsilon_p^{\,n-1}, \qquad
 * n K \varepsilon_u^{\,n-1} = \sigma_0 + K \varepsilon_u^{\,n} $$
 *
 * @remarks
 * The necking strain has no closed form; it is found by halving. The rate is infinite at zero strain where n is below 1.
 *
 * @param parameters - `yieldStress` [MPa] 0 or more, `strengthCoefficient` [MPa] and `exponent` [1] above 0.
 * @returns The law: stress, rate, inverse, necking strain [mm/mm], tensile strength [MPa].
 * @throws {@link InputError} `missing`, `not-finite`, `not-positive`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * ludwik({ yieldStress: 200, strengthCoefficient: 400, exponent: 0.5 }).neckingStrain; // => 0.25
 * ```
 *
 * @see Ludwik, Elemente der technologischen Mechanik (1909). Checked in `test/handbook/laws.test.ts`.
 */
export function ludwik(parameters: LudwikParameters): HardeningLaw {
  const from = 'ludwik';
  requireParameters(from, parameters, ['yieldStress', 'strengthCoefficient', 'exponent']);
  const sigma0 = requireNonNegative(from, 'yieldStress', parameters.yieldStress);
  const K = requirePositive(from, 'strengthCoefficient', parameters.strengthCoefficient);
  const n = requirePositive(from, 'exponent', parameters.exponent);
  return lawOf('Ludwik', {
    stress: (strain) => sigma0 + K * strain ** n,
    rate: (strain) => n * K * strain ** (n - 1),
    inverse: (stress) => ((stress - sigma0) / K) ** (1 / n),
  });
}
