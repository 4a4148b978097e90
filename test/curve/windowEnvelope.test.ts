import { describe, expect, test } from 'vitest';
import { windowEnvelope, type EnvelopeBounds } from '../../src/curve/modulus/windowEnvelope.js';
import { lineFit } from '../../src/numeric/index.js';
import { seeded } from '../support/random.js';

/** Everything counts, up to an offset stress far above the curve. */
const open: EnvelopeBounds = { startShare: 0, spanShare: 0, offsetStress: 1e6, offsetSample: 1e6, proofOf: () => undefined };
const straight = (n: number) => {
  const strain = Float64Array.from({ length: n }, (_, i) => i / 1000);
  return { strain, stress: strain.map((e) => 1000 * e) };
};
const own = { slope: 1000, strainShift: 0 };
const all = (n: number) => ({ ...open, offsetSample: n });

describe('how many windows', () => {
  test('of up to 24 samples every window of eight or more, of more those between 24 equal steps', () => {
    // 12 samples: 5 + 4 + 3 + 2 + 1 windows of 8 to 12
    expect(windowEnvelope(straight(12), own, all(12))!.windows).toBe(15);
    // 48 samples, steps of two: windows of 4 to 24 steps
    expect(windowEnvelope(straight(48), own, all(48))!.windows).toBe((21 * 22) / 2);
    expect(windowEnvelope(straight(7), own, all(7))).toBeUndefined();
    expect(windowEnvelope(straight(8), own, all(8))!.windows).toBe(1);
  });

  test('a window of one strain is none', () => {
    const { strain, stress } = straight(20);
    const still = strain.map((e, i) => (i >= 4 && i < 16 ? strain[10]! : e));
    // 13 + 12 + ... + 1 windows of 20 samples, less 15 within the twelve that stand still
    expect(windowEnvelope({ strain: still, stress }, own, all(20))!.windows).toBe((13 * 14) / 2 - 15);
  });

  test('a window rises by the least span, as a share of the offset stress', () => {
    // 20 samples a MPa apart, of stresses up to 19: a rise of 10 of 100 MPa needs eleven samples
    const rising = { strain: straight(20).strain, stress: Float64Array.from({ length: 20 }, (_, i) => i) };
    const of = (spanShare: number) => windowEnvelope(rising, own, { ...all(20), offsetStress: 100, spanShare })!.windows;
    expect(of(0.0999)).toBe((10 * 11) / 2);
    expect(of(0.1001)).toBe((9 * 10) / 2);
  });
});

describe('what they find', () => {
  const { normal } = seeded(4);
  const strain = Float64Array.from({ length: 40 }, (_, i) => 1e-4 * i);
  const stress = strain.map((e) => 200_000 * e - 2e7 * e * e + normal());
  // limits exactly hit: 0.3 and 0.3 + 0.25 + 0.1 of 400 MPa
  stress[7] = 120;
  stress[15] = 260;

  test('slopes and proof strengths lie between the least and the most of all windows, found one by one', () => {
    const lines: { slope: number; shift: number }[] = [];
    for (let first = 7; first <= 15; first += 1)
      for (let last = first + 7; last <= 15; last += 1) {
        const { slope, intercept } = lineFit(strain, stress, first, last)!;
        if (slope * (strain[last]! - strain[first]!) >= 100) lines.push({ slope, shift: -intercept / slope });
      }
    const slopes = lines.map(({ slope }) => slope);
    const chosen = lines[0]!;
    // just above the windows, where not the steepest line lies highest, at the last sample, and beyond it
    for (const offsetSample of [16, 39, 40]) {
      const at = strain[Math.min(offsetSample, 39)]!;
      const proofOf = (slope: number, shift: number): number => slope * (at - shift);
      const proofs = lines.map(({ slope, shift }) => proofOf(slope, shift));
      const bounds = { startShare: 0.3, spanShare: 0.25, offsetStress: 400, proofOf };
      const found = windowEnvelope({ strain, stress }, { slope: chosen.slope, strainShift: chosen.shift }, { ...bounds, offsetSample })!;
      expect(found.windows).toBe(lines.length);
      expect(found.slope[0]).toBeCloseTo(Math.min(...slopes), 4);
      expect(found.slope[1]).toBeCloseTo(Math.max(...slopes), 4);
      expect(found.proofStrength![0]).toBeCloseTo(Math.min(...proofs), 7);
      expect(found.proofStrength![1]).toBeCloseTo(Math.max(...proofs), 7);
    }
  });

  test('the lowest and the highest proof strength need not be of the flattest and the steepest line', () => {
    let apart = 0;
    for (let seed = 1; seed <= 20; seed += 1) {
      const random = seeded(seed);
      const x = Float64Array.from({ length: 24 }, (_, i) => 1 + i / 1000);
      const y = x.map((e) => 100 + 1000 * (e - 1) + 4 * random.normal());
      const proofOf = (slope: number, shift: number): number => slope * (x[23]! - shift);
      const lines: { slope: number; proof: number }[] = [];
      for (let first = 0; first < 24; first += 1)
        for (let last = first + 7; last < 24; last += 1) {
          const { slope, intercept } = lineFit(x, y, first, last)!;
          if (slope > 0) lines.push({ slope, proof: proofOf(slope, -intercept / slope) });
        }
      lines.sort((a, b) => a.slope - b.slope);
      const proofs = lines.map(({ proof }) => proof);
      const [least, most] = [Math.min(...proofs), Math.max(...proofs)];
      if (least < Math.min(proofs[0]!, proofs.at(-1)!) && most > Math.max(proofs[0]!, proofs.at(-1)!)) apart += 1;
      const middle = lines[lines.length >> 1]!;
      const chosen = { slope: middle.slope, strainShift: x[23]! - middle.proof / middle.slope };
      const found = windowEnvelope({ strain: x, stress: y }, chosen, { ...all(24), spanShare: 1e-12, proofOf })!;
      expect(found.proofStrength![0]).toBeCloseTo(least, 6);
      expect(found.proofStrength![1]).toBeCloseTo(most, 6);
    }
    expect(apart).toBeGreaterThan(5);
  });

  test('the window ends at half of the offset stress where the bounds leave room for that', () => {
    // 200 of 400 MPa, from 0: samples 0 to 11 by 200 000 e - 2e7 e²
    const clean = strain.map((e) => 200_000 * e - 2e7 * e * e);
    const within = [...clean].filter((R) => R <= 200).length;
    const windows = (n: number): number => ((n - 7) * (n - 6)) / 2;
    const found = windowEnvelope({ strain, stress: clean }, own, { ...open, offsetStress: 400, offsetSample: 39 });
    expect(found!.windows).toBe(windows(within));
  });
});

describe('the verdict', () => {
  const curve = straight(30);
  const verdict = (slope: number, proofOf: EnvelopeBounds['proofOf'] = () => undefined) =>
    windowEnvelope(curve, { slope, strainShift: 0 }, { ...all(30), proofOf })!;

  test('slopes within 5 per cent agree', () => {
    expect(verdict(1049)).toMatchObject({ verdict: 'robust' });
    expect(verdict(1051)).toMatchObject({ verdict: 'fragile' });
    expect(verdict(1000 / 1.049)).toMatchObject({ verdict: 'robust' });
    expect(verdict(1000 / 1.051)).toMatchObject({ verdict: 'fragile' });
    expect(verdict(1000)).not.toHaveProperty('proofStrength');
  });

  test('and proof strengths within 1 per cent', () => {
    const proofs = (most: number) => verdict(1020, (slope) => (slope > 1010 ? most : 100));
    // the ranges are those of the others, the verdict is of both
    expect(proofs(100.9)).toMatchObject({ verdict: 'robust', proofStrength: [100, 100] });
    expect(proofs(101.1)).toMatchObject({ verdict: 'fragile', proofStrength: [100, 100] });
    // what one line does not reach leaves those of the others
    expect(verdict(1020, (slope) => (slope > 1010 ? undefined : 100))).toMatchObject({ verdict: 'robust', proofStrength: [100, 100] });
  });
});
