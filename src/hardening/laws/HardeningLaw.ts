import { InputError } from '../../base/index.js';

/** A hardening law with its parameters fixed. */
export interface HardeningLaw {
  /** Name of the law. */
  readonly name: string;
  /** Flow stress [MPa] at a true strain [mm/mm], 0 or more. */
  readonly stress: (strain: number) => number;
  /** Hardening rate dσ/dε [MPa] at a true strain [mm/mm]. */
  readonly rate: (strain: number) => number;
  /** True strain [mm/mm] at which a stress [MPa] is reached; NaN for a stress that the law never has. Absent where there is no closed form. */
  readonly inverse?: ((stress: number) => number) | undefined;
  /** True strain at which a neck begins [mm/mm]; 0 where the law necks from the start. */
  readonly neckingStrain: number;
  /** Engineering tensile strength that follows [MPa]. */
  readonly tensileStrength: number;
}

/** A law is searched up to this true strain. */
const FARTHEST = 5;

/** @internal Strain where the hardening rate falls to the stress; 0 where it is below from the start, undefined where it stays above. */
export function crossingOf({ stress, rate }: Pick<HardeningLaw, 'stress' | 'rate'>): number | undefined {
  const excess = (strain: number): number => rate(strain) - stress(strain);
  let low = 1e-9;
  let high = FARTHEST;
  if (!(excess(low) > 0)) return 0;
  if (!(excess(high) < 0)) return undefined;
  for (let step = 0; step < 200 && high - low > 1e-16 * high; step += 1) {
    const middle = (low + high) / 2;
    if (excess(middle) > 0) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** @internal A law from its formulas; the necking strain in closed form where there is one, else where rate and stress cross. */
export function lawOf(
  name: string,
  formulas: Pick<HardeningLaw, 'stress' | 'rate' | 'inverse'> & { readonly neckingStrain?: number },
): HardeningLaw {
  const { neckingStrain: known, ...rest } = formulas;
  const neckingStrain = Math.max(0, known ?? crossingOf(rest) ?? FARTHEST);
  const tensileStrength = rest.stress(neckingStrain) * Math.exp(-neckingStrain);
  if (!Number.isFinite(tensileStrength))
    throw new InputError(name, 'parameters', 'out-of-range', 'must make a tensile strength that is a number', tensileStrength);
  return { name, ...rest, neckingStrain, tensileStrength };
}
