import { mixed, xoshiro, type RandomNumbers } from './xoshiro.js';

/** The golden ratio as a step through 32 bits, that never comes back early. */
const STEP = 0x9e3779b9;

/** @internal Seeded random numbers: the same seed gives the same sequence everywhere; the state is filled from the seed by splitmix32. */
export function randomNumbers(seed: number): RandomNumbers {
  const { start, ...random } = xoshiro();
  start(mixed((seed + STEP) | 0), mixed((seed + 2 * STEP) | 0), mixed((seed + 3 * STEP) | 0), mixed((seed + 4 * STEP) | 0));
  return random;
}
