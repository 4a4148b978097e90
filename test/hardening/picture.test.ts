import { describe, expect, test } from 'vitest';
import { hardeningPicture, swift } from '../../src/index.js';
import { polynomialFit, slidingSlope } from '../../src/numeric/index.js';
import { seeded } from '../support/random.js';
import { thrown } from '../support/thrown.js';

test.each([2, 7, 60])('half-width %d: value and slope are those of a parabola by the general library', (half) => {
  const { normal } = seeded(half);
  const y = Float64Array.from({ length: 700 }, (_, i) => 300 + 0.2 * i - 1e-4 * i * i + normal());
  const { value, slope } = slidingSlope(y, half);
  const k = Float64Array.from({ length: 2 * half + 1 }, (_, i) => i - half);
  for (const i of [half, half + 1, 255, 256, 257, 400, 699 - half]) {
    const fit = polynomialFit(k, y.subarray(i - half, i + half + 1), 2);
    expect(value[i]).toBeCloseTo(fit.coefficients[0]!, 9);
    expect(slope[i]).toBeCloseTo(fit.coefficients[1]!, 9);
  }
  expect(value[half - 1]).toBeNaN();
  expect(slope[700 - half]).toBeNaN();
});

test('a million samples keep 1e-10', () => {
  const n = 1_000_000;
  const half = 250;
  const y = Float64Array.from({ length: n }, (_, i) => 500 * Math.sin(i / 90_000) + 1000);
  const { slope } = slidingSlope(y, half);
  for (let i = half; i < n - half; i += 99_991) {
    let [s1, a2] = [0, 0];
    for (let k = -half; k <= half; k += 1) {
      s1 += k * (y[i + k]! - y[i]!);
      a2 += k * k;
    }
    expect(Math.abs(slope[i]! - s1 / a2)).toBeLessThan(1e-10 * (500 / 90_000));
  }
});

describe('hardeningPicture', () => {
  const law = swift({ strengthCoefficient: 640, prestrain: 0.01, exponent: 0.21 });
  const strain = Float64Array.from({ length: 2000 }, (_, i) => 0.005 + 1e-4 * i);
  const curve = { strain, stress: strain.map(law.stress) };

  test('rate and exponent of a law come back', () => {
    const { strain: e, stress, rate, exponent, first } = hardeningPicture(curve, { halfWidth: 4 });
    expect(first).toBe(4);
    expect(e.length).toBe(2000 - 8);
    // the cubic part that a parabola misses falls with the square of its width over the strain
    for (const i of [300, 700, 1500]) {
      expect(rate[i]! / law.rate(e[i]!)).toBeCloseTo(1, 4);
      expect(exponent[i]! / ((law.rate(e[i]!) * e[i]!) / stress[i]!)).toBeCloseTo(1, 4);
    }
    // a neck begins where the exponent has fallen to the strain
    const onset = e.find((one, i) => exponent[i]! <= one)!;
    expect(onset).toBeCloseTo(law.neckingStrain, 3);
  });

  test('uneven steps of strain change nothing, and strain that stands still is left out', () => {
    const uneven = strain.map((e, i) => e + 3e-5 * Math.sin(i / 7));
    const { strain: e, rate } = hardeningPicture({ strain: uneven, stress: uneven.map(law.stress) }, { halfWidth: 3 });
    expect(rate[900]! / law.rate(e[900]!)).toBeCloseTo(1, 3);
    const still = hardeningPicture({ strain: new Float64Array(20).fill(0.1), stress: new Float64Array(20).fill(400) });
    expect(still.rate.length).toBe(0);
    expect(still.first).toBe(2);
  });

  test('places count from the first sample that moves, and the width is a fortieth of the curve, at least two', () => {
    const begin = [...Array<number>(10).fill(0.01), ...Array.from({ length: 20 }, (_, i) => 0.01 * (i + 2))];
    const { first, strain: e, rate } = hardeningPicture({ strain: begin, stress: begin.map((one) => 1000 * one) });
    // the parabola over five samples first rises where its last one does
    expect(first).toBe(8);
    expect(e).toHaveLength(30 - 2 - 8);
    for (const one of rate) expect(one).toBeCloseTo(1000, 9);
    expect(hardeningPicture(curve).first).toBe(50);
    expect(hardeningPicture(curve).strain).toHaveLength(2000 - 100);
  });

  test('a stress of zero has no exponent, and the last place is as far from the end as the first from the start', () => {
    const line = Array.from({ length: 9 }, (_, i) => 0.01 * (i + 1));
    const nothing = hardeningPicture({ strain: line, stress: line.map(() => 0) }, { halfWidth: 4 });
    expect([...nothing.exponent]).toEqual([0]);
    expect([...nothing.rate]).toEqual([0]);
    expect(nothing.first).toBe(4);
    expect(nothing.strain[0]).toBeCloseTo(0.05, 12);
  });

  test.each([
    [{ halfWidth: 1 }, 'options.halfWidth'],
    [{ halfWidth: 2.5 }, 'options.halfWidth'],
    [{ halfWidth: 1000 }, 'options.halfWidth'],
    [{ width: 5 }, 'options.width'],
  ])('%j is refused at %s', (options, path) => {
    expect(thrown(() => hardeningPicture(curve, options as never)).path).toBe(path);
  });
});
