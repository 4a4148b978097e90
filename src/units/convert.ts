import { InputError, requireFinite } from '../base/index.js';
import { dimensionOf, unitFactor } from './engine.js';
import { measures, type DimensionOf, type Unit, type UnitOf } from './measures.js';

/** Checks a unit's name at run time, for callers without a compiler. */
function requireUnit(path: string, unit: unknown) {
  const dimension = dimensionOf(unit);
  if (dimension) return dimension;
  const known = Object.values(measures).flatMap((factors) => Object.keys(factors));
  throw new InputError('convert', path, 'unknown-unit', `must be one of ${known.join(', ')}`, unit);
}

/**
 * Converts a value from one unit to another of the same dimension.
 *
 * $$ y = x \, \frac{f_{from}}{f_{to}} $$
 *
 * @remarks
 * Factors are exact by definition of the units (1 in = 25.4 mm, 1 lbf = 4.4482216152605 N, 1 kgf = 9.80665 N, 1 tf = 1000 kgf), so the relative error is
 * at most 1e-15. Units of different dimensions do not compile together, and throw where no compiler looked. The micro sign may be either
 * of the two that keyboards write, and a square may be a plain 2 (`mm2`, `kgf/mm2`).
 *
 * @param value - Any finite number, in `from`.
 * @param from - Unit of the value.
 * @param to - Unit wanted, of the same dimension.
 * @returns The value in `to`.
 * @throws {@link InputError} `not-finite`, `missing`, `wrong-type`, `unknown-unit`; `out-of-range` for two dimensions.
 *
 * @example
 * ```ts
 * convert(1, 'ksi', 'MPa'); // => 6.894757
 * convert(250, 'bar', 'MPa'); // => 25
 * ```
 *
 * @see International yard and pound agreement, 1959; 3rd CGPM, 1901 (standard gravity). Checked in `test/handbook/units.test.ts`.
 */
export function convert<From extends Unit>(value: number, from: From, to: UnitOf<DimensionOf<From>>): number {
  requireFinite('convert', 'value', value);
  const dimension = requireUnit('from', from);
  if (requireUnit('to', to) !== dimension)
    throw new InputError('convert', 'to', 'out-of-range', `must be a unit of ${dimension} like '${from}'`, to);
  return value * unitFactor(from, to);
}
