import { describe, expect, test } from 'vitest';
import {
  considere,
  fitHollomon,
  hardeningExponent,
  hollomon,
  maximumStress,
  reductionOfArea,
  required,
  round,
  trueCurve,
  trueFractureStrain,
  trueFractureStress,
  trueStrain,
  trueStress,
} from '../../src/index.js';
import { expectPrinted } from '../support/handbook.js';
import { curveT2 } from '../support/records.js';
import { checkVectors } from '../support/vectors.js';

checkVectors('hardening', 'trueCurve', 'fitHollomon', 'flowCurve', 'trueFractureStress', 'hollomon', 'flowStress', 'trueFractureStrain');

describe('Groover, Fundamentals of Modern Manufacturing, tensile problem (L0 100 mm, S0 150 mm²)', () => {
  const force = [23_040, 27_370, 28_910];
  const length = [103.5, 110.5, 122.0];
  const curve = trueCurve({ strain: length.map((l) => l / 100 - 1), stress: force.map((F) => F / 150) });

  test('n and K by the line through the logarithms of total strain, and by the least-squares fit in stress', () => {
    const line = required(fitHollomon(curve, { method: 'log-log' }));
    const squares = required(fitHollomon(curve));
    expect(squares.exponent).toBeCloseTo(line.exponent, 4);
    expect(squares.strengthCoefficient).toBeCloseTo(line.strengthCoefficient, 1);
  });
});

describe('Callister and Rethwisch, Materials Science and Engineering', () => {
  test('12.8 mm to 10.7 mm at 460 MPa: true fracture stress 660 MPa (from memory; the book rounds to tens)', () => {
    const before = round({ diameter: 12.8 }).area;
    const after = round({ diameter: 10.7 }).area;
    const stress = trueFractureStress({ force: 460 * before, finalArea: after });
    expect(Math.abs(stress - 660)).toBeLessThanOrEqual(5);
    // ε_f from the areas and from Z are one
    const Z = reductionOfArea({ originalArea: before, finalArea: after });
    expect(trueFractureStrain({ originalArea: before, finalArea: after })).toBeCloseTo(-Math.log(1 - Z), 12);
  });

  test('415 MPa at ε 0.10 with K 1035: n 0.40 (from memory)', () => {
    const strain = [0.1, 1, 0.5];
    const n = Math.log(415 / 1035) / Math.log(0.1);
    expectPrinted(n, '0.40', 2);
    // the fit finds it again from points of that law
    expect(required(fitHollomon({ strain, stress: strain.map((e) => 1035 * e ** n) })).exponent).toBeCloseTo(n, 12);
  });

  test('575 MPa at ε 0.20 with K 860: n 0.25, and ε 0.24 at 600 MPa', () => {
    const n = Math.log(575 / 860) / Math.log(0.2);
    expectPrinted(n, '0.25');
    const law = hollomon({ strengthCoefficient: 860, exponent: n });
    expect(law.stress(0.2)).toBeCloseTo(575, 9);
    // where the law reaches 600 MPa
    let [low, high] = [0.1, 0.5];
    for (let k = 0; k < 60; k += 1) {
      const middle = (low + high) / 2;
      if (law.stress(middle) < 600) low = middle;
      else high = middle;
    }
    expectPrinted(low, '0.24');
    expectPrinted(low, '0.23710');
  });
});

test('K 530, n 0.26: Rm 287.907, Agt 29.693 %, by the maximum of the engineering curve', () => {
  const law = hollomon({ strengthCoefficient: 530, exponent: 0.26 });
  expectPrinted(100 * Math.expm1(law.neckingStrain), '29.693');
  const strain = Float64Array.from({ length: 100_000 }, (_, i) => (i + 1) * 5e-6);
  const top = maximumStress({ strain, stress: strain.map((e) => law.stress(Math.log1p(e)) / (1 + e)) });
  expectPrinted(top.stress, '287.907');
  expect(Math.abs(top.strain - Math.expm1(0.26))).toBeLessThan(1e-5);
});

describe('T2: σ = 500 ε^0.2 in total strain', () => {
  const curve = curveT2();

  test('Rm 296.700, Agt 22.140 %, true stress at the maximum 362.390', () => {
    const top = maximumStress(curve);
    expectPrinted(top.stress, '296.700');
    expect(Math.abs(100 * top.strain - 22.14)).toBeLessThan(0.001);
    expectPrinted(trueStress(top.stress, top.strain), '362.390', 2);
    expect(trueStrain(top.strain)).toBeCloseTo(0.2, 5);
  });

  test('the neck begins at n, by the curve and by the law', () => {
    const onset = required(considere(trueCurve(curve)));
    expect(onset.strain).toBeCloseTo(0.2, 5);
    expectPrinted(onset.stress, '362.390', 2);
    const byLaw = required(considere(trueCurve(curve), { law: hollomon({ strengthCoefficient: 500, exponent: 0.2 }) }));
    expect(byLaw.strain).toBeCloseTo(0.2, 12);
    expect(byLaw.method).toBe('law');
  });
});

describe('σ = 500 ε_p^0.2, E 200 GPa, engineering strain 10 to 20 %', () => {
  // a curve of that law: plastic strain p, total true strain p + σ/E, engineering strain from it
  const plastic = Array.from({ length: 4000 }, (_, i) => 0.00006 * (i + 1));
  const sigma = plastic.map((p) => 500 * p ** 0.2);
  const strain = plastic.map((p, i) => Math.expm1(p + sigma[i]! / 200_000));
  const stress = sigma.map((s, i) => s / (1 + strain[i]!));
  const range = { from: 0.1, to: 0.2 };

  test('n 0.20000 in plastic strain (ISO 10275), 0.20203 in total strain (ASTM E646)', () => {
    const byPlastic = required(hardeningExponent({ strain, stress }, { ...range, strainMeasure: 'plastic', modulus: 200_000 }));
    expectPrinted(byPlastic.exponent, '0.20000');
    expect(byPlastic.strengthCoefficient).toBeCloseTo(500, 6);
    expectPrinted(required(hardeningExponent({ strain, stress }, range)).exponent, '0.20203', 2);
  });

  test('the two ways to take the elastic part off differ: 0.1807 and 0.1800 at e 0.2 and R 400, E 210 GPa', () => {
    // a rising curve that ends at (0.2, 400); both strains counted here, and the lines through them must be the library's
    const e = [0.04, 0.08, 0.12, 0.16, 0.2];
    const rising = { strain: e, stress: e.map((one) => 400 * (one / 0.2) ** 0.1) };
    const counted = (strainMeasure: 'plastic' | 'plastic-engineering') => {
      const plastic = e.map((one, i) => {
        const R = rising.stress[i]!;
        return strainMeasure === 'plastic' ? Math.log(1 + one) - (R * (1 + one)) / 210_000 : Math.log(1 + one - R / 210_000);
      });
      const line = required(fitHollomon({ strain: plastic, stress: rising.stress.map((R, i) => R * (1 + e[i]!)) }, { method: 'log-log' }));
      // ISO 10275 counts the limits in plastic extension
      const to = strainMeasure === 'plastic' ? 0.2 : 0.2 - 400 / 210_000;
      const found = required(hardeningExponent(rising, { from: 0.038, to, strainMeasure, modulus: 210_000 }));
      expect(found.exponent).toBeCloseTo(line.exponent, 12);
      expect(found.strengthCoefficient).toBeCloseTo(line.strengthCoefficient, 9);
      return plastic[4]!;
    };
    expectPrinted(counted('plastic-engineering'), '0.1807');
    expectPrinted(counted('plastic'), '0.1800');
    const engineering = required(
      hardeningExponent({ strain, stress }, { ...range, strainMeasure: 'plastic-engineering', modulus: 200_000 }),
    );
    expect(engineering.exponent).not.toBeCloseTo(0.2, 5);
    expect(engineering.exponent).toBeCloseTo(0.2, 2);
  });
});

// Dieter, Mechanical Metallurgy, worked example: d 12 mm, 90 kN at most (from memory)
test('Dieter: Rm 796', () => {
  expectPrinted(90_000 / round({ diameter: 12 }).area, '796', 2);
});
