import { InputError, requireOneOf, requireOptions, requireSection, type Section, type SectionShape, quoted } from '../base/index.js';
import { hexagon, rectangular, round, sectionFromArea, sectionFromMass, square, tube, tubeStrip } from '../geometry/index.js';
import type { UncertaintyBudget } from './Budget.js';
import { positiveInput, requireInput } from './components.js';
import type { CoverageOptions } from './coverageFactor.js';
import { budgetOf } from './uncertaintyBudget.js';
import type { UncertaintySources } from './UncertaintySource.js';

/** The sections by shape, as functions of whatever dimensions they have. */
const sections = {
  round,
  rectangular,
  square,
  hexagon,
  tube,
  'tube-strip': tubeStrip,
  'from-mass': sectionFromMass,
  'from-area': sectionFromArea,
} as unknown as Readonly<Record<SectionShape, (dimensions: Readonly<Record<string, number>>) => Section>>;

/** @internal Area of a section of this shape with other dimensions. */
export const areaOf = (shape: SectionShape, dimensions: Readonly<Record<string, number>>): number => sections[shape](dimensions).area;

/**
 * Uncertainty budget of the original cross-sectional area.
 *
 * $$ S_0 = f(d) \;\text{or}\; f(a, b) \dots, \qquad \text{round: } \frac{u(S_0)}{S_0} = \frac{2\, u(d)}{d} $$
 *
 * @remarks
 * Each dimension may have several sources: the scatter of its readings, the resolution and error of the instrument, a taper. A dimension
 * that is not named counts as exact.
 *
 * @param section - As `round()`, `rectangular()`, `tube()` ... make it.
 * @param dimensions - By name as in `section.dimensions`: where the uncertainty of each comes from [mm; the dimension's own unit].
 * @param options - Coverage.
 * @returns The budget of S0 [mm²].
 * @throws {@link InputError} `missing`, `empty`, `not-positive`, `out-of-range`, `unknown-option` where the section has no such dimension.
 *
 * @example
 * ```ts
 * const budget = areaBudget(round({ diameter: 8 }), { diameter: { halfWidth: 0.01, name: 'micrometer' } });
 * budget.relativeStandardUncertainty; // => 0.0014434
 * ```
 *
 * @see JCGM 100:2008; elementary geometry. Checked in `test/handbook/uncertainty.test.ts`.
 */
export function areaBudget(
  section: Section,
  dimensions: Readonly<Record<string, UncertaintySources>>,
  options: CoverageOptions = {},
): UncertaintyBudget {
  const from = 'areaBudget';
  requireSection(from, 'section', section);
  requireOneOf(from, 'section.shape', section.shape, Object.keys(sections) as SectionShape[]);
  requireOptions(from, options, ['coverage', 'coverageFactor']);
  const names = Object.keys(section.dimensions);
  requireOptions(from, dimensions, names, 'dimensions');
  const inputs = names.flatMap((name) => {
    const uncertainty = dimensions[name];
    return uncertainty === undefined
      ? []
      : [
          positiveInput(
            from,
            `dimensions.${name}`,
            requireInput(from, `dimensions.${name}`, name, { value: section.dimensions[name], uncertainty }),
          ),
        ];
  });
  if (inputs.length === 0) throw new InputError(from, 'dimensions', 'empty', `must name one of ${quoted(names)}`, 0);
  // several readings make S0 the mean of their areas: its small distance from the area of the mean stays
  const surplus = section.area - areaOf(section.shape, section.dimensions);
  return budgetOf(from, (x) => surplus + areaOf(section.shape, { ...section.dimensions, ...x }), inputs, {
    ...options,
    symbol: 'S0',
    unit: 'mm²',
  });
}
