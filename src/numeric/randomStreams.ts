import { mixed, xoshiro, type Xoshiro } from './xoshiro.js';

/** @internal A family of independent sequences, one for each number: what a trial draws depends on the seed and its own number alone. */
export interface RandomStreams extends Omit<Xoshiro, 'start'> {
  /** Goes to the start of sequence k, a whole number from 0 to 2³⁰ − 1. */
  readonly at: (k: number) => void;
}

const STEP = 0x9e3779b9;

/**
 * @internal Counter-based streams: two words of the state count the sequences, two carry the seed, so no two of 2³⁰ sequences of a seed
 * begin alike, and who computes which of them changes nothing.
 */
export function randomStreams(seed: number): RandomStreams {
  const { start, ...random } = xoshiro();
  const one = mixed((seed + STEP) | 0);
  const other = mixed((seed + 2 * STEP) | 0);
  const at = (k: number): void => {
    const counter = 4 * k;
    start(
      mixed((one + Math.imul(counter, STEP)) | 0),
      mixed((one + Math.imul(counter + 1, STEP)) | 0),
      mixed((other + Math.imul(counter + 2, STEP)) | 0),
      mixed((other + Math.imul(counter + 3, STEP)) | 0),
    );
  };
  at(0);
  return { at, ...random };
}
