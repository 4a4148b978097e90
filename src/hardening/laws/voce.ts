import { InputError, requireNonNegative, requirePositive } from '../../base/index.js';
import { lawOf, type HardeningLaw } from './HardeningLaw.js';
import { requireParameters } from './requireParameters.js';

/** Parameters of Voce's law. */
export interface VoceParameters {
  /** Stress that is approached, σs [MPa]. */
  readonly saturationStress: number;
  /** Stress at zero plastic strain, σ0 [MPa]. */
  readonly initialStress: number;
  /** Rate of the approach θ [1]. */
  readonly rate: number;
}

/**
 * Voce's law with its necking strain and strength.
 *
 * $$ \sigma = \sigma_s - (\sigma_s - \sigma_0) \mathrm{e}^{-\theta \varepsilon_p}, \qquad \frac{\mathrm{d}\sigma}{\mathrm{d}\varepsilon_p} = \theta
 * (\sigma_s - \sigma), \qquad \varepsilon_u = \frac{1}{\theta} \ln \frac{(\sigma_s - \sigma_0)(1 + \theta)}{\sigma_s} $$
 *
 * @remarks
 * The stress stays below σs however far it is extrapolated; so beyond the neck Voce's law gives too little rather than too much.
 *
 * @param parameters - `saturationStress` [MPa] above `initialStress` [MPa], which is 0 or more; `rate` [1] above 0.
 * @returns The law: stress, rate, inverse, necking strain [mm/mm], tensile strength [MPa].
 * @throws {@link InputError} `missing`, `not-finite`, `not-positive`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * voce({ saturationStress: 400, initialStress: 150, rate: 10 }).neckingStrain; // => 0.192789
 * ```
 *
 * @see Voce, J. Inst. Metals 74 (1948) 537. Checked in `test/handbook/laws.test.ts`.
 */
export function voce(parameters: VoceParameters): HardeningLaw {
  const from = 'voce';
  requireParameters(from, parameters, ['saturationStress', 'initialStress', 'rate']);
  const top = requirePositive(from, 'saturationStress', parameters.saturationStress);
  const first = requireNonNegative(from, 'initialStress', parameters.initialStress);
  const theta = requirePositive(from, 'rate', parameters.rate);
  if (first >= top) throw new InputError(from, 'initialStress', 'out-of-range', 'must be below saturationStress', first);
  return lawOf('Voce', {
    stress: (strain) => top - (top - first) * Math.exp(-theta * strain),
    rate: (strain) => theta * (top - first) * Math.exp(-theta * strain),
    inverse: (stress) => -Math.log((top - stress) / (top - first)) / theta,
    neckingStrain: Math.log(((top - first) * (1 + theta)) / top) / theta,
  });
}
