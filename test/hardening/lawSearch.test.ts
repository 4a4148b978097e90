import { describe, expect, test } from 'vitest';
import { hollomonShape } from '../../src/hardening/fits/fitHollomon.js';
import { lawSearch } from '../../src/hardening/fits/lawSearch.js';
import type { LawShape } from '../../src/hardening/fits/lawShape.js';
import { seeded } from '../support/random.js';

const limits = { lowest: [0, -100], highest: [Infinity, Infinity] };

/** A search for Hollomon's law that tells on how many points starts were sought, and on how many the law was evaluated. */
function watched(samples: number, { noise = 1, weights = false, starts = hollomonShape.starts } = {}) {
  const { normal } = seeded(21);
  const strain = Float64Array.from({ length: samples }, (_, i) => 0.01 + (0.2 * i) / samples);
  const stress = strain.map((e) => 700 * e ** 0.2 + noise * normal());
  const [scanned, sizes, tried] = [[] as number[], new Set<number>(), [] as (readonly number[])[]];
  const shape: LawShape<'strengthCoefficient' | 'exponent'> = {
    ...hollomonShape,
    starts: (points, held) => {
      scanned.push(points.strain.length);
      return starts(points, held);
    },
    evaluate: (at, parameters, out) => {
      sizes.add(at.strain.length);
      if (at.first === 0) tried.push([...parameters]);
      hollomonShape.evaluate(at, parameters, out);
    },
  };
  const columns = { strain, stress, weights: weights ? new Float64Array(samples).fill(1) : undefined };
  return { ...lawSearch(shape, columns, limits, undefined), scanned, sizes, tried };
}

describe('how many points a search looks at', () => {
  test.each([
    ['128 samples are scanned as they are', 128, [128], [128]],
    ['129 by 64 means of two', 129, [64], [129]],
    ['512 by 64 means of eight', 512, [64], [512]],
  ] as const)('%s, and followed on all', (_, samples, scanned, sizes) => {
    const found = watched(samples);
    expect(found.scanned).toEqual(scanned);
    expect([...found.sizes]).toEqual(sizes);
    expect(found.before).toBe(0);
  });

  test('513 are followed on 256 means first, whose steps are counted, then on all', () => {
    const found = watched(513);
    expect(found.scanned).toEqual([64]);
    expect([...found.sizes]).toEqual([256, 513]);
    expect(found.before).toBeGreaterThan(0);
  });

  test('5000 end on all of them, 5001 on what stands for them', () => {
    expect([...watched(5000).sizes].at(-1)).toBe(5000);
    const { sizes, before } = watched(5001);
    expect([...sizes].at(-1)).toBeGreaterThan(256);
    expect([...sizes].at(-1)).toBeLessThan(1000);
    expect(before).toBeGreaterThan(0);
  });

  test('without noise all of them are asked in the end', () => {
    expect([...watched(5001, { noise: 0 }).sizes].at(-1)).toBe(5001);
  });

  test('with weights every sample is asked at every step', () => {
    const found = watched(6000, { weights: true });
    expect(found.scanned).toEqual([6000]);
    expect([...found.sizes]).toEqual([6000]);
    expect(found.before).toBe(0);
  });

  test('what stands for many samples has their optimum and their sum', () => {
    const [few, all] = [watched(6000).end!, watched(6000, { weights: true }).end!];
    expect(few.residualSumOfSquares / all.residualSumOfSquares).toBeCloseTo(1, 5);
    expect(few.parameters[0]! / all.parameters[0]!).toBeCloseTo(1, 5);
    expect(few.parameters[1]! / all.parameters[1]!).toBeCloseTo(1, 5);
  });
});

describe('which starts are followed', () => {
  // the truth is (700, 0.2): the farther the coefficient, the higher the sum
  const at = (...coefficients: readonly number[]) => watched(50, { noise: 0, starts: () => coefficients.map((K) => [K, 0.2]) });
  /** How often the law was evaluated at a start: once in the scan, and once more where it is followed. */
  const times = ({ tried }: { readonly tried: readonly (readonly number[])[] }, K: number): number =>
    tried.filter(([one, n]) => one === K && n === 0.2).length;

  test('the two lowest of those that are lower than their neighbours, the lowest first', () => {
    const found = at(900, 760, 1000, 740, 1100, 730, 720, 950, 750);
    expect([760, 740, 730, 720, 750].map((K) => times(found, K))).toEqual([1, 2, 1, 2, 1]);
    const [first, second] = [720, 740].map((K) => found.tried.findLastIndex(([one, n]) => one === K && n === 0.2));
    expect(first).toBeLessThan(second!);
    expect(found.end!.parameters[0]).toBeCloseTo(700, 9);
  });

  test('the ends of a scan count, and starts that are alike', () => {
    const ends = at(720, 900, 740);
    expect([720, 900, 740].map((K) => times(ends, K))).toEqual([2, 1, 2]);
    expect(times(at(900, 720, 720, 900), 720)).toBe(4);
  });

  test('one start alone is followed without a scan', () => {
    expect(times(at(720), 720)).toBe(1);
  });

  test('starts that are no numbers, or give none, are left out', () => {
    const found = at(NaN, 1e308, 1e308, 900, 720);
    expect(found.tried.some((start) => start.some(Number.isNaN))).toBe(false);
    expect(times(found, 1e308)).toBe(2);
    expect(found.end!.parameters[0]).toBeCloseTo(700, 9);
  });

  test.each([50, 600])('no sound start, no end: %d samples', (samples) => {
    for (const K of [NaN, 1e308]) {
      const starts = () => [[K, 0.2]];
      expect(watched(samples, { starts })).toMatchObject({ end: undefined, before: 0 });
      expect(watched(samples, { starts: () => [...starts(), ...starts()] })).toMatchObject({ end: undefined, before: 0 });
    }
  });

  test('the start that was higher may end lower', () => {
    // a law that is stuck at 290 below 1, far off up to 2, and a straight line beyond
    const stuck: LawShape<'a'> = {
      names: ['a'],
      lowest: [0],
      starts: () => [[0.5], [1.5], [2]],
      flat: () => false,
      evaluate: ({ first, end }, [a], { stress, rows }) => {
        for (let k = 0; k < end - first; k += 1) {
          stress[k] = a! < 1 ? 290 : a! < 2 ? 100 : 250 + 50 * (a! - 2);
          rows[0][k] = a! < 2 ? 0 : 50;
        }
      },
    };
    const columns = { strain: Float64Array.from([0.1, 0.2, 0.3]), stress: new Float64Array(3).fill(298), weights: undefined };
    const { end } = lawSearch(stuck, columns, { lowest: [0], highest: [Infinity] }, undefined);
    expect(end!.parameters[0]).toBeCloseTo(2.96, 9);
  });

  test('starts are brought within the limits', () => {
    const { normal } = seeded(22);
    const strain = Float64Array.from({ length: 30 }, (_, i) => 0.01 + 0.005 * i);
    const columns = { strain, stress: strain.map((e) => 700 * e ** 0.2 + normal()), weights: undefined };
    const { end } = lawSearch(hollomonShape, columns, { lowest: [0, 0.25], highest: [650, 1] }, undefined);
    expect(end!.parameters).toEqual([650, 0.25]);
  });
});
