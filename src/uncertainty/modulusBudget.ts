import { InputError } from '../base/index.js';
import type { UncertaintyBudget } from './Budget.js';
import { requireNamedInputs } from './components.js';
import type { CoverageOptions } from './coverageFactor.js';
import { budgetOf } from './uncertaintyBudget.js';
import type { UncertainQuantity } from './UncertaintySource.js';

/** What a modulus is made of. */
export interface ModulusInputs {
  /** Slope of force over measured extension k [N/mm], of frame and piece together where it is travel; its uncertainty is the scatter of the line. */
  readonly stiffness: UncertainQuantity;
  /** Original area S0 [mm²]. */
  readonly area: UncertainQuantity;
  /** Length that the extension belongs to [mm]: base of the extensometer, or effective length with travel. */
  readonly length: UncertainQuantity;
  /** Compliance of the frame Cf [mm/N], below 1/k; default none, as with an extensometer. */
  readonly frameCompliance?: UncertainQuantity | undefined;
  /** Scale of the force: true over indicated, usually 1 with a relative uncertainty; default exact. */
  readonly forceScale?: UncertainQuantity | undefined;
  /** Scale of the extension or travel: true over indicated, usually 1 with a relative uncertainty; default exact. */
  readonly extensionScale?: UncertainQuantity | undefined;
}

/**
 * Uncertainty budget of the modulus of elasticity, by an extensometer or by travel less the frame.
 *
 * $$ E = \frac{L}{S_0 \left(\frac{1}{k} \frac{s_x}{s_F} - C_f\right)}, \qquad \left(\frac{u(E)}{E}\right)^2 = \frac{u^2(S_0)}{S_0^2} + \frac{u^2(L)}{L^2} + \left(\frac{C_f}{c}\frac{u(C_f)}{C_f}\right)^2 + \left(\frac{c_{app}}{c}\right)^2 \left(S_{m(rel)}^2 + \frac{u^2(F)}{F^2} + \frac{u^2(x)}{x^2}\right) $$
 *
 * @remarks
 * With $c = L/(E S_0)$ and $c_{app} = 1/k$. Where the frame gives more than the piece, every doubt of slope, force and travel counts
 * $c_{app}/c$ times and that of the frame $C_f/c$ times, and the distribution of E is skewed: the finding `budget-not-linear` says when, and
 * `monteCarlo` gives the interval. A law of the frame that is no straight line has a budget of its own where the frame is calibrated.
 *
 * @param inputs - Stiffness [N/mm], area [mm²], length [mm], compliance [mm/N], scales [1]; above 0.
 * @param options - Coverage.
 * @returns The budget of E [MPa].
 * @throws {@link InputError} `missing`, `not-finite`, `not-positive`, `unknown-option`; `out-of-range` where the frame alone gives as much as was measured.
 *
 * @example
 * ```ts
 * const budget = modulusBudget({
 *   stiffness: { value: 40737.704, uncertainty: 0.005 * 40737.704 },
 *   area: 50.26548,
 *   length: 48,
 *   frameCompliance: { value: 2e-5, uncertainty: 0.03 * 2e-5 },
 * });
 * budget.value; // => 210000.0
 * ```
 *
 * @see Springs in series; JCGM 100:2008. Checked in `test/handbook/uncertainty.test.ts`.
 */
export function modulusBudget(inputs: ModulusInputs, options: CoverageOptions = {}): UncertaintyBudget {
  const from = 'modulusBudget';
  const checked = requireNamedInputs(from, inputs, ['stiffness', 'area', 'length'], ['frameCompliance', 'forceScale', 'extensionScale']);
  const at = (name: string, otherwise: number): number => checked.find((one) => one.name === name)?.value ?? otherwise;
  const measured = at('extensionScale', 1) / (at('stiffness', 0) * at('forceScale', 1));
  const frame = at('frameCompliance', 0);
  if (frame >= measured)
    throw new InputError(from, 'inputs.frameCompliance.value', 'out-of-range', `must be below what was measured (${measured} mm/N)`, frame);
  return budgetOf(
    from,
    ({ stiffness, area, length, frameCompliance = 0, forceScale = 1, extensionScale = 1 }) =>
      length! / (area! * (extensionScale / (stiffness! * forceScale) - frameCompliance)),
    checked,
    { ...options, symbol: 'E', unit: 'MPa' },
  );
}
