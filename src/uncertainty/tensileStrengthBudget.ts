import type { UncertaintyBudget } from './Budget.js';
import { requireNamedInputs } from './components.js';
import type { CoverageOptions } from './coverageFactor.js';
import { budgetOf } from './uncertaintyBudget.js';
import type { UncertainQuantity } from './UncertaintySource.js';

/** What a tensile strength is made of. */
export interface StrengthInputs {
  /** Maximum force Fm [N]; a `forceBudget` serves. */
  readonly force: UncertainQuantity | UncertaintyBudget;
  /** Original area S0 [mm²]; an `areaBudget` serves. */
  readonly area: UncertainQuantity | UncertaintyBudget;
}

/**
 * Uncertainty budget of the tensile strength, or of any stress that is a force over the original area.
 *
 * $$ R_m = \frac{F_m}{S_0}, \qquad \frac{u(R_m)}{R_m} = \sqrt{\left(\frac{u(F)}{F}\right)^2 + \left(\frac{u(S_0)}{S_0}\right)^2} $$
 *
 * @remarks
 * The scatter of the material and the effect of the strain rate are no part of it: they are lines of their own, by replicates.
 *
 * @param inputs - `force` [N] and `area` [mm²], above 0.
 * @param options - Coverage.
 * @returns The budget of Rm [MPa].
 * @throws {@link InputError} `missing`, `not-finite`, `not-positive`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * const force = forceBudget({ force: 22619, class: 1, reference: 0.001 });
 * const area = areaBudget(round({ diameter: 8 }), { diameter: { halfWidth: 0.01 } });
 * tensileStrengthBudget({ force, area }).expandedUncertainty; // => 6.020
 * ```
 *
 * @see JCGM 100:2008; ISO 6892-1:2019, annex on measurement uncertainty. Checked in `test/handbook/uncertainty.test.ts`.
 */
export function tensileStrengthBudget(inputs: StrengthInputs, options: CoverageOptions = {}): UncertaintyBudget {
  const from = 'tensileStrengthBudget';
  const checked = requireNamedInputs(from, inputs, ['force', 'area']);
  return budgetOf(from, ({ force, area }) => force! / area!, checked, { ...options, symbol: 'Rm', unit: 'MPa' });
}
