import { requireOptions, requirePositive } from '../base/index.js';
import { materialFamilies, type MaterialFamily } from './materialFamilies.js';
import {
  measurementNames,
  requireMeasurement,
  requireProperties,
  type MeasuredProperties,
  type Measurement,
} from './measuredProperties.js';
import { fitAll, MARGIN, outsideOf } from './range.js';

/** Options of {@link matchingFamilies}. */
export interface MatchingFamiliesOptions extends Measurement {
  /** Share by which a property may lie beyond its range; default 0.1. */
  readonly margin?: number | undefined;
}

/**
 * Families of metals in whose usual ranges all measured properties lie, best first.
 *
 * $$ \frac{\text{low}}{1 + \mu} \le x \le \text{high}\,(1 + \mu), \qquad \mu = 0.1 $$
 *
 * @remarks
 * Families overlap, so a match identifies nothing; an empty list says that no family of the table fits. The slope from travel that still
 * holds the frame is compared with the upper end of the modulus only.
 *
 * @param properties - Slope of the elastic line, strengths [MPa], elongations and exponent [1]; at least one.
 * @param options - Margin, and how it was measured.
 * @returns The families that fit.
 * @throws {@link InputError} `missing`, `not-finite`, `not-positive`, `out-of-range`, `unknown-option`, `wrong-type`.
 *
 * @example
 * ```ts
 * matchingFamilies({ modulus: 70500, yieldStrength: 35, tensileStrength: 90 }).map(({ key }) => key); // => ['aluminium-soft']
 * ```
 *
 * @see Common practice; ranges from memory. Checked in `test/materials/explainProperties.test.ts`.
 */
export function matchingFamilies(properties: MeasuredProperties, options: MatchingFamiliesOptions = {}): readonly MaterialFamily[] {
  const from = 'matchingFamilies';
  requireOptions(from, options, ['margin', ...measurementNames]);
  const given = requireProperties(from, properties);
  const how = requireMeasurement(from, options);
  const margin = requirePositive(from, 'options.margin', options.margin ?? MARGIN);
  const frameInside = how.strainFrom === 'travel' && how.frameRemoved !== true;
  return materialFamilies
    .filter((family) => outsideOf(given, family, frameInside, margin).length === 0)
    .sort((a, b) => fitAll(given, b, frameInside) - fitAll(given, a, frameInside));
}
