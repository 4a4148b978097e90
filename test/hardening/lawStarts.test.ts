import { describe, expect, test } from 'vitest';
import { hockettSherbyShape } from '../../src/hardening/fits/fitHockettSherby.js';
import { hollomonShape } from '../../src/hardening/fits/fitHollomon.js';
import { ludwikShape } from '../../src/hardening/fits/fitLudwik.js';
import { swiftShape } from '../../src/hardening/fits/fitSwift.js';
import { voceShape } from '../../src/hardening/fits/fitVoce.js';
import { geometric, lawPoints, projected, projectedLine, type LawShape } from '../../src/hardening/fits/lawShape.js';

const strain = Float64Array.from([0.01, 0.03, 0.06, 0.1, 0.15, 0.2]);
const stress = Float64Array.from([301, 371, 431, 464, 489, 500]);
const weights = Float64Array.from([1, 2, 3, 1, 2, 3]);
const points = lawPoints(strain, stress, undefined);
const weighted = lawPoints(strain, stress, weights);
const dot = (a: (i: number) => number, b: (i: number) => number): number =>
  strain.reduce((sum, _, i) => sum + weights[i]! * a(i) * b(i), 0);

describe('the best factors of a basis', () => {
  test('logarithms of the strain stand beside it', () => {
    expect([...points.logarithm]).toEqual([...strain].map(Math.log));
  });

  test('one factor: what is left is at right angles to the basis, by the weights', () => {
    const basis = (e: number): number => e ** 0.3;
    const factor = projected(weighted, basis);
    expect(
      dot(
        (i) => basis(strain[i]!),
        (i) => stress[i]! - factor * basis(strain[i]!),
      ) / 1000,
    ).toBeCloseTo(0, 12);
    // without weights each counts once
    const sum = (of: (i: number) => number): number => strain.reduce((all, _, i) => all + of(i), 0);
    const once = sum((i) => basis(strain[i]!) * stress[i]!) / sum((i) => basis(strain[i]!) ** 2);
    expect(projected(points, basis)).toBeCloseTo(once, 9);
  });

  test('constant and factor: what is left is at right angles to both, by the weights', () => {
    const basis = (e: number): number => Math.exp(-10 * e);
    const [constant, factor] = projectedLine(weighted, basis);
    const left = (i: number): number => stress[i]! - constant - factor * basis(strain[i]!);
    expect(dot(() => 1, left) / 1000).toBeCloseTo(0, 12);
    expect(dot((i) => basis(strain[i]!), left) / 1000).toBeCloseTo(0, 12);
    const [alike, slope] = projectedLine(
      lawPoints(
        strain,
        stress,
        weights.map(() => 7),
      ),
      basis,
    );
    expect(projectedLine(points, basis)[0]).toBeCloseTo(alike, 9);
    expect(projectedLine(points, basis)[1]).toBeCloseTo(slope, 9);
  });

  test('geometric steps: each is the same multiple of the one before, from the first to the last', () => {
    const steps = geometric(0.02, 4, 6);
    expect(steps).toHaveLength(6);
    expect(steps[0]).toBeCloseTo(0.02, 12);
    expect(steps[5]).toBeCloseTo(4, 12);
    for (let k = 1; k < 6; k += 1) expect(steps[k]! / steps[k - 1]!).toBeCloseTo(200 ** (1 / 5), 12);
  });
});

/** What a start of a law leaves, and the derivatives by its parameters, sample by sample. */
function at<Name extends string>({ evaluate, names }: LawShape<Name>, start: readonly number[]) {
  const row = () => new Float64Array(strain.length);
  const out = { stress: row(), rows: [row(), row(), row(), row()] as const };
  evaluate({ strain, logarithm: points.logarithm, first: 0, end: strain.length }, start, out);
  return { left: (i: number) => stress[i]! - out.stress[i]!, by: (name: Name) => (i: number) => out.rows[names.indexOf(name)]![i]! };
}
/** How far what is left of a start is from right angles to the derivative by a parameter: the cosine between them. */
function cosine<Name extends string>(shape: LawShape<Name>, start: readonly number[], name: Name): number {
  const { left, by } = at(shape, start);
  const sum = (of: (i: number) => number): number => strain.reduce((all, _, i) => all + of(i), 0);
  const column = by(name);
  return sum((i) => left(i) * column(i)) / Math.sqrt(sum((i) => left(i) ** 2) * sum((i) => column(i) ** 2));
}

describe('starts: the parameters in which a law is linear are the best for the others', () => {
  test('Hollomon: the line through the logarithms gives the exponent, least squares its factor', () => {
    const [[K, n]] = hollomonShape.starts(points, undefined) as readonly [readonly [number, number]];
    const [x, y] = [points.logarithm, stress.map(Math.log)];
    const mean = (column: Float64Array): number => column.reduce((a, b) => a + b, 0) / column.length;
    const [mx, my] = [mean(x), mean(y)];
    const slope = x.reduce((sum, one, i) => sum + (one - mx) * (y[i]! - my), 0) / x.reduce((sum, one) => sum + (one - mx) ** 2, 0);
    expect(n).toBeCloseTo(slope, 12);
    expect(cosine(hollomonShape, [K, n], 'strengthCoefficient')).toBeCloseTo(0, 9);
    const [held] = hollomonShape.starts(points, { exponent: 0.3 });
    expect(held![1]).toBe(0.3);
    expect(cosine(hollomonShape, held!, 'strengthCoefficient')).toBeCloseTo(0, 9);
    expect(hollomonShape.starts(points, { strengthCoefficient: 700 })).toEqual([[700, n]]);
  });

  test('Ludwik: twenty exponents from 0.02 to 4; a line that begins below 0 is made to begin there', () => {
    const starts = ludwikShape.starts(points, undefined);
    expect(starts).toHaveLength(20);
    expect(starts[0]![2]).toBeCloseTo(0.02, 12);
    expect(starts[19]![2]).toBeCloseTo(4, 12);
    for (const start of starts) {
      expect(cosine(ludwikShape, start, 'strengthCoefficient')).toBeCloseTo(0, 9);
      if (start[0] !== 0) expect(cosine(ludwikShape, start, 'yieldStress')).toBeCloseTo(0, 9);
    }
    // the smallest exponents are nearly logarithms: their constant is far below 0
    expect(starts[0]![0]).toBe(0);
    expect(starts[19]![0]).toBeGreaterThan(0);
    const held = ludwikShape.starts(points, { yieldStress: 100, exponent: 0.4 });
    expect(held).toHaveLength(1);
    expect(held[0]).toMatchObject({ 0: 100, 2: 0.4 });
    expect(cosine(ludwikShape, held[0]!, 'strengthCoefficient')).toBeCloseTo(0, 9);
    expect(ludwikShape.starts(points, { strengthCoefficient: 450, exponent: 1 })[0]![1]).toBe(450);
    expect(ludwikShape.starts(points, { yieldStress: 100, strengthCoefficient: 450, exponent: 1 })).toEqual([[100, 450, 1]]);
  });

  test('Swift: no prestrain and sixteen up to three times the range; the exponent by logarithms of stress and of strain beyond it', () => {
    const starts = swiftShape.starts(points, undefined);
    expect(starts).toHaveLength(17);
    expect(starts[0]![1]).toBe(0);
    expect(starts[1]![1]).toBeCloseTo(1e-4 * 0.2, 12);
    expect(starts[16]![1]).toBeCloseTo(3 * 0.2, 12);
    for (const start of starts) {
      const [, e0, n] = start as readonly [number, number, number];
      expect(n).toBeCloseTo(
        hollomonShape.starts(
          lawPoints(
            strain.map((e) => e0 + e),
            stress,
            undefined,
          ),
          undefined,
        )[0]![1]!,
        9,
      );
      expect(cosine(swiftShape, start, 'strengthCoefficient')).toBeCloseTo(0, 9);
    }
    const falling = swiftShape.starts(lawPoints(strain, Float64Array.from([...stress].reverse()), undefined), { prestrain: 0.01 });
    expect(falling).toHaveLength(1);
    expect(falling[0]).toMatchObject({ 1: 0.01, 2: 1e-3 });
    expect(swiftShape.starts(points, { strengthCoefficient: 700, prestrain: 0.01, exponent: 0.2 })).toEqual([[700, 0.01, 0.2]]);
  });

  test('Voce: twenty rates that fall away within a sixtieth of the range to a hundred of it', () => {
    const starts = voceShape.starts(points, undefined);
    expect(starts).toHaveLength(20);
    expect(starts[0]![2]).toBeCloseTo(0.01 / 0.2, 12);
    expect(starts[19]![2]).toBeCloseTo(60 / 0.2, 9);
    for (const start of starts) {
      expect(cosine(voceShape, start, 'saturationStress')).toBeCloseTo(0, 7);
      expect(cosine(voceShape, start, 'initialStress')).toBeCloseTo(0, 7);
    }
    const [held] = voceShape.starts(points, { initialStress: 250, rate: 12 });
    expect(held).toMatchObject({ 1: 250, 2: 12 });
    expect(cosine(voceShape, held!, 'saturationStress')).toBeCloseTo(0, 9);
    expect(voceShape.starts(points, { saturationStress: 520, rate: 12 })[0]![0]).toBe(520);
    expect(voceShape.starts(points, { saturationStress: 520, initialStress: 250, rate: 12 })).toEqual([[520, 250, 12]]);
  });

  test('Hockett-Sherby: six powers with ten rates each, which do likewise at the end of the range', () => {
    const starts = hockettSherbyShape.starts(points, undefined);
    expect(starts).toHaveLength(60);
    expect([...new Set(starts.map(([, , , power]) => power))]).toEqual([0.3, 0.45, 0.6, 0.8, 1, 1.4]);
    for (const [k, start] of starts.entries()) {
      const [, , rate, power] = start as readonly [number, number, number, number];
      if (k % 10 === 0) expect(rate * 0.2 ** power).toBeCloseTo(0.05, 12);
      if (k % 10 === 9) expect(rate * 0.2 ** power).toBeCloseTo(30, 9);
      expect(cosine(hockettSherbyShape, start, 'saturationStress')).toBeCloseTo(0, 7);
      expect(cosine(hockettSherbyShape, start, 'initialStress')).toBeCloseTo(0, 7);
    }
    const all = { saturationStress: 520, initialStress: 250, rate: 6, power: 0.8 };
    expect(hockettSherbyShape.starts(points, all)).toEqual([[520, 250, 6, 0.8]]);
  });
});
