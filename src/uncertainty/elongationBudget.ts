import { InputError } from '../base/index.js';
import type { UncertaintyBudget } from './Budget.js';
import { requireNamedInputs } from './components.js';
import type { CoverageOptions } from './coverageFactor.js';
import { budgetOf } from './uncertaintyBudget.js';
import type { UncertainQuantity } from './UncertaintySource.js';

/** Gauge lengths before and after. */
export interface ElongationInputs {
  /** Original gauge length L0 [mm]. */
  readonly originalLength: UncertainQuantity;
  /** Gauge length after fracture Lu [mm]. */
  readonly finalLength: UncertainQuantity;
}

/**
 * Uncertainty budget of the elongation after fracture.
 *
 * $$ A = \frac{L_u - L_0}{L_0}, \qquad u(A) = \frac{1}{L_0} \sqrt{u(L_u)^2 + \left(\frac{L_u}{L_0}\right)^2 u(L_0)^2} $$
 *
 * @remarks
 * The gap that stays where the broken pieces are fitted together makes Lu too long, never too short: correct for it first, and give what
 * is left as a source of Lu. Where the break lies in the gauge length is no part of the budget.
 *
 * @param inputs - `originalLength` and `finalLength` [mm], above 0.
 * @param options - Coverage.
 * @returns The budget of A as a ratio [1]; times 100 it is in points of a percent.
 * @throws {@link InputError} `missing`, `not-finite`, `not-positive`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * elongationBudget({ originalLength: { value: 40, uncertainty: 0.15 }, finalLength: { value: 51.2, uncertainty: 0.15 } }).standardUncertainty; // => 0.00609
 * ```
 *
 * @see ISO 6892-1:2019, percentage elongation after fracture; JCGM 100:2008. Checked in `test/handbook/uncertainty.test.ts`.
 */
export function elongationBudget(inputs: ElongationInputs, options: CoverageOptions = {}): UncertaintyBudget {
  const from = 'elongationBudget';
  const checked = requireNamedInputs(from, inputs, ['originalLength', 'finalLength']);
  const [original, final] = checked.map(({ value }) => value) as [number, number];
  if (final < original)
    throw new InputError(from, 'inputs.finalLength.value', 'out-of-range', `must not be below originalLength (${original})`, final);
  return budgetOf(from, ({ originalLength, finalLength }) => finalLength! / originalLength! - 1, checked, {
    ...options,
    symbol: 'A',
    unit: '1',
  });
}
