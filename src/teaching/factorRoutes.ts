import { mistakesOf } from '../materials/index.js';
import { unitFactor } from '../units/index.js';
import { evaluated } from './evaluated.js';
import type { ExerciseSymbol } from './Exercise.js';
import { slipSentences, type SlipKey } from './slipSentences.js';
import { ofStress, type SlipRoute } from './WrongRoute.js';

/** A slip that multiplies the right answer. */
const times = (key: SlipKey, symbols: readonly ExerciseSymbol[], factor: (symbol: ExerciseSymbol) => number): SlipRoute => ({
  key,
  symbols: symbols.filter((symbol) => factor(symbol) !== 1),
  value: (test, symbol) => {
    const right = evaluated(test, symbol);
    return right === undefined ? undefined : right * factor(symbol);
  },
});

const isSlip = (key: string): key is SlipKey => Object.hasOwn(slipSentences, key);

/** What a factor of stress and one of strain make of an answer; where strain is wrong the offset is read at a wrong place, and Rp is no multiple. */
const multiplied = (stress: number, strain: number) => (symbol: ExerciseSymbol) =>
  symbol === 'Agt' ? strain : symbol === 'Rm' ? stress : symbol === 'Rp0.2' ? (strain === 1 ? stress : 1) : stress / strain;

/** @internal Slips whose factor is known beforehand: the mistakes that explain properties, and those of someone who computes by hand. */
export const factorRoutes: readonly SlipRoute[] = [
  ...mistakesOf({ shape: 'round', forceFrom: 'force' }).flatMap(({ key, stress, strain }) =>
    isSlip(key) ? [times(key, [...ofStress, 'Agt'], multiplied(stress, strain))] : [],
  ),
  times('square-for-circle', ofStress, () => Math.PI / 4),
  times('area-in-square-centimetres', ofStress, () => 100),
  times('area-in-square-metres', ofStress, () => 1e6),
  times('answer-in-psi', ofStress, () => unitFactor('MPa', 'psi')),
  times('answer-in-gigapascals', ['mE', 'E'], () => 1e-3),
  times('percent-for-ratio', ['A', 'Z'], () => 100),
  times('ratio-for-percent', ['A', 'Z'], () => 1 / 100),
];
