import { along } from './flowStress.js';
import type { HardeningLaw } from './HardeningLaw.js';
import { requireLaw } from './mixedLaw.js';

/**
 * Hardening rate of a law at a true strain, or at each of several.
 *
 * $$ \frac{\mathrm{d}\sigma}{\mathrm{d}\varepsilon} $$
 *
 * @remarks
 * A neck begins where it equals the flow stress. Some laws have no finite rate at zero strain.
 *
 * @param law - A law, as `swift`, `voce` and the others make it.
 * @param strain - True strain [mm/mm] as the law counts it, 0 or more, and above 0 where the rate is infinite at 0.
 * @returns Hardening rate [MPa].
 * @throws {@link InputError} `missing`, `wrong-type`, `not-finite`, `out-of-range`.
 *
 * @example
 * ```ts
 * hardeningRate(voce({ saturationStress: 400, initialStress: 150, rate: 10 }), 0.192789); // => 363.6
 * ```
 *
 * @see The page of each law; Considère's construction (textbooks). Checked in `test/handbook/laws.test.ts`.
 */
export function hardeningRate(law: HardeningLaw, strain: number): number;
export function hardeningRate(law: HardeningLaw, strain: ArrayLike<number>): Float64Array;
export function hardeningRate(law: HardeningLaw, strain: number | ArrayLike<number>): number | Float64Array {
  return along('hardeningRate', requireLaw('hardeningRate', 'law', law).rate, strain);
}
