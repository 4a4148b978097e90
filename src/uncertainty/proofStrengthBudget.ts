import { requireExtension } from '../base/index.js';
import type { UncertaintyBudget } from './Budget.js';
import { requireNamedInputs } from './components.js';
import type { CoverageOptions } from './coverageFactor.js';
import { budgetOf } from './uncertaintyBudget.js';
import type { UncertainQuantity } from './UncertaintySource.js';

/** What a proof strength is made of. */
export interface ProofInputs {
  /** Force at the proof strength [N]. */
  readonly force: UncertainQuantity;
  /** Original area S0 [mm²]. */
  readonly area: UncertainQuantity;
  /** Slope of the curve's own elastic line mE [MPa]; its uncertainty is that of the line alone, not of force and area. */
  readonly slope: UncertainQuantity;
  /** Plastic extension [mm/mm], 0.05 at most; its uncertainty is that of the origin and of the reading of extension. */
  readonly offset: UncertainQuantity;
  /** Exponent n of Ramberg and Osgood near the proof strength, or of the tangent there: (R/e_p)(1/E_t − 1/mE) [1]. */
  readonly exponent: UncertainQuantity;
}

/** Newton steps that are enough for every digit from an estimate within a few percent. */
const STEPS = 50;

/**
 * Uncertainty budget of a proof strength, plastic extension: where the curve crosses a line whose slope and offset are in doubt.
 *
 * $$ \frac{u(R_p)}{R_p} = \sqrt{\frac{u^2(F)}{F^2} + \frac{u^2(S_0)}{S_0^2} + \left(\frac{\lambda}{n} \frac{u(m)}{m}\right)^2 + \left(\frac{u(e_p)}{n\, e_p}\right)^2}, \qquad \lambda = \frac{R_p}{m\, e_p} $$
 *
 * @remarks
 * The curve near the crossing is taken as $e_{p,0} (R/R_p)^n$ beside its own line; the crossing with a changed line is solved, not
 * linearised. A flat curve (large n) hardly minds the line; on a soft frame or with a large leverage $\lambda$ the slope decides. The line
 * is taken to turn about the origin, so the slope's part is an upper bound where the origin moves with it.
 *
 * @param inputs - Force [N], area [mm²], slope [MPa], offset [mm/mm], exponent [1]; above 0, the offset 0.05 at most.
 * @param options - Coverage.
 * @returns The budget of Rp [MPa].
 * @throws {@link InputError} `missing`, `not-finite`, `not-positive`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * const budget = proofStrengthBudget({
 *   force: { value: 12566, uncertainty: 0.0065 * 12566 },
 *   area: { value: 50.265, uncertainty: 0.088 },
 *   slope: { value: 38902, uncertainty: 0.01 * 38902 },
 *   offset: { value: 0.002, uncertainty: 2e-5 },
 *   exponent: 20,
 * });
 * budget.relativeStandardUncertainty; // => 0.00694
 * ```
 *
 * @see ISO 6892-1:2019, proof strength, plastic extension; JCGM 100:2008. Checked in `test/handbook/uncertainty.test.ts`.
 */
export function proofStrengthBudget(inputs: ProofInputs, options: CoverageOptions = {}): UncertaintyBudget {
  const from = 'proofStrengthBudget';
  const checked = requireNamedInputs(from, inputs, ['force', 'area', 'slope', 'offset', 'exponent']);
  const [force, area, slope, offset] = checked.map(({ value }) => value) as [number, number, number, number];
  requireExtension(from, 'inputs.offset.value', offset);
  const strength = force / area;
  /** Share of the proof strength at which the curve meets a line of another slope and offset. */
  const crossing = (m: number, e: number, n: number): number => {
    const turn = (strength / offset) * (1 / m - 1 / slope);
    let x = 1;
    for (let k = 0; k < STEPS; k += 1) {
      const step = (x ** n - e / offset - turn * x) / (n * x ** (n - 1) - turn);
      x -= step;
      if (Math.abs(step) < 1e-15) break;
    }
    return x;
  };
  return budgetOf(from, ({ force: F, area: S, slope: m, offset: e, exponent: n }) => (F! / S!) * crossing(m!, e!, n!), checked, {
    ...options,
    symbol: 'Rp',
    unit: 'MPa',
  });
}
