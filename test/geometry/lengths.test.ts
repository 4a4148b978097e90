import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  bendingFromEccentricity,
  convertElongation,
  elongationAfterFracture,
  leastParallelLength,
  proportionalGaugeLength,
  proportionalityCoefficient,
  rectangular,
  reductionOfArea,
  round,
  roundedGaugeLength,
  sectionFromArea,
  tubeStrip,
} from '../../src/geometry/index.js';
import { thrown } from '../support/thrown.js';

const positive = fc.double({ min: 0.5, max: 500, noNaN: true });

describe('gauge lengths', () => {
  test('a coefficient that is asked for is kept, however short the length', () => {
    expect(proportionalGaugeLength({ area: 4, coefficient: 5.65 })).toBeCloseTo(11.3, 12);
    // 15 mm is long enough: (15 / 5.65)² mm²
    expect(proportionalGaugeLength({ area: (15.01 / 5.65) ** 2 })).toBeCloseTo(15.01, 12);
    expect(proportionalGaugeLength({ area: (14.99 / 5.65) ** 2 })).toBeCloseTo(29.98, 12);
  });

  test('length and coefficient undo each other', () => {
    fc.assert(
      fc.property(positive, positive, (area, coefficient) => {
        const gaugeLength = proportionalGaugeLength({ area, coefficient });
        expect(proportionalityCoefficient({ gaugeLength, area }) / coefficient).toBeCloseTo(1, 13);
      }),
    );
  });

  test('rounding goes to whole fives and moves a length by less than a tenth', () => {
    fc.assert(
      fc.property(positive, (gaugeLength) => {
        const rounded = roundedGaugeLength({ gaugeLength });
        expect(Math.abs(rounded / gaugeLength - 1)).toBeLessThan(0.1);
        expect(rounded % 5 === 0 || rounded === gaugeLength).toBe(true);
      }),
    );
    expect(roundedGaugeLength({ gaugeLength: 40.057 })).toBe(40);
    expect(roundedGaugeLength({ gaugeLength: 2 })).toBe(2);
  });

  test('parallel length of bars that are not round, and of sections known by their area alone', () => {
    expect(leastParallelLength({ section: rectangular({ width: 10, thickness: 10 }), gaugeLength: 56.5 })).toBeCloseTo(71.5, 12);
    expect(leastParallelLength({ section: sectionFromArea({ area: 100 }), gaugeLength: 56.5, arbitration: true })).toBeCloseTo(76.5, 12);
    const strip = tubeStrip({ width: 12.5, outerDiameter: 60.3, wallThickness: 3.2 });
    expect(leastParallelLength({ section: strip, gaugeLength: 50 })).toBeCloseTo(50 + 1.5 * Math.sqrt(strip.area), 12);
  });
});

describe('elongation and area after fracture', () => {
  test('nothing moved is 0; a broken piece neither shrinks nor thickens', () => {
    expect(elongationAfterFracture({ originalLength: 50, finalLength: 50 })).toBe(0);
    expect(reductionOfArea({ originalArea: 50, finalArea: 50 })).toBe(0);
    expect(thrown(() => elongationAfterFracture({ originalLength: 50, finalLength: 49.9 })).path).toBe('finalLength');
    expect(thrown(() => reductionOfArea({ originalArea: 50, finalArea: 50.1 })).path).toBe('finalArea');
  });

  test('of similar pieces the elongation is the same: there is nothing to convert', () => {
    fc.assert(
      fc.property(positive, positive, fc.constantFrom('carbon' as const, 'austenitic' as const), (fromArea, toArea, material) => {
        const at = (area: number) => 5.65 * Math.sqrt(area);
        const elongation = convertElongation({
          elongation: 0.25,
          fromLength: at(fromArea),
          fromArea,
          toLength: at(toArea),
          toArea,
          material,
        });
        expect(elongation).toBeCloseTo(0.25, 12);
      }),
    );
  });

  test('converted there and back it is what it was', () => {
    const there = { fromLength: 50, fromArea: 60, toLength: 80, toArea: 90, material: 'carbon' } as const;
    const back = { fromLength: 80, fromArea: 90, toLength: 50, toArea: 60, material: 'carbon' } as const;
    const elongation = convertElongation({ elongation: 0.3, ...there });
    expect(elongation).not.toBeCloseTo(0.3, 3);
    expect(convertElongation({ elongation, ...back })).toBeCloseTo(0.3, 12);
  });

  test('a longer gauge has less of the neck in it', () => {
    const on = (toLength: number) =>
      convertElongation({ elongation: 0.25, fromLength: 56.5, fromArea: 100, toLength, toArea: 100, material: 'carbon' });
    expect(on(80)).toBeLessThan(on(60));
    expect(on(200)).toBeLessThan(on(113));
    expect(on(40)).toBeGreaterThan(0.25);
  });

  test('beyond 25 roots of the area the standards do not convert', () => {
    const input = { elongation: 0.2, fromLength: 50, fromArea: 100, toLength: 250, toArea: 100, material: 'carbon' } as const;
    expect(convertElongation(input)).toBeGreaterThan(0);
    const tooLong = thrown(() => convertElongation({ ...input, toLength: 250.1 }));
    expect([tooLong.code, tooLong.path]).toEqual(['out-of-range', 'toLength']);
    expect(thrown(() => convertElongation({ ...input, fromLength: 251 })).path).toBe('fromLength');
    expect(thrown(() => convertElongation({ ...input, material: 'copper' as never })).path).toBe('material');
    expect(thrown(() => convertElongation({ ...input, elongation: -0.1 })).path).toBe('elongation');
  });
});

test('a centred load does not bend', () => {
  expect(bendingFromEccentricity({ eccentricity: 0, diameter: 8 })).toBe(0);
  // M / W over F / S0, with the section's own properties
  const { area, sectionModulus } = round({ diameter: 9 });
  expect(bendingFromEccentricity({ eccentricity: 0.3, diameter: 9 })).toBeCloseTo((0.3 / sectionModulus!) * area, 12);
  expect(thrown(() => bendingFromEccentricity({ eccentricity: -1, diameter: 8 })).path).toBe('eccentricity');
});

describe('bad input', () => {
  const calls: readonly (readonly [string, (value: number) => unknown])[] = [
    ['area', (value) => proportionalGaugeLength({ area: value })],
    ['coefficient', (value) => proportionalGaugeLength({ area: 50, coefficient: value })],
    ['gaugeLength', (value) => proportionalityCoefficient({ gaugeLength: value, area: 50 })],
    ['area', (value) => proportionalityCoefficient({ gaugeLength: 50, area: value })],
    ['gaugeLength', (value) => roundedGaugeLength({ gaugeLength: value })],
    ['gaugeLength', (value) => leastParallelLength({ section: round({ diameter: 8 }), gaugeLength: value })],
    ['originalLength', (value) => elongationAfterFracture({ originalLength: value, finalLength: 60 })],
    ['finalLength', (value) => elongationAfterFracture({ originalLength: 50, finalLength: value })],
    ['originalArea', (value) => reductionOfArea({ originalArea: value, finalArea: 20 })],
    ['finalArea', (value) => reductionOfArea({ originalArea: 50, finalArea: value })],
    ['diameter', (value) => bendingFromEccentricity({ eccentricity: 0.1, diameter: value })],
  ];
  test.each(calls)('%s of nothing, below nothing and not a number', (path, call) => {
    for (const [value, code] of [
      [0, 'not-positive'],
      [-3, 'not-positive'],
      [NaN, 'not-finite'],
    ] as const) {
      const error = thrown(() => call(value));
      expect([error.code, error.path]).toEqual([code, path]);
    }
  });

  test('unknown fields and missing parts', () => {
    const extra = { area: 50, k: 5.65 };
    expect(thrown(() => proportionalGaugeLength(extra)).code).toBe('unknown-option');
    expect(thrown(() => elongationAfterFracture(undefined as never)).code).toBe('missing');
    expect(thrown(() => leastParallelLength({ gaugeLength: 50 } as never)).path).toBe('section');
  });
});
