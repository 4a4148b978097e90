import { InputError, requireNonNegative, requirePositive } from '../../base/index.js';
import { lawOf, type HardeningLaw } from './HardeningLaw.js';
import { requireParameters } from './requireParameters.js';

/** Parameters of Hockett and Sherby's law. */
export interface HockettSherbyParameters {
  /** Stress that is approached, σs [MPa]. */
  readonly saturationStress: number;
  /** Stress at zero plastic strain, σ0 [MPa]. */
  readonly initialStress: number;
  /** Rate of the approach N [1]. */
  readonly rate: number;
  /** Power of the strain p [1]. */
  readonly power: number;
}

/**
 * Hockett and Sherby's law with its necking strain and strength.
 *
 * $$ \sigma = \sigma_s - (\sigma_s - \sigma_0) \exp(-N \varepsilon_p^{\,p}), \qquad \frac{\mathrm{d}\sigma}{\mathrm{d}\varepsilon_p} = N p\,
 * \varepsilon_p^{\,p-1} (\sigma_s - \sigma) $$
 *
 * @remarks
 * With p = 1 it is Voce's. The necking strain has no closed form; it is found by halving.
 *
 * @param parameters - `saturationStress` [MPa] above `initialStress` [MPa], which is 0 or more; `rate` and `power` [1] above 0.
 * @returns The law: stress, rate, inverse, necking strain [mm/mm], tensile strength [MPa].
 * @throws {@link InputError} `missing`, `not-finite`, `not-positive`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * hockettSherby({ saturationStress: 400, initialStress: 150, rate: 10, power: 1 }).neckingStrain; // => 0.192789
 * ```
 *
 * @see Hockett and Sherby, J. Mech. Phys. Solids 23 (1975) 87. Checked in `test/handbook/laws.test.ts`.
 */
export function hockettSherby(parameters: HockettSherbyParameters): HardeningLaw {
  const from = 'hockettSherby';
  requireParameters(from, parameters, ['saturationStress', 'initialStress', 'rate', 'power']);
  const top = requirePositive(from, 'saturationStress', parameters.saturationStress);
  const first = requireNonNegative(from, 'initialStress', parameters.initialStress);
  const N = requirePositive(from, 'rate', parameters.rate);
  const p = requirePositive(from, 'power', parameters.power);
  if (first >= top) throw new InputError(from, 'initialStress', 'out-of-range', 'must be below saturationStress', first);
  return lawOf('Hockett-Sherby', {
    stress: (strain) => top - (top - first) * Math.exp(-N * strain ** p),
    rate: (strain) => N * p * strain ** (p - 1) * (top - first) * Math.exp(-N * strain ** p),
    inverse: (stress) => (-Math.log((top - stress) / (top - first)) / N) ** (1 / p),
  });
}
