/** The doubt of the slope moves an offset; what that weighs is by what the stress at it moves. */
import { describe, expect, test } from 'vitest';
import { analyseCurve } from '../../src/index.js';
import { offsetWeight, turnedStrengths } from '../../src/methods/loading/offsetWeight.js';
import { seeded } from '../support/random.js';

const E = 70_000;
/** Ramberg-Osgood, Rp0.2 250 MPa: what is plastic at a stress. */
const plastic = (R: number, exponent: number) => 0.002 * (R / 250) ** exponent;
function curveOf(exponent: number) {
  const stress = Float64Array.from({ length: 3001 }, (_, i) => i / 10);
  return { stress, strain: stress.map((R) => R / E + plastic(R, exponent)) };
}

test.each([
  [5, 0.1],
  [20, 0.1],
  [20, 0.3],
])('an exponent of %d, a slope turned by %d about the middle of its window: the stresses are those of the law', (exponent, doubt) => {
  const curve = curveOf(exponent);
  const [first, last] = [500, 1000];
  const middle = (curve.strain[first]! + curve.strain[last]!) / 2;
  // a line of slope fE through the middle at E times its strain: it meets the law where what is plastic is the offset and what the turn adds
  const byLaw = (factor: number) => {
    let [low, high] = [100, 300];
    for (let k = 0; k < 60; k += 1) {
      const R = (low + high) / 2;
      if (plastic(R, exponent) < 0.002 + ((R - E * middle) * (1 / factor - 1)) / E) low = R;
      else high = R;
    }
    return low;
  };
  const found = turnedStrengths(curve, { slope: E, first, last }, { stress: 250, offset: 0.002, highest: 3000, doubt });
  // between samples of 0.1 MPa the curve is as good as straight
  expect(found[0]).toBeCloseTo(byLaw(1 + doubt), 2);
  expect(found[1]).toBeCloseTo(byLaw(1 - doubt), 2);
});

test('a slope that is in doubt by all of itself leaves the stress open between the window and the maximum', () => {
  const curve = curveOf(20);
  const found = turnedStrengths(curve, { slope: E, first: 500, last: 1000 }, { stress: 250, offset: 0.002, highest: 3000, doubt: 1.2 });
  expect(found[1]).toBe(300);
  expect(found[0]).toBeGreaterThanOrEqual(100);
});

test.each([
  [0.5, [284.9, 285.1], 'note'],
  [0.1, [280, 290], 'caution'],
  [0.5, [280, 290], 'fault'],
] as const)('an offset moved by %d of itself, with stresses of %j: %s', (share, stresses, weight) => {
  expect(offsetWeight(share, stresses)).toBe(weight);
});

describe('the same doubt of the same slope', () => {
  /** Up to 300 MPa, on along a line that rises by so much over 1 % of strain; the strain in noise. */
  const pulled = (rise: number) => {
    const { normal } = seeded(3);
    const bend = 300 / 200_000;
    const exact = Array.from({ length: 1600 }, (_, i) => (i < 150 ? (i * bend) / 150 : bend + ((i - 150) * 0.02) / 1450));
    const stress = exact.map((e) => (e <= bend ? 200_000 * e : 300 + rise * ((e - bend) / 0.01)));
    return analyseCurve({ strain: exact.map((e) => e + 3e-5 * normal()), stress }, { offsets: [0.001, 0.002] });
  };
  const weights = (rise: number) =>
    pulled(rise)
      .findings.filter(({ code }) => code === 'offset-leverage')
      .map(({ severity, values }) => [values['symbol'], severity]);

  test('is a note where the stress hardly moves, more where it does, at each offset alike', () => {
    const [level, steep] = [weights(2), weights(400)];
    expect(level.length).toBeGreaterThan(0);
    expect(level.map(([, severity]) => severity)).toEqual(level.map(() => 'note'));
    expect(steep.length).toBeGreaterThan(0);
    for (const [, severity] of steep) expect(severity).not.toBe('note');
  });
});
