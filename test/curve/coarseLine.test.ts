import { expect, test } from 'vitest';
import { coarseLine, type CoarseLine } from '../../src/curve/modulus/coarseLine.js';
import { sustainedCrossing } from '../../src/curve/sustainedCrossing.js';
import { lineFit, maximumIndex } from '../../src/numeric/index.js';
import { seeded } from '../support/random.js';

/** The rule, window by window: the steepest line between two of 40 levels of stress, from the eighth on and five apart, before its offset line is met. */
function byEveryWindow(strain: Float64Array, stress: Float64Array, maximum: number): CoarseLine | undefined {
  let end = maximum + 1;
  let line: CoarseLine | undefined;
  for (const top of [() => stress[maximum]!, () => stress[maximumIndex(stress, 0, end)]!]) {
    const reaches = Array.from({ length: 41 }, (_, level) => {
      const i = stress.findIndex((R) => R >= (level * top()) / 40);
      return i < 0 || i > end ? end : i;
    });
    const edges = [...reaches, end];
    let best: { slope: number; origin: number; last: number } | undefined;
    for (let p = 8; p <= 40; p += 1)
      for (let q = p + 5; q <= 41; q += 1) {
        const [first, last] = [edges[p]!, edges[q]! - 1];
        const fit = last - first < 2 ? undefined : lineFit(strain, stress, first, last);
        if (fit && (!best || fit.slope > best.slope)) best = { slope: fit.slope, origin: -fit.intercept / fit.slope, last };
      }
    if (!best || best.slope <= 0) return line;
    const crossing = sustainedCrossing(strain, stress, best.slope, best.origin + 0.002, best.last, maximum + 1);
    end = crossing < 0 ? maximum + 1 : crossing;
    line = { slope: best.slope, origin: best.origin, end, offsetStress: stress[Math.min(end, maximum)]! };
  }
  return line;
}

/** A toe, a line of 70 GPa, a knee at 250 MPa, and noise; strain from anywhere. */
function curve(n: number, noise: number, seed: number, exponent = 20) {
  const { normal } = seeded(seed);
  const clean = Float64Array.from({ length: n }, (_, i) => (300 * i) / (n - 1));
  return {
    strain: clean.map((R) => 0.01 + R / 70_000 + 0.002 * (R / 250) ** exponent + 5e-4 * (1 - Math.exp(-R / 15))),
    stress: clean.map((R) => R + noise * normal()),
  };
}

test.each([
  [60, 0, 20],
  [60, 1, 20],
  [400, 0.5, 20],
  [400, 3, 8],
  [900, 1, 5],
  [900, 1, 200],
])('of %d samples with noise of %d MPa, exponent %d: the steepest of all windows between levels', (n, noise, exponent) => {
  for (let seed = 1; seed <= 3; seed += 1) {
    const { strain, stress } = curve(n, noise, seed, exponent);
    const maximum = maximumIndex(stress);
    const [found, expected] = [coarseLine(strain, stress, maximum)!, byEveryWindow(strain, stress, maximum)!];
    expect(found.end).toBe(expected.end);
    expect(found.offsetStress).toBe(expected.offsetStress);
    expect(found.slope / expected.slope).toBeCloseTo(1, 9);
    expect(found.origin).toBeCloseTo(expected.origin, 9);
  }
});

test('of a long record every third sample says the same', () => {
  const { strain, stress } = curve(14_000, 0, 1);
  const every = { strain: strain.filter((_, i) => i % 3 === 0), stress: stress.filter((_, i) => i % 3 === 0) };
  const [long, third] = [coarseLine(strain, stress, 13_999)!, coarseLine(every.strain, every.stress, every.stress.length - 1)!];
  expect(long.slope / third.slope).toBeCloseTo(1, 3);
  expect(long.origin).toBeCloseTo(third.origin, 5);
  expect(long.offsetStress / third.offsetStress).toBeCloseTo(1, 3);
  expect(Math.abs(long.end / 3 - third.end)).toBeLessThan(4);
});

test('what lies beyond the maximum does not count, and without a rise there is no line', () => {
  const { strain, stress } = curve(300, 0.5, 2);
  const maximum = maximumIndex(stress);
  const longer = { strain: Float64Array.of(...strain, 0.9, 0.91), stress: Float64Array.of(...stress, 5, 4) };
  expect(coarseLine(longer.strain, longer.stress, maximum)).toEqual(coarseLine(strain, stress, maximum));
  expect(coarseLine(Float64Array.of(0, 1, 2, 3), Float64Array.of(4, 3, 2, 1), 0)).toBeUndefined();
  // a straight record reaches no offset line
  const line = Float64Array.from({ length: 50 }, (_, i) => i / 1000);
  expect(
    coarseLine(
      line,
      line.map((e) => 100 * e),
      49,
    ),
  ).toMatchObject({ end: 50, offsetStress: expect.closeTo(4.9, 12) as number });
});

test('what the first offset line was held against is not asked again, whatever lies there: spikes, strain that goes back, an end below the top', () => {
  let met = 0;
  for (let seed = 1; seed <= 60; seed += 1) {
    const { strain, stress } = curve(300, [0.2, 2][seed % 2]!, seed, [5, 20, 60][seed % 3]);
    const { uniform } = seeded(1000 + seed);
    for (let k = 0; k < 6; k += 1) {
      const i = Math.floor(300 * uniform());
      // one to four samples in a row, of stress or of strain
      const column = uniform() < 0.5 ? stress : strain;
      const by = (column === stress ? 200 : 0.002) * (uniform() - 0.5);
      for (let j = i; j < Math.min(300, i + 1 + Math.floor(4 * uniform())); j += 1) column[j]! += by;
    }
    for (const maximum of [maximumIndex(stress), 299, 250]) {
      const [found, expected] = [coarseLine(strain, stress, maximum), byEveryWindow(strain, stress, maximum)];
      if (!found || !expected) continue;
      expect(found.end).toBe(expected.end);
      expect(found.slope / expected.slope).toBeCloseTo(1, 9);
      if (found.end <= maximum) met += 1;
    }
  }
  expect(met).toBeGreaterThan(60);
});
