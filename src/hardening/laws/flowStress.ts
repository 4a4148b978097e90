import { InputError, requireColumn, requireNonNegative } from '../../base/index.js';
import type { HardeningLaw } from './HardeningLaw.js';
import { requireLaw } from './mixedLaw.js';

/** @internal A formula of a law at one strain or at many; a result that is not a finite number is an error. */
export function along(from: string, formula: (strain: number) => number, strain: number | ArrayLike<number>): number | Float64Array {
  const at = (path: string, one: number): number => {
    const value = formula(requireNonNegative(from, path, one));
    if (!Number.isFinite(value)) throw new InputError(from, path, 'out-of-range', 'must be a strain at which the law is finite', one);
    return value;
  };
  return typeof strain === 'number' ? at('strain', strain) : requireColumn(from, 'strain', strain).map((one, i) => at(`strain[${i}]`, one));
}

/**
 * Flow stress of a law at a true strain, or at each of several.
 *
 * $$ \sigma = \sigma(\varepsilon) $$
 *
 * @remarks
 * Beyond the strain that a law was fitted on this is an extrapolation: laws that agree up to the neck part soon after it.
 *
 * @param law - A law, as `swift`, `voce` and the others make it.
 * @param strain - True strain [mm/mm] as the law counts it, 0 or more.
 * @returns Flow stress [MPa].
 * @throws {@link InputError} `missing`, `wrong-type`, `not-finite`, `out-of-range`.
 *
 * @example
 * ```ts
 * flowStress(swift({ strengthCoefficient: 500, prestrain: 0.01, exponent: 0.2 }), 0.09); // => 315.479
 * ```
 *
 * @see The page of each law. Checked in `test/handbook/laws.test.ts`.
 */
export function flowStress(law: HardeningLaw, strain: number): number;
export function flowStress(law: HardeningLaw, strain: ArrayLike<number>): Float64Array;
export function flowStress(law: HardeningLaw, strain: number | ArrayLike<number>): number | Float64Array {
  return along('flowStress', requireLaw('flowStress', 'law', law).stress, strain);
}
