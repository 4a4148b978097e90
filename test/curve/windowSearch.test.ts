import { expect, test } from 'vitest';
import { everyWindow } from '../../bench/everyWindow.js';
import { lowerBound, relativeError, searchTask } from '../../bench/searchTask.js';
import { fitModulus } from '../../src/index.js';
import { windowSearch } from '../../src/curve/window/windowSearch.js';
import { seeded } from '../support/random.js';

type Family = 'smooth' | 'sharp' | 'yield point' | 'correlated' | 'coarse digits' | 'goes back' | 'clean' | 'held';

/** A record of a family, with toe and noise. */
function record(family: Family, n: number, seed: number): { strain: Float64Array; stress: Float64Array } {
  const { uniform, normal } = seeded(seed);
  const modulus = 205_000 * (1 + 0.03 * normal());
  const proof = 300 + 400 * uniform();
  const exponent = family === 'sharp' ? 40 : 7 + 7 * uniform();
  const toe = (0.5 + 4 * uniform()) * 1e-4;
  const noise = family === 'clean' || family === 'held' ? 0 : 0.00125 * proof * 1.4;
  const knee = Math.floor(0.3 * n);
  let drift = 0;
  const strain = new Float64Array(n);
  const stress = new Float64Array(n);
  for (let i = 0; i < n; i += 1) {
    let R = i < knee ? (0.97 * proof * i) / knee : proof * (0.97 + (0.35 * (i - knee)) / (n - knee));
    let e = R / modulus + 0.002 * (R / proof) ** exponent + toe * (1 - Math.exp(-R / (0.05 * proof)));
    if (family === 'yield point' && i >= knee) {
      e += (0.02 * (i - knee)) / (n - knee);
      R = proof * (0.9 + 0.5 * ((i - knee) / (n - knee)) ** 2);
    }
    // the motion stands still while the force goes on, and without noise
    if (family === 'held' && i % 50 > 40) e = strain[i - 1]!;
    if (family === 'goes back') e += 2e-6 * normal();
    drift = family === 'correlated' ? 0.9 * drift + noise * Math.sqrt(0.19) * normal() : noise * normal();
    R += drift;
    if (family === 'coarse digits') {
      const step = (1.75 * proof) / 1024;
      R = Math.round(R / step) * step;
      e = Math.round(e / 2e-7) * 2e-7;
    }
    strain[i] = e;
    stress[i] = R;
  }
  return { strain, stress };
}

const families: readonly Family[] = ['smooth', 'sharp', 'yield point', 'correlated', 'coarse digits', 'goes back', 'clean', 'held'];

test.each(families)('the window found is the best of all windows: %s', (family) => {
  let compared = 0;
  for (const [n, records] of [
    [50, 20],
    [300, 20],
    [1000, 10],
    [3000, 2],
    [20_000, 1],
  ] as const)
    for (let seed = 1; seed <= records; seed += 1) {
      const curve = record(family, n, 1000 * seed + n);
      for (const scoring of [lowerBound, relativeError]) {
        const task = searchTask(curve, scoring)!;
        const found = windowSearch(task)?.best;
        const best = everyWindow(task);
        expect(found === undefined).toBe(best === undefined);
        if (!found || !best) continue;
        compared += 1;
        expect({ first: found.first, last: found.last }).toEqual({ first: best.first, last: best.last });
        // a tenth of what counts as a tie
        expect(Math.abs(found.score - best.score)).toBeLessThan(scoring === lowerBound ? 1e-10 * best.score : 1e-10);
      }
    }
  expect(compared).toBeGreaterThan(60);
});

test('on a truly straight record all windows tie, and the widest is found', () => {
  const strain = Float64Array.from({ length: 500 }, (_, i) => i * 1e-5);
  const stress = strain.map((e) => 70_000 * e);
  const task = {
    strain,
    stress,
    start: 100,
    end: 500,
    slope: 69_000,
    span: 50,
    points: 8,
    ...lowerBound,
    gap: 0,
  };
  expect(windowSearch(task)?.best).toMatchObject({ first: 100, last: 499 });
});

test('on a truly straight record the least relative error is a tie of all windows too', () => {
  const strain = Float64Array.from({ length: 500 }, (_, i) => i * 1e-5);
  const stress = strain.map((e) => 70_000 * e);
  const task = {
    strain,
    stress,
    start: 100,
    end: 500,
    slope: 69_000,
    span: 50,
    points: 8,
    ...relativeError,
    gap: 0,
  };
  expect(windowSearch(task)?.best).toMatchObject({ first: 100, last: 499 });
});

test('strain that falls all the way has no rising line, whatever the sign of its rise', () => {
  const { normal } = seeded(5);
  const strain = Float64Array.from({ length: 200 }, (_, i) => -1e-5 * i);
  const stress = strain.map((e) => -100_000 * e + 0.1 * normal());
  const task = {
    strain,
    stress,
    start: 0,
    end: 200,
    slope: -99_000,
    span: 10,
    points: 8,
    ...lowerBound,
    gap: 0,
  };
  expect(windowSearch(task)).toBeUndefined();
  expect(everyWindow(task)).toBeUndefined();
});

test('a bounded gap stays within its bound', () => {
  for (let seed = 1; seed < 20; seed += 1) {
    const { strain, stress } = record('smooth', 2000, seed);
    const task = { strain, stress, start: 100, end: 600, slope: 200_000, span: 60, points: 8, ...lowerBound };
    const exact = windowSearch({ ...task, gap: 0 })!.best.score;
    expect(windowSearch({ ...task, gap: 1e-4 })!.best.score).toBeGreaterThanOrEqual(exact * (1 - 1.01e-4));
  }
});

test('no window qualifies: nothing is returned', () => {
  const strain = Float64Array.of(0, 1, 2);
  expect(
    windowSearch({
      strain,
      stress: strain,
      start: 0,
      end: 3,
      slope: 1,
      span: 0,
      points: 8,
      ...lowerBound,
      gap: 0,
    }),
  ).toBeUndefined();
  const flat = new Float64Array(40);
  const x = flat.map((_, i) => i);
  expect(
    windowSearch({
      strain: x,
      stress: flat,
      start: 0,
      end: 40,
      slope: 0,
      span: 1,
      points: 3,
      ...lowerBound,
      gap: 0,
    }),
  ).toBeUndefined();
});

test('memory beyond the input stays below four columns, also where the whole record is elastic', () => {
  const n = 500_000;
  const { normal } = seeded(3);
  const strain = Float64Array.from({ length: n }, (_, i) => (0.003 * i) / n);
  const stress = strain.map((e) => 200_000 * e + 0.3 * normal());
  fitModulus({ strain, stress });
  // what is collected in between can only make this less; nothing of the input is counted, being there before
  const before = process.memoryUsage().arrayBuffers;
  const line = fitModulus({ strain, stress });
  const taken = process.memoryUsage().arrayBuffers - before;
  expect(line.ok).toBe(true);
  expect(taken).toBeLessThan(4 * 8 * n);
});
