import { InputError, requireNonNegative, requireOneOf, requireOptions, requirePositive } from '../base/index.js';
import { materialFamilies, materialFamily, type MaterialFamilyKey, type UsualRange } from '../materials/index.js';

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

/** @internal The material of a plan, from family and expectations. */
export function requireMaterial(from: string, { family, expected = {} }: MaterialInput): PlannedMaterial {
  requireOptions(from, expected, [...ranges, 'yieldPoint', 'ductile'], 'expected');
  const keys = materialFamilies.map(({ key }) => key);
  const base = family === undefined ? undefined : materialFamily(requireOneOf(from, 'family', family, keys));
  const of = (name: (typeof ranges)[number]): UsualRange =>
    requireRange(from, `expected.${name}`, expected[name] ?? base?.[name], name === 'elongation');
  const known = (name: (typeof ranges)[number]): boolean => (expected[name] ?? base?.[name]) !== undefined;
  const modulus = of('modulus');
  const tensileStrength = of('tensileStrength');
  const elongation = of('elongation');
  const yieldStrength = known('yieldStrength')
    ? yieldWithin(from, of('yieldStrength'), expected.yieldStrength !== undefined, tensileStrength)
    : undefined;
  const uniform = known('exponent') ? of('exponent').map((n) => Math.exp(n) - 1) : elongation;
  const yieldPoint = requireOneOf(from, 'expected.yieldPoint', expected.yieldPoint ?? base?.yieldPoint ?? 'possible', [
    'usual',
    'possible',
    'none',
  ]);
  return {
    name: base?.name ?? 'as given',
    modulus,
    ...(yieldStrength === undefined ? {} : { yieldStrength }),
    tensileStrength,
    elongation,
    uniformExtension: [Math.min(uniform[0], elongation[0]), Math.min(uniform[1], elongation[1])],
    yieldPoint,
    ductile: expected.ductile ?? base?.ductile ?? true,
  };
}
