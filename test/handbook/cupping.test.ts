import { describe, expect, test } from 'vitest';
import { analyseCupping } from '../../src/index.js';

/**
 * No worked example in print was found: a record is built from straight pieces whose contact, crack and frame are known by construction. The ball
 * touches at 2 mm of its own way; force rises 900 N a millimetre to the crack at 10 mm of depth, then falls to half within 0.02 mm.
 */
const COMPLIANCE = 3e-5;
const ways = Array.from({ length: 2001 }, (_, i) => 0.0065 * i);
const force = ways.map((w) => (w < 2 ? 0 : w <= 12 ? 900 * (w - 2) : 9000 * Math.max(0.5, 1 - (w - 12) / 0.04)));
const travel = ways.map((w, i) => w + COMPLIANCE * force[i]!);

describe('depth of the cup by construction', () => {
  test('10 mm from contact to crack, the frame taken out; one sample is 0.0065 mm', () => {
    const result = analyseCupping({ force, travel }, { thickness: 1, width: 90 }, { frameCompliance: COMPLIANCE });
    expect(Math.abs(result.cuppingIndex!.value - 10)).toBeLessThanOrEqual(0.0066);
    expect(result.blanks[0]!.contact).toBeCloseTo(2, 9);
  });

  test('with the frame left in, the depth is larger by what the frame gives: C_f F = 0.27 mm', () => {
    const result = analyseCupping({ force, travel }, { thickness: 1, width: 90 });
    expect(Math.abs(result.cuppingIndex!.value - (10 + COMPLIANCE * 9000))).toBeLessThanOrEqual(0.0066);
  });

  test('three blanks: their mean, and its standard uncertainty by scatter', () => {
    const shifted = (by: number) => ({ force, travel: ways.map((w, i) => (w < 2 ? w : 2 + (w - 2) * by) + COMPLIANCE * force[i]!) });
    const result = analyseCupping([shifted(0.98), shifted(1), shifted(1.02)], { thickness: 1, width: 90 }, { frameCompliance: COMPLIANCE });
    const depths = result.blanks.map(({ depth }) => depth!.value);
    expect(depths.map((one) => Number(one.toFixed(1)))).toEqual([9.8, 10, 10.2]);
    expect(result.cuppingIndex!.value).toBeCloseTo((depths[0]! + depths[1]! + depths[2]!) / 3, 12);
    expect(result.cuppingIndex!.standardUncertainty).toBeCloseTo(0.2 / Math.sqrt(3), 3);
  });
});
