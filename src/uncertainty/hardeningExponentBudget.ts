import { InputError, requireOptions, requirePair, requirePositive } from '../base/index.js';
import type { UncertaintyBudget } from './Budget.js';
import { requireInput } from './components.js';
import type { CoverageOptions } from './coverageFactor.js';
import { budgetOf } from './uncertaintyBudget.js';
import type { UncertainQuantity, UncertaintySources } from './UncertaintySource.js';

/** What an exponent n is made of. */
export interface ExponentInputs {
  /** The exponent n of the fit, with the standard error of the fit [1]. */
  readonly exponent: UncertainQuantity;
  /** True plastic strain where the fit begins and ends [mm/mm]. */
  readonly range: ArrayLike<number>;
  /** True stress where the fit ends [MPa]; needed with `stressZero`. */
  readonly stress?: number | undefined;
  /** Doubt of the origin of the strain [mm/mm]; default none. */
  readonly strainOrigin?: UncertaintySources | undefined;
  /** Doubt of the zero of the stress [MPa]; default none. */
  readonly stressZero?: UncertaintySources | undefined;
}

/**
 * Uncertainty budget of the hardening exponent n.
 *
 * $$ n = \frac{\ln\left((\sigma_2 + \delta_\sigma)/(\sigma_1 + \delta_\sigma)\right)}{\ln\left((\varepsilon_2 + \delta_\varepsilon)/(\varepsilon_1 + \delta_\varepsilon)\right)} $$
 *
 * @remarks
 * The two ends of the fit stand for all of it. A wrong scale of force, area or strain cancels in n; what does not cancel is a
 * wrong zero: of the strain (a slope or toe that is off moves the plastic strain) and of the force. An early start of the fit makes both worse.
 *
 * @param inputs - Exponent, range of strain, and the doubts of the zeros.
 * @param options - Coverage.
 * @returns The budget of n [1].
 * @throws {@link InputError} `missing`, `not-finite`, `not-positive`, `not-increasing`, `unequal-lengths`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * const budget = hardeningExponentBudget({ exponent: { value: 0.2, uncertainty: 0.001 }, range: [0.02, 0.18], strainOrigin: 5e-5 });
 * budget.standardUncertainty; // => 0.00102
 * ```
 *
 * @see ISO 10275; JCGM 100:2008. Checked in `test/handbook/uncertainty.test.ts`.
 */
export function hardeningExponentBudget(inputs: ExponentInputs, options: CoverageOptions = {}): UncertaintyBudget {
  const from = 'hardeningExponentBudget';
  requireOptions(from, inputs, ['exponent', 'range', 'stress', 'strainOrigin', 'stressZero'], 'inputs');
  const exponent = requireInput(from, 'inputs.exponent', 'exponent', inputs.exponent);
  const n = requirePositive(from, 'inputs.exponent.value', exponent.value);
  const [low, high] = requirePair(from, 'inputs.range', inputs.range);
  requirePositive(from, 'inputs.range[0]', low);
  if (high <= low) throw new InputError(from, 'inputs.range', 'not-increasing', 'must end above its start', high);
  const zero = (name: 'strainOrigin' | 'stressZero') =>
    inputs[name] === undefined ? [] : [requireInput(from, `inputs.${name}`, name, { value: 0, uncertainty: inputs[name] })];
  const zeros = [...zero('strainOrigin'), ...zero('stressZero')];
  const stress = inputs.stressZero === undefined && inputs.stress === undefined ? 1 : requirePositive(from, 'inputs.stress', inputs.stress);
  const start = stress * (low / high) ** n;
  return budgetOf(
    from,
    ({ exponent: fitted, strainOrigin: e = 0, stressZero: s = 0 }) =>
      fitted! - n + Math.log((stress + s) / (start + s)) / Math.log((high + e) / (low + e)),
    [exponent, ...zeros],
    { ...options, symbol: 'n', unit: '1' },
  );
}
