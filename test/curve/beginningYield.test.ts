import { describe, expect, test } from 'vitest';
import { knownCurve } from '../../bench/scenarios.js';
import { slopeDoubt } from '../../src/curve/index.js';
import { analyseTension, fitModulus, required, sectionFromArea } from '../../src/index.js';

/** Ramberg-Osgood without noise, in even steps of stress. */
function rambergOsgood(modulus: number, proof: number, exponent: number) {
  const stress = Float64Array.from({ length: 2000 }, (_, i) => (i * 1.15 * proof) / 2000);
  return { strain: stress.map((R) => R / modulus + 0.002 * (R / proof) ** exponent), stress };
}

describe('yielding within the window', () => {
  test.each([
    [205_000, 500, 8],
    [205_000, 400, 12],
    [70_000, 300, 10],
    [110_000, 250, 6],
  ])('E %d MPa, Rp0.2 %d MPa, N %d: the slope lacks what is told', (modulus, proof, exponent) => {
    const window = { by: 'stress', from: 0.2 * proof, to: 0.55 * proof } as const;
    const line = required(fitModulus(rambergOsgood(modulus, proof, exponent), { window }));
    const lacks = 1 - line.slope / modulus;
    const found = line.beginningYield!;
    // the offsets are read from that flatter line: their plastic strains are off by its lack over the small offset
    const off = (lacks * proof) / modulus / 0.0005;
    expect(Math.abs(found.exponent / exponent - 1)).toBeLessThan(1.5 * off + 0.01);
    expect(Math.abs(found.slopeShare / lacks - 1)).toBeLessThan(exponent * off + 0.05);
  });

  test('a corner and a yield point have none', () => {
    const strain = Float64Array.from({ length: 1000 }, (_, i) => i * 1e-5);
    const corner = strain.map((e) => Math.min(200_000 * e, 300));
    const fallen = strain.map((e) => (e < 0.0016 ? 200_000 * e : 300));
    for (const stress of [corner, fallen])
      expect(required(fitModulus({ strain, stress })).beginningYield?.slopeShare ?? 0).toBeCloseTo(0, 6);
  });

  test.each([0.1, 0.2, 0.3, 0.5])('a corner with Hollomon hardening behind it has none: n %d', (n) => {
    const strain = Float64Array.from({ length: 2000 }, (_, i) => (i < 500 ? i * 2e-6 : 1e-3 + (i - 500) * 5e-6));
    const stress = strain.map((e) => (e < 1e-3 ? 210_000 * e : 210 * (e / 1e-3) ** n));
    const line = required(fitModulus({ strain, stress }));
    expect(line.beginningYield).toBeUndefined();
    expect(line.linearPart?.verdict).toBe('found');
  });

  test('none where the curve ends before the offset', () => {
    const { strain, stress } = rambergOsgood(205_000, 500, 8);
    const part = { strain: strain.subarray(0, 1200), stress: stress.subarray(0, 1200) };
    expect(required(fitModulus(part)).beginningYield).toBeUndefined();
  });
});

describe('the uncertainty of a smooth curve', () => {
  const TESTS = 60;
  const tests = Array.from({ length: TESTS }, (_, k) => {
    const { strain, stress, modulus, proofStrength } = knownCurve('steel', 1000, 500 + k);
    const piece = { section: sectionFromArea({ area: 50 }), gaugeLength: 50 };
    const record = { force: stress.map((R) => 50 * R), extension: strain.map((e) => 50 * e) };
    return { modulus, proofStrength, result: analyseTension(record, piece, { uncertainty: { coverage: 0.95 } }) };
  });

  test('of 60 rounded steels with a toe the 95 % intervals of E and Rp0.2 hold as many as chance leaves in', () => {
    const held = (of: (one: (typeof tests)[number]) => readonly [number, number, number]) =>
      tests.filter((one) => {
        const [value, truth, half] = of(one);
        return Math.abs(value - truth) <= half;
      }).length;
    // of a binomial with 95 %, fewer than 52 of 60 come once in a hundred times
    expect(held(({ result, modulus }) => [result.modulus!.value, modulus, result.uncertainty!['E']!.expandedUncertainty])).toBeGreaterThan(
      51,
    );
    expect(
      held(({ result, proofStrength }) => [
        result.proofStrengths[0]!.value,
        proofStrength,
        result.uncertainty!['Rp0.2']!.expandedUncertainty,
      ]),
    ).toBeGreaterThan(51);
  });

  test('without doubts given, E states the bends beside the scatter of the samples', () => {
    const { strain, stress } = knownCurve('steel', 1000, 500);
    const result = analyseTension(
      { force: stress.map((R) => 50 * R), extension: strain.map((e) => 50 * e) },
      { section: sectionFromArea({ area: 50 }), gaugeLength: 50 },
    );
    const { slope, points, relativeStandardError, residuals, beginningYield, noiseFlattening } = result.modulusWindow!;
    const scatter = slopeDoubt({ criterion: { by: 'lower-bound', z: 4 }, points, standardError: slope * relativeStandardError }, residuals);
    expect(result.modulus!.standardUncertainty! / slope).toBeCloseTo(
      Math.hypot(scatter / slope, 2 * beginningYield!.slopeShare, noiseFlattening?.slopeShare ?? 0),
      12,
    );
  });
});
