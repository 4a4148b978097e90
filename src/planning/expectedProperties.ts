import { InputError, requireNonNegative, requireOneOf, requireOptions, requirePositive } from '../base/index.js';
import { materialFamilies, materialFamily, type MaterialFamilyKey, type UsualRange } from '../materials/index.js';
import { requireMeantUnit } from './meantUnits.js';

/** Properties to be expected, each as one number or from lowest to highest. */
export interface ExpectedProperties {
  /** Modulus of elasticity E [MPa]. */
  readonly modulus?: number | UsualRange | undefined;
  /** Rp0.2 or ReH [MPa]. */
  readonly yieldStrength?: number | UsualRange | undefined;
  /** Tensile strength Rm [MPa]. */
  readonly tensileStrength?: number | UsualRange | undefined;
  /** Elongation after fracture A [mm/mm]. */
  readonly elongation?: number | UsualRange | undefined;
  /** Hardening exponent n [1]. */
  readonly exponent?: number | UsualRange | undefined;
  /** Whether the curve shows an upper yield point; default `possible`. */
  readonly yieldPoint?: 'usual' | 'possible' | 'none' | undefined;
  /** Whether it necks before it breaks; default true. */
  readonly ductile?: boolean | undefined;
}

/** What a plan takes the material to be. */
export interface PlannedMaterial {
  /** Name of the family, or `as given`. */
  readonly name: string;
  /** Modulus of elasticity [MPa], from lowest to highest. */
  readonly modulus: UsualRange;
  /** Rp0.2 or ReH [MPa]; absent where there is none. */
  readonly yieldStrength?: UsualRange | undefined;
  /** Tensile strength [MPa]. */
  readonly tensileStrength: UsualRange;
  /** Elongation after fracture [mm/mm]. */
  readonly elongation: UsualRange;
  /** Total extension at maximum force [mm/mm]: by Considère from the exponent where there is one, never above the elongation. */
  readonly uniformExtension: UsualRange;
  /** Whether the curve shows an upper yield point. */
  readonly yieldPoint: 'usual' | 'possible' | 'none';
  /** Whether it necks before it breaks. */
  readonly ductile: boolean;
}

/** What a plan of bending takes the material to be: how far it stretches may be unknown. */
export type BendingPlanMaterial = Omit<PlannedMaterial, 'elongation' | 'uniformExtension'> &
  Partial<Pick<PlannedMaterial, 'elongation' | 'uniformExtension'>>;

/** What a plan of shear takes the material to be: its strength, and what else is known. */
export type ShearPlanMaterial = Omit<BendingPlanMaterial, 'modulus'> & Partial<Pick<BendingPlanMaterial, 'modulus'>>;

/** @internal Where a plan takes its material from: a family, properties of one's own, or both (one's own count first). */
export interface MaterialInput {
  /** Family of the material. */
  readonly family?: MaterialFamilyKey | undefined;
  /** Properties that are known better than by the family. */
  readonly expected?: ExpectedProperties | undefined;
}

const ranges = ['modulus', 'yieldStrength', 'tensileStrength', 'elongation', 'exponent'] as const;

/** @internal The middle of a range. */
export const middle = ([low, high]: UsualRange): number => (low + high) / 2;

/** @internal A number above 0, or lowest and highest; the lowest may be 0 where `fromZero` says so. */
export function requireRange(from: string, path: string, value: unknown, fromZero = false): UsualRange {
  if (typeof value === 'number') return [requirePositive(from, path, value), value];
  if (!Array.isArray(value) || value.length !== 2)
    throw new InputError(from, path, value === undefined ? 'missing' : 'wrong-type', 'must be a number, or lowest and highest', value);
  const low = (fromZero ? requireNonNegative : requirePositive)(from, `${path}[0]`, value[0]);
  const high = requirePositive(from, `${path}[1]`, value[1]);
  if (high < low) throw new InputError(from, `${path}[1]`, 'out-of-range', `must be at least the lowest (${low})`, high);
  return [low, high];
}

/** The yield strength: where it is the family's, a strength that is known better bounds it. */
function yieldWithin(from: string, range: UsualRange, own: boolean, strength: UsualRange): UsualRange {
  if (!own) return [Math.min(range[0], strength[0]), Math.min(range[1], strength[1])];
  if (range[0] > strength[0] || range[1] > strength[1])
    throw new InputError(
      from,
      'expected.yieldStrength',
      'out-of-range',
      `must not be above the tensile strength (${strength.join(' to ')})`,
      range.join(' to '),
    );
  return range;
}

/** Elongation, and the extension at maximum force: by Considère where the exponent is known. */
function stretchOf(elongation: UsualRange, exponent: UsualRange | undefined): Pick<PlannedMaterial, 'elongation' | 'uniformExtension'> {
  const [low, high] = exponent?.map((n) => Math.exp(n) - 1) ?? elongation;
  return { elongation, uniformExtension: [Math.min(low, elongation[0]), Math.min(high, elongation[1])] };
}

/** @internal The material of a shear test, from family and expectations: the tensile strength must be known. */
export function requireSheared(from: string, { family, expected = {} }: MaterialInput): ShearPlanMaterial {
  requireOptions(from, expected, [...ranges, 'yieldPoint', 'ductile'], 'expected');
  const keys = materialFamilies.map(({ key }) => key);
  const base = family === undefined ? undefined : materialFamily(requireOneOf(from, 'family', family, keys));
  const of = (name: (typeof ranges)[number]): UsualRange => {
    const range = requireRange(from, `expected.${name}`, expected[name] ?? base?.[name], name === 'elongation');
    for (const one of range) if (one > 0) requireMeantUnit(from, `expected.${name}`, name, one);
    return range;
  };
  const known = (name: (typeof ranges)[number]): boolean => (expected[name] ?? base?.[name]) !== undefined;
  const tensileStrength = of('tensileStrength');
  const elongation = known('elongation') ? of('elongation') : undefined;
  const exponent = known('exponent') ? of('exponent') : undefined;
  const yieldStrength = known('yieldStrength')
    ? yieldWithin(from, of('yieldStrength'), expected.yieldStrength !== undefined, tensileStrength)
    : undefined;
  const yieldPoint = requireOneOf(from, 'expected.yieldPoint', expected.yieldPoint ?? base?.yieldPoint ?? 'possible', [
    'usual',
    'possible',
    'none',
  ]);
  return {
    name: base?.name ?? 'as given',
    ...(known('modulus') ? { modulus: of('modulus') } : {}),
    ...(yieldStrength === undefined ? {} : { yieldStrength }),
    tensileStrength,
    ...(elongation === undefined ? {} : stretchOf(elongation, exponent)),
    yieldPoint,
    ductile: expected.ductile ?? base?.ductile ?? true,
  };
}

/** @internal The material of a bending test: its modulus must be known too. */
export function requireBent(from: string, input: MaterialInput): BendingPlanMaterial {
  const { modulus, ...others } = requireSheared(from, input);
  return { ...others, modulus: requireRange(from, 'expected.modulus', modulus) };
}

/** @internal The material of a tension test: its elongation must be known too. */
export function requireMaterial(from: string, input: MaterialInput): PlannedMaterial {
  const { elongation, uniformExtension, ...others } = requireBent(from, input);
  if (elongation === undefined || uniformExtension === undefined)
    throw new InputError(from, 'expected.elongation', 'missing', 'must be a number, or lowest and highest', undefined);
  return { ...others, elongation, uniformExtension };
}
