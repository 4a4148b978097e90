import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { hexagon, rectangular, round, sectionFromArea, sectionFromMass, square, tube, tubeStrip } from '../../src/geometry/index.js';
import { thrown } from '../support/thrown.js';

const length = fc.double({ min: 0.1, max: 100, noNaN: true });

describe('repeated readings', () => {
  test('the area is the mean of the areas, not the area of the mean; dimensions keep the means', () => {
    const section = round({ diameter: [8, 10] });
    expect(section.area).toBeCloseTo((Math.PI * (64 + 100)) / 8, 12);
    expect(section.area).toBeGreaterThan(round({ diameter: 9 }).area);
    expect(section.dimensions).toEqual({ diameter: 9 });
    expect(section.secondMoment).toBe(round({ diameter: 9 }).secondMoment);
    expect(section.readings).toBe(2);
  });

  test('readings of the same place belong together', () => {
    // 10 x 4 and 8 x 5: both 40 mm², while the mean dimensions give 40.5
    const section = rectangular({ width: [10, 8], thickness: [4, 5] });
    expect(section.area).toBe(40);
    expect(section.dimensions).toEqual({ width: 9, thickness: 4.5 });
    expect(section.readings).toBe(2);
  });

  test('a dimension that was read fewer times stands by its mean', () => {
    const section = rectangular({ width: [10, 11, 12], thickness: [4, 5] });
    expect(section.area).toBeCloseTo(11 * 4.5, 12);
    expect(section.readings).toBe(2);
    expect(rectangular({ width: [10, 11, 12], thickness: 4 }).area).toBeCloseTo(44, 12);
    expect(rectangular({ width: [10, 11, 12], thickness: 4 }).readings).toBe(1);
  });

  test('spread and taper are of the worst dimension, taper with its sign', () => {
    const section = rectangular({ width: [10, 10.3, 9.9], thickness: [2.05, 2, 1.95] });
    expect(section.spread).toBeCloseTo(0.1 / 2, 12);
    expect(section.taper).toBeCloseTo(-0.1 / 2, 12);
    expect(round({ diameter: [9.9, 10.1, 10] }).taper).toBeCloseTo(0.1 / 10, 12);
  });

  test('one reading has neither', () => {
    for (const section of [round({ diameter: 10 }), round({ diameter: [10] })]) {
      expect(section).not.toHaveProperty('spread');
      expect(section).not.toHaveProperty('taper');
      expect(section.readings).toBe(1);
      expect(section.area).toBeCloseTo(25 * Math.PI, 12);
    }
  });

  test('a typed array serves as well and stays as it was', () => {
    const diameter = Float64Array.of(7.99, 8, 8.01);
    expect(round({ diameter })).toEqual(round({ diameter: [7.99, 8, 8.01] }));
    expect([...diameter]).toEqual([7.99, 8, 8.01]);
  });

  test('one place read many times is the same section', () => {
    fc.assert(
      fc.property(length, length, fc.integer({ min: 2, max: 6 }), (width, thickness, n) => {
        const one = rectangular({ width, thickness });
        const many = rectangular({ width: Array<number>(n).fill(width), thickness: Array<number>(n).fill(thickness) });
        expect(many.area / one.area).toBeCloseTo(1, 12);
        expect(many.spread).toBe(0);
        expect(many.taper).toBe(0);
      }),
    );
  });
});

describe('identities', () => {
  test('a shape grown k times has k², k⁴ and k³ times the properties', () => {
    fc.assert(
      fc.property(length, fc.double({ min: 0.5, max: 3, noNaN: true }), (size, k) => {
        for (const make of [
          (s: number) => round({ diameter: s }),
          (s: number) => rectangular({ width: s, thickness: s / 3 }),
          (s: number) => square({ side: s }),
          (s: number) => hexagon({ acrossFlats: s }),
          (s: number) => tube({ outerDiameter: s, wallThickness: s / 8 }),
        ]) {
          const [a, b] = [make(size), make(k * size)];
          expect(b.area / a.area / k ** 2).toBeCloseTo(1, 12);
          expect(b.secondMoment! / a.secondMoment! / k ** 4).toBeCloseTo(1, 12);
          expect(b.sectionModulus! / a.sectionModulus! / k ** 3).toBeCloseTo(1, 12);
        }
        const strip = (s: number) => tubeStrip({ width: s / 4, outerDiameter: s, wallThickness: s / 16 }).area;
        expect(strip(k * size) / strip(size) / k ** 2).toBeCloseTo(1, 10);
      }),
    );
  });

  test('a tube whose wall is its radius is a bar; a square is a rectangle; a strip of a wide tube is flat', () => {
    const bar = tube({ outerDiameter: 20, wallThickness: 10 });
    expect(bar.area).toBeCloseTo(round({ diameter: 20 }).area, 10);
    expect(bar.secondMoment).toBeCloseTo(round({ diameter: 20 }).secondMoment!, 9);
    expect(square({ side: 7 }).sectionModulus).toBeCloseTo(rectangular({ width: 7, thickness: 7 }).sectionModulus!, 12);
    expect(tubeStrip({ width: 10, outerDiameter: 1e4, wallThickness: 3 }).area).toBeCloseTo(30, 4);
  });

  test('a strip as wide as the inside is the whole of the wall above it', () => {
    // half the ring, less the two pieces of the wall beyond the inner diameter: outer segment over b, less half the bore
    const [D, a] = [20, 2];
    const b = D - 2 * a;
    const segmentAndBox = (D ** 2 / 4) * Math.asin(b / D) + (b / 4) * Math.sqrt(D ** 2 - b ** 2);
    expect(tubeStrip({ width: b, outerDiameter: D, wallThickness: a }).area).toBeCloseTo(segmentAndBox - (Math.PI * b ** 2) / 8, 10);
  });

  test('what has no second moment says so by its absence', () => {
    for (const section of [sectionFromArea({ area: 50 }), sectionFromMass({ mass: 100, length: 250, density: 7.85 })])
      expect(section).not.toHaveProperty('secondMoment');
    expect(sectionFromArea({ area: [49, 51] }).area).toBe(50);
  });
});

describe('bad input', () => {
  const calls: Readonly<Record<string, (value: never) => unknown>> = {
    diameter: (value) => round({ diameter: value }),
    width: (value) => rectangular({ width: value, thickness: 2 }),
    thickness: (value) => rectangular({ width: 2, thickness: value }),
    side: (value) => square({ side: value }),
    acrossFlats: (value) => hexagon({ acrossFlats: value }),
    outerDiameter: (value) => tube({ outerDiameter: value, wallThickness: 1 }),
    wallThickness: (value) => tubeStrip({ width: 5, outerDiameter: 20, wallThickness: value }),
    area: (value) => sectionFromArea({ area: value }),
    mass: (value) => sectionFromMass({ mass: value, length: 100, density: 7.85 }),
    density: (value) => sectionFromMass({ mass: 20, length: 100, density: value }),
  };
  const values: readonly (readonly [unknown, string, string])[] = [
    [0, 'not-positive', ''],
    [-1, 'not-positive', ''],
    [NaN, 'not-finite', ''],
    [Infinity, 'not-finite', ''],
    [undefined, 'missing', ''],
    [null, 'wrong-type', ''],
    ['8', 'wrong-type', ''],
    [[], 'empty', ''],
    [[8, NaN], 'not-finite', '[1]'],
    [[8, 8, -8], 'not-positive', '[2]'],
    [[undefined], 'missing', '[0]'],
  ];
  test.each(Object.keys(calls))('%s', (name) => {
    for (const [value, code, index] of values) {
      const error = thrown(() => calls[name]!(value as never));
      expect([error.code, error.path]).toEqual([code, name + index]);
    }
  });

  test('walls thicker than the radius, strips wider than the bore', () => {
    expect(thrown(() => tube({ outerDiameter: 20, wallThickness: 10.01 })).code).toBe('out-of-range');
    expect(thrown(() => tube({ outerDiameter: [20, 18], wallThickness: [9.4, 9.4] })).path).toBe('wallThickness');
    expect(thrown(() => tubeStrip({ width: 5, outerDiameter: 20, wallThickness: 10 })).path).toBe('wallThickness');
    expect(thrown(() => tubeStrip({ width: 17, outerDiameter: 20, wallThickness: 2 })).path).toBe('width');
  });

  test('an unknown dimension, or nothing at all', () => {
    const extra = { diameter: 10, radius: 5 };
    expect(thrown(() => round(extra)).code).toBe('unknown-option');
    expect(thrown(() => round(extra)).path).toBe('radius');
    expect(thrown(() => round(undefined as never)).code).toBe('missing');
    expect(thrown(() => round(undefined as never)).message).toBe('round: diameter must be a number, got undefined');
  });
});
