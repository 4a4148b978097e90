/** Coarse steps of strain: the same window as of all, at a cost like that of smooth strain. */
import { beforeEach, expect, test, vi } from 'vitest';
import { everyWindow } from '../../bench/everyWindow.js';
import { lowerBound, relativeError, searchTask } from '../../bench/searchTask.js';
import { tryBlocks } from '../../src/curve/window/windowBlocks.js';
import { hopeless } from '../../src/curve/window/windowBound.js';
import { windowSearch } from '../../src/curve/window/windowSearch.js';
import { seeded } from '../support/random.js';

vi.mock('../../src/curve/window/windowBound.js', { spy: true });
vi.mock('../../src/curve/window/windowBlocks.js', { spy: true });
beforeEach(() => void vi.clearAllMocks());

/** A record that bends, with noise of stress [MPa], its strain read in steps; `flicker` is noise of the strain before it is read. */
function stairs(n: number, step: number, noise: number, flicker = 0): { strain: Float64Array; stress: Float64Array } {
  const { normal } = seeded(n);
  const stress = Float64Array.from({ length: n }, (_, i) => (500 * i) / n);
  const strain = stress.map((R) => R / 205_000 + 0.002 * (R / 400) ** 10 + 2e-4 * (1 - Math.exp(-R / 20)) + flicker * normal());
  return { strain: strain.map((e) => step * Math.floor(e / step)), stress: stress.map((R) => R + noise * normal()) };
}

test.each([
  [1e-5, 0.5, 0],
  [1e-4, 0.5, 0],
  [2e-4, 0, 0],
  [5e-4, 0.5, 0],
  [5e-4, 5, 0],
  [1e-4, 0.5, 1e-5],
  [5e-4, 0.5, 1e-4],
])('the best of all windows is found: steps of %d, noise %d MPa, flicker %d', (step, noise, flicker) => {
  for (const n of [100, 500, 2000, 6000])
    for (const scoring of [lowerBound, relativeError]) {
      const task = searchTask(stairs(n, step, noise, flicker), scoring)!;
      const [best, expected] = [windowSearch(task)?.best, everyWindow(task)];
      expect([n, best?.first, best?.last]).toEqual([n, expected?.first, expected?.last]);
    }
});

test.each([1e-5, 5e-5, 1e-4, 2e-4, 5e-4])(
  'of 1e5 samples in steps of %d few boxes are asked for, and fewer pairs of blocks looked through',
  (step) => {
    for (const scoring of [lowerBound, relativeError]) {
      vi.clearAllMocks();
      const task = searchTask(stairs(100_000, step, 0.5), scoring)!;
      expect(windowSearch(task)).toBeDefined();
      // samples of the elastic part; its blocks of 16 make some 8 million pairs
      expect(vi.mocked(hopeless).mock.calls.length).toBeLessThan(0.2 * (task.end - task.start));
      expect(vi.mocked(tryBlocks).mock.calls.length).toBeLessThan(300);
    }
  },
);
