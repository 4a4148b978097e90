import { describe, expect, test } from 'vitest';
import {
  bulgeRatio,
  compressiveTrueCurve,
  compressiveTrueStrain,
  compressiveTrueStress,
  eulerLoad,
  round,
  siebelCorrection,
  trueStrain,
  trueStress,
  uniformDiameter,
} from '../../src/index.js';
import { expectPrinted } from '../support/handbook.js';
import { refusal } from '../support/thrown.js';
import { checkVectors } from '../support/vectors.js';

checkVectors(
  'compression',
  'compressiveTrueStrain',
  'compressiveTrueStress',
  'uniformDiameter',
  'siebelCorrection',
  'eulerLoad',
  'bulgeRatio',
);

describe('a cylinder of 10 x 15 mm pressed to 12 mm by 40 kN', () => {
  const { area } = round({ diameter: 10 });
  const strain = compressiveTrueStrain({ originalHeight: 15, height: 12 });
  const stress = compressiveTrueStress({ force: 40_000, area, originalHeight: 15, height: 12 });
  const diameter = uniformDiameter({ originalDiameter: 10, originalHeight: 15, height: 12 });

  test('a second way: the force on the present area, the strain as a sum of small steps, the volume', () => {
    expect(stress).toBeCloseTo(40_000 / ((Math.PI / 4) * diameter ** 2), 9);
    expect(diameter ** 2 * 12).toBeCloseTo(10 ** 2 * 15, 9);
    let sum = 0;
    for (let k = 0; k < 30_000; k += 1) sum += 1e-4 / (12 + (k + 0.5) * 1e-4);
    expect(strain).toBeCloseTo(sum, 9);
  });

  test("Siebel's friction with μ = 0.1: the pressure is 1.031056 times the flow stress of 395.164 MPa", () => {
    const factor = siebelCorrection({ friction: 0.1, diameter, height: 12 });
    expectPrinted(1 / factor, '1.031056');
    expectPrinted(stress * factor, '395.164');
    // a second way: the mean of the slab solution exp(2 μ (R - r) / h) over the face, which Siebel's formula begins
    const mean = (friction: number): number => {
      let total = 0;
      const n = 20_000;
      const R = diameter / 2;
      for (let k = 0; k < n; k += 1) {
        const r = ((k + 0.5) * R) / n;
        total += Math.exp((2 * friction * (R - r)) / 12) * 2 * Math.PI * r * (R / n);
      }
      return total / (Math.PI * R ** 2);
    };
    // to first order in μ both are the same
    const slope = (mean(1e-4) - 1) / 1e-4;
    expect((1 / siebelCorrection({ friction: 1e-4, diameter, height: 12 }) - 1) / 1e-4 / slope).toBeCloseTo(1, 4);
    expect(siebelCorrection({ friction: 0, diameter, height: 12 })).toBe(1);
  });

  test('the curve and the single values are one formula, and the mirror of tension', () => {
    const { strain: all, stress: pressure } = compressiveTrueCurve({ strain: [0.2], stress: [40_000 / area] });
    expect(all[0]).toBeCloseTo(strain, 12);
    expect(pressure[0]).toBeCloseTo(stress, 9);
    expect(-trueStrain(-0.2)).toBeCloseTo(strain, 12);
    expect(-trueStress(-40_000 / area, -0.2)).toBeCloseTo(stress, 9);
  });
});

describe('columns', () => {
  test("Euler's load by the slenderness ratio", () => {
    const { secondMoment, area } = round({ diameter: 10 });
    const hinged = eulerLoad({ modulus: 210_000, secondMoment: secondMoment!, length: 80 });
    // kL/i, with i = d/4
    expect(hinged / area).toBeCloseTo((Math.PI ** 2 * 210_000) / (80 / 2.5) ** 2, 6);
  });

  test('a column of the deflected shape is in balance: E I y" + F y = 0 gives half a sine wave over the length', () => {
    // shooting: y(0) = 0, y'(0) = 1, and the first zero of y must be the length
    const stiffness = 210_000 * 100;
    const F = eulerLoad({ modulus: 210_000, secondMoment: 100, length: 250 });
    let [y, slope, x] = [0, 1, 0];
    const step = 1e-3;
    do {
      slope -= (F / stiffness) * y * (step / 2);
      y += slope * step;
      slope -= (F / stiffness) * y * (step / 2);
      x += step;
    } while (y > 0);
    expect(x).toBeCloseTo(250, 2);
  });
});

test('a straight piece is no barrel', () => {
  expect(bulgeRatio({ middleDiameter: 8, endDiameter: 8 })).toBe(1);
});

test('wrong arguments are refused by name', () => {
  expect(refusal(() => bulgeRatio({ middleDiameter: 0, endDiameter: 1 }))).toBe('not-positive middleDiameter');
  expect(refusal(() => uniformDiameter({ originalDiameter: 10, originalHeight: 15, height: NaN }))).toBe('not-finite height');
  expect(refusal(() => compressiveTrueStrain({ originalHeight: 15 } as never))).toBe('missing height');
  expect(refusal(() => compressiveTrueStress({ force: Infinity, area: 1, originalHeight: 1, height: 1 }))).toBe('not-finite force');
  expect(refusal(() => compressiveTrueCurve({ strain: [0, 1], stress: [0, 1] }))).toBe('out-of-range curve.strain[1]');
  expect(refusal(() => siebelCorrection({ friction: 0.6, diameter: 1, height: 1 }))).toBe('out-of-range friction');
  expect(refusal(() => eulerLoad({ modulus: 1, secondMoment: 1, length: 1, endFactor: 0.4 }))).toBe('out-of-range endFactor');
  expect(refusal(() => eulerLoad({ modulus: 1, secondMoment: 1, length: 1, ends: 1 } as never))).toBe('unknown-option column.ends');
});
