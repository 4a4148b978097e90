import type { MaterialFamily, UsualRange } from './materialFamilies.js';
import { rangeOf, type Properties, type PropertyName } from './measuredProperties.js';

/** @internal Margin beyond a family's range at which a property is still usual (common practice). */
export const MARGIN = 0.1;
/** A property that does not fit at all still leaves this much: two mistakes can meet. */
const LEAST_FIT = 0.1;
/** A property for which a family has no range speaks a little against it. */
const NO_RANGE = 0.7;

/** @internal On which side of a range, widened by a margin, a value lies. */
export function sideOf(value: number, [low, high]: UsualRange, margin: number): 'low' | 'high' | undefined {
  if (value < low / (1 + margin)) return 'low';
  return value > high * (1 + margin) ? 'high' : undefined;
}

/** @internal How well a value fits a range, 0.1 to 1: 1 inside, and as a bell over the ratio beyond it. */
export function fitOf(value: number, [low, high]: UsualRange): number {
  if (value >= low && value <= high) return 1;
  if (value <= 0) return LEAST_FIT;
  const beyond = Math.log(value < low ? low / value : value / high) / Math.log1p(MARGIN);
  return Math.max(LEAST_FIT, Math.exp(-0.5 * beyond ** 2));
}

/** @internal Names of the properties that were measured. */
export const namesOf = (properties: Properties): PropertyName[] => Object.keys(properties) as PropertyName[];

/** @internal Usual range, for a slope that holds the frame only its upper end. */
export function boundsOf(family: MaterialFamily, name: PropertyName, frameInside: boolean): UsualRange | undefined {
  const range = rangeOf(family, name);
  return frameInside && name === 'modulus' && range ? [0, range[1]] : range;
}

/** @internal How well all properties but those left free fit a family: the product over them. */
export function fitAll(properties: Properties, family: MaterialFamily, frameInside: boolean, free: readonly PropertyName[] = []): number {
  let fit = 1;
  for (const name of namesOf(properties)) {
    const range = boundsOf(family, name, frameInside);
    if (!range) fit *= name === 'yieldRatio' ? 1 : NO_RANGE;
    else if (!free.includes(name)) fit *= fitOf(properties[name]!, range);
  }
  return fit;
}

/** @internal Properties that lie outside a family's range with its margin. */
export function outsideOf(properties: Properties, family: MaterialFamily, frameInside: boolean, margin: number): PropertyName[] {
  return namesOf(properties).filter((name) => {
    const range = boundsOf(family, name, frameInside);
    return range && sideOf(properties[name]!, range, margin) !== undefined;
  });
}
