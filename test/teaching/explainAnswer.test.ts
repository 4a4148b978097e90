import { expect, test } from 'vitest';
import { exerciseFor, explainAnswer, type ExerciseSymbol } from '../../src/teaching/index.js';
import { refusal } from '../support/thrown.js';

const exercise = exerciseFor('Ada');
const truthOf = (symbol: ExerciseSymbol): number => exercise.questions.find((one) => one.symbol === symbol)!.truth;

test('the truth is right, and so is what lies within the tolerance', () => {
  for (const { symbol, truth, tolerance } of exercise.questions) {
    expect(explainAnswer(exercise, { symbol, value: truth })).toEqual({ verdict: 'right', truth, deviation: 0, slips: [] });
    expect(explainAnswer(exercise, { symbol, value: truth * (1 + 0.99 * tolerance) }).verdict).toBe('right');
    expect(explainAnswer(exercise, { symbol, value: truth * (1 - 1.01 * tolerance) }).verdict).not.toBe('right');
  }
});

test('several slips that give one number are all named, nearest first', () => {
  const { verdict, slips, deviation } = explainAnswer(exercise, { symbol: 'E', value: truthOf('E') / 1000 });
  expect(verdict).toBe('slip');
  expect(deviation).toBeCloseTo(-0.999, 12);
  expect(slips.map(({ key }) => key)).toEqual(expect.arrayContaining(['answer-in-gigapascals', 'force-in-kilonewtons']));
  const distances = slips.map(({ value }) => Math.abs(truthOf('E') / 1000 / value - 1));
  expect(distances).toEqual([...distances].sort((a, b) => a - b));
});

test('what no slip gives stays unexplained', () => {
  expect(explainAnswer(exercise, { symbol: 'Rm', value: 2.345 * truthOf('Rm') })).toMatchObject({ verdict: 'unexplained', slips: [] });
  expect(explainAnswer(exercise, { symbol: 'Rm', value: 0 }).verdict).toBe('unexplained');
});

test('what is not asked is refused', () => {
  expect(refusal(() => explainAnswer(exercise, { symbol: 'ReH' as 'Rm', value: 1 }))).toBe('out-of-range answer.symbol');
  expect(refusal(() => explainAnswer(exercise, { symbol: 'Rm', value: Infinity }))).toBe('not-finite answer.value');
  expect(refusal(() => explainAnswer(undefined as never, { symbol: 'Rm', value: 1 }))).toBe('missing exercise');
  expect(refusal(() => explainAnswer(exercise, { symbol: 'Rm', value: 1, unit: 'MPa' } as never))).toBe('unknown-option answer.unit');
});
