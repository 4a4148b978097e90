import { InputError } from '../base/index.js';
import type { UncertaintyBudget } from './Budget.js';
import { requireNamedInputs } from './components.js';
import type { CoverageOptions } from './coverageFactor.js';
import { budgetOf } from './uncertaintyBudget.js';
import type { UncertainQuantity } from './UncertaintySource.js';

/** Diameters of a round piece, or areas of any, before and after. */
export type ReductionInputs =
  | {
      /** Original diameter [mm]. */
      readonly originalDiameter: UncertainQuantity;
      /** Least diameter after fracture [mm]. */
      readonly finalDiameter: UncertainQuantity;
    }
  | {
      /** Original area S0 [mm²]; an `areaBudget` serves. */
      readonly originalArea: UncertainQuantity;
      /** Least area after fracture Su [mm²]. */
      readonly finalArea: UncertainQuantity;
    };

const areas: readonly [string, string] = ['originalArea', 'finalArea'];
const diameters: readonly [string, string] = ['originalDiameter', 'finalDiameter'];

/**
 * Uncertainty budget of the reduction of area.
 *
 * $$ Z = 1 - \frac{S_u}{S_0} = 1 - \left(\frac{d_u}{d_0}\right)^2, \qquad u(Z) = 2 \left(\frac{d_u}{d_0}\right)^2 \sqrt{\left(\frac{u(d_u)}{d_u}\right)^2 + \left(\frac{u(d_0)}{d_0}\right)^2} $$
 *
 * @remarks
 * A neck that is not round adds more than the reading: give the scatter of two diameters at right angles as a source.
 *
 * @param inputs - Either both diameters [mm] or both areas [mm²], above 0.
 * @param options - Coverage.
 * @returns The budget of Z as a ratio [1]; times 100 it is in points of a percent.
 * @throws {@link InputError} `missing`, `not-finite`, `not-positive`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * const finalDiameter = { value: 4.8, uncertainty: 0.05 };
 * reductionBudget({ originalDiameter: { value: 8, uncertainty: 0.00702 }, finalDiameter }).standardUncertainty; // => 0.007527
 * ```
 *
 * @see ISO 6892-1:2019, percentage reduction of area; JCGM 100:2008. Checked in `test/handbook/uncertainty.test.ts`.
 */
export function reductionBudget(inputs: ReductionInputs, options: CoverageOptions = {}): UncertaintyBudget {
  const from = 'reductionBudget';
  const given = requireNamedInputs(from, inputs, [], [...areas, ...diameters]);
  const byArea = given.some(({ name }) => name === 'originalArea');
  const [before, after] = byArea ? areas : diameters;
  const power = byArea ? 1 : 2;
  const checked = requireNamedInputs(from, inputs, [before, after]);
  const [original, final] = checked.map(({ value }) => value) as [number, number];
  if (final > original)
    throw new InputError(from, `inputs.${after}.value`, 'out-of-range', `must not be above ${before} (${original})`, final);
  return budgetOf(from, (x) => 1 - (x[after]! / x[before]!) ** power, checked, { ...options, symbol: 'Z', unit: '1' });
}
