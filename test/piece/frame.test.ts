import { describe, expect, test } from 'vitest';
import { effectiveLength, percentBending } from '../../src/piece/index.js';
import { refusal } from '../support/thrown.js';

describe('effectiveLength', () => {
  test('a radius below the step ends in a square shoulder; heads give by their section', () => {
    const sharp = { parallelLength: 48, diameter: 8, headDiameter: 40, filletRadius: 5 };
    // a quarter circle, the same for every wider head
    expect(effectiveLength(sharp)).toBe(effectiveLength({ ...sharp, headDiameter: 18 }));
    expect(effectiveLength({ ...sharp, headLength: 10 }) - effectiveLength(sharp)).toBeCloseTo(20 * (8 / 40) ** 2, 12);
    const flat = { parallelLength: 60, width: 12.5, headWidth: 25, filletRadius: 20 };
    expect(effectiveLength({ ...flat, headLength: 10 }) - effectiveLength(flat)).toBeCloseTo(10, 12);
  });

  test('hardly more than the parallel length with a tiny fillet; a fillet gives less than it is long', () => {
    expect(effectiveLength({ parallelLength: 48, diameter: 8, headDiameter: 12, filletRadius: 1e-6 })).toBeCloseTo(48, 5);
    const added = effectiveLength({ parallelLength: 48, diameter: 8, headDiameter: 12, filletRadius: 5 }) - 48;
    expect(added).toBeLessThan(2 * 4);
  });

  test.each<[string, object]>([
    ['missing piece', undefined as never],
    ['out-of-range headDiameter', { parallelLength: 48, diameter: 8, headDiameter: 8, filletRadius: 5 }],
    ['not-positive filletRadius', { parallelLength: 48, diameter: 8, headDiameter: 12, filletRadius: 0 }],
    ['not-positive parallelLength', { parallelLength: 0, diameter: 8, headDiameter: 12, filletRadius: 5 }],
    ['out-of-range headLength', { parallelLength: 48, diameter: 8, headDiameter: 12, filletRadius: 5, headLength: -1 }],
    ['not-finite width', { parallelLength: 48, width: NaN, headWidth: 12, filletRadius: 5 }],
    ['missing width', { parallelLength: 48, headWidth: 12, filletRadius: 5 }],
    ['unknown-option piece.headWidth', { parallelLength: 48, diameter: 8, headDiameter: 12, headWidth: 12, filletRadius: 5 }],
  ])('refuses: %s', (expected, piece) => {
    expect(refusal(() => effectiveLength(piece as never))).toBe(expected);
  });
});

describe('percentBending', () => {
  test('bending above 10 %, and gauges off a plane, are findings', () => {
    const codes = (strains: number[]) => percentBending({ strains }).findings.map(({ code }) => code);
    expect(codes([0.0011, 0.0009])).toEqual([]);
    expect(codes([0.00111, 0.00089])).toEqual(['bending-large']);
    expect(codes([0.0011, 0.0009, 0.0011, 0.0009])).toEqual(['gauges-disagree']);
    expect(percentBending({ strains: [0.0011, 0.0009, 0.0011, 0.0009] }).unevenness).toBeCloseTo(0.1, 12);
  });

  test('compression has its bending as well', () => {
    expect(percentBending({ strains: [-0.0012, -0.0008] })).toMatchObject({ bending: expect.closeTo(0.2, 12) as number });
  });

  test.each<[string, object]>([
    ['too-few strains', { strains: [0.001] }],
    ['out-of-range strains', { strains: [1, 2, 3, 4, 5] }],
    ['out-of-range strains', { strains: [0.001, -0.001] }],
    ['too-few strains', { strains: [1, 2, 3], section: 'rectangular' }],
    ['out-of-range section', { strains: [1, 2], section: 'tube' }],
    ['not-finite strains[1]', { strains: [1, Infinity] }],
    ['unknown-option gauges.angle', { strains: [1, 2], angle: 0 }],
  ])('refuses: %s', (expected, gauges) => {
    expect(refusal(() => percentBending(gauges as never))).toBe(expected);
  });
});
