import { InputError, requireBetween, requireObject } from '../../base/index.js';
import { lawOf, type HardeningLaw } from './HardeningLaw.js';

/** @internal A law as an argument: its stress and rate must be functions. */
export function requireLaw(from: string, path: string, law: unknown): HardeningLaw {
  const given = requireObject(from, path, law) as Partial<HardeningLaw>;
  if (typeof given.stress !== 'function' || typeof given.rate !== 'function')
    throw new InputError(from, path, 'wrong-type', 'must have stress and rate', law);
  return given as HardeningLaw;
}

/**
 * Weighted average of two laws, as of Swift and Voce, with its necking strain and strength.
 *
 * $$ \sigma = w\, \sigma_1(\varepsilon) + (1 - w)\, \sigma_2(\varepsilon) $$
 *
 * @remarks
 * Swift's law usually gives too much beyond the neck and Voce's too little; a weight between them takes a curve from one to the other. It
 * cannot be found from the curve before the neck alone with any certainty (see `weightToPoint`).
 *
 * @param first - A law, with weight w.
 * @param second - Another, with weight 1 − w.
 * @param weight - w, from 0 to 1.
 * @returns The mixed law: stress, rate, necking strain [mm/mm], tensile strength [MPa].
 * @throws {@link InputError} `missing`, `not-finite`, `out-of-range`, `wrong-type`.
 *
 * @example
 * ```ts
 * const one = swift({ strengthCoefficient: 500, prestrain: 0.01, exponent: 0.2 });
 * const other = voce({ saturationStress: 400, initialStress: 150, rate: 10 });
 * mixedLaw(one, other, 0.25).stress(0.19); // => 362.55
 * ```
 *
 * @see Common practice in sheet forming. Checked in `test/handbook/laws.test.ts`.
 */
export function mixedLaw(first: HardeningLaw, second: HardeningLaw, weight: number): HardeningLaw {
  const from = 'mixedLaw';
  requireLaw(from, 'first', first);
  requireLaw(from, 'second', second);
  const w = requireBetween(from, 'weight', weight, 0, 1);
  return lawOf(`${first.name} and ${second.name}`, {
    stress: (strain) => w * first.stress(strain) + (1 - w) * second.stress(strain),
    rate: (strain) => w * first.rate(strain) + (1 - w) * second.rate(strain),
  });
}
