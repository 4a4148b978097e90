import { expect, test } from 'vitest';
import { analyseTension, type TensionResult } from '../../src/index.js';
import { exerciseFor, explainAnswer, type ExerciseSymbol } from '../../src/teaching/index.js';
import { refusal } from '../support/thrown.js';

const read: Readonly<Record<Exclude<ExerciseSymbol, 'mE'>, (result: TensionResult) => number | undefined>> = {
  E: ({ modulus }) => modulus?.value,
  'Rp0.2': ({ proofStrengths }) => proofStrengths[0]?.value,
  Rm: ({ tensileStrength }) => tensileStrength!.value,
  Agt: ({ totalExtensionAtMaximumForce }) => totalExtensionAtMaximumForce?.value,
  A: ({ elongationAfterFracture }) => elongationAfterFracture?.value,
  Z: ({ reductionOfArea }) => reductionOfArea?.value,
};

test('a careful evaluation answers every question of every exercise rightly', () => {
  const wrong: string[] = [];
  for (let k = 0; k < 60; k += 1) {
    const exercise = exerciseFor(`student ${k}`);
    const { record, piece, frameCompliance } = exercise;
    const result = analyseTension(record, piece, { frameCompliance });
    const raw = analyseTension(record, piece);
    const check = (symbol: ExerciseSymbol, value: number | undefined): void => {
      const { verdict, deviation } = explainAnswer(exercise, { symbol, value: value ?? 0 });
      if (verdict !== 'right') wrong.push(`${k} ${symbol} ${deviation}`);
    };
    check('mE', raw.elasticSlope?.value);
    for (const [symbol, of] of Object.entries(read)) check(symbol as ExerciseSymbol, of(result));
    const faults = result.findings.filter(({ severity, about }) => severity === 'fault' || (about === 'record' && severity === 'caution'));
    wrong.push(...faults.map(({ code }) => `${k} ${code}`));
  }
  expect(wrong).toEqual([]);
});

test('the springs in series give the slope with the frame in it', () => {
  const { questions, piece, frameCompliance } = exerciseFor(7);
  const truth = (symbol: ExerciseSymbol) => questions.find((one) => one.symbol === symbol)!.truth;
  const piecePerForce = piece.parallelLength! / (truth('E') * piece.section.area);
  expect(truth('mE')).toBeCloseTo(piece.parallelLength! / piece.section.area / (piecePerForce + frameCompliance), 6);
});

test('a name gives its own exercise, whatever its case and the spaces around it', () => {
  expect(exerciseFor(' Ada  ')).toEqual(exerciseFor('ada'));
  expect(exerciseFor(12)).toEqual(exerciseFor('12'));
  expect(exerciseFor('Åsa')).toEqual(exerciseFor('A\u030asa'));
  const others = ['ada', 'ben', 'cleo', 'dai', 'eva', 'finn', 'gita', 'hana'].map((name) => exerciseFor(name));
  expect(new Set(others.map(({ questions }) => questions[3]!.truth)).size).toBe(others.length);
  expect(new Set(others.map(({ material }) => material)).size).toBeGreaterThan(2);
});

test('no name is refused', () => {
  expect(refusal(() => exerciseFor('  '))).toBe('empty seed');
  expect(refusal(() => exerciseFor(NaN))).toBe('not-finite seed');
});
