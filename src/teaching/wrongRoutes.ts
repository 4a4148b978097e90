import { extensionRoutes } from './extensionRoutes.js';
import { factorRoutes } from './factorRoutes.js';
import { slipSentences } from './slipSentences.js';
import { strengthRoutes } from './strengthRoutes.js';
import type { WrongRoute } from './WrongRoute.js';

/**
 * Slips that students make on the way from a record to an answer, each with the number that it gives.
 *
 * @remarks
 * Common practice of classes. Each walks from record and piece by the public steps of the library with one step done wrongly, or multiplies the
 * right answer by what is known beforehand; a slip in travel or strain that moves the proof strength by no factor leaves it out.
 */
export const wrongRoutes: readonly WrongRoute[] = [...factorRoutes, ...strengthRoutes, ...extensionRoutes].map((route) => ({
  ...route,
  ...slipSentences[route.key],
}));
