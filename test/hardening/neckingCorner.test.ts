import { describe, expect, it } from 'vitest';
import { neckingCorner } from '../../src/hardening/necking/neckingCorner.js';
import { seeded } from '../support/random.js';

const x = Float64Array.from({ length: 150 }, (_, i) => 0.1 + (0.1 * i) / 149);
const corner = (at: number) => x.map((one) => 400 * (1 - (one < at ? 3 : 12) * (one - at) ** 2));

describe('neckingCorner', () => {
  it('finds a corner without noise where it is', () => {
    const found = neckingCorner(x, corner(0.143))!;
    expect(Math.abs(found.strain - 0.143)).toBeLessThan(1e-5);
    expect(found.force / 400).toBeCloseTo(1, 8);
    expect(found.standardUncertainty).toBeLessThan(1e-5);
  });

  it('states the scatter of its place, and the interval holds it', () => {
    const { normal } = seeded(21);
    const errors: number[] = [];
    let held = 0;
    let stated = 0;
    const clean = corner(0.143);
    for (let k = 0; k < 300; k += 1) {
      const found = neckingCorner(
        x,
        clean.map((one) => one + 0.2 * normal()),
      )!;
      const error = found.strain - 0.143;
      errors.push(error);
      stated += found.standardUncertainty ** 2 / 300;
      if (Math.abs(error) <= 1.96 * found.standardUncertainty) held += 1;
    }
    const square = errors.reduce((sum, one) => sum + one * one, 0) / 300;
    // deviations of 300 are known to 4 %, shares of 95 % to 1.3 points
    expect(Math.sqrt(stated / square)).toBeGreaterThan(0.88);
    expect(Math.sqrt(stated / square)).toBeLessThan(1.12);
    expect(held / 300).toBeGreaterThan(0.91);
  });

  it('keeps its uncertainty within the region however much noise there is', () => {
    const { normal } = seeded(8);
    const clean = corner(0.15);
    for (let k = 0; k < 100; k += 1) {
      const found = neckingCorner(
        x,
        clean.map((one) => one + 20 * normal()),
      );
      if (!found) continue;
      expect(found.standardUncertainty).toBeGreaterThan(0);
      // half of the width at most: all belief at both ends
      expect(found.standardUncertainty).toBeLessThan(0.05);
      expect(found.strain).toBeGreaterThan(0.1);
      expect(found.strain).toBeLessThan(0.2);
    }
  });

  it('is none where a side does not fall, the samples are too few, or have one strain', () => {
    expect(neckingCorner(x, x)).toBeUndefined();
    expect(neckingCorner(x.slice(0, 6), corner(0.102).slice(0, 6))).toBeUndefined();
    expect(neckingCorner(new Float64Array(20).fill(0.1), corner(0.15).slice(0, 20))).toBeUndefined();
  });
});
