import { requireOptions, requirePositive } from '../../base/index.js';

/** What the true fracture stress follows from: force and area, or engineering stress and both areas. */
export interface FractureForce {
  /** Force at fracture [N]. */
  readonly force: number;
  /** Least area after fracture Su [mm²]. */
  readonly finalArea: number;
}

/**
 * True stress at fracture, from force and area.
 *
 * $$ \sigma_f = \frac{F_u}{S_u} $$
 *
 * @remarks
 * The force at fracture is hard to catch; the mean stress over the neck is above the flow stress (see Bridgman).
 *
 * @param at - `force` [N] and `finalArea` [mm²], above 0.
 * @returns True stress [MPa].
 * @throws {@link InputError} `missing`, `not-finite`, `not-positive`, `unknown-option`.
 *
 * @example
 * ```ts
 * trueFractureStress({ force: 59192.8, finalArea: 89.920 }); // => 658.28
 * ```
 *
 * @see Callister and Rethwisch, Materials Science and Engineering, worked example. Checked in `test/handbook/hardening.test.ts`.
 */
export function trueFractureStress(at: FractureForce): number {
  const from = 'trueFractureStress';
  requireOptions(from, at, ['force', 'finalArea'], 'at');
  return requirePositive(from, 'force', at.force) / requirePositive(from, 'finalArea', at.finalArea);
}
