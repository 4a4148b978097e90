import {
  requireBoolean,
  requireFinite,
  requireNonNegative,
  requireOneOf,
  requireOptions,
  requirePositive,
  InputError,
  type SectionShape,
} from '../base/index.js';
import type { MaterialFamily, UsualRange } from './materialFamilies.js';

/** Properties of a test, as they were measured; at least one. */
export interface MeasuredProperties {
  /** Slope of the elastic line [MPa], whatever its strain holds. */
  readonly modulus?: number | undefined;
  /** Rp0.2, or ReH where there is a yield point [MPa]. */
  readonly yieldStrength?: number | undefined;
  /** Tensile strength Rm [MPa]. */
  readonly tensileStrength?: number | undefined;
  /** Elongation after fracture A, by the marks [mm/mm]. */
  readonly elongation?: number | undefined;
  /** Plastic extension at fracture, by the curve [mm/mm]. */
  readonly plasticExtension?: number | undefined;
  /** Hardening exponent n [1]. */
  readonly exponent?: number | undefined;
}

/** How the properties were measured: what is not known leaves more causes open. */
export interface Measurement {
  /** What the strain was made from. */
  readonly strainFrom?: 'extensometer' | 'travel' | undefined;
  /** Whether a compliance of the frame was taken out of the travel; default no. */
  readonly frameRemoved?: boolean | undefined;
  /** Whether the parallel length was given; with travel the gauge length stands for it otherwise. */
  readonly parallelLengthGiven?: boolean | undefined;
  /** What the force was made from. */
  readonly forceFrom?: 'force' | 'pressure' | undefined;
  /** Shape of the section. */
  readonly shape?: SectionShape | undefined;
}

/** A property that is compared with a family; `yieldRatio` is yield strength over tensile strength. */
export type PropertyName = keyof MeasuredProperties | 'yieldRatio';

/** @internal Properties after the checks, in the order of the job. */
export type Properties = Readonly<Partial<Record<PropertyName, number>>>;

/** @internal Words of a property, for sentences. */
export const propertyWords: Readonly<Record<PropertyName, string>> = {
  modulus: 'the slope of the elastic line',
  yieldStrength: 'the yield strength',
  tensileStrength: 'the tensile strength',
  yieldRatio: 'the ratio of yield to tensile strength',
  elongation: 'the elongation after fracture',
  plasticExtension: 'the plastic extension at fracture',
  exponent: 'the hardening exponent',
};

/** @internal Names of all properties, and of those that are measured by themselves. */
export const propertyNames = Object.keys(propertyWords) as readonly PropertyName[];
/** What each property that is measured by itself must be, in the order of the job. */
const checks = {
  modulus: requirePositive,
  yieldStrength: requirePositive,
  tensileStrength: requirePositive,
  elongation: requireNonNegative,
  plasticExtension: requireNonNegative,
  exponent: requireFinite,
} as const satisfies Readonly<Record<keyof MeasuredProperties, typeof requireFinite>>;
const givenNames = Object.keys(checks) as readonly (keyof MeasuredProperties)[];

/** The extension over the parallel length thins out the neck that a mark to mark reading holds: so much less is still usual. */
const THINNED = 2;

/** @internal Usual range of a property in a family; none where the family has none. */
export function rangeOf(family: MaterialFamily, name: PropertyName): UsualRange | undefined {
  if (name !== 'plasticExtension') return family[name];
  const [low, high] = family.elongation;
  return [low / THINNED, high];
}

/** @internal Checks properties; at least one is there. */
export function requireProperties(from: string, properties: MeasuredProperties): Properties {
  requireOptions(from, properties, givenNames, 'properties');
  const given: Partial<Record<PropertyName, number>> = {};
  for (const name of givenNames)
    if (properties[name] !== undefined) given[name] = checks[name](from, `properties.${name}`, properties[name]);
  if (Object.keys(given).length === 0) throw new InputError(from, 'properties', 'missing', 'must hold at least one property', properties);
  const { yieldStrength, tensileStrength } = given;
  if (yieldStrength !== undefined && tensileStrength !== undefined) given.yieldRatio = yieldStrength / tensileStrength;
  return given;
}

/** @internal Names that a {@link Measurement} knows. */
export const measurementNames = ['strainFrom', 'frameRemoved', 'parallelLengthGiven', 'forceFrom', 'shape'] as const;

const shapes: readonly SectionShape[] = ['round', 'rectangular', 'square', 'hexagon', 'tube', 'tube-strip', 'from-mass', 'from-area'];

/** @internal Checks how it was measured. */
export function requireMeasurement(from: string, options: Measurement): Measurement {
  const { strainFrom, frameRemoved, parallelLengthGiven, forceFrom, shape } = options;
  if (frameRemoved !== undefined) requireBoolean(from, 'options.frameRemoved', frameRemoved);
  if (parallelLengthGiven !== undefined) requireBoolean(from, 'options.parallelLengthGiven', parallelLengthGiven);
  if (strainFrom !== undefined) requireOneOf(from, 'options.strainFrom', strainFrom, ['extensometer', 'travel']);
  if (forceFrom !== undefined) requireOneOf(from, 'options.forceFrom', forceFrom, ['force', 'pressure']);
  if (shape !== undefined) requireOneOf(from, 'options.shape', shape, shapes);
  return { strainFrom, frameRemoved, parallelLengthGiven, forceFrom, shape };
}
