import { incompleteGamma } from './incompleteGamma.js';

/** @internal Probability that a chi-square variable exceeds x, exact far out as well. */
export const chiSquareExceeds = (x: number, freedom: number): number => incompleteGamma(freedom / 2, x / 2).upper;
