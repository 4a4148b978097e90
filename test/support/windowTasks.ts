import { lowerBound, relativeError } from '../../bench/searchTask.js';
import type { WindowTask } from '../../src/curve/window/windowTask.js';
import { seeded } from './random.js';

/** A line that bends, with noise, steps back and stretches that stand still, and bounds of any size. */
export function someTask(seed: number, most: number): WindowTask {
  const { uniform, normal } = seeded(seed);
  const n = 3 + Math.floor(most * uniform());
  const [bend, noise, back] = [2 * uniform(), 10 ** (-4 + 4 * uniform()), uniform() < 0.3 ? 0.02 : 0];
  const strain = new Float64Array(n);
  let e = 10 * normal();
  for (let i = 0; i < n; i += 1) {
    strain[i] = e + back * normal();
    if (uniform() > 0.1) e += (2 * uniform()) / n;
  }
  const stress = strain.map((x, i) => 100 * (x - strain[0]!) * (1 - (bend * i) / (2 * n)) + noise * normal());
  const start = Math.floor((n / 4) * uniform());
  const end = n - Math.floor((n / 4) * uniform());
  const points = 3 + Math.floor(8 * uniform());
  const scoring = seed % 2 === 0 ? lowerBound : relativeError;
  return { strain, stress, start, end, slope: 100 * (0.5 + uniform()), span: 40 * uniform(), points, gap: 0, ...scoring };
}

/** The same with strain read in steps of 2 to 50 of a record: many samples at one strain, and flicker between steps where strain goes back. */
export function stairTask(seed: number, most: number): WindowTask {
  const task = someTask(seed, most);
  const { strain } = task;
  const step = 1 / (2 + (seed % 49));
  return { ...task, strain: strain.map((x) => strain[0]! + step * Math.floor((x - strain[0]!) / step)), span: task.span / 2 };
}
