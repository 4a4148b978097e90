import { requireColumn, requireObject, requireOptions, requirePositive } from '../base/index.js';
import type { defaultThresholds } from './tensionOptions.js';

/** @internal Thresholds that every method with an elastic line has, defaults filled in. */
export type LineThresholds = Pick<typeof defaultThresholds, LineThresholdName>;

/** Names of the thresholds of an elastic line, of {@link TensionThresholds}. */
export type LineThresholdName =
  'elasticPoints' | 'leastElasticPoints' | 'slopeScatter' | 'slopeFall' | 'windowBend' | 'offsetDoubt' | 'displacementStep' | 'toeShare';

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

/** @internal A list of strains above 0, or its default. */
export const requireStrains = (from: string, path: string, given: ArrayLike<number> | undefined, otherwise: readonly number[]): number[] =>
  given === undefined ? [...otherwise] : [...requireColumn(from, path, given, { least: 0, positive: true })];
