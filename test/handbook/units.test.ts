import { expect, test } from 'vitest';
import { convert } from '../../src/index.js';
import { dimensionOf } from '../../src/units/index.js';
import { measures } from '../../src/units/measures.js';
import { checkVectors } from '../support/vectors.js';

checkVectors('units', 'convert');

/** Exact fractions of each unit to its anchor, from the definitions: written here a second time, as whole numbers over whole numbers. */
const IN = [254n, 10n] as const;
const LBF = [44482216152605n, 10000000000000n] as const;
const KGF = [980665n, 100000n] as const;
type Fraction = readonly [bigint, bigint];
const times = (...parts: Fraction[]): Fraction => parts.reduce<[bigint, bigint]>(([a, b], [c, d]) => [a * c, b * d], [1n, 1n]);
const over = ([a, b]: Fraction): Fraction => [b, a];
const whole = (n: bigint): Fraction => [n, 1n];
const part = (n: bigint): Fraction => [1n, n];
const exact: Readonly<Record<string, Fraction>> = {
  N: whole(1n),
  kN: whole(1000n),
  mN: part(1000n),
  daN: whole(10n),
  MN: whole(1000000n),
  kgf: KGF,
  tf: times(KGF, whole(1000n)),
  lbf: LBF,
  kip: times(LBF, whole(1000n)),
  mm: whole(1n),
  cm: whole(10n),
  m: whole(1000n),
  µm: part(1000n),
  in: IN,
  ft: times(IN, whole(12n)),
  mil: times(IN, part(1000n)),
  'mm²': whole(1n),
  'cm²': whole(100n),
  'm²': whole(1000000n),
  'in²': times(IN, IN),
  MPa: whole(1n),
  Pa: part(1000000n),
  kPa: part(1000n),
  GPa: whole(1000n),
  'N/mm²': whole(1n),
  bar: part(10n),
  mbar: part(10000n),
  'kgf/mm²': KGF,
  'kgf/cm²': times(KGF, part(100n)),
  psi: times(LBF, over(times(IN, IN))),
  ksi: times(LBF, over(times(IN, IN)), whole(1000n)),
  Msi: times(LBF, over(times(IN, IN)), whole(1000000n)),
  'N·mm': whole(1n),
  mJ: whole(1n),
  J: whole(1000n),
  kJ: whole(1000000n),
  'in·lbf': times(IN, LBF),
  'ft·lbf': times(IN, LBF, whole(12n)),
  s: whole(1n),
  ms: part(1000n),
  min: whole(60n),
  h: whole(3600n),
  'mm/s': whole(1n),
  'mm/min': part(60n),
  'm/s': whole(1000n),
  'in/s': IN,
  'in/min': times(IN, part(60n)),
  '1': whole(1n),
  'mm/mm': whole(1n),
  '%': part(100n),
  '‰': part(1000n),
  'µm/m': part(1000000n),
  µε: part(1000000n),
};

test('every pair of units of one dimension is exact to 1e-15, against fractions of whole numbers', () => {
  let pairs = 0;
  for (const [dimension, factors] of Object.entries(measures)) {
    if (dimension === 'angle') continue; // π is no fraction
    const names = Object.keys(factors);
    for (const from of names)
      for (const to of names) {
        const [a, b] = times(exact[from]!, over(exact[to]!));
        // the quotient to 20 digits
        const digits = 10n ** 40n;
        const expected = Number((a * digits) / b) / 1e40;
        const found = (convert as (value: number, from: string, to: string) => number)(1, from, to);
        expect(Math.abs(found / expected - 1), `${from} to ${to}`).toBeLessThanOrEqual(1e-15);
        pairs += 1;
      }
  }
  expect(pairs).toBeGreaterThan(250);
});

test('angles: 180 degrees are π', () => {
  expect(convert(180, 'deg', 'rad')).toBeCloseTo(Math.PI, 15);
  expect(convert(1, 'rad', 'mrad')).toBe(1000);
  expect(dimensionOf('°')).toBe('angle');
});
