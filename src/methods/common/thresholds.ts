import { requireObject, requireOptions, requirePositive } from '../../base/index.js';
import { linearLimits, trustLimits, type LinearLimits } from '../../curve/index.js';

/** @internal Thresholds that every method with an elastic line has, when nothing is asked; documented with {@link TensionThresholds}. */
export const lineThresholds: Readonly<Record<LineThresholdName, number>> = {
  elasticPoints: 50,
  leastElasticPoints: 8,
  slopeScatter: 0.01,
  ...linearLimits,
  bendCaution: 0.05,
  offsetDoubt: trustLimits.doubtful,
  displacementStep: 0.1,
  toeShare: 0.25,
  sectionSpread: 0.005,
};

/** @internal The same after the checks. */
export type LineThresholds = Readonly<Record<LineThresholdName, number>>;

/** Names of the thresholds of an elastic line. */
export type LineThresholdName =
  | 'elasticPoints'
  | 'leastElasticPoints'
  | 'slopeScatter'
  | keyof LinearLimits
  | 'bendCaution'
  | 'offsetDoubt'
  | 'displacementStep'
  | 'toeShare'
  | 'sectionSpread';

/** @internal Thresholds as given over their defaults; each above 0, none unknown. */
export function requireThresholds<T extends Readonly<Record<string, number>>>(
  from: string,
  given: { readonly [Name in keyof T]?: number | undefined } | undefined,
  defaults: T,
): T {
  const path = 'options.thresholds';
  const thresholds = requireObject(from, path, given ?? {});
  requireOptions(from, thresholds, Object.keys(defaults), path);
  const own = Object.entries(thresholds).filter(([, value]) => value !== undefined);
  for (const [name, value] of own) requirePositive(from, `${path}.${name}`, value);
  return { ...defaults, ...Object.fromEntries(own) };
}
