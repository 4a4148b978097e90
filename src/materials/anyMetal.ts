import { materialFamilies, type UsualRange } from './materialFamilies.js';
import { propertyNames, rangeOf, type PropertyName } from './measuredProperties.js';

/** @internal Moduli of all metals, from lead to tungsten, with a margin [MPa] (common practice): wider than the families, whose list does not hold every metal. */
export const metalModuli: UsualRange = [10_000, 450_000];

function overall(name: PropertyName): UsualRange {
  const ranges = materialFamilies.map((family) => rangeOf(family, name)).filter((range) => range !== undefined);
  return [Math.min(...ranges.map(([low]) => low)), Math.max(...ranges.map(([, high]) => high))];
}

/** @internal Lowest and highest value of each property over all families. */
export const anyMetal = Object.fromEntries(propertyNames.map((name) => [name, overall(name)])) as Readonly<
  Record<PropertyName, UsualRange>
>;
