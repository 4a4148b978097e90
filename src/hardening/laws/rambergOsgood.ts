import { lawOf, type HardeningLaw } from './HardeningLaw.js';
import { rambergOsgoodStrain, requireRambergOsgood, type RambergOsgoodParameters } from './rambergOsgoodStrain.js';
import { rambergOsgoodStress } from './rambergOsgoodStress.js';

/**
 * Ramberg and Osgood's curve as a hardening law, over total strain.
 *
 * $$ \varepsilon = \frac{\sigma}{E} + \varepsilon_0 \left( \frac{\sigma}{\sigma_0} \right)^n, \qquad \frac{\mathrm{d}\sigma}{\mathrm{d}\varepsilon} =
 * \left[ \frac{1}{E} + \frac{n \varepsilon_0}{\sigma} \left( \frac{\sigma}{\sigma_0} \right)^n \right]^{-1} $$
 *
 * @remarks
 * Strain and stress must both be true values where it is used up to the neck; its necking strain counts the elastic part.
 *
 * @param parameters - `modulus` [MPa], `proofStress` [MPa], `exponent` [1] and `offset` [mm/mm], above 0.
 * @returns The law: stress, rate, inverse, necking strain [mm/mm], tensile strength [MPa].
 * @throws {@link InputError} `missing`, `not-finite`, `not-positive`, `unknown-option`.
 *
 * @example
 * ```ts
 * rambergOsgood({ modulus: 70000, proofStress: 300, exponent: 10 }).rate(0.00628571); // => 12352.96
 * ```
 *
 * @see Ramberg and Osgood, NACA TN 902 (1943). Checked in `test/handbook/laws.test.ts`.
 */
export function rambergOsgood(parameters: RambergOsgoodParameters): HardeningLaw {
  const known = requireRambergOsgood('rambergOsgood', parameters);
  const { modulus, proofStress, exponent, offset } = known;
  const stress = (strain: number): number => rambergOsgoodStress(known, strain);
  return lawOf('Ramberg-Osgood', {
    stress,
    rate: (strain) => {
      const sigma = stress(strain);
      return 1 / (1 / modulus + (exponent * offset * (sigma / proofStress) ** (exponent - 1)) / proofStress);
    },
    inverse: (sigma) => rambergOsgoodStrain(known, sigma),
  });
}
