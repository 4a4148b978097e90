import fc from 'fast-check';
import { describe, expect, expectTypeOf, test } from 'vitest';
import { convert, dimensionOf, unitFactor, type DimensionOf, type Unit, type UnitOf } from '../../src/units/index.js';
import { thrown } from '../support/thrown.js';

/** Two units or more of each dimension. */
const units = [
  ...([
    'N',
    'kN',
    'kgf',
    'lbf',
    'mm',
    'in',
    'µm',
    'mm²',
    'in²',
    'MPa',
    'GPa',
    'bar',
    'psi',
    'ksi',
    'kgf/mm²',
    'J',
    'ft·lbf',
    'in·lbf',
  ] as const),
  ...(['s', 'min', 'h', 'rad', 'deg', '°', 'mm/min', 'in/s', 'in/min', '1', '%', 'µε'] as const),
];
/** Pairs of one dimension, and triples. */
const pairs = units.flatMap((a) => units.filter((b) => dimensionOf(a) === dimensionOf(b)).map((b) => [a, b] as const));
const triples = pairs.flatMap(([a, b]) => units.filter((c) => dimensionOf(a) === dimensionOf(c)).map((c) => [a, b, c] as const));
const value = fc.double({ min: 1e-9, max: 1e9, noNaN: true });

describe('what the compiler knows', () => {
  test('of which dimension a unit is', () => {
    expectTypeOf<DimensionOf<'ksi'>>().toEqualTypeOf<'stress'>();
    expectTypeOf<DimensionOf<'mm2'>>().toEqualTypeOf<'area'>();
    expectTypeOf<'kgf/mm2'>().toExtend<UnitOf<'stress'>>();
    expectTypeOf<'kgf/mm2'>().not.toExtend<UnitOf<'force'>>();
    expectTypeOf<'stone'>().not.toExtend<Unit>();
  });

  test('that an energy is no force, and a length no area in either spelling', () => {
    // @ts-expect-error - an energy is no force
    expect(thrown(() => convert(1, 'J', 'N')).message).toBe(`convert: to must be a unit of energy like 'J', got "N"`);
    // @ts-expect-error - a length is no area
    expect(thrown(() => convert(1, 'mm', 'mm2')).code).toBe('out-of-range');
  });

  test('which units there are, and the error says it', () => {
    // @ts-expect-error - a tonne is no unit of force here
    expect(thrown(() => convert(1, 't', 'N')).message).toContain('N, mN, daN, kN, MN, kgf, tf, lbf');
    // @ts-expect-error - names that every object has are no units
    expect(thrown(() => convert(1, 'N', 'toString')).code).toBe('unknown-unit');
  });
});

test('both micro signs and the plain 2 are the same units', () => {
  expect(convert(3, 'in', '\u03bcm')).toBe(convert(3, 'in', '\u00b5m'));
  expect(convert(3, '%', '\u03bcm/m')).toBe(convert(3, '%', '\u00b5m/m'));
  expect(convert(3, '\u03bcε', '1')).toBe(convert(3, '\u00b5ε', '1'));
  expect(convert(3, 'in2', 'mm2')).toBe(convert(3, 'in²', 'mm²'));
  expect(convert(3, 'kgf/mm2', 'N/mm2')).toBe(convert(3, 'kgf/mm²', 'MPa'));
  expect(convert(3, 'm2', 'cm2')).toBe(30_000);
});

test('there and back, and by a third unit, within rounding', () => {
  fc.assert(
    fc.property(value, fc.constantFrom(...triples), (one, [a, b, c]) => {
      const there = one * unitFactor(a, b);
      expect(Math.abs((there * unitFactor(b, a)) / one - 1)).toBeLessThan(2e-15);
      expect(Math.abs((there * unitFactor(b, c)) / (one * unitFactor(a, c)) - 1)).toBeLessThan(2e-15);
    }),
  );
});

test('a unit to itself changes no bit', () => {
  for (const unit of units) expect(unitFactor(unit, unit)).toBe(1);
});

test('degrees and radians to 1e-15, π to 40 digits as a whole number', () => {
  const PI = 31415926535897932384626433832795028841971n; // times 1e-40
  for (const degrees of [1n, 7n, 45n, 123n, 359n]) {
    const radians = Number((degrees * PI) / 180n) / 1e40;
    expect(Math.abs(convert(Number(degrees), 'deg', 'rad') / radians - 1)).toBeLessThanOrEqual(1e-15);
    expect(Math.abs(convert(radians, 'rad', '°') / Number(degrees) - 1)).toBeLessThanOrEqual(1e-15);
  }
});
