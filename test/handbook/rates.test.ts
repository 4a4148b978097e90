import { describe, expect, test } from 'vitest';
import { convert, crossheadSpeed, leastSamplingRate, rateOfStress, round, strainRateOfSpeed, testingRates } from '../../src/index.js';
import { expectPrinted } from '../support/handbook.js';
import { refusal } from '../support/thrown.js';
import { checkVectors } from '../support/vectors.js';

checkVectors('rates', 'crossheadSpeed', 'strainRateOfSpeed', 'rateOfStress', 'leastSamplingRate');

const { area } = round({ diameter: 8 });
const frame = { length: 48, area, slope: 210_000, compliance: 2e-5 };

// ISO 6892-1, method A: rates from memory; their speeds over 48 mm are vectors
test.each([1, 2, 3, 4])('strain rate range %i is within a fifth', (number) => {
  const { strainRate, limits, range } = testingRates.strainRanges[number - 1]!;
  expect(range).toBe(number);
  expect(limits[0]).toBeCloseTo(0.8 * strainRate, 12);
  expect(limits[1]).toBeCloseTo(1.2 * strainRate, 12);
});

// ISO 6892-1, method A: which range serves which property, and which is recommended (from memory)
test.each([
  ['ReH', [1, 2]],
  ['Rp', [1, 2]],
  ['Rt', [1, 2]],
  ['ReL', [2, 3]],
  ['Ae', [2, 3]],
  ['Rm', [2, 3, 4]],
  ['A', [2, 3, 4]],
  ['Ag', [2, 3, 4]],
  ['Agt', [2, 3, 4]],
  ['Z', [2, 3, 4]],
])('%s is determined in the ranges %j', (property, ranges) => {
  const { strainRanges, recommendedRanges } = testingRates;
  expect(strainRanges.filter(({ determines }) => determines.includes(property)).map(({ range }) => range)).toEqual(ranges);
  expect(new Set(strainRanges.flatMap(({ determines }) => determines)).size).toBe(10);
  expect(recommendedRanges).toEqual({ proof: 2, lowerYield: 2, strength: 4 });
});

// ISO 6892-1, method B: 6 to 60 MPa/s, 2 to 20 below 150 GPa (from memory)
test('method B', () => {
  const { stiff, soft, stiffFrom, upToProof, afterYield, lowerYield } = testingRates.methodB;
  expect(stiff).toEqual([6, 60]);
  expect([soft, stiffFrom, lowerYield, upToProof, afterYield]).toEqual([[2, 20], 150_000, [0.00025, 0.0025], 0.0025, 0.008]);
});

// ASTM E9: 0.005 a minute; ISO 178 and ASTM D790 procedure A: 0.01 a minute; ISO 7438: 1 ± 0.2 mm/s in dispute (from memory)
test('compression and bending: the middle of the limits is the rate of the standard', () => {
  const middle = ([low, high]: readonly [number, number]) => (low + high) / 2;
  expectPrinted(60 * middle(testingRates.e9.strainRate), '0.005');
  expectPrinted(60 * middle(testingRates.bending.outerFibre), '0.010');
  expectPrinted(middle(testingRates.bending.bendSpeed), '1.0');
  expect(testingRates.bending.bendSpeed).toEqual([0.8, 1.2]);
  // a bar of 80 × 10 × 4 mm on a span of 64 mm: 2 mm a minute, to a whole one (ISO 178)
  const length = 64 ** 2 / (6 * 4);
  expectPrinted(60 * middle(testingRates.bending.outerFibre) * length, '2');
});

// ASTM E8: 10 000 to 100 000 psi/min, 0.015 ± 0.006 and ± 0.003 per minute, 0.05 to 0.5 per minute (from memory)
test('E8: 10 000 psi a minute is 1.15 MPa/s; 0.015 a minute is 0.00025 per second', () => {
  const { stressRate, strainRate, crosshead, strength } = testingRates.e8;
  const perMinute = (psi: number) => convert(psi, 'psi', 'MPa') / 60;
  expectPrinted(perMinute(10_000), '1.1491');
  expectPrinted(stressRate[0], '1.15');
  expectPrinted(perMinute(10_000), String(stressRate[0]), 2);
  expectPrinted(perMinute(100_000), String(stressRate[1]), 2);
  for (const [low, high] of [strainRate, crosshead]) expectPrinted((low + high) / 2, '0.00025');
  expect(strainRate.map((one) => 60 * one)).toEqual([expect.closeTo(0.009, 12), expect.closeTo(0.021, 12)]);
  expect(crosshead.map((one) => 60 * one)).toEqual([expect.closeTo(0.012, 12), expect.closeTo(0.018, 12)]);
  expect(strength.map((one) => 60 * one)).toEqual([expect.closeTo(0.05, 12), expect.closeTo(0.5, 12)]);
});

describe('a frame of 20 µm/kN', () => {
  test('second derivation: springs in series share the motion as their compliances', () => {
    const piece = 48 / (210_000 * area);
    const share = piece / (piece + 2e-5);
    expect(strainRateOfSpeed({ ...frame, speed: 0.05 })).toBeCloseTo((share * 0.05) / 48, 15);
    expect(strainRateOfSpeed({ ...frame, slope: 0, speed: 0.0647788 })).toBeCloseTo(0.0647788 / 48, 15);
    expect(strainRateOfSpeed({ ...frame, speed: crossheadSpeed({ ...frame, strainRate: 0.002 }) })).toBeCloseTo(0.002, 15);
  });

  test('refusals', () => {
    expect(refusal(() => crossheadSpeed({ length: 48, strainRate: 0 }))).toBe('not-positive strainRate');
    expect(refusal(() => crossheadSpeed({ length: 48, strainRate: 1, slope: 1, compliance: 1 }))).toBe('missing area');
    expect(refusal(() => crossheadSpeed({ ...frame, strainRate: 1, compliance: -1 }))).toBe('out-of-range compliance');
    expect(refusal(() => strainRateOfSpeed({ ...frame, speed: NaN }))).toBe('not-finite speed');
    expect(refusal(() => strainRateOfSpeed({ ...frame, speed: 1, size: 2 } as never))).toBe('unknown-option input.size');
    expect(refusal(() => rateOfStress({ stressRate: 6, area: 0, modulus: 1 }))).toBe('not-positive area');
  });
});

// ISO 6892-1, Annex A (from memory): 100 e E / (ReH q) with q in per cent
test('least sampling rate: half the error, twice the rate', () => {
  expect(leastSamplingRate({ stressRate: 30, stress: 250, error: 0.005 })).toBeCloseTo(24, 12);
  expect(refusal(() => leastSamplingRate({ stressRate: 30, stress: 250, error: 0 }))).toBe('not-positive error');
});
