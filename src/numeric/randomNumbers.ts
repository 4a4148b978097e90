import { mixed, xoshiro, type RandomNumbers } from './xoshiro.js';

/** The golden ratio as a step through 32 bits: it visits all of them before it repeats. */
const STEP = 0x9e3779b9;

/**
 * @internal Seeded random numbers: the same seed gives the same sequence everywhere; the state is filled from the seed by splitmix32. Normal numbers
 * by Marsaglia's polar method, which simulated records are made with: to change it would change them all.
 */
export function randomNumbers(seed: number): RandomNumbers {
  const { start, uniform } = xoshiro();
  start(mixed((seed + STEP) | 0), mixed((seed + 2 * STEP) | 0), mixed((seed + 3 * STEP) | 0), mixed((seed + 4 * STEP) | 0));
  let spare: number | undefined;
  const normal = (): number => {
    if (spare !== undefined) {
      const kept = spare;
      spare = undefined;
      return kept;
    }
    for (;;) {
      const u = 2 * uniform() - 1;
      const v = 2 * uniform() - 1;
      const s = u * u + v * v;
      if (s === 0 || s >= 1) continue;
      const factor = Math.sqrt((-2 * Math.log(s)) / s);
      spare = v * factor;
      return u * factor;
    }
  };
  return { uniform, normal };
}
