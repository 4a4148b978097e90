import { describe, expect, test } from 'vitest';
import { convertElongation } from '../../src/index.js';
import { expectPrinted } from '../support/handbook.js';
import { checkVectors } from '../support/vectors.js';

checkVectors('elongation', 'convertElongation', 'reductionOfArea', 'elongationAfterFracture');

/** Conversion between two coefficients of proportionality on one section. */
const between = (material: 'carbon' | 'austenitic', elongation: number, from: number, to: number): number =>
  convertElongation({ elongation, fromLength: from, fromArea: 1, toLength: to, toArea: 1, material });

describe('ISO 2566-2, austenitic steels: worked examples of the standard', () => {
  test('24 % on 200 mm of 40 x 15: factor 0.957', () => {
    const input = { fromLength: 200, fromArea: 600, toLength: 5.65, toArea: 1, material: 'austenitic' } as const;
    const converted = convertElongation({ elongation: 0.24, ...input });
    expectPrinted(0.24 / converted, '0.957');
  });
});

describe('ISO 2566-1, carbon steels: from the formula, with logarithms beside it', () => {
  // limits of the scope, from memory
  test.each([
    ['carbon', { tensileStrength: 300 }, { tensileStrength: 299 }],
    ['carbon', { tensileStrength: 700 }, { tensileStrength: 701 }],
    ['austenitic', { tensileStrength: 450 }, { tensileStrength: 449 }],
    ['austenitic', { tensileStrength: 750 }, { tensileStrength: 751 }],
    ['carbon', { condition: 'normalised' }, { condition: 'cold-worked' }],
    ['carbon', { condition: 'annealed' }, { condition: 'quenched and tempered' }],
    ['austenitic', { condition: 'solution-treated' }, { condition: 'hot-rolled' }],
    ['carbon', { thickness: 4 }, { thickness: 3.9 }],
    ['carbon', { width: 80, thickness: 4 }, { width: 81, thickness: 4 }],
    ['austenitic', { width: 20, thickness: 1 }, { width: 21, thickness: 1 }],
  ] as const)('%s: %o is converted, %o is not', (material, within, beyond) => {
    const input = { elongation: 0.25, fromLength: 5.65, fromArea: 1, toLength: 11.3, toArea: 1, material };
    expect(convertElongation({ ...input, ...within })).toBe(convertElongation(input));
    expect(() => convertElongation({ ...input, ...(beyond as object) })).toThrow(Object.keys(beyond)[0]);
  });

  test.each([
    { from: 5.65, to: 11.3 },
    { from: 4, to: 5.65 },
    { from: 5.65, to: 8.16 },
    { from: 8 / Math.sqrt(Math.PI), to: 10 / Math.sqrt(Math.PI) },
  ])('$from to $to', ({ from, to }) => {
    const factor = between('carbon', 1, from, to);
    expect(Math.log(factor)).toBeCloseTo(0.4 * (Math.log(from) - Math.log(to)), 12);
  });

  test('25 % on 5.65 √S0 to 200 mm of 100 mm²', () => {
    const input = { elongation: 0.25, fromLength: 5.65, fromArea: 1, material: 'carbon' } as const;
    // the constant 2 of the standard stands for 5.65^0.4 = 1.9991
    expect(25 * (5.65 * (Math.sqrt(100) / 200)) ** 0.4).toBeCloseTo(100 * convertElongation({ ...input, toLength: 200, toArea: 100 }), 1);
  });
});
