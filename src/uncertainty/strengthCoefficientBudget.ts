import { requireOptions, requirePositive } from '../base/index.js';
import type { UncertaintyBudget } from './Budget.js';
import { positiveInput, requireInput } from './components.js';
import type { CoverageOptions } from './coverageFactor.js';
import { budgetOf } from './uncertaintyBudget.js';
import type { UncertainQuantity, UncertaintySources } from './UncertaintySource.js';

/** What a strength coefficient K is made of. */
export interface CoefficientInputs {
  /** K of the fit, with the standard error of the fit [MPa]. */
  readonly strengthCoefficient: UncertainQuantity;
  /** Exponent n of the fit [1]. */
  readonly exponent: number;
  /** Relative doubt of the force [1]; default none. */
  readonly force?: UncertaintySources | undefined;
  /** Relative doubt of the area [1]; default none. */
  readonly area?: UncertaintySources | undefined;
  /** Relative standard uncertainty of the scale of the strain [1], of extension and gauge length together; default none. */
  readonly strain?: UncertaintySources | undefined;
}

/**
 * Uncertainty budget of the strength coefficient K.
 *
 * $$ K = \frac{\sigma}{\varepsilon^n}, \qquad \left(\frac{u(K)}{K}\right)^2 = \frac{s^2(K)}{K^2} + \frac{u^2(F)}{F^2} + \frac{u^2(S_0)}{S_0^2} + n^2 \frac{u^2(\varepsilon)}{\varepsilon^2} $$
 *
 * @remarks
 * The standard error of the fit holds the doubt of n, with which K goes together. K is the stress at a true strain of 1, far outside the
 * data: for a stress within the range of the fit it says too much.
 *
 * @param inputs - K [MPa] and n of the fit, and relative doubts of force, area and strain.
 * @param options - Coverage.
 * @returns The budget of K [MPa].
 * @throws {@link InputError} `missing`, `not-finite`, `not-positive`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * const budget = strengthCoefficientBudget({ strengthCoefficient: { value: 500, uncertainty: 1 }, exponent: 0.2, force: 0.0065 });
 * budget.standardUncertainty; // => 3.4004
 * ```
 *
 * @see ISO 10275; JCGM 100:2008. Checked in `test/handbook/uncertainty.test.ts`.
 */
export function strengthCoefficientBudget(inputs: CoefficientInputs, options: CoverageOptions = {}): UncertaintyBudget {
  const from = 'strengthCoefficientBudget';
  requireOptions(from, inputs, ['strengthCoefficient', 'exponent', 'force', 'area', 'strain'], 'inputs');
  const K = requireInput(from, 'inputs.strengthCoefficient', 'strengthCoefficient', inputs.strengthCoefficient);
  requirePositive(from, 'inputs.strengthCoefficient.value', K.value);
  const n = requirePositive(from, 'inputs.exponent', inputs.exponent);
  const scale = (name: 'force' | 'area' | 'strain') =>
    inputs[name] === undefined
      ? []
      : [positiveInput(from, `inputs.${name}`, requireInput(from, `inputs.${name}`, name, { value: 1, uncertainty: inputs[name] }))];
  return budgetOf(
    from,
    ({ strengthCoefficient, force = 1, area = 1, strain = 1 }) => (strengthCoefficient! * force) / (area * strain ** n),
    [K, ...scale('force'), ...scale('area'), ...scale('strain')],
    { ...options, symbol: 'K', unit: 'MPa' },
  );
}
