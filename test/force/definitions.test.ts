import { describe, expect, test } from 'vitest';
import { gradeTerms } from '../../src/force/gradeTerms.js';
import { cylinderFriction, idleStroke, verifyForce } from '../../src/force/index.js';

describe('verifyForce by the definitions of q, b, v, for either force that is set', () => {
  const [a, b, c] = [1010, 1002, 1000];
  const mean = (a + b + c) / 3;
  const falling = [1001, 1008];
  const at = (held: 'true' | 'indicated') =>
    verifyForce({ steps: [{ force: 1000, rising: [a, b, c], falling }], range: 1000, resolution: 1, zeros: [1, -2, 2], held }).steps[0]!;

  test('true force held, the indicated one read', () => {
    const { indicationError, repeatability, reversibility, friction, zeroError } = at('true');
    expect(indicationError).toBeCloseTo((mean - 1000) / 1000, 12);
    expect(repeatability).toBeCloseTo((a - c) / 1000, 12);
    // the largest of 1001 − 1010 and 1008 − 1002, and half their mean with the sign turned
    expect(reversibility).toBeCloseTo(-9 / 1000, 12);
    expect(friction).toBeCloseTo(3 / 2 / 2, 12);
    expect(zeroError).toBeCloseTo(-2 / 1000, 12);
  });

  test('indicated force held, the true one read', () => {
    const { indicationError, repeatability, reversibility, friction } = at('indicated');
    expect(indicationError).toBeCloseTo((1000 - mean) / mean, 12);
    expect(repeatability).toBeCloseTo((a - c) / mean, 12);
    expect(reversibility).toBeCloseTo(9 / mean, 12);
    expect(friction).toBeCloseTo(-3 / 2 / 2, 12);
  });
});

describe('cylinderFriction by the balance of forces', () => {
  const area = Math.PI * 20 ** 2;

  test('equal pressures: half the difference of the forces, about their mean', () => {
    const found = cylinderFriction(
      { pressure: [5, 10, 15], risingForce: [6100, 12_300, 18_500], fallingForce: [6300, 12_700, 19_100] },
      { bore: 40 },
    );
    expect([...found.friction]).toEqual([100, 200, 300]);
    [6100, 12_300, 18_500].forEach((force, i) => {
      expect(found.efficiency[i]).toBeCloseTo(force / (5 * (i + 1) * area), 12);
      expect(found.hysteresis[i]).toBeCloseTo((2 * found.friction[i]!) / (force + found.friction[i]!), 12);
    });
    // friction over the means 6200, 12 500, 18 800: a straight line
    expect(found.proportionalPart).toBeCloseTo(100 / 6300, 12);
    expect(found.constantPart).toBeCloseTo(100 - (100 / 6300) * 6200, 9);
    expect(found.findings).toEqual([]);
  });

  test('equal forces: half the difference of the pressures on the area; two pairs make no line', () => {
    const found = cylinderFriction({ force: [6000, 12_000], risingPressure: [5, 10], fallingPressure: [4, 9] }, { bore: 40 });
    expect(found.friction[0]).toBeCloseTo(area / 2, 9);
    expect(found.efficiency[1]).toBeCloseTo(12_000 / (10 * area), 12);
    expect(found.hysteresis[1]).toBeCloseTo(area / 12_000, 12);
    expect('constantPart' in found).toBe(false);
    expect('proportionalPart' in found).toBe(false);
  });
});

describe('gradeTerms: the worst term decides, among equals the one nearest to its limit', () => {
  const limits = [1, 2];
  test.each([
    [0.4, -0.9, 0, 'b'],
    [0.9, 0.4, 0, 'a'],
    // class by class: 1.5 is within the second limit only, however near the other is to its first
    [1.5, 0.99, 1, 'a'],
    [0.99, 1.5, 1, 'b'],
    // beyond the last limit: by shares of that
    [5, 3, 2, 'a'],
    [3, -5, 2, 'b'],
    [0.5, 0.5, 0, 'a'],
    [1, 0, 0, 'a'],
    [1 + 2e-9, 0, 1, 'a'],
  ] as const)('%d and %d: grade %d by %s', (a, b, grade, limitedBy) => {
    expect(
      gradeTerms([
        { name: 'a', value: a, limits },
        { name: 'b', value: b, limits },
      ]),
    ).toEqual({ grade, limitedBy });
  });
});

test('idleStroke: the median, the spread without the outermost twentieth on either side, the change from before', () => {
  const area = Math.PI * 20 ** 2;
  // forty readings, 36 of them from 1.02 to 1.37, two far off on either side
  const inner = Array.from({ length: 36 }, (_, i) => 1.02 + 0.01 * i);
  const pressure = [9, 0.01, ...inner.reverse(), 8, 0.02];
  const { force, spread, findings, pressure: middle } = idleStroke({ pressure, bore: 40, before: (area * 1.195) / 1.5 });
  expect(middle).toBeCloseTo(1.195, 12);
  expect(force).toBeCloseTo(area * 1.195, 9);
  expect(spread).toBeCloseTo(area * 0.35, 9);
  expect(findings.map(({ code }) => code)).toEqual(['idle-friction-changed']);
  expect(findings[0]!.values).toEqual({ force, before: (area * 1.195) / 1.5, share: expect.closeTo(50, 9) as number });
  expect(idleStroke({ pressure, bore: 40, before: (area * 1.195) / 1.24 }).findings).toEqual([]);
  expect(idleStroke({ pressure, bore: 40 }).findings).toEqual([]);
});
