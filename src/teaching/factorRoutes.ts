import { mistakesOf } from '../materials/index.js';
import { unitFactor } from '../units/index.js';
import { evaluated } from './evaluated.js';
import type { ExerciseSymbol } from './Exercise.js';
import { ofStress, type WrongRoute } from './WrongRoute.js';

/** A slip that multiplies the right answer. */
function times(
  key: string,
  symbols: readonly ExerciseSymbol[],
  factor: (symbol: ExerciseSymbol) => number,
  slip: string,
  advice: string,
): WrongRoute {
  return {
    key,
    symbols: symbols.filter((symbol) => factor(symbol) !== 1),
    slip,
    advice,
    value: (test, symbol) => {
      const right = evaluated(test, symbol);
      return right === undefined ? undefined : right * factor(symbol);
    },
  };
}

const sentence = (clause: string): string => `${clause.charAt(0).toUpperCase()}${clause.slice(1)}.`;

/** What a factor of stress and one of strain make of an answer; where strain is wrong the offset is read at a wrong place, and Rp is no multiple. */
const multiplied = (stress: number, strain: number) => (symbol: ExerciseSymbol) =>
  symbol === 'Agt' ? strain : symbol === 'Rm' ? stress : symbol === 'Rp0.2' ? (strain === 1 ? stress : 1) : stress / strain;

/** @internal Slips whose factor is known beforehand: the mistakes that explain properties, and those of someone who computes by hand. */
export const factorRoutes: readonly WrongRoute[] = [
  ...mistakesOf({ shape: 'round', forceFrom: 'force' }).map(({ key, stress, strain, clause, check }) =>
    times(key, [...ofStress, 'Agt'], multiplied(stress, strain), sentence(clause), check),
  ),
  times(
    'square-for-circle',
    ofStress,
    () => Math.PI / 4,
    'The area was taken as the square of the diameter.',
    'A round section has the area π d²/4: the factor π/4 is missing.',
  ),
  times(
    'area-in-square-centimetres',
    ofStress,
    () => 100,
    'The area was entered in cm², so the answer is in N/cm².',
    'Take the area in mm²: N/mm² is MPa, and 1 cm² is 100 mm².',
  ),
  times(
    'area-in-square-metres',
    ofStress,
    () => 1e6,
    'The area was entered in m², so the answer is in Pa.',
    'Take the area in mm², or divide pascals by a million.',
  ),
  times(
    'answer-in-psi',
    ofStress,
    () => unitFactor('MPa', 'psi'),
    'The answer is in pounds-force per square inch.',
    'Give the answer in MPa: 1 MPa is 145.04 psi.',
  ),
  times('answer-in-gigapascals', ['mE', 'E'], () => 1e-3, 'The answer is in GPa.', 'Give the answer in MPa: 1 GPa is 1000 MPa.'),
  times(
    'percent-for-ratio',
    ['A', 'Z'],
    () => 100,
    'A number of per cent was given where a ratio is asked.',
    'A ratio is a hundredth of the number of per cent.',
  ),
  times(
    'ratio-for-percent',
    ['A', 'Z'],
    () => 1 / 100,
    'A ratio was given where per cent are asked.',
    'Multiply the ratio by 100 for per cent.',
  ),
];
