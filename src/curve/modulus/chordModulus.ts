import {
  failure,
  requireFinite,
  requireOptions,
  success,
  InputError,
  type CurveColumns,
  type Outcome,
  type StressStrainCurve,
} from '../../base/index.js';
import { endOfPlateau } from '../maximumStress.js';
import { requireCurve } from '../requireCurve.js';
import { totalExtensionStrengthKernel } from '../yield/totalExtensionStrength.js';

/** The two strains of a chord. */
export interface ChordOptions {
  /** Lower strain [mm/mm]; default 0.0005. */
  readonly from?: number | undefined;
  /** Upper strain [mm/mm]; default 0.0025. */
  readonly to?: number | undefined;
  /** Strain as recorded where the strains count from [mm/mm]; default 0. */
  readonly strainShift?: number | undefined;
}

/** A modulus by a chord. */
export interface ChordModulus {
  /** Slope of the chord [MPa]. */
  readonly modulus: number;
  /** Stresses at its two strains [MPa]. */
  readonly stresses: readonly [number, number];
  /** Its two strains, from the shifted origin [mm/mm]. */
  readonly strains: readonly [number, number];
}

/** Why there is no chord. */
export type ChordReason = 'not-reached' | 'no-rise';

/** @internal {@link chordModulus} on a checked curve, before a sample. */
export function chordModulusKernel(
  curve: StressStrainCurve,
  [from, to]: readonly [number, number],
  shift: number,
  end: number,
): Outcome<ChordModulus, ChordReason> {
  const [low, high] = [from, to].map((strain) => totalExtensionStrengthKernel(curve, strain, shift, end));
  if (!low?.ok || !high?.ok) return failure('not-reached', `the record does not pass the strains ${from} and ${to}`);
  const modulus = (high.stress - low.stress) / (to - from);
  if (modulus <= 0) return failure('no-rise', `the stress does not rise between the strains ${from} and ${to}`);
  return success({ modulus, stresses: [low.stress, high.stress] as const, strains: [from, to] as const });
}

/**
 * Modulus by the chord between two strains.
 *
 * $$ E = \frac{\sigma_2 - \sigma_1}{\varepsilon_2 - \varepsilon_1}, \qquad \varepsilon_1 = 0.0005, \quad \varepsilon_2 = 0.0025 $$
 *
 * @remarks
 * The rule of the standards for plastics. Two points carry it: where the record is noisy or bends within the range, `fitModulus` tells more. Of a metal the
 * upper strain can lie beyond yielding. Give the origin by `strainShift` (of `fitModulus`), or the slack is in the strains.
 *
 * @param curve - Strain [mm/mm] and stress [MPa] as recorded, at least 2 samples, finite.
 * @param options - `from`, `to` [mm/mm] above 0, `strainShift` [mm/mm].
 * @returns Modulus [MPa] with the stresses at both strains, or why not: `not-reached`, `no-rise`.
 * @throws {@link InputError} `not-finite`, `too-few`, `unequal-lengths`, `out-of-range`, `unknown-option`, `missing`, `wrong-type`.
 *
 * @example
 * ```ts
 * required(chordModulus({ strain: [0, 0.001, 0.002, 0.003], stress: [0, 3, 6, 9] })).modulus; // => 3000
 * ```
 *
 * @see ISO 178, flexural modulus; ISO 527-1, modulus of elasticity in tension. Checked in `test/handbook/bending.test.ts`.
 */
export function chordModulus(curve: CurveColumns, options: ChordOptions = {}): Outcome<ChordModulus, ChordReason> {
  const name = 'chordModulus';
  const checked = requireCurve(name, curve);
  requireOptions(name, options, ['from', 'to', 'strainShift']);
  const strains = requireChord(name, [options.from ?? 0.0005, options.to ?? 0.0025], ['options.from', 'options.to']);
  const shift = requireFinite(name, 'options.strainShift', options.strainShift ?? 0);
  return chordModulusKernel(checked, strains, shift, endOfPlateau(checked.stress));
}

/** @internal Two strains above 0, the second above the first. */
export function requireChord(
  name: string,
  [from, to]: readonly [unknown, unknown],
  paths: readonly [string, string],
): readonly [number, number] {
  const low = requireFinite(name, paths[0], from);
  const high = requireFinite(name, paths[1], to);
  if (low <= 0) throw new InputError(name, paths[0], 'out-of-range', 'must be above 0', low);
  if (high <= low) throw new InputError(name, paths[1], 'out-of-range', `must be above ${paths[0]}`, high);
  return [low, high];
}
