/** Records without noise, where a score is known no better than to the rounding of sums: held against fractions of whole numbers. */
import { expect, test } from 'vitest';
import { lowerBound, relativeError, searchTask } from '../../bench/searchTask.js';
import { fitModulus, required } from '../../src/index.js';
import { tieOf } from '../../src/curve/window/windowIncumbent.js';
import { windowSearch } from '../../src/curve/window/windowSearch.js';
import { leastRise, type WindowTask } from '../../src/curve/window/windowTask.js';
import { exactWindows, widestExact } from '../support/exactWindows.js';
import { seeded } from '../support/random.js';

interface Curve {
  readonly strain: Float64Array;
  readonly stress: Float64Array;
}

/** A line up to 300 MPa, then one of another slope; `toe` is the share of the line that starts softer by half. */
function corner(modulus: number, samples: number, hardening: number, toe = 0): Curve {
  const strain = Float64Array.from({ length: samples }, (_, i) => (i * 0.01) / samples);
  const yielding = 300 / modulus;
  const soft = toe * yielding;
  const line = (e: number): number => modulus * Math.max(e - soft, 0) + (modulus / 2) * Math.min(e, soft);
  return { strain, stress: strain.map((e) => (e < yielding ? line(e) : line(yielding) + hardening * (e - yielding))) };
}

/** Ramberg and Osgood's curve at equal steps of strain; below `steep` of the proof strength the extensometer misses 0.7 of the strain. */
function powerLaw(modulus: number, proof: number, exponent: number, samples: number, most: number, steep = 0): Curve {
  const strain = new Float64Array(samples);
  const stress = strain.map((_, i) => {
    const e = (most * i) / (samples - 1);
    let [low, high] = [0, 3 * proof];
    for (let k = 0; k < 60; k += 1) {
      const middle = (low + high) / 2;
      if (middle / modulus + 0.002 * (middle / proof) ** exponent < e) low = middle;
      else high = middle;
    }
    strain[i] = Math.max(0, e - (0.7 * Math.min(low, steep * proof)) / modulus);
    return low;
  });
  return { strain, stress };
}

/** Holds a search against every window in exact numbers; a tenth of a tie is left to the last digits of the scores themselves. */
function expectWidest(task: WindowTask): void {
  const best = windowSearch(task)?.best;
  const all = exactWindows(task);
  const tie = tieOf(
    task,
    all.reduce((most, { score }) => Math.max(most, score), -Infinity),
  );
  const found = all.find(({ first, last }) => first === best?.first && last === best.last);
  expect(found).toBeDefined();
  const [surely, perhaps] = [widestExact(all, 0.9 * tie), widestExact(all, 1.1 * tie)];
  expect(found!.score).toBeGreaterThanOrEqual(perhaps.score - 1.1 * tie);
  expect(found!.rise).toBeGreaterThanOrEqual(surely.rise * (1 - 1e-12));
  expect(found!.rise).toBeLessThanOrEqual(perhaps.rise * (1 + 1e-12));
  expect(Math.abs(best!.score - found!.score)).toBeLessThan(0.1 * tie);
}

test.each([lowerBound, relativeError])('of the windows on an exact line below a corner the widest is found', (scoring) => {
  let lines = 0;
  for (const modulus of [70_000, 110_000, 206_000])
    for (const samples of [60, 100, 200, 333, 500])
      // steeper still, and by its relative error the line above the corner would be as good as the one below
      for (const hardening of [0, 500, 1000, 0.1 * modulus])
        for (const toe of [0, 0.4]) {
          const task = searchTask(corner(modulus, samples, hardening, toe), scoring)!;
          if (!windowSearch(task)) continue;
          expectWidest(task);
          lines += 1;
        }
  expect(lines).toBeGreaterThan(110);
});

test.each([
  [206_000, 200, 1000, 6, 29],
  [206_000, 500, 1000, 15, 72],
  [206_000, 100, 500, 3, 14],
])('modulus %d MPa, %d samples, hardening %d MPa: samples %d to %d', (modulus, samples, hardening, first, last) => {
  expect(required(fitModulus(corner(modulus, samples, hardening)))).toMatchObject({ first, last, eased: [] });
});

test('on a curve that bends without noise the widest of the windows that tie is found', () => {
  const { uniform } = seeded(11);
  for (let k = 0; k < 60; k += 1) {
    const [modulus, proof] = [20_000 + 200_000 * uniform(), 50 + 400 * uniform()];
    const most = proof / modulus + 0.003 + 0.02 * uniform();
    const curve = powerLaw(modulus, proof, 5 + 45 * uniform(), 60 + Math.floor(150 * uniform()), most, k % 3 === 0 ? 0.12 : 0);
    const task = searchTask(curve, k % 2 === 0 ? lowerBound : relativeError)!;
    if (windowSearch(task)) expectWidest(task);
  }
});

test('a search that looks twice loses no window: the start bound stays', () => {
  const line = required(fitModulus(powerLaw(110_000, 100, 40, 366, 100 / 110_000 + 0.012)));
  expect(line.eased).toEqual([]);
  expect(line.first).toBeGreaterThanOrEqual(6);
  // with a beginning that is three times too steep, what the start bound is for
  const [modulus, proof, exponent, most] = [160347.9436878115, 413.2172223433081, 32.46433858759701, 0.006851421269419793];
  const seated = required(fitModulus(powerLaw(modulus, proof, exponent, 433, most, 0.12)));
  expect(seated.eased).toEqual([]);
  expect(Math.abs(seated.slope / modulus - 1)).toBeLessThan(1e-6);
});

test('no record without noise loses its start bound while windows lie above it', () => {
  const { uniform } = seeded(3);
  for (let k = 0; k < 400; k += 1) {
    const [modulus, proof] = [20_000 + 200_000 * uniform(), 50 + 400 * uniform()];
    const curve = powerLaw(
      modulus,
      proof,
      10 + 40 * uniform(),
      60 + Math.floor(400 * uniform()),
      proof / modulus + 0.003 + 0.02 * uniform(),
    );
    const window = { by: k % 2 === 0 ? 'lower-bound' : 'relative-error' } as const;
    const { eased, offsetSample = 0, offsetStress = 0 } = required(fitModulus(curve, { window }));
    const start = curve.stress.findIndex((R) => R >= 0.2 * offsetStress);
    const room = offsetSample - start >= 8 && curve.stress[offsetSample - 1]! - curve.stress[start]! > 0.5 * offsetStress;
    if (room) expect(eased).toEqual([]);
  }
});

test('a window that reaches the least rise but for rounding counts, one that falls short by a billionth does not', () => {
  let rounded = 0;
  for (let k = 1; k <= 200; k += 1) {
    // stress in steps of a converter; only the whole record rises by a fifth of five times its rise
    const strain = Float64Array.from({ length: 12 }, (_, i) => 1e-4 + (i * 5e-5) / k);
    const stress = Float64Array.from({ length: 12 }, (_, i) => (0.1 + 0.01 * k) * i);
    const offsetStress = 5 * (stress[11]! - stress[0]!);
    const task: WindowTask = {
      strain,
      stress,
      start: 0,
      end: 12,
      slope: 1000,
      span: leastRise(0.2, offsetStress),
      points: 3,
      gap: 0,
      ...lowerBound,
    };
    expect(windowSearch(task)?.best).toMatchObject({ first: 0, last: 11 });
    expect(windowSearch({ ...task, span: leastRise(0.2, offsetStress * (1 + 1e-9)) })).toBeUndefined();
    if (!windowSearch({ ...task, span: 0.2 * offsetStress })) rounded += 1;
  }
  // what the allowance is for
  expect(rounded).toBeGreaterThan(10);
});
